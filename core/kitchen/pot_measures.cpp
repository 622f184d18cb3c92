#include "kitchen/pot_measures.h"

#include <algorithm>
#include <numbers>

namespace ladlework::kitchen {

namespace {
double figure(const QString& id, const Catalogue& catalogue) {
    return catalogue.figure(id).value;
}

/// Of the height, to be left empty.
double headspaceShare(const Vessel& vessel, const Catalogue& catalogue) {
    return vessel.place == Vessel::Place::PressureCooker
               ? 1.0 - figure(QStringLiteral("pressure-cooker-fill"), catalogue)
               : figure(QStringLiteral("headspace-share"), catalogue);
}
} // namespace

quantity::Length heightNeeded(quantity::Volume fill, const Vessel& vessel,
                              const Catalogue& catalogue) {
    const double radius = vessel.diameter.toCentimetres() / 2.0;
    const double filled = fill.toMillilitres() / (std::numbers::pi * radius * radius);
    const double least = figure(QStringLiteral("headspace-least"), catalogue);
    const double share = headspaceShare(vessel, catalogue);
    return quantity::Length::fromCentimetres(std::max(filled + least, filled / (1.0 - share)));
}

quantity::Volume fillAllowed(const Vessel& vessel, const Catalogue& catalogue) {
    const double least = figure(QStringLiteral("headspace-least"), catalogue);
    const double share = headspaceShare(vessel, catalogue);
    const double height = vessel.height.toCentimetres();
    return vessel.capacity() * (std::max(height - std::max(least, share * height), 0.0) / height);
}

quantity::Mass meatyMass(const Pot& pot, const Catalogue& catalogue) {
    quantity::Mass all;
    quantity::Mass meaty;
    for (const CutInPot& inPot : pot.cuts) {
        all += inPot.mass;
        if (!catalogue.cut(inPot.cut)->bareBone)
            meaty += inPot.mass;
    }
    return meaty > quantity::Mass() ? meaty : all;
}

quantity::Volume bonesVolume(const Pot& pot, const Catalogue& catalogue) {
    quantity::Mass bones;
    for (const CutInPot& cut : pot.cuts)
        bones += cut.mass;
    return quantity::Volume::fromMillilitres(bones.toGrams() /
                                             figure(QStringLiteral("bone-density"), catalogue));
}

quantity::Volume fillVolume(const Pot& pot, const Catalogue& catalogue) {
    quantity::Mass extras;
    for (const ExtraInPot& extra : pot.extras)
        extras += extra.mass;
    return pot.water + bonesVolume(pot, catalogue) +
           quantity::Volume::fromMillilitres(
               extras.toGrams() / figure(QStringLiteral("vegetable-density"), catalogue));
}

} // namespace ladlework::kitchen
