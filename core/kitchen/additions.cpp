#include "kitchen/additions.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
quantity::Duration stayOf(const Pot& pot, const Cut& cut, const CommonWindow& common,
                          const Catalogue& catalogue) {
    const quantity::Duration most = windowIn(pot, cut, catalogue).most;
    // Something has to be in the pot from the start: the slowest cuts, even in too long a simmer.
    return most >= common.most ? pot.simmer : std::min(pot.simmer, most);
}

bool strains(Extra::Kind kind, const PhaseRules& phase) {
    switch (kind) {
    case Extra::Kind::Vegetable:
        return phase.strainVegetables;
    case Extra::Kind::FreshHerb:
    case Extra::Kind::DryHerb:
        return phase.strainHerbs;
    case Extra::Kind::Peppercorns:
        return phase.strainPeppercorns;
    case Extra::Kind::Garlic:
    case Extra::Kind::GroundPepper:
    case Extra::Kind::Salt:
    case Extra::Kind::Other:
        return false;
    }
    return false;
}

void addWaterAndSalt(const Pot& pot, QList<Addition>& additions) {
    Addition water;
    water.what = Addition::What::Water;
    water.name = QCoreApplication::translate("Pot", "water");
    water.strained = false;
    additions.append(water);
    if (pot.salt <= quantity::Mass())
        return;
    Addition salt = water;
    salt.what = Addition::What::Salt;
    salt.name = QCoreApplication::translate("Pot", "salt");
    additions.append(salt);
}
} // namespace

const CookWindow& windowIn(const Pot& pot, const Cut& cut, const Catalogue& catalogue) {
    const bool boneBroth = pot.brew == Pot::Brew::BoneBroth ||
                           std::ranges::all_of(pot.cuts, [&catalogue](const CutInPot& inPot) {
                               return catalogue.cut(inPot.cut)->bareBone;
                           });
    return boneBroth ? catalogue.window(cut) : catalogue.window(cut.cookClass);
}

CommonWindow commonWindow(const Pot& pot, const Catalogue& catalogue) {
    CommonWindow common;
    for (const CutInPot& inPot : pot.cuts) {
        const CookWindow& window = windowIn(pot, *catalogue.cut(inPot.cut), catalogue);
        const bool first = common.most == quantity::Duration();
        common.several = common.several || (!first && window.most != common.most);
        common.least = std::max(common.least, window.least);
        common.most = std::max(common.most, window.most);
    }
    return common;
}

Timeline timelineOf(const BrewInput& input, const Catalogue& catalogue) {
    const Pot& pot = input.pot;
    const CommonWindow common = commonWindow(pot, catalogue);
    Timeline timeline;
    for (const CutInPot& inPot : pot.cuts) {
        const Cut& cut = *catalogue.cut(inPot.cut);
        const quantity::Duration stay = stayOf(pot, cut, common, catalogue);
        timeline.cuts.push_back({stay, true});
        timeline.additions.append(
            {Addition::What::Cut, cut.id, cut.name, pot.simmer - stay, true, false});
    }
    addWaterAndSalt(pot, timeline.additions);
    for (const ExtraInPot& inPot : pot.extras) {
        const Extra& extra = *catalogue.extra(inPot.item);
        const quantity::Duration stay = std::min(pot.simmer, extra.beforeEnd.value_or(pot.simmer));
        const bool strained = strains(extra.kind, input.phase);
        timeline.extras.push_back({stay, strained});
        timeline.additions.append({Addition::What::Extra, extra.id, extra.name, pot.simmer - stay,
                                   strained, stay == quantity::Duration()});
    }
    std::ranges::stable_sort(timeline.additions, {}, &Addition::at);
    return timeline;
}

} // namespace ladlework::kitchen
