#include "core/week/rivals/week_makers.h"
#include "core/week/week_rules.h"
#include "week/week_solver.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Weeks whose best plan a person can reckon; the reckoning stands beside each.
namespace ladlework::week {
namespace {
using namespace samples;
using Place = kitchen::Lot::Place;
using ::testing::IsEmpty;

constexpr double tolerance = 0.01;

WeekSolution solved(const WeekProblem& problem) {
    const WeekSolution plan = solveWeek(problem);
    EXPECT_EQ(plan.status, WeekSolution::Status::Optimal);
    EXPECT_THAT(rules::breaches(problem, plan), IsEmpty());
    return plan;
}

/// One drinker, one pot, a slot on each day, no freezer.
WeekProblem onePot(int days, double perDay, double stock) {
    WeekProblem problem = emptyWeek(days);
    problem.freezerRoom = ml(0);
    addDrinker(problem, perDay);
    addPot(problem, stock);
    for (int day = 0; day < days; ++day)
        addSlot(problem, day);
    return problem;
}

void expectStock(const WeekSolution& plan, double shortBy, double spoilt, int cookings) {
    EXPECT_NEAR(plan.objective.shortBy.toMillilitres(), shortBy, tolerance);
    EXPECT_NEAR(plan.objective.spoilt.toMillilitres(), spoilt, tolerance);
    EXPECT_EQ(plan.objective.cookings, cookings);
}
} // namespace

TEST(WeekByHandTest, threePotsOf2800CoverAWeekOf7000) {
    // 7 x 1000 = 7000 mL; two pots give 5600, so three at least. Three do: day 0 (days 0, 1 and 800
    // of day 2), day 2 (200 of day 2, days 3, 4 and 600 of day 5, its last), day 5 (the rest).
    expectStock(solved(onePot(7, 1000, 2800)), 0, 0, 3);
}

TEST(WeekByHandTest, aPotTooLargeForFourDaysSpoilsItsRest) {
    // Day 0 must be served, so a pot is cooked on it; in days 0 to 3 it gives 4000 of its 4500 mL.
    // The next, on day 4, is good to day 7 and carried over.
    WeekProblem problem = onePot(7, 1000, 4500);
    expectStock(solved(problem), 0, 500, 2);
    // With half a litre of freezer the rest is frozen and drunk later.
    problem.freezerRoom = ml(500);
    expectStock(solved(problem), 0, 0, 2);
}

TEST(WeekByHandTest, frozenStockIsDrunkFromTheNextDayOn) {
    WeekProblem problem = emptyWeek(3);
    addDrinker(problem, 500);
    addLot(problem, 1000, Place::Freezer);
    // Nothing is thawed on day 0; thawed that day it serves days 1 and 2.
    const WeekSolution plan = solved(problem);
    expectStock(plan, 500, 0, 0);
    EXPECT_NEAR(plan.shortBy[0][0].toMillilitres(), 500, tolerance);
}

TEST(WeekByHandTest, aLotIsDrunkToItsLastDayAndTheRestSpoils) {
    WeekProblem problem = emptyWeek(4);
    addDrinker(problem, 400);
    addLot(problem, 1000, Place::Fridge, 1);
    // Days 0 and 1 take 800 of the 1000 mL; days 2 and 3 are short.
    expectStock(solved(problem), 800, 200, 0);
}

TEST(WeekByHandTest, aLotThatIsGoneCountsForNothing) {
    WeekProblem problem = emptyWeek(2);
    addDrinker(problem, 400);
    addLot(problem, 1000, Place::Fridge, -1);
    expectStock(solved(problem), 800, 0, 0);
}

TEST(WeekByHandTest, meatIsEatenSoMuchADay) {
    WeekProblem problem = onePot(5, 0, 1000);
    problem.drinkers[0].perDay[0] = ml(1000);
    problem.pots[0].meat = grams(1200);
    problem.meatPerDay = grams(200);
    // Days 0 to 3 eat 800 of the 1200 g; day 3 is the last.
    const WeekSolution plan = solved(problem);
    expectStock(plan, 0, 0, 1);
    EXPECT_NEAR(plan.objective.spoiltMeat.toGrams(), 400, tolerance);
}

TEST(WeekByHandTest, eachDrinksOnlyWhatTheyMay) {
    WeekProblem problem = emptyWeek(4);
    addDrinker(problem, 500);
    addDrinker(problem, 500);
    addPot(problem, 2000).may = {true, false};
    addPot(problem, 2000, 0, QStringLiteral("beef")).may = {false, true};
    addSlot(problem, 0);
    // One pot, 2000 mL, is one of the two for four days.
    expectStock(solved(problem), 2000, 0, 1);
    problem.freeTimes[0].pots = 2;
    expectStock(solved(problem), 0, 0, 2);
}

TEST(WeekByHandTest, nobodyMayDrink) {
    WeekProblem problem = onePot(3, 700, 2000);
    problem.pots[0].may = {false};
    // A cooking would help nobody, so there is none.
    expectStock(solved(problem), 2100, 0, 0);
}

TEST(WeekByHandTest, withoutSlotsAllIsShort) {
    WeekProblem problem = onePot(3, 700, 2000);
    problem.freeTimes.clear();
    expectStock(solved(problem), 2100, 0, 0);
}

TEST(WeekByHandTest, aPotLongerThanEverySlotIsNotCooked) {
    WeekProblem problem = onePot(3, 700, 2000);
    problem.pots[0].total = minutes(361);
    expectStock(solved(problem), 2100, 0, 0);
}

TEST(WeekByHandTest, withoutRoomOnlyWhatIsDrunkTheSameDayIsCooked) {
    // 1500 mL a day of which 1000 are drunk would have to stand somewhere.
    WeekProblem problem = onePot(2, 1000, 1500);
    problem.fridgeRoom = ml(0);
    expectStock(solved(problem), 2000, 0, 0);
    problem.pots[0].stock = ml(1000);
    expectStock(solved(problem), 0, 0, 2);
}

TEST(WeekByHandTest, stockThatNoRoomHoldsIsToldByHowMuch) {
    WeekProblem problem = emptyWeek(2);
    problem.fridgeRoom = ml(1000);
    addDrinker(problem, 400);
    addLot(problem, 2000, Place::Fridge, 5);
    // At the end of day 0 stand 1600 mL, at the end of day 1 1200.
    const WeekSolution plan = solveWeek(problem);
    EXPECT_EQ(plan.status, WeekSolution::Status::Infeasible);
    EXPECT_NEAR(plan.objective.overRoom.toMillilitres(), 800, tolerance);
    EXPECT_THAT(rules::breaches(problem, plan), IsEmpty());
}

TEST(WeekByHandTest, lessWorkComesBeforeLessMoney) {
    WeekProblem problem = onePot(1, 1000, 1000);
    addPot(problem, 1000).handsOn = minutes(119);
    problem.pots[1].cost = 99;
    WeekSolution plan = solved(problem);
    ASSERT_EQ(plan.cookings.size(), 1U);
    EXPECT_EQ(plan.cookings[0].pot, 1U);
    problem.pots[1].handsOn = minutes(120); // now as much work, and dearer
    plan = solved(problem);
    ASSERT_EQ(plan.cookings.size(), 1U);
    EXPECT_EQ(plan.cookings[0].pot, 0U);
}

TEST(WeekByHandTest, fewerCookingsComeBeforeLessWork) {
    WeekProblem problem = onePot(2, 1000, 2000);
    problem.pots[0].handsOn = minutes(600);
    addPot(problem, 1000).handsOn = minutes(10);
    // One pot of 2000 mL with ten hours of work, not two of ten minutes.
    expectStock(solved(problem), 0, 0, 1);
}

TEST(WeekByHandTest, oneAnimalNoMoreOftenThanAllowed) {
    WeekProblem problem = onePot(4, 1000, 1000);
    problem.mostCookingsPerAnimal = 3;
    expectStock(solved(problem), 1000, 0, 3);
    addPot(problem, 1000, 0, QStringLiteral("beef"));
    expectStock(solved(problem), 0, 0, 4);
}

TEST(WeekByHandTest, theSpillIsCookedForToo) {
    WeekProblem problem = onePot(1, 1000, 1050);
    problem.spill = 0.1; // 1100 mL are wanted; a second pot would help, in a second place
    expectStock(solved(problem), 50, 0, 1);
    problem.freeTimes[0].pots = 2;
    expectStock(solved(problem), 0, 0, 2);
}

TEST(WeekByHandTest, settledCookingsStayAndTheRestIsPlannedAround) {
    WeekProblem problem = onePot(4, 1000, 2000);
    problem.freeTimes.erase(problem.freeTimes.begin()); // none on day 0, and one settled there
    problem.settled = {{0, 0}};
    const WeekSolution plan = solved(problem);
    expectStock(plan, 0, 0, 2);
    ASSERT_FALSE(plan.cookings.empty());
    EXPECT_TRUE(plan.cookings[0].settled);
    // Alone it serves days 0 and 1.
    expectStock(serveSettled(problem), 2000, 0, 1);
}

TEST(WeekByHandTest, aLongSlotTakesTheLongPotAndAShortOneTheShort) {
    WeekProblem problem = emptyWeek(1);
    addDrinker(problem, 5000);
    addPot(problem, 3000).total = minutes(480);
    addPot(problem, 1000).total = minutes(200);
    addSlot(problem, 0, 200);
    addSlot(problem, 0, 480);
    // 3000 + 1000; two long ones do not fit.
    expectStock(solved(problem), 1000, 0, 2);
}

} // namespace ladlework::week
