#pragma once

#include "kitchen/additions.h"
#include "kitchen/brew.h"

namespace ladlework::kitchen {

/// The mass balance of a pot with the range that its uncertain figures give it.
struct Balance {
    Range evaporatedMl;
    Range heldBySolidsMl;
    Range cookOutMl; ///< water and fat that leave meat and vegetables
    Range stockMl;   ///< water in - evaporated - held by solids + cook-out
    Range meatLeftG;
    Range fatG;
    Range proteinGPer100Ml;
    Range gelatinGPer100Ml;
    Range sodiumMgPer100Ml;
    Range potassiumMgPer100Ml;
};

/// Balances water, fat, protein, gelatin, sodium and potassium. Each uncertain figure is moved to
/// its 10 % and 90 % bound alone; the deviations of a result add up as their squares, apart for up
/// and down. `evaporated` is the loss over the whole simmer.
Balance balanceOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
                  const Range& evaporated, const Catalogue& catalogue);

} // namespace ladlework::kitchen
