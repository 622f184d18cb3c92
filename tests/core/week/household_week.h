#pragma once

#include "core/week/rivals/week_makers.h"

namespace ladlework::week::samples {

inline constexpr std::size_t ana = 0;
inline constexpr std::size_t ben = 1;
inline constexpr StockSource fridgeLot{StockSource::Kind::Lot, 0};
inline constexpr StockSource freezerLot{StockSource::Kind::Lot, 1};
inline constexpr StockSource chicken{StockSource::Kind::Cooking, 0};
inline constexpr StockSource beef{StockSource::Kind::Cooking, 1};

/// Five days; Ana drinks 500 mL a day of anything, Ben 300 mL and no beef. Stock keeps to the day
/// after it is cooked. 400 mL stand in the refrigerator for today, 600 mL in the freezer.
inline WeekProblem household() {
    WeekProblem problem = emptyWeek(5);
    problem.fridgeDays = 1;
    problem.fridgeRoom = ml(1100);
    problem.freezerRoom = ml(1400);
    problem.meatPerDay = grams(400);
    addDrinker(problem, 500);
    addDrinker(problem, 300);
    addPot(problem, 2000, 600);
    addPot(problem, 1000, 200, QStringLiteral("beef")).may[ben] = false;
    problem.pots[1].cost = 20;
    problem.pots[1].total = minutes(400);
    addSlot(problem, 0, 360, 1);
    addSlot(problem, 2, 400, 2);
    addLot(problem, 400, kitchen::Lot::Place::Fridge, 0);
    addLot(problem, 600, kitchen::Lot::Place::Freezer);
    problem.meat = {{grams(100), 0}};
    return problem;
}

/// A plan in which nobody is short and nothing spoils, with its stores reckoned by hand.
inline WeekSolution goodPlan() {
    WeekSolution plan;
    plan.status = WeekSolution::Status::Optimal;
    plan.cookings = {{0, 0, false, ml(2000)}, {2, 1, false, ml(1000)}};
    plan.servings = {{0, ana, fridgeLot, ml(200)}, {0, ben, fridgeLot, ml(200)},
                     {0, ana, chicken, ml(300)},   {0, ben, chicken, ml(100)},
                     {1, ana, chicken, ml(500)},   {1, ben, chicken, ml(300)},
                     {2, ana, chicken, ml(500)},   {2, ben, chicken, ml(300)}, // thawed
                     {3, ana, beef, ml(500)},      {3, ben, freezerLot, ml(300)},
                     {4, ana, beef, ml(500)},      {4, ben, freezerLot, ml(300)}};
    plan.freezing = {{0, chicken, ml(800)}, {2, beef, ml(500)}};
    plan.thawing = {{1, chicken, ml(800)}, {2, freezerLot, ml(600)}, {3, beef, ml(500)}};
    plan.meat = {{0, fridgeLot, grams(100)}, // of the meat on hand: its first entry
                 {0, chicken, grams(300)},
                 {1, chicken, grams(300)},
                 {2, beef, grams(200)}};
    // Day 0: of 2000 mL 400 drunk and 800 frozen. Day 1: 800 drunk, 800 thawed. Day 2: 800 drunk,
    // 600 thawed, 1000 cooked and 500 of them frozen. Day 3: 800 drunk, 500 thawed. Day 4: all.
    plan.stores = {{ml(800), ml(1400), ml(800), ml(800)},
                   {ml(800), ml(600), ml(800), ml(800)},
                   {ml(1100), ml(500), ml(800), ml(800)},
                   {ml(800), ml(0), ml(800), ml(800)},
                   {ml(0), ml(0), ml(800), ml(800)}};
    plan.shortBy.assign(5, std::vector<quantity::Volume>(2));
    plan.objective.cookings = 2;
    plan.objective.handsOn = minutes(240);
    plan.objective.cost = 30;
    return plan;
}

} // namespace ladlework::week::samples
