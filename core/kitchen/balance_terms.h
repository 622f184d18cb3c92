#pragma once

#include "kitchen/additions.h"
#include "kitchen/brew.h"

#include <vector>

namespace ladlework::kitchen {

/// Collagen of one cut that comes out at a rate of its own.
struct Collagen {
    double grams = 0;    ///< that could come out, at best
    double exponent = 0; ///< rate x time, at best
};

/// What a pot is reckoned from: the sums over all that is in it, each before the uncertain figure
/// that it is multiplied with in balance.cpp.
struct Terms {
    double waterMl = 0;
    double leastLiquidMl = 0; ///< what is always left: a cook tops up before
    // Of the cuts.
    double drainedG = 0;       ///< juice and fat that leave
    double fatG = 0;           ///< fat that leaves
    double cookedWholeG = 0;   ///< the pieces after cooking
    double cookedMeatG = 0;    ///< meat off the bone after cooking
    double soakedSodiumMg = 0; ///< in the meat that has had time to give it
    double soakedPotassiumMg = 0;
    double soakedProteinG = 0; ///< of muscle
    std::vector<Collagen> collagen;
    // Of the extras.
    double juiceMl = 0;      ///< given off
    double strainedG = 0;    ///< strained out
    double saltSodiumMg = 0; ///< that dissolves, with that of the pot's own salt
    double extraSodiumMg = 0;
    double extraPotassiumMg = 0;
    double extraProteinG = 0;
};

/// Sums a pot up: the certain part of its balance.
Terms termsOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
              const Catalogue& catalogue);

} // namespace ladlework::kitchen
