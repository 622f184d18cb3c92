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

/// Grams of collagen that have come out at these rates, of as much as there is at best.
double releasedG(const std::vector<Collagen>& collagen, const Inputs& v) {
    const double rate = v[ExtractionRate] * v[PressureExtraction];
    double grams = 0.0;
    for (const Collagen& one : collagen)
        grams += one.grams * (1.0 - std::exp(-one.exponent * rate));
    return grams;
}

/// `released` is what releasedG() gives for the same inputs: few of them move it.
Outputs reckon(const Terms& terms, const BalanceFigures& figures, const Inputs& v,
               double released) {
    const double drained = terms.drainedG * v[CookOut];
    const double fat = std::min(terms.fatG * v[FatReleased], drained);
    const double meat = terms.cookedMeatG * v[MeatYield];
    const double gelatin = released * v[CollagenShare];
    const double protein = gelatin + terms.soakedProteinG * v[MuscleProtein] +
                           terms.extraProteinG * v[VegetableReleased];

    Outputs out{};
    out[CookedOut] =
        (drained - fat) / figures.waterDensity + fat / figures.fatDensity + terms.juiceMl;
    const double atHand = terms.waterMl + out[CookedOut];
    out[Evaporated] = std::min(v[Evaporation], std::max(atHand - terms.leastLiquidMl, 0.0));
    // What clings to the solids is stock too: it takes its share of all that is dissolved.
    const double liquid = atHand - out[Evaporated];
    out[HeldBySolids] = std::min((terms.cookedWholeG + terms.strainedG) * v[Held],
                                 std::max(liquid - terms.leastLiquidMl, 0.0));
    out[Stock] = liquid - out[HeldBySolids];
    out[Meat] = meat;
    out[Fat] = fat;
    out[Gelatin] = gelatin / liquid * perHundred;
    out[Protein] = protein / liquid * perHundred;
    const double solidsWater = meat * figures.cookedMeatWater + terms.strainedG;
    const double saltKept = liquid / (liquid + v[SaltUptake] * solidsWater);
    out[Sodium] = (terms.saltSodiumMg * saltKept + terms.soakedSodiumMg * v[SodiumReleased] +
                   terms.extraSodiumMg * v[VegetableReleased]) /
                  liquid * perHundred;
    out[Potassium] = (terms.soakedPotassiumMg * v[PotassiumReleased] +
                      terms.extraPotassiumMg * v[VegetableReleased]) /
                     liquid * perHundred;
    return out;
}

std::array<Range, InputCount> rangesOf(const Vessel& vessel, const Range& evaporated,
                                       const BalanceFigures& figures) {
    constexpr Range certain{1.0, 1.0, 1.0};
    std::array<Range, InputCount> ranges;
    ranges[Evaporation] = evaporated;
    ranges[CookOut] = figures.cookOutSpread;
    ranges[Held] = figures.heldBySolids;
    ranges[FatReleased] = figures.fatReleasedSpread;
    ranges[SodiumReleased] = figures.sodiumReleased;
    ranges[PotassiumReleased] = figures.potassiumReleased;
    ranges[SaltUptake] = figures.saltUptake;
    ranges[CollagenShare] = figures.collagenSpread;
    ranges[ExtractionRate] = figures.extractionSpread;
    ranges[PressureExtraction] =
        vessel.place == Vessel::Place::PressureCooker ? figures.pressureCookerExtraction : certain;
    ranges[MuscleProtein] = figures.muscleProteinReleased;
    ranges[VegetableReleased] = figures.vegetableReleased;
    ranges[MeatYield] = figures.meatYieldSpread;
    return ranges;
}

std::array<Range, OutputCount> propagate(const Terms& terms, const BalanceFigures& figures,
                                         const std::array<Range, InputCount>& ranges) {
    Inputs best{};
    for (size_t index = 0; index < InputCount; ++index)
        best[index] = ranges[index].best;
    const double releasedAtBest = releasedG(terms.collagen, best);
    const Outputs centre = reckon(terms, figures, best, releasedAtBest);
    const auto reckoned = [&](const Inputs& v, size_t input) {
        const bool movesRate = input == ExtractionRate || input == PressureExtraction;
        return reckon(terms, figures, v, movesRate ? releasedG(terms.collagen, v) : releasedAtBest);
    };

    Outputs down{};
    Outputs up{};
    for (size_t input = 0; input < InputCount; ++input) {
        if (ranges[input].low == ranges[input].high)
            continue;
        Inputs moved = best;
        moved[input] = ranges[input].low;
        const Outputs atLow = reckoned(moved, input);
        moved[input] = ranges[input].high;
        const Outputs atHigh = reckoned(moved, input);
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
    const BalanceFigures& figures = catalogue.brewFigures().balance;
    const Terms terms = termsOf(input, timeline, simmering, catalogue);
    auto results = propagate(terms, figures, rangesOf(input.vessel, evaporated, figures));
    // Only the clamp holds the evaporation below what is asked for.
    const bool boilsDry = results[Evaporated].best < evaporated.best;
    const auto cap = [&results](Output output, double most) {
        Range& range = results[output];
        range = {std::min(range.low, most), std::min(range.best, most), std::min(range.high, most)};
    };
    cap(Protein, figures.proteinMost);
    cap(Gelatin, figures.proteinMost);
    cap(Sodium, figures.sodiumMost);
    cap(Potassium, figures.potassiumMost);
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
