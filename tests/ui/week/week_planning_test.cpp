#include "ui/shared/family_workbook.h"
#include "ui/shared/week_stepper.h"
#include "ui/week/board_model.h"
#include "ui/week/board_view.h"
#include "ui/week/day_hours_bar.h"
#include "ui/week/kept_weeks.h"
#include "ui/week/plan_panel.h"
#include "ui/week/servings_model.h"
#include "ui/week/week_board.h"
#include "ui/week/week_planner.h"
#include "ui/week/week_planning.h"
#include "ui/week/week_screen.h"

#include <QAction>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>
#include <limits>
#include <memory>

namespace ladlework::ui {

namespace {

/// The week screen with a family that is free for six hours on Wednesdays, Fridays and Sundays.
class WeekPlanningTest : public ::testing::Test {
protected:
    WeekPlanningTest() { setUsual({3, 5, 7}); }
    void SetUp() override {
        m_family.attach(*m_screen);
        m_screen->resize(1136, 640);
        m_screen->show();
        m_view->setFocus();
        QCoreApplication::processEvents();
    }
    void setUsual(const QList<int>& weekdays) {
        QList<week::UsualHours> usual;
        for (const int weekday : weekdays)
            usual << week::UsualHours{weekday, {QTime(9, 0), quantity::Duration::fromHours(8), 1}};
        ASSERT_TRUE(m_family.workbook().act(QStringLiteral("Set hours"), [&](auto& action) {
            return m_family.workbook().families().setUsualHours(action, m_family.family, usual);
        }));
    }
    [[nodiscard]] week::WeekPlan stored() {
        return m_family.casebook()->plan(FamilyWorkbook::monday());
    }
    [[nodiscard]] QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }
    void planByKeys() {
        QTest::keyClick(m_screen.get(), Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    }
    [[nodiscard]] bool waitForEnd() {
        return QTest::qWaitFor([this] { return !m_screen->planning()->isBusy(); }, 60'000);
    }
    void goTo(int column) { m_view->setCurrentIndex(m_model->firstEmpty(column)); }
    static QDate day(int column) { return FamilyWorkbook::monday().addDays(column); }

    FamilyWorkbook m_family;
    std::unique_ptr<WeekScreen> m_screen =
        std::make_unique<WeekScreen>(m_family.context(), nullptr);
    BoardView* m_view = m_screen->board()->view();
    BoardModel* m_model = m_screen->board()->model();
    PlanPanel* m_panel = m_screen->planPanel();
};

} // namespace

TEST_F(WeekPlanningTest, WeekIsPlannedByKeysAsOneStep) {
    planByKeys();
    EXPECT_TRUE(m_screen->planning()->isBusy());
    EXPECT_TRUE(m_panel->isWorking());
    ASSERT_TRUE(QTest::qWaitFor([this] {
        return m_screen->planning()->proposal().has_value() || !m_screen->planning()->isBusy();
    }));
    ASSERT_TRUE(waitForEnd());
    EXPECT_FALSE(stored().placements.isEmpty());
    for (const week::Placement& placement : stored().placements)
        EXPECT_EQ(placement.start, QTime(9, 0)) << "when the free hours begin";
    EXPECT_EQ(lastSentence(), QStringLiteral("Planned the week of 2 November"));
    EXPECT_TRUE(m_panel->words().startsWith(QStringLiteral("Proven")))
        << qPrintable(m_panel->words());
    EXPECT_EQ(m_model->plan().placements, stored().placements);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(stored().placements.isEmpty()) << "one step";
    EXPECT_TRUE(m_panel->isHidden()) << "what was proven is not this week any more";
}

TEST_F(WeekPlanningTest, ProposalIsOnTheBoardAndNotStored) {
    QStringList cards;
    QObject::connect(m_screen->planning(), &WeekPlanning::proposalChanged, m_screen.get(), [&] {
        if (!m_screen->planning()->proposal())
            return;
        EXPECT_TRUE(stored().placements.isEmpty());
        const QModelIndex card = m_model->indexOf(0);
        EXPECT_TRUE(card.data(BoardModel::ProposedRole).toBool());
        cards << card.data(Qt::AccessibleTextRole).toString();
    });
    m_screen->planWeek();
    ASSERT_TRUE(waitForEnd());
    ASSERT_EQ(cards.size(), 1);
    EXPECT_TRUE(cards.first().contains(QStringLiteral("proposed")));
    EXPECT_FALSE(m_model->indexOf(0).data(BoardModel::ProposedRole).toBool());
}

TEST_F(WeekPlanningTest, PlanLockMovePlanAgain) {
    m_screen->planWeek();
    ASSERT_TRUE(waitForEnd());
    ASSERT_FALSE(stored().placements.isEmpty());
    const QDate first = stored().placements.first().day;
    const auto column = static_cast<int>(FamilyWorkbook::monday().daysTo(first));
    // Its pot is moved by keys to a day without free hours, which is locked.
    m_view->setCurrentIndex(m_model->indexOf(0));
    QTest::keyClick(m_view, Qt::Key_Right, Qt::ControlModifier);
    const week::Placement moved = stored().placements.first();
    ASSERT_EQ(moved.day, day(column + 1));
    QTest::keyClick(m_view, Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(stored().lockedDays, QList<QDate>{moved.day});
    EXPECT_TRUE(m_model->headerData(column + 1, Qt::Horizontal, BoardModel::LockedRole).toBool());
    planByKeys();
    ASSERT_TRUE(waitForEnd());
    EXPECT_TRUE(stored().placements.contains(moved)) << "the locked day is as it was";
    EXPECT_EQ(stored().lockedDays, QList<QDate>{moved.day});
    QTest::keyClick(m_view, Qt::Key_D, Qt::ControlModifier);
    EXPECT_TRUE(stored().lockedDays.isEmpty());
}

TEST_F(WeekPlanningTest, EscapeStopsAndLeavesTheWeek) {
    m_screen->putPot(m_family.chicken, day(3));
    const week::WeekPlan before = stored();
    planByKeys();
    ASSERT_TRUE(m_screen->planning()->isBusy());
    QTest::keyClick(m_view, Qt::Key_Escape);
    EXPECT_FALSE(m_screen->planning()->isBusy());
    QTest::qWait(200);
    EXPECT_EQ(stored(), before);
    EXPECT_EQ(m_model->plan().placements, before.placements);
    EXPECT_EQ(lastSentence(), QStringLiteral("Put Chicken legs on Thursday 5 November"));
    EXPECT_TRUE(m_panel->words().contains(QStringLiteral("stopped")));
}

TEST_F(WeekPlanningTest, ChangeOfTheWorkbookMakesItStale) {
    m_screen->planWeek();
    m_family.plan(FamilyWorkbook::monday(), {{day(4), m_family.beef, QTime()}});
    EXPECT_FALSE(m_screen->planning()->isBusy());
    QTest::qWait(200);
    ASSERT_EQ(stored().placements.size(), 1) << "the plan of before is not applied";
    EXPECT_EQ(stored().placements.first().day, day(4));
    EXPECT_TRUE(m_panel->words().contains(QStringLiteral("Something changed")));
}

TEST_F(WeekPlanningTest, AnotherWeekOrScreenStopsIt) {
    m_screen->planWeek();
    QTest::keyClick(m_screen.get(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_FALSE(m_screen->planning()->isBusy());
    m_screen->planWeek();
    EXPECT_TRUE(m_screen->planning()->isBusy());
    m_screen->hide();
    EXPECT_FALSE(m_screen->planning()->isBusy());
    QTest::qWait(200);
    EXPECT_TRUE(stored().placements.isEmpty());
    EXPECT_TRUE(m_family.casebook()->plan(day(7)).placements.isEmpty());
}

TEST_F(WeekPlanningTest, ScreenMayGoAwayDuringASolve) {
    m_screen->planWeek();
    m_screen.reset();
    QTest::qWait(200);
    EXPECT_TRUE(stored().placements.isEmpty());
}

TEST_F(WeekPlanningTest, FamilyWithoutFreeHoursIsTaught) {
    setUsual({});
    m_screen->planWeek();
    EXPECT_FALSE(m_screen->planning()->isBusy());
    ASSERT_EQ(m_panel->hints().size(), 1);
    EXPECT_EQ(m_panel->hints().first().screen, QStringLiteral("members"));
    goTo(4);
    QTest::keyClick(m_screen->hoursBar()->addButton(), Qt::Key_Space);
    ASSERT_EQ(stored().hours.size(), 1);
    EXPECT_EQ(stored().hours.first().day, day(4));
    EXPECT_TRUE(m_panel->isHidden());
    m_screen->planWeek();
    ASSERT_TRUE(waitForEnd());
    ASSERT_FALSE(stored().placements.isEmpty());
    EXPECT_EQ(stored().placements.first().day, day(4));
    EXPECT_FALSE(m_panel->hints().isEmpty()) << "one day is not enough";
}

TEST_F(WeekPlanningTest, HoursOfADayAreItsOwnAndUsualAgain) {
    goTo(2);
    EXPECT_EQ(m_model->headerData(2, Qt::Horizontal, BoardModel::HoursRole).toString(),
              QStringLiteral("8 h free"));
    EXPECT_EQ(m_model->headerData(3, Qt::Horizontal, BoardModel::HoursRole).toString(),
              QStringLiteral("no time"));
    EXPECT_TRUE(m_model->headerData(0, Qt::Horizontal, BoardModel::HoursRole).toString().isEmpty())
        << "Monday is over";
    QTest::keyClick(m_screen->hoursBar()->noneButton(), Qt::Key_Space);
    EXPECT_EQ(lastSentence(), QStringLiteral("No cooking on Wednesday 4 November"));
    EXPECT_EQ(m_model->headerData(2, Qt::Horizontal, BoardModel::HoursRole).toString(),
              QStringLiteral("no time"));
    QTest::keyClick(m_screen->hoursBar()->usualButton(), Qt::Key_Space);
    EXPECT_TRUE(stored().hours.isEmpty());
}

TEST_F(WeekPlanningTest, WeekThatIsOverIsNotPlanned) {
    QTest::keyClick(m_screen.get(), Qt::Key_Left, Qt::AltModifier);
    planByKeys();
    EXPECT_FALSE(m_screen->planning()->isBusy());
}

TEST_F(WeekPlanningTest, KeptWeekIsUsedButForLockedDays) {
    m_screen->putPot(m_family.beef, day(3));
    goTo(3);
    QTest::keyClick(m_view, Qt::Key_D, Qt::ControlModifier);
    week::WeekTemplate kept;
    kept.placements = {{3, m_family.chicken, QTime()}, {5, m_family.chicken, QTime()}};
    Q_EMIT m_screen->keptWeeks()->useWanted(kept);
    ASSERT_EQ(stored().placements.size(), 2);
    EXPECT_EQ(stored().placements.at(0).pot, m_family.beef);
    EXPECT_EQ(stored().placements.at(1).day, day(5));
}

TEST_F(WeekPlanningTest, DragShowsWhatWouldBecomeOfTheWeek) {
    m_screen->setPreviewLimit(std::numeric_limits<qint64>::max()); // as slow as the machine is
    m_screen->putPot(m_family.beef, day(2));
    const ServingsModel* servings = m_screen->board()->servings();
    const QModelIndex today = servings->index(0, 2);
    ASSERT_TRUE(servings->isShort(today)) << "one pot is a little too small";
    Q_EMIT m_view->dropHovered(BoardDrop{-1, m_family.beef, day(2)});
    EXPECT_FALSE(servings->isShort(today));
    EXPECT_EQ(stored().placements.size(), 1) << "nothing is dropped yet";
    Q_EMIT m_view->dropHovered(BoardDrop{0, PotId{}, day(4)});
    EXPECT_TRUE(today.data(Qt::ToolTipRole).toString().isEmpty()) << "no pot is cooked today";
    Q_EMIT m_view->dropHovered(std::nullopt);
    EXPECT_TRUE(servings->isShort(today));
    EXPECT_FALSE(today.data(Qt::ToolTipRole).toString().isEmpty());
    m_screen->setPreviewLimit(0);
    Q_EMIT m_view->dropHovered(BoardDrop{-1, m_family.beef, day(2)});
    EXPECT_TRUE(servings->isShort(today)) << "too slow to be looked at while the hand moves";
}

} // namespace ladlework::ui
