#include "core/week/rivals/compact_week.h"
#include "core/week/rivals/every_plan.h"
#include "core/week/rivals/invented_weeks.h"
#include "core/week/week_rules.h"
#include "week/week_solver.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

// The planner against answers that know nothing of it, and its plans acted out by the rules.
namespace ladlework::week {
namespace {
using rules::Levels;
using ::testing::IsEmpty;

constexpr double roomTolerance = 0.01;

::testing::AssertionResult same(const Levels& planned, const Levels& rival) {
    if (rules::compare(planned, rival) == 0)
        return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure() << "planned " << ::testing::PrintToString(planned)
                                         << ", rival " << ::testing::PrintToString(rival);
}

int mostOfOneAnimal(const WeekProblem& problem, const WeekSolution& plan) {
    std::map<QString, int> counts;
    int most = 0;
    for (const PlannedCooking& cooking : plan.cookings)
        most = std::max(most, ++counts[problem.pots[cooking.pot].animal]);
    return most;
}

void expectProven(const WeekProblem& problem, const WeekSolution& plan, const Levels& rival) {
    EXPECT_THAT(rules::breaches(problem, plan), IsEmpty());
    EXPECT_TRUE(same(rules::levelsOf(plan.objective), rival));
    const bool fits = rival[0] < roomTolerance;
    EXPECT_EQ(plan.status, fits ? WeekSolution::Status::Optimal : WeekSolution::Status::Infeasible);
    EXPECT_EQ(plan.gap, 0);
}

/// The plan at once keeps the rules and is never better than the best.
void expectNoWonder(const WeekProblem& problem, const Levels& best) {
    const WeekSolution greedy = greedyWeek(problem);
    EXPECT_THAT(rules::breaches(problem, greedy), IsEmpty()) << "of the greedy plan";
    EXPECT_NE(greedy.status, WeekSolution::Status::Optimal);
    EXPECT_GE(rules::compare(rules::levelsOf(greedy.objective), best), 0)
        << ::testing::PrintToString(rules::levelsOf(greedy.objective)) << " is better than "
        << ::testing::PrintToString(best);
}
} // namespace

TEST(WeekProofTest, everyChoiceTriedFindsNothingBetterOnSmallWeeks) {
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE(seed);
        const WeekProblem problem = samples::smallWeek(seed, 60);
        ASSERT_TRUE(check(problem)) << toLine(check(problem).error()).toStdString();
        const rivals::EveryPlan every = rivals::everyPlan(problem);
        const WeekSolution plan = solveWeek(problem);
        expectProven(problem, plan, every.best);
        if (problem.spreadAnimals) {
            EXPECT_EQ(mostOfOneAnimal(problem, plan), every.fewestOfOneAnimal);
        }
        expectNoWonder(problem, every.best);
    }
}

TEST(WeekProofTest, settledCookingsAloneAreServedAsWellAsCanBe) {
    for (unsigned seed = 1001; seed <= 1100; ++seed) {
        SCOPED_TRACE(seed);
        WeekProblem problem = samples::smallWeek(seed, 60);
        problem.settled.push_back({static_cast<int>(seed) % problem.days, 0});
        // By the letter stock may pass through a freezer without room within a day, which in rooms
        // that are too full only throws it away sooner; the planner does not say so to a family.
        problem.freezerRoom = std::max(problem.freezerRoom, quantity::Volume::fromMillilitres(50));
        WeekProblem withoutSlots = problem;
        withoutSlots.freeTimes.clear();
        const WeekSolution plan = serveSettled(problem);
        EXPECT_THAT(rules::breaches(withoutSlots, plan), IsEmpty());
        EXPECT_TRUE(same(rules::levelsOf(plan.objective), rivals::settledAlone(problem)));
    }
}

TEST(WeekProofTest, glpkFindsNothingBetterForFamilies) {
    for (unsigned seed = 1; seed <= 24; ++seed) {
        SCOPED_TRACE(seed);
        const WeekProblem problem =
            samples::familyWeek(seed, {7, 3 + static_cast<int>(seed % 4), 4});
        const Levels rival = rivals::compactWeek(problem).objective;
        const WeekSolution plan = solveWeek(problem);
        expectProven(problem, plan, rival);
        expectNoWonder(problem, rival);
    }
}

} // namespace ladlework::week
