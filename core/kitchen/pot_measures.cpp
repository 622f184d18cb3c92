#include "kitchen/pot_measures.h"

#include <algorithm>
#include <numbers>

namespace ladlework::kitchen {

namespace {
double figure(const QString& id, const Catalogue& catalogue) {
    return catalogue.figure(id).value;
}
} // namespace

quantity::Length heightNeeded(quantity::Volume fill, quantity::Length diameter,
                              const Catalogue& catalogue) {
    const double radius = diameter.toCentimetres() / 2.0;
    const double filled = fill.toMillilitres() / (std::numbers::pi * radius * radius);
    const double least = catalogue.figure(QStringLiteral("headspace-least")).value;
    const double share = catalogue.figure(QStringLiteral("headspace-share")).value;
    return quantity::Length::fromCentimetres(std::max(filled + least, filled / (1.0 - share)));
}

quantity::Volume fillAllowed(const Vessel& vessel, const Catalogue& catalogue) {
    const double least = catalogue.figure(QStringLiteral("headspace-least")).value;
    const double share = catalogue.figure(QStringLiteral("headspace-share")).value;
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
