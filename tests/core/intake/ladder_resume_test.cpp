// A replay that goes on from an earlier one must say what the replay of the whole says.
#include "core/intake/random_ladders.h"
#include "intake/ladder_machine.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <stdexcept>

namespace ladlework::intake {
namespace {

using testing::RandomClimb;
using testing::RandomClimbs;

constexpr int climbCount = 150;

/// What is left of a climb after a day.
RandomClimb after(const RandomClimb& climb, QDate day) {
    RandomClimb rest = climb;
    rest.log.removeIf([day](const LogDay& entry) { return entry.day <= day; });
    rest.decisions.removeIf([day](const Decision& decision) { return decision.day <= day; });
    return rest;
}

::testing::AssertionResult goesOnAsWhole(const LadderReplay& part, const LadderReplay& rest,
                                         const LadderReplay& whole) {
    const bool same = part.days + rest.days == whole.days && rest.end == whole.end &&
                      rest.state == whole.state && rest.rung == whole.rung &&
                      rest.goodDays == whole.goodDays && rest.daysAtTarget == whole.daysAtTarget &&
                      rest.holdUntil == whole.holdUntil;
    return same ? ::testing::AssertionSuccess()
                : ::testing::AssertionFailure()
                      << "cut after " << part.end.day.toString(Qt::ISODate).toStdString();
}

class LadderResumeTest : public ::testing::TestWithParam<bool> {
protected:
    /// The first day of a ladder counts only for one that begins stopped.
    static RandomClimb next(RandomClimbs& climbs) {
        RandomClimb climb = climbs.next();
        if (GetParam())
            climb.ladder.from = climb.log.first().day.addDays(climbs.below(5) - 3);
        return climb;
    }
};

TEST_P(LadderResumeTest, atEveryCutTheRestGivesTheWhole) {
    RandomClimbs climbs(21);
    int stoppedAtCut = 0;
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = next(climbs);
        const LadderReplay whole =
            replay(climb.ladder, climb.log, climb.decisions, climb.today, {GetParam()});
        for (QDate cut = climb.log.first().day.addDays(-5); cut <= climb.today;
             cut = cut.addDays(1)) {
            const LadderReplay part =
                replay(climb.ladder, climb.log, climb.decisions, cut, {GetParam()});
            const RandomClimb rest = after(climb, cut);
            ASSERT_TRUE(goesOnAsWhole(
                part,
                replay(rest.ladder, rest.log, rest.decisions, rest.today, {GetParam(), part.end}),
                whole));
            // What lies behind the cut is not looked at again.
            ASSERT_TRUE(goesOnAsWhole(part,
                                      replay(climb.ladder, climb.log, climb.decisions, climb.today,
                                             {GetParam(), part.end}),
                                      whole));
            stoppedAtCut += part.state == LadderState::Stopped ? 1 : 0;
        }
    }
    EXPECT_GT(stoppedAtCut, climbCount);
}

TEST_P(LadderResumeTest, theEndTellsTheDaysThatMatter) {
    RandomClimbs climbs(22);
    int ups = 0;
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = next(climbs);
        const LadderReplay replayed =
            replay(climb.ladder, climb.log, climb.decisions, climb.today, {GetParam()});
        std::optional<LadderDay> stop;
        QDate up;
        for (qsizetype d = 0; d < replayed.days.size(); ++d) {
            const LadderDay& day = replayed.days[d];
            if (day.decision != LadderDecision::Stop)
                stop.reset();
            else if (day.rule != 1)
                stop = day;
            if (d > 0 && day.rung > replayed.days[d - 1].rung)
                up = day.day;
        }
        ASSERT_EQ(replayed.end.stop, stop);
        ASSERT_EQ(replayed.end.steppedUp, up);
        ASSERT_EQ(replayed.end.firstDay, replayed.days.first().day);
        ASSERT_EQ(replayed.end.day, climb.today);
        ASSERT_EQ(replayed.end.rungOfDay, replayed.days.last().rung);
        ups += up.isValid() ? 1 : 0;
    }
    EXPECT_GT(ups, climbCount / 2);
}

TEST_P(LadderResumeTest, aRungThatTheLadderDoesNotHaveIsRefused) {
    const RandomClimb climb = RandomClimbs(23).next();
    ClimbState state;
    for (const qsizetype rung : {qsizetype{-1}, climb.ladder.rungs.size()}) {
        state.rung = static_cast<int>(rung);
        EXPECT_THROW(
            replay(climb.ladder, climb.log, climb.decisions, climb.today, {GetParam(), state}),
            std::invalid_argument);
    }
}

INSTANTIATE_TEST_SUITE_P(BegunStopped, LadderResumeTest, ::testing::Bool());

} // namespace
} // namespace ladlework::intake
