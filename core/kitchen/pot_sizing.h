#pragma once

#include "kitchen/brew.h"
#include "quantity/measure.h"

namespace ladlework::kitchen {

/// The pot with everything in it multiplied, to amounts that a kitchen weighs and measures in these
/// measures; times stay. The factor is positive.
Pot scaled(const Pot& pot, double factor, quantity::MeasureSystem measures);

// Each of these solves backwards from what is wanted to the amounts, and gives the whole pot with
// bones, water, salt and extras in proportion. Refused, with a sentence that says what is in the
// way and what would help, when no such pot can be.

/// As much as the vessel holds with its headspace.
Result<Pot> sizedToVessel(const BrewInput& input, quantity::MeasureSystem measures,
                          const Catalogue& catalogue);

/// Stock (best estimate) for at least `days` days of those who may drink it.
Result<Pot> sizedToCover(const BrewInput& input, double days, quantity::MeasureSystem measures,
                         const Catalogue& catalogue);

/// Stock (best estimate) of this volume.
Result<Pot> sizedToYield(const BrewInput& input, quantity::Volume stock,
                         quantity::MeasureSystem measures, const Catalogue& catalogue);

/// All that can be made of the bones at hand: of a cut of the pot there is this much.
Result<Pot> sizedToBones(const BrewInput& input, const QString& cut, quantity::Mass inHand,
                         quantity::MeasureSystem measures, const Catalogue& catalogue);

/// The nearest low-meat pot with the same yield of stock.
Result<Pot> lowMeatOfSameYield(const BrewInput& input, quantity::MeasureSystem measures,
                               const Catalogue& catalogue);

} // namespace ladlework::kitchen
