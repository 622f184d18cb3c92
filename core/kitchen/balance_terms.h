#pragma once

#include "kitchen/additions.h"
#include "kitchen/brew.h"

#include <vector>

namespace ladlework::kitchen {

/// What a cut is reckoned from, figures looked up once.
struct CutTerms {
    double mass = 0;               ///< g
    double drained = 0;            ///< g of juice and fat that leave, at best
    double fat = 0;                ///< g of fat that leaves, at best
    double collagen = 0;           ///< g that could come out, at best
    double extractionExponent = 0; ///< rate x time, at best
    double sodium = 0;             ///< mg in the meat
    double potassium = 0;          ///< mg in the meat
    double muscleProtein = 0;      ///< g in the meat
    double soaked = 0;             ///< 0-1: how far juice has had time to leave
    double cookedMeat = 0;         ///< g
    double cookedWhole = 0;        ///< g
};

/// What an extra is reckoned from.
struct ExtraTerms {
    double juice = 0;     ///< mL given off
    double solids = 0;    ///< g strained out
    double salt = 0;      ///< mg sodium that dissolves
    double sodium = 0;    ///< mg in it
    double potassium = 0; ///< mg in it
    double protein = 0;   ///< g in it
};

/// What a whole pot is reckoned from.
struct Terms {
    std::vector<CutTerms> cuts;
    std::vector<ExtraTerms> extras;
    double waterMl = 0;
    double saltSodiumMg = 0;
    double leastLiquidMl = 0; ///< what is always left: a cook tops up before
    double meatWater = 0;     ///< g in a g of cooked meat
    double waterDensity = 1;  ///< g/mL
    double fatDensity = 1;    ///< g/mL
};

/// Looks the figures of a pot up once: the certain part of its balance.
Terms termsOf(const BrewInput& input, const Timeline& timeline, quantity::Temperature simmering,
              const Catalogue& catalogue);

} // namespace ladlework::kitchen
