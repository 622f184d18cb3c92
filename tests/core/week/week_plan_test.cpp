#include "week/week_plan.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

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

const week::FreeHours evening{QTime(17, 0), quantity::Duration::fromHours(3), 1};

/// Every part of a week filled in.
WeekPlan fullPlan() {
    WeekPlan plan = planWith({on(0), on(5)});
    plan.lockedDays = {monday, monday.addDays(6)};
    plan.hours = {{monday.addDays(2), {evening, evening}}, {monday.addDays(3), {}}};
    plan.extras = {{QStringLiteral("two bags of rice"), week::ShopSection::Household}};
    plan.atHome = {{QStringLiteral("onion"), quantity::Mass::fromGrams(220)},
                   {QStringLiteral("salt"), quantity::Mass()}};
    plan.note = QStringLiteral("Grandmother visits");
    return plan;
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

TEST(WeekPlanTest, namesThePartAtFault) {
    struct Case {
        std::function<void(WeekPlan&)> change;
        const char* place;
    };
    const QList<Case> cases{
        {[](WeekPlan& p) { p.lockedDays[1] = monday.addDays(7); }, "lockedDays[1]"},
        {[](WeekPlan& p) { p.lockedDays[1] = QDate(); }, "lockedDays[1]"},
        {[](WeekPlan& p) { p.lockedDays[1] = monday; }, "lockedDays[1]"},
        {[](WeekPlan& p) { p.hours[0].day = monday.addDays(-1); }, "hours[0].day"},
        {[](WeekPlan& p) { p.hours[1].day = p.hours[0].day; }, "hours[1].day"},
        {[](WeekPlan& p) { p.hours[0].hours[1].pots = 0; }, "hours[0].hours[1].pots"},
        {[](WeekPlan& p) { p.hours[0].hours[0].length = {}; }, "hours[0].hours[0].length"},
        {[](WeekPlan& p) { p.extras[0].text = QStringLiteral("  "); }, "extras[0].text"},
        {[](WeekPlan& p) { p.atHome[1].item.clear(); }, "atHome[1].item"},
        {[](WeekPlan& p) { p.atHome[1].item = QStringLiteral("onion"); }, "atHome[1].item"},
        {[](WeekPlan& p) { p.atHome[0].mass = quantity::Mass::fromGrams(-1); }, "atHome[0].mass"},
        {[](WeekPlan& p) {
             p.atHome[0].mass = quantity::Mass::fromGrams(std::numeric_limits<double>::quiet_NaN());
         },
         "atHome[0].mass"},
        {[](WeekPlan& p) {
             p.atHome[0].mass = quantity::Mass::fromGrams(std::numeric_limits<double>::infinity());
         },
         "atHome[0].mass"}};
    ASSERT_TRUE(check(fullPlan()));
    for (const Case& one : cases) {
        WeekPlan plan = fullPlan();
        one.change(plan);
        const Outcome outcome = check(plan);
        ASSERT_FALSE(outcome) << one.place;
        EXPECT_EQ(outcome.error().place.toStdString(), one.place);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(outcome.error().sentence.endsWith(QLatin1Char('.')));
    }
}

TEST(WeekPlanTest, isEmptyOnlyWithoutAnyOfItsParts) {
    EXPECT_TRUE(isEmpty(planWith({})));
    WeekPlan blank = planWith({});
    blank.note = QStringLiteral(" \n");
    EXPECT_TRUE(isEmpty(blank));
    const QList<std::function<void(WeekPlan&, const WeekPlan&)>> parts{
        [](WeekPlan& p, const WeekPlan& full) { p.placements = full.placements; },
        [](WeekPlan& p, const WeekPlan& full) { p.lockedDays = full.lockedDays; },
        [](WeekPlan& p, const WeekPlan& full) { p.hours = {full.hours[1]}; }, // no cooking that day
        [](WeekPlan& p, const WeekPlan& full) { p.extras = full.extras; },
        [](WeekPlan& p, const WeekPlan& full) { p.atHome = full.atHome; },
        [](WeekPlan& p, const WeekPlan& full) {
            p.note = full.note;
        }};
    for (const auto& give : parts) {
        WeekPlan plan = planWith({});
        give(plan, fullPlan());
        EXPECT_FALSE(isEmpty(plan));
    }
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
