// What must hold for every log whatever it says, over climbs drawn from fixed seeds.
#include "core/intake/random_ladders.h"
#include "intake/ladder_machine.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using testing::RandomClimb;
using testing::RandomClimbs;

constexpr int climbCount = 400;

LadderReplay replayOf(const RandomClimb& climb) {
    return replay(climb.ladder, climb.log, climb.decisions, climb.today);
}

bool sameDay(const LadderDay& a, const LadderDay& b) {
    return a.day == b.day && a.rung == b.rung && a.asked == b.asked && a.decision == b.decision &&
           a.rule == b.rule && a.goodDays == b.goodDays;
}

bool same(const LadderReplay& a, const LadderReplay& b) {
    return std::ranges::equal(a.days, b.days, sameDay) && a.state == b.state && a.rung == b.rung &&
           a.goodDays == b.goodDays && a.daysAtTarget == b.daysAtTarget &&
           a.holdUntil == b.holdUntil;
}

int worstOn(const RandomClimb& climb, QDate day) {
    int worst = 0;
    for (const LogDay& entry : climb.log)
        if (entry.day == day)
            worst = std::max({worst, entry.worstReaction.value_or(0), entry.redFlag ? 10 : 0});
    return worst;
}

bool hasDecision(const RandomClimb& climb, QDate day) {
    return std::ranges::any_of(climb.decisions, [day](const Decision& d) { return d.day == day; });
}

/// The rung of the morning after each day; the last one is the rung of tomorrow.
int rungAfter(const LadderReplay& replayed, qsizetype index) {
    return index + 1 < replayed.days.size() ? replayed.days[index + 1].rung : replayed.rung;
}

TEST(LadderPropertyTest, everyCalendarDayIsDecidedOnce) {
    RandomClimbs climbs(1);
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = climbs.next();
        const LadderReplay replayed = replayOf(climb);
        QDate day = climb.log.first().day;
        ASSERT_EQ(replayed.days.size(), day.daysTo(climb.today) + 1);
        for (const LadderDay& lived : replayed.days) {
            ASSERT_EQ(lived.day, day);
            ASSERT_GE(lived.rule, 1);
            ASSERT_LE(lived.rule, 8);
            day = day.addDays(1);
        }
    }
}

TEST(LadderPropertyTest, neverAsksForMoreThanTheTarget) {
    RandomClimbs climbs(2);
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = climbs.next();
        const LadderReplay replayed = replayOf(climb);
        for (const LadderDay& day : replayed.days)
            ASSERT_LE(day.asked, climb.ladder.rungs.last());
        ASSERT_LT(replayed.rung, climb.ladder.rungs.size());
        ASSERT_GE(replayed.rung, 0);
    }
}

TEST(LadderPropertyTest, neverGoesUpMoreThanOneRungNorAfterAModerateReaction) {
    RandomClimbs climbs(3);
    int ups = 0;
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = climbs.next();
        const LadderReplay replayed = replayOf(climb);
        for (qsizetype d = 0; d < replayed.days.size(); ++d) {
            const LadderDay& day = replayed.days[d];
            const bool resumed =
                day.decision == LadderDecision::Stop && hasDecision(climb, day.day.addDays(1));
            if (resumed)
                continue;
            const int up = rungAfter(replayed, d) - day.rung;
            ASSERT_LE(up, 1);
            ASSERT_EQ(up == 1, day.decision == LadderDecision::Advance);
            ups += up == 1 ? 1 : 0;
            if (worstOn(climb, day.day) > climb.ladder.rules.mildTo) {
                ASSERT_LE(up, 0);
                ASSERT_EQ(day.goodDays == 0 || day.decision == LadderDecision::Stop, true);
            }
        }
    }
    EXPECT_GT(ups, climbCount); // the climbs do climb
}

TEST(LadderPropertyTest, aStopStandsUntilItsDecision) {
    RandomClimbs climbs(4);
    int stops = 0;
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = climbs.next();
        const LadderReplay replayed = replayOf(climb);
        for (qsizetype d = 0; d + 1 < replayed.days.size(); ++d) {
            if (replayed.days[d].decision != LadderDecision::Stop)
                continue;
            ++stops;
            const LadderDay& next = replayed.days[d + 1];
            ASSERT_TRUE(hasDecision(climb, next.day) ||
                        (next.decision == LadderDecision::Stop && next.rule == 1 &&
                         next.rung == replayed.days[d].rung));
        }
        const bool redOrWorse =
            std::ranges::any_of(climb.log, [](const LogDay& day) { return day.redFlag; });
        const bool stopped = std::ranges::any_of(replayed.days, [](const LadderDay& day) {
            return day.decision == LadderDecision::Stop;
        });
        ASSERT_TRUE(stopped || !redOrWorse);
    }
    EXPECT_GT(stops, climbCount);
}

TEST(LadderPropertyTest, theOrderOfEntryDoesNotMatter) {
    RandomClimbs climbs(5);
    for (int i = 0; i < climbCount; ++i) {
        RandomClimb climb = climbs.next();
        const LadderReplay before = replayOf(climb);
        std::shuffle(climb.log.begin(), climb.log.end(), climbs.engine());
        std::shuffle(climb.decisions.begin(), climb.decisions.end(), climbs.engine());
        ASSERT_TRUE(same(before, replayOf(climb)));
    }
}

TEST(LadderPropertyTest, theSameLogGivesTheSameClimb) {
    RandomClimbs once(6);
    RandomClimbs again(6);
    for (int i = 0; i < climbCount; ++i)
        ASSERT_TRUE(same(replayOf(once.next()), replayOf(again.next())));
}

TEST(LadderPropertyTest, aCorrectedEntryReplaysTheRestAndLeavesWhatWentBefore) {
    RandomClimbs climbs(7);
    int changed = 0;
    for (int i = 0; i < climbCount; ++i) {
        RandomClimb climb = climbs.next();
        const LadderReplay before = replayOf(climb);
        LogDay& entry = climb.log[climbs.below(static_cast<int>(climb.log.size()))];
        const QDate corrected = entry.day;
        entry.worstReaction = entry.worstReaction.value_or(0) > climb.ladder.rules.mildTo
                                  ? 0
                                  : climb.ladder.rules.moderateTo + 1;
        const LadderReplay after = replayOf(climb);
        ASSERT_EQ(before.days.size(), after.days.size());
        for (qsizetype d = 0; d < before.days.size(); ++d) {
            if (before.days[d].day < corrected) {
                ASSERT_TRUE(sameDay(before.days[d], after.days[d]));
            } else if (!sameDay(before.days[d], after.days[d])) {
                ++changed;
                break;
            }
        }
    }
    EXPECT_GT(changed, climbCount / 2);
}

TEST(LadderPropertyTest, aDayIsDecidedByWhatWentBeforeItAlone) {
    RandomClimbs climbs(8);
    for (int i = 0; i < climbCount; ++i) {
        const RandomClimb climb = climbs.next();
        const LadderReplay whole = replayOf(climb);
        const QDate cut =
            climb.log.first().day.addDays(climbs.below(static_cast<int>(whole.days.size())));
        const LadderReplay part = replay(climb.ladder, climb.log, climb.decisions, cut);
        for (qsizetype d = 0; d < part.days.size(); ++d)
            ASSERT_TRUE(sameDay(whole.days[d], part.days[d]));
        if (part.days.size() < whole.days.size() && part.state != LadderState::Stopped) {
            ASSERT_EQ(part.rung, whole.days[part.days.size()].rung);
        }
    }
}

} // namespace
} // namespace ladlework::intake
