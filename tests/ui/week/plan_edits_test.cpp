#include "ui/week/plan_edits.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

const QDate monday(2026, 11, 2);
constexpr PotId legs{1};
constexpr PotId shank{2};

class PlanEditsTest : public ::testing::Test {
protected:
    PlanEditsTest() {
        m_plan.start = monday;
        m_plan.placements = {week::Placement{monday, legs, QTime(9, 0)},
                             week::Placement{monday, shank, QTime()},
                             week::Placement{monday.addDays(3), legs, QTime(14, 0)}};
    }
    week::WeekPlan m_plan;
};

} // namespace

TEST_F(PlanEditsTest, PutAddsAtTheEndWithTheStartOfTheSamePot) {
    const week::WeekPlan plan = withPot(m_plan, legs, monday.addDays(5));
    ASSERT_EQ(plan.placements.size(), 4);
    EXPECT_EQ(plan.placements.last(), (week::Placement{monday.addDays(5), legs, QTime(14, 0)}));
    EXPECT_FALSE(withPot(m_plan, shank, monday).placements.last().start.isValid());
}

TEST_F(PlanEditsTest, WhatIsAtHomeStandsOnceAndNothingTakesItAway) {
    using quantity::Mass;
    const QString onion = QStringLiteral("onion");
    m_plan = withAtHome(m_plan, onion, Mass::fromGrams(100));
    m_plan = withAtHome(m_plan, QStringLiteral("salt"), Mass::fromGrams(5));
    m_plan = withAtHome(m_plan, onion, Mass::fromGrams(300));
    ASSERT_EQ(m_plan.atHome.size(), 2);
    EXPECT_EQ(m_plan.atHome.last(), (week::AtHome{onion, Mass::fromGrams(300)}));
    m_plan = withAtHome(m_plan, onion, {});
    ASSERT_EQ(m_plan.atHome.size(), 1);
    EXPECT_EQ(m_plan.atHome.first().item, QStringLiteral("salt"));
}

TEST_F(PlanEditsTest, AnExtraComesAtTheEndAndOneOfTwoAlikeGoes) {
    const week::HouseholdExtra rice{QStringLiteral("rice"), week::ShopSection::Dry};
    const week::HouseholdExtra soap{QStringLiteral("soap"), week::ShopSection::Household};
    m_plan = withExtra(withExtra(withExtra(m_plan, rice), soap), rice);
    EXPECT_EQ(m_plan.extras, (QList{rice, soap, rice}));
    m_plan = withoutExtra(m_plan, rice);
    EXPECT_EQ(m_plan.extras, (QList{rice, soap}));
    EXPECT_EQ(withoutExtra(m_plan, {QStringLiteral("tea"), week::ShopSection::Dry}), m_plan);
}

TEST_F(PlanEditsTest, MoveRemoveAndStartTouchOnePlacement) {
    const QDate sunday = monday.addDays(6);
    EXPECT_EQ(withMove(m_plan, 1, sunday).placements.at(1),
              (week::Placement{sunday, shank, QTime()}));
    EXPECT_EQ(withStart(m_plan, 1, QTime(8, 0)).placements.at(1),
              (week::Placement{monday, shank, QTime(8, 0)}));
    const week::WeekPlan fewer = withoutPlacement(m_plan, 0);
    ASSERT_EQ(fewer.placements.size(), 2);
    EXPECT_EQ(fewer.placements.first(), m_plan.placements.at(1));
}

TEST_F(PlanEditsTest, PlacesThatAreNotThereChangeNothing) {
    for (const qsizetype place : {qsizetype{-1}, qsizetype{3}, qsizetype{1000}}) {
        EXPECT_EQ(withMove(m_plan, place, monday).placements, m_plan.placements);
        EXPECT_EQ(withoutPlacement(m_plan, place).placements, m_plan.placements);
        EXPECT_EQ(withStart(m_plan, place, QTime(1, 0)).placements, m_plan.placements);
    }
}

TEST_F(PlanEditsTest, CopyKeepsTheWeekdays) {
    week::WeekPlan next;
    next.start = monday.addDays(7);
    next.placements = {week::Placement{next.start, shank, QTime()}};
    const week::WeekPlan copied = withCopyOf(next, m_plan);
    ASSERT_EQ(copied.placements.size(), 3) << "in place of what stood there";
    EXPECT_EQ(copied.start, next.start);
    for (qsizetype i = 0; i < 3; ++i)
        EXPECT_EQ(copied.placements.at(i).day, m_plan.placements.at(i).day.addDays(7));
    EXPECT_TRUE(week::check(copied));
}

TEST_F(PlanEditsTest, CopyCarriesTheExtrasAndLeavesLockedDays) {
    m_plan.extras = {{QStringLiteral("rice")}, {QStringLiteral("soap")}};
    week::WeekPlan next;
    next.start = monday.addDays(7);
    next.extras = {{QStringLiteral("soap")}};
    next.placements = {week::Placement{next.start, shank, QTime()},
                       week::Placement{next.start.addDays(1), shank, QTime()}};
    next.lockedDays = {next.start};
    const week::WeekPlan copied = withCopyOf(next, m_plan);
    ASSERT_EQ(copied.placements.size(), 2);
    EXPECT_EQ(copied.placements.first(), next.placements.first()) << "locked";
    EXPECT_EQ(copied.placements.last().day, next.start.addDays(3));
    ASSERT_EQ(copied.extras.size(), 2) << "soap is not there twice";
}

TEST_F(PlanEditsTest, KeptWeekComesBackOnTheSameWeekdays) {
    const week::WeekTemplate kept = keptFrom(m_plan, QStringLiteral("School"));
    EXPECT_EQ(kept.name, QStringLiteral("School"));
    week::WeekPlan next;
    next.start = monday.addDays(14);
    const week::WeekPlan used = withKept(next, kept);
    ASSERT_EQ(used.placements.size(), 3);
    for (qsizetype i = 0; i < 3; ++i)
        EXPECT_EQ(used.placements.at(i).day, m_plan.placements.at(i).day.addDays(14));
}

TEST_F(PlanEditsTest, LocksAndHoursStandOnceADay) {
    const QDate sunday = monday.addDays(6);
    week::WeekPlan plan = withLock(withLock(m_plan, sunday, true), sunday, true);
    EXPECT_EQ(plan.lockedDays, QList<QDate>{sunday});
    EXPECT_TRUE(withLock(plan, sunday, false).lockedDays.isEmpty());
    plan = withHours(withHours(m_plan, sunday, {}), sunday,
                     {{QTime(9, 0), quantity::Duration::fromHours(3), 1}});
    EXPECT_EQ(plan.hours.size(), 1);
    EXPECT_TRUE(hasOwnHours(plan, sunday));
    EXPECT_FALSE(hasOwnHours(withUsualHours(plan, sunday), sunday));
}

TEST_F(PlanEditsTest, DayIsInTheOrderOfTheClock) {
    m_plan.placements << week::Placement{monday, legs, QTime(7, 0)};
    EXPECT_EQ(placementsOn(m_plan, monday), (QList<qsizetype>{3, 0, 1}));
    EXPECT_TRUE(placementsOn(m_plan, monday.addDays(1)).isEmpty());
}

} // namespace ladlework::ui
