#include "kitchen/balance.h"

#include "kitchen/balance_terms.h"

#include <algorithm>
#include <array>
#include <cmath>

// Muscle keeps its protein when it is simmered (raw and cooked pairs of USDA SR28 keep 96-105 %),
// so the protein of a stock is not raw less cooked meat: it is collagen, released at a rate that
// falls with what is left, plus a few percent of soluble muscle protein. Juice and fat that leave a
// piece are raw less cooked weight of the whole piece.
namespace ladlework::kitchen {

namespace {
/// The uncertain figures, each moved alone.
enum Input : size_t {
    Evaporation,
    CookOut,
    Held,
    FatReleased,
    SodiumReleased,
    PotassiumReleased,
    SaltUptake,
    CollagenShare,
    ExtractionRate,
    PressureExtraction,
    MuscleProtein,
    VegetableReleased,
    MeatYield,
    InputCount
};
using Inputs = std::array<double, InputCount>;

enum Output : size_t {
    Evaporated,
    HeldBySolids,
    CookedOut,
    Stock,
    Meat,
    Fat,
    Protein,
    Gelatin,
    Sodium,
    Potassium,
    OutputCount
};
using Outputs = std::array<double, OutputCount>;

constexpr double perHundred = 100.0;

/// Running sums of a pot.
struct Sums {
    double cookOut = 0;
    double solids = 0;
    double solidsWater = 0;
    double meat = 0;
    double fat = 0;
    double gelatin = 0;
    double protein = 0;
    double salt = 0;
    double sodium = 0;
    double potassium = 0;
};

void addCut(const CutTerms& cut, const Terms& terms, const Inputs& v, Sums& sums) {
    const double drained = cut.drained * v[CookOut];
    const double fat = std::min(cut.fat * v[FatReleased], drained);
    sums.cookOut += (drained - fat) / terms.waterDensity + fat / terms.fatDensity;
    sums.fat += fat;
    sums.solids += cut.cookedWhole;
    const double meat = cut.cookedMeat * v[MeatYield];
    sums.meat += meat;
    sums.solidsWater += meat * terms.meatWater;
    const double rate = v[ExtractionRate] * v[PressureExtraction];
    sums.gelatin += std::min(cut.collagen * v[CollagenShare], cut.mass) *
                    (1.0 - std::exp(-cut.extractionExponent * rate));
    sums.protein += cut.muscleProtein * v[MuscleProtein] * cut.soaked;
    sums.sodium += cut.sodium * v[SodiumReleased] * cut.soaked;
    sums.potassium += cut.potassium * v[PotassiumReleased] * cut.soaked;
}

void addExtra(const ExtraTerms& extra, const Inputs& v, Sums& sums) {
    sums.cookOut += extra.juice;
    sums.solids += extra.solids;
    sums.solidsWater += extra.solids;
    sums.salt += extra.salt;
    sums.sodium += extra.sodium * v[VegetableReleased];
    sums.potassium += extra.potassium * v[VegetableReleased];
    sums.protein += extra.protein * v[VegetableReleased];
}

Outputs reckon(const Terms& terms, const Inputs& v) {
    Sums sums;
    for (const CutTerms& cut : terms.cuts)
        addCut(cut, terms, v, sums);
    for (const ExtraTerms& extra : terms.extras)
        addExtra(extra, v, sums);

    Outputs out{};
    const double atHand = terms.waterMl + sums.cookOut;
    out[Evaporated] = std::min(v[Evaporation], std::max(atHand - terms.leastLiquidMl, 0.0));
    // What clings to the solids is stock too: it takes its share of all that is dissolved.
    const double liquid = atHand - out[Evaporated];
    out[HeldBySolids] =
        std::min(sums.solids * v[Held], std::max(liquid - terms.leastLiquidMl, 0.0));
    out[CookedOut] = sums.cookOut;
    out[Stock] = liquid - out[HeldBySolids];
    out[Meat] = sums.meat;
    out[Fat] = sums.fat;
    out[Gelatin] = sums.gelatin / liquid * perHundred;
    out[Protein] = (sums.gelatin + sums.protein) / liquid * perHundred;
    const double saltKept = liquid / (liquid + v[SaltUptake] * sums.solidsWater);
    out[Sodium] = ((terms.saltSodiumMg + sums.salt) * saltKept + sums.sodium) / liquid * perHundred;
    out[Potassium] = sums.potassium / liquid * perHundred;
    return out;
}

std::array<Range, InputCount> rangesOf(const BrewInput& input, const Range& evaporated,
                                       const Catalogue& catalogue) {
    const auto range = [&catalogue](const QString& id) {
        const Figure& figure = catalogue.figure(id);
        return Range{figure.low, figure.value, figure.high};
    };
    std::array<Range, InputCount> ranges;
    ranges[Evaporation] = evaporated;
    ranges[CookOut] = range(QStringLiteral("cook-out-spread"));
    ranges[Held] = range(QStringLiteral("held-by-solids"));
    ranges[FatReleased] = range(QStringLiteral("fat-released-spread"));
    ranges[SodiumReleased] = range(QStringLiteral("sodium-released"));
    ranges[PotassiumReleased] = range(QStringLiteral("potassium-released"));
    ranges[SaltUptake] = range(QStringLiteral("salt-uptake"));
    ranges[CollagenShare] = range(QStringLiteral("collagen-spread"));
    ranges[ExtractionRate] = range(QStringLiteral("extraction-spread"));
    ranges[PressureExtraction] = input.vessel.place == Vessel::Place::PressureCooker
                                     ? range(QStringLiteral("pressure-cooker-extraction"))
                                     : Range{1.0, 1.0, 1.0};
    ranges[MuscleProtein] = range(QStringLiteral("muscle-protein-released"));
    ranges[VegetableReleased] = range(QStringLiteral("vegetable-released"));
    ranges[MeatYield] = range(QStringLiteral("meat-yield-spread"));
    return ranges;
}

std::array<Range, OutputCount> propagate(const Terms& terms,
                                         const std::array<Range, InputCount>& ranges) {
    Inputs best{};
    for (size_t index = 0; index < InputCount; ++index)
        best[index] = ranges[index].best;
    const Outputs centre = reckon(terms, best);

    Outputs down{};
    Outputs up{};
    for (size_t input = 0; input < InputCount; ++input) {
        Inputs moved = best;
        moved[input] = ranges[input].low;
        const Outputs atLow = reckon(terms, moved);
        moved[input] = ranges[input].high;
        const Outputs atHigh = reckon(terms, moved);
        for (size_t output = 0; output < OutputCount; ++output) {
            // At a clamp both bounds can move a result the same way: the input counts once.
            const auto [least, most] = std::minmax({atLow[output], centre[output], atHigh[output]});
            down[output] += std::pow(centre[output] - least, 2);
            up[output] += std::pow(most - centre[output], 2);
        }
    }

    std::array<Range, OutputCount> results;
    for (size_t index = 0; index < OutputCount; ++index)
        results[index] = {std::max(centre[index] - std::sqrt(down[index]), 0.0), centre[index],
                          centre[index] + std::sqrt(up[index])};
    return results;
}
} // namespace

Balance balanceOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
                  const Range& evaporated, const Catalogue& catalogue) {
    const Terms terms = termsOf(input, timeline, simmering, catalogue);
    auto results = propagate(terms, rangesOf(input, evaporated, catalogue));
    // Only the clamp holds the evaporation below what is asked for.
    const bool boilsDry = results[Evaporated].best < evaporated.best;
    const auto cap = [&](Output output, const QString& id) {
        const double most = catalogue.figure(id).value;
        Range& range = results[output];
        range = {std::min(range.low, most), std::min(range.best, most), std::min(range.high, most)};
    };
    cap(Protein, QStringLiteral("protein-most"));
    cap(Gelatin, QStringLiteral("protein-most"));
    cap(Sodium, QStringLiteral("sodium-most"));
    cap(Potassium, QStringLiteral("potassium-most"));
    return {results[Evaporated],
            results[HeldBySolids],
            results[CookedOut],
            results[Stock],
            results[Meat],
            results[Fat],
            results[Protein],
            results[Gelatin],
            results[Sodium],
            results[Potassium],
            boilsDry};
}

} // namespace ladlework::kitchen
