#include "kitchen/brew.h"

#include <algorithm>

namespace ladlework::kitchen {

namespace {
bool littleMeat(const Cut& cut) {
    return cut.lowMeat || cut.bareBone || cut.marrow;
}

/// The first low-meat cut of an animal in the catalogue's order that is no marrow bone; the
/// catalogue lists the usual one first.
const Cut* lowMeatCutOf(const QString& animal, const Catalogue& catalogue) {
    const auto& cuts = catalogue.cuts();
    const auto place = std::ranges::find_if(cuts, [&animal](const Cut& cut) {
        return cut.animal == animal && cut.lowMeat && cut.joint && !cut.bareBone;
    });
    return place == cuts.end() ? nullptr : &*place;
}

void addTo(QList<CutInPot>& cuts, const CutInPot& added) {
    const auto same = std::ranges::find_if(cuts, [&added](const CutInPot& cut) {
        return cut.cut == added.cut && cut.raw == added.raw;
    });
    if (same == cuts.end())
        cuts.append(added);
    else
        same->mass += added.mass;
}
} // namespace

std::optional<Pot> lowMeatVariant(const Pot& pot, const Catalogue& catalogue) {
    Pot variant = pot;
    variant.cuts.clear();
    bool changed = false;
    for (const CutInPot& inPot : pot.cuts) {
        const Cut& cut = *catalogue.cut(inPot.cut);
        if (littleMeat(cut)) {
            addTo(variant.cuts, inPot);
            continue;
        }
        const Cut* instead = lowMeatCutOf(cut.animal, catalogue);
        if (instead == nullptr)
            return std::nullopt;
        addTo(variant.cuts, {instead->id, inPot.mass, true});
        changed = true;
    }
    return changed ? std::optional(variant) : std::nullopt;
}

} // namespace ladlework::kitchen
