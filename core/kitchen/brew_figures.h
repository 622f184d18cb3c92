#pragma once

#include "kitchen/range.h"

#include <array>

namespace ladlework::kitchen {

class Catalogue;

// The figures of resources/reference/figures.csv that a pot is reckoned with, looked up once when
// the catalogue is read: a pot is reckoned anew with every key that is pressed. A figure that is
// taken as it is has one number, an uncertain one its range. Units and sources stand in the table.

/// What the loss of water is reckoned with (see evaporation.cpp).
struct EvaporationFigures {
    Range simmerTemperature; ///< °C
    Range roomWarmth;        ///< K more than the room temperature that was entered
    Range airHumidity;
    Range openSpread;
    std::array<Range, 3> lids; ///< by Vessel::Lid
    Range oven;                ///< times the lid
    Range slowCooker;          ///< whatever the lid
    Range pressureCooker;      ///< whatever the lid
    double plateLaminar = 0;
    double plateTurbulent = 0;
    double plateTurbulentFrom = 0;
    double vapourDiffusivity = 0;
    double vapourDiffusivityExponent = 0;
    double airSutherland = 0;
    double airSutherlandTemperature = 0;
    double burnerNetPower = 0;
    double waterLatentHeat = 0;
    double waterDensity = 0;
};

/// What the balance is reckoned with (see balance.cpp).
struct BalanceFigures {
    Range cookOutSpread;
    Range meatYieldSpread;
    Range heldBySolids;
    Range fatReleasedSpread;
    Range sodiumReleased;
    Range potassiumReleased;
    Range saltUptake;
    Range collagenSpread;
    Range extractionSpread;
    Range pressureCookerExtraction;
    Range muscleProteinReleased;
    Range vegetableReleased;
    std::array<double, 3> fatReleased{};   ///< by CookClass
    std::array<double, 3> extraction{};    ///< by CookClass
    std::array<double, 4> collagenGrade{}; ///< by connective grade
    double extractionReferenceTemperature = 0;
    double extractionDoubling = 0;
    double collagenLeftInCooked = 0;
    double cookOutTime = 0;
    double vegetableCookOut = 0;
    double cookedMeatWater = 0;
    double saltSodium = 0;
    double dryPotLiquid = 0;
    double waterDensity = 0;
    double fatDensity = 0;
    double proteinMost = 0;
    double sodiumMost = 0;
    double potassiumMost = 0;
};

/// All of them.
struct BrewFigures {
    EvaporationFigures evaporation;
    BalanceFigures balance;

    /// A missing figure is a broken invariant (throws).
    static BrewFigures of(const Catalogue& catalogue);
};

} // namespace ladlework::kitchen
