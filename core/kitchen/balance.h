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
    bool boilsDry = false; ///< the best estimate comes down to the least liquid
};

/// Balances water, fat, protein, gelatin, sodium and potassium. Each uncertain figure is moved to
/// its 10 % and 90 % bound alone; the larger deviations of a result up and down add up as their
/// squares, apart for up and down. What is dissolved never passes what a liquid can hold (figures
/// protein-most, sodium-most, potassium-most). `evaporated` is the loss over the whole simmer.
Balance balanceOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
                  const Range& evaporated, const Catalogue& catalogue);

} // namespace ladlework::kitchen
