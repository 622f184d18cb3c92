#include "core/week/household_week.h"
#include "core/week/week_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ladlework::week::rules {
namespace {
using namespace samples;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
} // namespace

TEST(WeekRulesTest, countsWhatSpoilsOnItsLastDayAndNotWhatIsCarriedOver) {
    const WeekProblem problem = household();
    WeekSolution plan = goodPlan();
    plan.servings.resize(10); // nobody drinks on day 4
    const Replayed seen = replay(problem, plan);
    EXPECT_THAT(seen.breaches, IsEmpty());
    // 300 mL thawed on day 2 were good to day 4; the beef thawed on day 3 is good to day 5.
    EXPECT_NEAR(seen.objective.spoilt.toMillilitres(), 300, 1e-9);
    EXPECT_NEAR(seen.objective.shortBy.toMillilitres(), 800, 1e-9);
    // What spoils at the end of a day still stands there.
    EXPECT_NEAR(seen.stores[4].fridge.toMillilitres(), 800, 1e-9);
}

TEST(WeekRulesTest, addsUpWhatTheRoomsCannotHold) {
    WeekProblem problem = household();
    problem.fridgeRoom = ml(900);  // 200 too much on day 2
    problem.freezerRoom = ml(550); // 850 on day 0, 50 on day 1
    WeekSolution plan = goodPlan();
    plan.status = WeekSolution::Status::Infeasible;
    plan.objective.overRoom = ml(1100);
    EXPECT_THAT(breaches(problem, plan), IsEmpty());
}

TEST(WeekRulesTest, drinksWhatSpoilsFirst) {
    // Of a pot that keeps one day half is frozen and back by day 1; 300 mL drunk on day 1 come from
    // the half that is good on that day alone.
    WeekProblem problem = emptyWeek(2);
    problem.fridgeDays = 1;
    addDrinker(problem, 300);
    addPot(problem, 600);
    addSlot(problem, 0);
    problem.drinkers[0].perDay[0] = ml(0);
    WeekSolution plan;
    plan.cookings = {{0, 0, false, ml(600)}};
    plan.freezing = {{0, chicken, ml(300)}};
    plan.thawing = {{0, chicken, ml(300)}}; // on the day it is frozen: allowed
    plan.servings = {{1, 0, chicken, ml(300)}};
    const Replayed seen = replay(problem, plan);
    EXPECT_THAT(seen.breaches, IsEmpty());
    EXPECT_NEAR(seen.objective.spoilt.toMillilitres(), 0, 1e-9);
    EXPECT_NEAR(seen.stores[0].freezer.toMillilitres(), 0, 1e-9);
    EXPECT_NEAR(seen.stores[1].fridge.toMillilitres(), 300, 1e-9);
}

TEST(WeekRulesTest, letsSpoilWhatThePlanSays) {
    // 200 mL thawed on day 0 and 500 on day 1; of these 500 are drunk on day 2. Which, is the
    // plan's to say: the old ones spoil on day 2, or 200 of the newer stand until day 3.
    WeekProblem problem = emptyWeek(4);
    addDrinker(problem, 0);
    problem.drinkers[0].perDay[2] = ml(500);
    addLot(problem, 700, kitchen::Lot::Place::Freezer);
    WeekSolution plan;
    plan.thawing = {{0, fridgeLot, ml(200)}, {1, fridgeLot, ml(500)}};
    plan.servings = {{2, 0, fridgeLot, ml(500)}};
    EXPECT_NEAR(replay(problem, plan).stores[3].fridge.toMillilitres(), 200, 1e-9);
    plan.spoiling = {{2, fridgeLot, ml(200), {}}};
    const Replayed seen = replay(problem, plan);
    EXPECT_THAT(seen.breaches, IsEmpty());
    EXPECT_NEAR(seen.stores[3].fridge.toMillilitres(), 0, 1e-9);
    EXPECT_NEAR(seen.objective.spoilt.toMillilitres(), 200, 1e-9);
}

TEST(WeekRulesTest, settledCookingsNeedNoSlotAndCountForTheirAnimal) {
    WeekProblem problem = household();
    problem.mostCookingsPerAnimal = 1;
    problem.settled = {{0, 0}};
    problem.freeTimes.erase(problem.freeTimes.begin());
    WeekSolution plan = goodPlan();
    plan.cookings[0].settled = true;
    EXPECT_THAT(breaches(problem, plan), IsEmpty());
    plan.cookings.push_back({2, 0, false, ml(2000)});
    EXPECT_THAT(breaches(problem, plan), Contains(HasSubstr("chicken is cooked 2 times")));
}

} // namespace ladlework::week::rules
