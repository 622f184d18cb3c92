#include "week/week_plan.h"

#include <gtest/gtest.h>

using namespace ladlework;
using week::check;
using week::Placement;
using week::WeekPlan;

namespace {
const QDate monday(2026, 11, 2); // a Monday by the calendar

WeekPlan planWith(const QList<Placement>& placements) {
    WeekPlan plan;
    plan.start = monday;
    plan.placements = placements;
    return plan;
}

Placement on(int day) {
    return {monday.addDays(day), PotId{1}, {}};
}
} // namespace

TEST(WeekPlanTest, acceptsCookingsOnEachOfTheSevenDays) {
    QList<Placement> placements;
    for (int day = 0; day < week::daysAWeek; ++day)
        placements.append(on(day));
    EXPECT_TRUE(check(planWith(placements)));
    EXPECT_TRUE(check(planWith({})));
}

TEST(WeekPlanTest, refusesCookingsOutsideTheWeekAndNamesThem) {
    for (const Placement& outside : {on(-1), on(7), Placement{QDate(), PotId{1}, {}}}) {
        const Outcome outcome = check(planWith({on(0), outside}));
        ASSERT_FALSE(outcome);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(outcome.error().place, QStringLiteral("placements[1].day"));
    }
}

TEST(WeekPlanTest, allowsSixCookingsADayAndNoMore) {
    QList<Placement> placements(6, on(3));
    EXPECT_TRUE(check(planWith(placements)));
    placements.append(on(3));
    const Outcome outcome = check(planWith(placements));
    ASSERT_FALSE(outcome);
    EXPECT_TRUE(outcome.error().sentence.contains(QStringLiteral("Thursday")));
}

TEST(WeekPlanTest, needsAValidStart) {
    const Outcome outcome = check(WeekPlan());
    ASSERT_FALSE(outcome);
    EXPECT_EQ(outcome.error().place, QStringLiteral("start"));
}

TEST(WeekPlanTest, weekStartIsTheMondayOnOrBefore) {
    // ISO 8601: weeks start on Monday; 29 February 2024 was a Thursday, 1 January 2027 a Friday.
    EXPECT_EQ(week::weekStart(monday), monday);
    EXPECT_EQ(week::weekStart(QDate(2026, 11, 8)), monday);
    EXPECT_EQ(week::weekStart(QDate(2024, 2, 29)), QDate(2024, 2, 26));
    EXPECT_EQ(week::weekStart(QDate(2027, 1, 1)), QDate(2026, 12, 28));
    EXPECT_FALSE(week::weekStart(QDate()).isValid());
}
