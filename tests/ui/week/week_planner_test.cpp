#include "ui/week/week_planner.h"

#include "ui/week/small_week.h"

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>
#include <memory>

namespace ladlework::ui {

namespace {

class WeekPlannerTest : public ::testing::Test {
protected:
    WeekPlannerTest() {
        QObject::connect(&m_planner, &WeekPlanner::first, &m_planner,
                         [this](const week::WeekSolution& plan) { m_first.push_back(plan); });
        QObject::connect(&m_planner, &WeekPlanner::solved, &m_planner,
                         [this](const week::WeekSolution& plan) { m_solved.push_back(plan); });
        QObject::connect(&m_planner, &WeekPlanner::waysFound, &m_planner,
                         [this](const std::vector<week::WayOut>& ways) { m_ways = ways; });
        QObject::connect(&m_planner, &WeekPlanner::cancelled, &m_planner,
                         [this] { ++m_cancelled; });
        QObject::connect(&m_planner, &WeekPlanner::progress, &m_planner,
                         [this](const week::SolveProgress& told) { m_told.push_back(told); });
    }
    static constexpr int patience = 60'000;

    std::vector<week::WeekSolution> m_first;
    std::vector<week::WeekSolution> m_solved;
    std::vector<week::WayOut> m_ways;
    std::vector<week::SolveProgress> m_told;
    int m_cancelled = 0;
    WeekPlanner m_planner;
};

} // namespace

TEST_F(WeekPlannerTest, FirstTheQuickPlanThenTheBest) {
    m_planner.start(smallWeek());
    EXPECT_TRUE(m_planner.isBusy());
    EXPECT_TRUE(m_first.empty()) << "nothing is solved while the caller waits";
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_planner.isBusy(); }, patience));
    ASSERT_EQ(m_solved.size(), 1U);
    ASSERT_EQ(m_first.size(), 1U);
    // 14 cups are wanted and a pot makes 8, of which all keep for four days: two are enough.
    EXPECT_EQ(m_solved.front().objective.cookings, 2);
    EXPECT_EQ(m_solved.front().status, week::WeekSolution::Status::Optimal);
    EXPECT_EQ(m_solved.front().gap, 0);
    EXPECT_TRUE(m_ways.empty());
    EXPECT_FALSE(m_told.empty());
    EXPECT_EQ(m_cancelled, 0);
}

TEST_F(WeekPlannerTest, ShortWeekComesWithWaysOut) {
    casebook::WeekAhead ahead = smallWeek();
    ahead.problem.freeTimes.resize(1);
    m_planner.start(ahead);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_planner.isBusy(); }, patience));
    ASSERT_EQ(m_solved.size(), 1U);
    EXPECT_GT(m_solved.front().objective.shortBy, quantity::Volume());
    EXPECT_FALSE(m_ways.empty());
}

TEST_F(WeekPlannerTest, CancelTellsAtOnceAndNothingFollows) {
    m_planner.start(longWeek());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_first.empty(); }, patience));
    m_planner.cancel();
    EXPECT_EQ(m_cancelled, 1);
    EXPECT_FALSE(m_planner.isBusy());
    const std::size_t told = m_told.size();
    QTest::qWait(400);
    EXPECT_TRUE(m_solved.empty());
    EXPECT_TRUE(m_ways.empty());
    EXPECT_EQ(m_told.size(), told);
    m_planner.cancel();
    EXPECT_EQ(m_cancelled, 1) << "there is nothing to give up";
}

TEST_F(WeekPlannerTest, NewStartDropsTheOneUnderWay) {
    m_planner.start(longWeek());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_first.empty(); }, patience));
    m_planner.start(longWeek());
    m_planner.start(smallWeek());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_solved.empty(); }, patience));
    QTest::qWait(100);
    ASSERT_EQ(m_solved.size(), 1U);
    EXPECT_EQ(m_solved.front().objective.cookings, 2) << "the small week's answer";
    EXPECT_EQ(m_first.size(), 2U) << "the week in between was never begun";
}

TEST_F(WeekPlannerTest, CutShortItSaysHowFar) {
    m_planner.setLimit(0.2);
    m_planner.start(longWeek());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_solved.empty(); }, patience));
    EXPECT_FALSE(m_solved.front().cookings.empty());
    EXPECT_NE(m_solved.front().status, week::WeekSolution::Status::Optimal)
        << "a fifth of a second is too little for this week";
    EXPECT_GT(m_solved.front().gap, 0);
}

TEST_F(WeekPlannerTest, GoingAwayDuringASolveIsClean) {
    for (const int wait : {0, 5, 50, 300}) {
        auto planner = std::make_unique<WeekPlanner>();
        bool told = false;
        QObject::connect(planner.get(), &WeekPlanner::solved, planner.get(),
                         [&told] { told = true; });
        planner->start(longWeek());
        QTest::qWait(wait);
        QElapsedTimer took;
        took.start();
        planner.reset();
        EXPECT_LT(took.elapsed(), 10'000) << "the solver is asked to stop, not waited out";
        QCoreApplication::processEvents();
        EXPECT_FALSE(told);
    }
}

} // namespace ladlework::ui
