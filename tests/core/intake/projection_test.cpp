#include "intake/good_day_forecast.h"
#include "intake/projection.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using quantity::Volume;

const QDate firstDay(2024, 5, 1);

Ladder ladderOf(int rungs) {
    Ladder ladder;
    for (int i = 1; i <= rungs; ++i)
        ladder.rungs.append(Volume::fromMillilitres(10.0 * i));
    return ladder;
}

QList<LogDay> goodDays(int count) {
    QList<LogDay> log;
    for (int i = 0; i < count; ++i)
        log.append({firstDay.addDays(i), Volume::fromMillilitres(2000), {}, false});
    return log;
}

TEST(ProjectionTest, countsFromTheDayAfterTheLastReplayedOne) {
    const Ladder ladder = ladderOf(5);
    const QDate today = firstDay.addDays(4);
    const LadderReplay replayed = replay(ladder, goodDays(5), {}, today);
    ASSERT_EQ(replayed.rung, 1);
    ASSERT_EQ(replayed.goodDays, 2);
    // 3 rungs of 3 good days, 2 of them done: 7 to come; the first may be tomorrow.
    const GoodDayForecast forecast(7, goodDayRate(replayed));
    const std::optional<TargetDate> date = projectTargetDate(replayed, ladder, today);
    ASSERT_TRUE(date.has_value());
    EXPECT_EQ(date->p10, today.addDays(1 + *forecast.daysFor(0.1, 3650)));
    EXPECT_EQ(date->median, today.addDays(1 + *forecast.daysFor(0.5, 3650)));
    EXPECT_EQ(date->p90, today.addDays(1 + *forecast.daysFor(0.9, 3650)));
    EXPECT_LE(date->p10, date->median);
    EXPECT_LT(date->median, date->p90);
    EXPECT_GE(date->p10, today.addDays(8));
}

TEST(ProjectionTest, todayCountsWhileItIsNotReplayedYet) {
    const Ladder ladder = ladderOf(5);
    const LadderReplay replayed = replay(ladder, goodDays(5), {}, firstDay.addDays(4));
    const std::optional<TargetDate> evening =
        projectTargetDate(replayed, ladder, firstDay.addDays(4));
    const std::optional<TargetDate> morning =
        projectTargetDate(replayed, ladder, firstDay.addDays(5));
    EXPECT_EQ(evening->median, morning->median);
    EXPECT_EQ(projectTargetDate(replayed, ladder, firstDay.addDays(6))->median,
              morning->median.addDays(1));
}

TEST(ProjectionTest, waitsUntilAHoldIsOver) {
    const Ladder ladder = ladderOf(3);
    QList<LogDay> log = goodDays(2);
    log.append({firstDay.addDays(2), Volume::fromMillilitres(100), 6, false});
    const QDate today = firstDay.addDays(2);
    LadderReplay replayed = replay(ladder, log, {}, today);
    ASSERT_EQ(replayed.holdUntil, today.addDays(3));
    const std::optional<TargetDate> held = projectTargetDate(replayed, ladder, today);
    replayed.holdUntil = QDate();
    EXPECT_EQ(held->median, projectTargetDate(replayed, ladder, today)->median.addDays(3));
}

TEST(ProjectionTest, surerTheMoreIsLogged) {
    const Ladder ladder = ladderOf(60);
    const auto width = [&ladder](int days) {
        const QDate today = firstDay.addDays(days - 1);
        const LadderReplay replayed = replay(ladder, goodDays(days), {}, today);
        const std::optional<TargetDate> date = projectTargetDate(replayed, ladder, today);
        return date->p10.daysTo(date->p90);
    };
    EXPECT_GT(width(3), width(30));
    EXPECT_GT(width(30), width(90));
}

TEST(ProjectionTest, givesTheDayOnWhichTheLastRungCameIntoForce) {
    const Ladder ladder = ladderOf(2);
    const std::optional<TargetDate> tomorrow = projectTargetDate(
        replay(ladder, goodDays(3), {}, firstDay.addDays(2)), ladder, firstDay.addDays(2));
    EXPECT_EQ(tomorrow->p10, firstDay.addDays(3));
    const std::optional<TargetDate> past = projectTargetDate(
        replay(ladder, goodDays(9), {}, firstDay.addDays(8)), ladder, firstDay.addDays(8));
    EXPECT_EQ(past->p10, firstDay.addDays(3));
    EXPECT_EQ(past->p90, firstDay.addDays(3));
    const std::optional<TargetDate> unlogged =
        projectTargetDate(replay(ladderOf(1), {}, {}, firstDay), ladderOf(1), firstDay);
    EXPECT_EQ(unlogged->median, firstDay);
}

TEST(ProjectionTest, givesNothingWhenStoppedOrTooFarOut) {
    const Ladder ladder = ladderOf(3);
    QList<LogDay> log = goodDays(2);
    log.append({firstDay.addDays(2), {}, {}, true});
    EXPECT_FALSE(
        projectTargetDate(replay(ladder, log, {}, firstDay.addDays(2)), ladder, firstDay.addDays(2))
            .has_value());
    // 200 rungs of 30 good days each: over ten years.
    Ladder endless = ladderOf(200);
    endless.rules.daysToAdvance = 30;
    EXPECT_FALSE(projectTargetDate(replay(endless, goodDays(2), {}, firstDay.addDays(1)), endless,
                                   firstDay.addDays(1))
                     .has_value());
    EXPECT_FALSE(projectTargetDate(replay(ladder, {}, {}, QDate()), ladder, QDate()).has_value());
}

} // namespace
} // namespace ladlework::intake
