#include "kitchen/brew.h"

#include "kitchen/additions.h"
#include "kitchen/balance.h"
#include "kitchen/boiling.h"
#include "kitchen/evaporation.h"
#include "kitchen/pot_findings.h"

#include <algorithm>
#include <stdexcept>

namespace ladlework::kitchen {

namespace {
void addMeasures(const BrewInput& input, const Catalogue& catalogue, Brewed& brewed) {
    const Pot& pot = input.pot;
    const auto figure = [&catalogue](const QString& id) {
        return catalogue.figure(id).value;
    };
    const quantity::Mass meaty = meatyMass(pot, catalogue);
    const double ratio = pot.water.toMillilitres() / meaty.toKilograms();
    brewed.waterRatioMlPerKg = {ratio, ratio, ratio};
    brewed.wateredLeast = quantity::Volume::fromMillilitres(meaty.toKilograms() *
                                                            figure(QStringLiteral("water-least")));
    brewed.wateredMost = quantity::Volume::fromMillilitres(meaty.toKilograms() *
                                                           figure(QStringLiteral("water-most")));

    brewed.bonesVolume = bonesVolume(pot, catalogue);
    // The gaps of the packed bed, filled to its top.
    brewed.covered = brewed.bonesVolume * (1.0 / figure(QStringLiteral("bone-packing")) - 1.0);
    brewed.fill = fillVolume(pot, catalogue);
    brewed.capacity = input.vessel.capacity();
}

void addBalance(const BrewInput& input, const Catalogue& catalogue, Brewed& brewed) {
    const Timeline timeline = timelineOf(input, catalogue);
    brewed.additions = timeline.additions;
    const Range evaporated =
        evaporatedMl(input.vessel, brewed.simmering, input.room, input.altitude, input.pot.simmer,
                     catalogue, input.learntEvaporation);
    const Balance balance = balanceOf(input, timeline, brewed.simmering, evaporated, catalogue);
    brewed.evaporatedMl = balance.evaporatedMl;
    brewed.heldBySolidsMl = balance.heldBySolidsMl;
    brewed.cookOutMl = balance.cookOutMl;
    brewed.stockMl = balance.stockMl;
    brewed.meatLeftG = balance.meatLeftG;
    brewed.fatG = balance.fatG;
    brewed.proteinGPer100Ml = balance.proteinGPer100Ml;
    brewed.gelatinGPer100Ml = balance.gelatinGPer100Ml;
    brewed.sodiumMgPer100Ml = balance.sodiumMgPer100Ml;
    brewed.potassiumMgPer100Ml = balance.potassiumMgPer100Ml;
    brewed.boilsDry = balance.boilsDry;
    brewed.wouldEvaporateMl = evaporated.best;
    const double gelatin = balance.gelatinGPer100Ml.best;
    if (gelatin >= catalogue.figure(QStringLiteral("set-firm")).value)
        brewed.set = Set::Firm;
    else if (gelatin >= catalogue.figure(QStringLiteral("set-soft")).value)
        brewed.set = Set::Soft;
}

Range divided(const Range& range, double divisor) {
    return {range.low / divisor, range.best / divisor, range.high / divisor};
}

void addTable(const BrewInput& input, const Catalogue& catalogue, Brewed& brewed) {
    quantity::Volume aDay;
    for (const Drinker& drinker : input.drinkers) {
        const WhoMay who = whoMay(drinker, input.pot, catalogue);
        if (who.may)
            aDay += drinker.perDay;
        brewed.who.append(who);
    }
    if (aDay > quantity::Volume())
        brewed.coverDays = divided(brewed.stockMl, aDay.toMillilitres());
    if (input.meatPerDay && *input.meatPerDay > quantity::Mass())
        brewed.meatDays = divided(brewed.meatLeftG, input.meatPerDay->toGrams());
}

/// The sum of what has a price; nothing when nothing has.
std::optional<double> costOf(const BrewInput& input) {
    std::optional<double> cost;
    const auto add = [&](const QString& id, quantity::Mass mass) {
        const auto price = input.prices.constFind(id);
        if (price != input.prices.cend())
            cost = cost.value_or(0.0) + *price * mass.toKilograms();
    };
    for (const CutInPot& cut : input.pot.cuts)
        add(cut.cut, cut.mass);
    for (const ExtraInPot& extra : input.pot.extras)
        add(extra.item, extra.mass);
    if (input.pot.salt > quantity::Mass())
        add(QStringLiteral("salt"), input.pot.salt);
    return cost;
}

void addAnimals(const Pot& pot, const Catalogue& catalogue, Brewed& brewed) {
    for (const CutInPot& inPot : pot.cuts)
        if (const QString& animal = catalogue.cut(inPot.cut)->animal;
            !brewed.animals.contains(animal))
            brewed.animals.append(animal);
    brewed.lowMeat = std::ranges::all_of(pot.cuts, [&catalogue](const CutInPot& inPot) {
        const Cut& cut = *catalogue.cut(inPot.cut);
        return cut.lowMeat || cut.bareBone || cut.marrow;
    });
}
} // namespace

Brewed brew(const BrewInput& input, const Catalogue& catalogue) {
    if (input.pot.cuts.isEmpty())
        throw std::logic_error("brew() asks for a pot that passes check()");
    Brewed brewed;
    brewed.boiling = boilingPoint(input.altitude);
    brewed.simmering = quantity::Temperature::fromCelsius(
        catalogue.figure(QStringLiteral("simmer-temperature")).value);
    // Under pressure the height of the place holds nothing back.
    if (input.vessel.place != Vessel::Place::PressureCooker)
        brewed.simmering = std::min(brewed.simmering, brewed.boiling);
    addAnimals(input.pot, catalogue, brewed);
    addMeasures(input, catalogue, brewed);
    addBalance(input, catalogue, brewed);
    addTable(input, catalogue, brewed);
    brewed.cost = costOf(input);
    brewed.findings = potFindings(input, brewed, catalogue);
    brewed.findings.append(drinkerFindings(input, brewed, catalogue));
    return brewed;
}

Range perCup(const Range& per100Ml) {
    constexpr double portion = 100.0;
    return divided(per100Ml, portion / quantity::units::millilitresPerCup);
}

QString setId(Set set) {
    switch (set) {
    case Set::Pours:
        return QStringLiteral("pours");
    case Set::Soft:
        return QStringLiteral("soft");
    case Set::Firm:
        return QStringLiteral("firm");
    }
    return {};
}

} // namespace ladlework::kitchen
