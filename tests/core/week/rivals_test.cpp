#include "core/week/rivals/compact_week.h"
#include "core/week/rivals/every_plan.h"
#include "core/week/rivals/invented_weeks.h"

#include <gtest/gtest.h>

// The answers that the planner is held against, held against each other first.
namespace ladlework::week::rivals {
namespace {
::testing::AssertionResult same(const rules::Levels& a, const rules::Levels& b) {
    if (rules::compare(a, b) == 0)
        return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure()
           << ::testing::PrintToString(a) << " against " << ::testing::PrintToString(b);
}
} // namespace

TEST(RivalsTest, everyChoiceTriedAndBothModelsUnderGlpkAgree) {
    for (unsigned seed = 1; seed <= 300; ++seed) {
        const WeekProblem problem = samples::smallWeek(seed, 60);
        const rules::Levels best = everyPlan(problem).best;
        EXPECT_TRUE(same(best, glpkWeek(problem).objective)) << "seed " << seed;
        EXPECT_TRUE(same(best, compactWeek(problem).objective)) << "seed " << seed;
    }
}

TEST(RivalsTest, bothModelsAgreeOnFamilies) {
    for (unsigned seed = 1; seed <= 10; ++seed) {
        const WeekProblem problem = samples::familyWeek(seed, {5, 4, 4});
        EXPECT_TRUE(same(glpkWeek(problem).objective, compactWeek(problem).objective))
            << "seed " << seed;
    }
}

} // namespace ladlework::week::rivals
