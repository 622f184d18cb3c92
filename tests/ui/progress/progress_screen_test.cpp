#include "ui/progress/progress_screen.h"

#include "ui/progress/climb_chart.h"
#include "ui/progress/climbing_family.h"
#include "ui/shared/by_name.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/text_field.h"

#include <QAction>
#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabBar>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class ProgressScreenTest : public ::testing::Test {
protected:
    ProgressScreenTest() : m_screen(m_family.workbook.context(), nullptr) {
        m_family.workbook.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        m_tabs = byName<QTabBar>(m_screen, QStringLiteral("Members"));
        m_chart = m_screen.findChild<ClimbChart*>();
        QCoreApplication::processEvents();
    }
    void goTo(const QString& name) {
        for (int tab = 0; tab < m_tabs->count(); ++tab)
            if (m_tabs->tabText(tab) == name)
                m_tabs->setCurrentIndex(tab);
        ASSERT_EQ(m_tabs->tabText(m_tabs->currentIndex()), name);
    }
    [[nodiscard]] QTableView* table() const {
        return byName<QTableView>(m_screen, QStringLiteral("Days of the climb, latest first"));
    }
    [[nodiscard]] TextField* reason() const {
        return byName<TextField>(m_screen, QStringLiteral("Reason for going on"));
    }
    [[nodiscard]] QString lastSentence() {
        return m_family.workbook.workbook().history().nextUndo()->sentence;
    }

    ClimbingFamily m_family;
    ProgressScreen m_screen;
    QTabBar* m_tabs = nullptr;
    ClimbChart* m_chart = nullptr;
};

} // namespace

TEST_F(ProgressScreenTest, StepsThroughEveryMember) {
    ASSERT_EQ(m_tabs->count(), 4);
    QSet<QString> seen;
    for (int i = 0; i < 4; ++i) {
        seen.insert(m_tabs->tabText(m_tabs->currentIndex()));
        EXPECT_TRUE(m_chart->isVisible());
        QTest::keyClick(&m_screen, Qt::Key_PageDown, Qt::AltModifier);
    }
    EXPECT_EQ(seen.size(), 4);
}

TEST_F(ProgressScreenTest, KeysMoveTheDayAndTheTableFollows) {
    goTo(QStringLiteral("Gil Hale"));
    m_chart->setFocus();
    const QDate end = m_chart->day();
    EXPECT_EQ(end, QDate(2026, 11, 3));
    QTest::keyClick(m_chart, Qt::Key_Left);
    EXPECT_EQ(m_chart->day(), end.addDays(-1));
    EXPECT_EQ(table()->currentIndex().row(), 1);
    QTest::keyClick(m_chart, Qt::Key_PageUp);
    EXPECT_EQ(m_chart->day(), end.addDays(-8));
    QTest::keyClick(m_chart, Qt::Key_Home);
    EXPECT_EQ(m_chart->day(), QDate(2026, 10, 1));
    QTest::keyClick(m_chart, Qt::Key_Left);
    EXPECT_EQ(m_chart->day(), QDate(2026, 10, 1)) << "the ladder begins there";
    EXPECT_TRUE(m_chart->accessibleDescription().contains(QStringLiteral("Oct 1")));
    QTest::keyClick(m_chart, Qt::Key_End);
    EXPECT_EQ(m_chart->day(), end);
    table()->setFocus();
    table()->selectRow(5);
    EXPECT_EQ(m_chart->day(), end.addDays(-5));
}

TEST_F(ProgressScreenTest, StoppedLadderGoesOnByARecordedDecision) {
    goTo(QStringLiteral("Gil Hale"));
    EXPECT_TRUE(reason()->isVisible());
    EXPECT_EQ(worstOf(m_screen.findings()), Finding::Severity::Stop);
    auto* rung = byName<QComboBox>(m_screen, QStringLiteral("Rung to go on from"));
    EXPECT_EQ(rung->currentIndex(), 0) << "the lowest rung";
    m_screen.showField(QStringLiteral("decision"));
    EXPECT_TRUE(rung->hasFocus());
    QTest::keyClicks(reason(), QStringLiteral("Dr Imura agreed on the phone"));
    QTest::keyClick(reason(), Qt::Key_Return);
    EXPECT_EQ(lastSentence(), QStringLiteral("Let Gil Hale's ladder go on from ¼ cup"));
    EXPECT_NE(m_family.standing().replay.state, intake::LadderState::Stopped);
    EXPECT_FALSE(reason()->isVisible());
    ASSERT_TRUE(m_family.workbook.workbook().undo());
    EXPECT_TRUE(reason()->isVisible());
    EXPECT_TRUE(reason()->text().isEmpty());
}

TEST_F(ProgressScreenTest, AStopOfTodayGoesOnTomorrow) {
    goTo(QStringLiteral("Gil Hale"));
    auto* rung = byName<QComboBox>(m_screen, QStringLiteral("Rung to go on from"));
    const auto decide = [&](int at, const QString& why) {
        rung->setCurrentIndex(at);
        reason()->setFocus();
        QTest::keyClicks(reason(), why);
        QTest::keyClick(reason(), Qt::Key_Return);
    };
    decide(1, QStringLiteral("asked"));
    ASSERT_FALSE(reason()->isVisible());
    intake::Reaction reaction;
    reaction.member = m_family.gil;
    reaction.day = FamilyWorkbook::today();
    reaction.symptom = QStringLiteral("odd");
    reaction.strength = 10;
    reaction.redFlag = true;
    store::Workbook& workbook = m_family.workbook.workbook();
    ASSERT_TRUE(workbook.act(QStringLiteral("Felt"), [&](store::Action& action) -> Outcome {
        const auto added = workbook.log().addReaction(action, reaction);
        return added ? Outcome{} : Outcome(passOn(added));
    }));
    ASSERT_TRUE(reason()->isVisible());
    EXPECT_NE(byText<QPushButton>(m_screen, QStringLiteral("Go on from tomorrow")), nullptr);
    auto* back = byText<QPushButton>(m_screen, QStringLiteral("Take the decision back"));
    EXPECT_FALSE(back->isVisible());
    const QDate tomorrow = FamilyWorkbook::today().addDays(1);
    decide(1, QStringLiteral("Dr Imura"));
    ASSERT_TRUE(m_family.standing().goesOn);
    EXPECT_EQ(m_family.standing().goesOn->day, tomorrow);
    EXPECT_TRUE(back->isVisible());
    // Another decision takes the place of the first.
    decide(0, QStringLiteral("Dr Imura, again"));
    EXPECT_TRUE(m_family.workbook.desk().told.isEmpty());
    EXPECT_EQ(m_family.standing().goesOn->resumeAtRung, 0);
    const casebook::FamilyRecords records = m_family.workbook.casebook()->records();
    EXPECT_EQ(records.decisions.size(), 2) << "today's and tomorrow's";
    const casebook::Casebook next(records, m_family.workbook.casebook()->catalogue(), tomorrow);
    EXPECT_EQ(next.standing(m_family.gil)->replay.state, intake::LadderState::Climbing);
    EXPECT_EQ(next.standing(m_family.gil)->askedToday, quantity::Volume::fromCups(0.25));
    back->click();
    EXPECT_FALSE(m_family.standing().goesOn);
    EXPECT_FALSE(back->isVisible());
    EXPECT_TRUE(reason()->isVisible());
}

TEST_F(ProgressScreenTest, WithoutAReasonItStaysStopped) {
    goTo(QStringLiteral("Gil Hale"));
    QTest::keyClick(reason(), Qt::Key_Return);
    EXPECT_TRUE(m_family.workbook.desk().told.isEmpty()) << "said beside the field, in no box";
    bool said = false;
    for (const auto* line : m_screen.findChildren<ProblemLine*>())
        said = said || (line->isVisible() && !line->sentence().isEmpty());
    EXPECT_TRUE(said);
    EXPECT_EQ(m_family.standing().replay.state, intake::LadderState::Stopped);
    EXPECT_TRUE(reason()->hasFocus());
}

TEST_F(ProgressScreenTest, RefreshKeepsMemberDayAndFocus) {
    goTo(QStringLiteral("Gil Hale"));
    m_chart->setFocus();
    QTest::keyClick(m_chart, Qt::Key_Left);
    const QDate day = m_chart->day();
    ASSERT_TRUE(m_family.workbook.workbook().undo()); // Gil goes
    ASSERT_TRUE(m_family.workbook.workbook().redo());
    goTo(QStringLiteral("Gil Hale"));
    m_family.workbook.plan(FamilyWorkbook::monday(), {});
    EXPECT_EQ(m_tabs->tabText(m_tabs->currentIndex()), QStringLiteral("Gil Hale"));
    m_chart->setFocus();
    QTest::keyClick(m_chart, Qt::Key_Left);
    week::Placement pot{day, m_family.workbook.chicken, QTime()};
    m_family.workbook.plan(FamilyWorkbook::monday(), {pot});
    EXPECT_EQ(m_chart->day(), day);
    EXPECT_TRUE(m_chart->hasFocus());
    EXPECT_EQ(m_tabs->tabText(m_tabs->currentIndex()), QStringLiteral("Gil Hale"));
}

TEST_F(ProgressScreenTest, MemberWithoutALadderIsShownTheWay) {
    people::Member member;
    member.family = m_family.workbook.family;
    member.name = QStringLiteral("Ira Hale");
    member.birth = QDate(1970, 1, 1);
    const Outcome added = m_family.workbook.workbook().act(
        QStringLiteral("Added Ira"), [&](store::Action& action) -> Outcome {
            const auto id = m_family.workbook.workbook().families().addMember(action, member);
            return id ? Outcome{} : Outcome(passOn(id));
        });
    ASSERT_TRUE(added);
    goTo(QStringLiteral("Ira Hale"));
    EXPECT_FALSE(m_chart->isVisible());
    QSignalSpy wanted(&m_screen, &FamilyScreen::screenWanted);
    byText<QPushButton>(m_screen, QStringLiteral("Set a target under Members"))->click();
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("members"));
}

TEST_F(ProgressScreenTest, PagesOfAMemberAreReachedByKeys) {
    goTo(QStringLiteral("Gil Hale"));
    auto* pages = byName<QTabBar>(m_screen, QStringLiteral("What is shown of the member"));
    const auto next = [this] {
        QTest::keyClick(&m_screen, Qt::Key_Right, Qt::AltModifier);
    };
    next();
    EXPECT_EQ(pages->currentIndex(), 1);
    EXPECT_FALSE(m_chart->isVisible());
    auto* kinds = byName<QTableView>(m_screen, QStringLiteral("Reactions by kind"));
    ASSERT_TRUE(kinds->isVisible());
    ASSERT_EQ(kinds->model()->rowCount(), 1);
    EXPECT_EQ(kinds->model()->index(0, 0).data().toString(), QStringLiteral("odd (red flag)"));
    EXPECT_EQ(kinds->model()->index(0, 1).data().toInt(), 2);
    EXPECT_EQ(kinds->model()->index(0, 2).data().toInt(), 10);
    next();
    EXPECT_EQ(pages->currentIndex(), 2);
    next();
    next();
    EXPECT_EQ(pages->currentIndex(), 4);
    auto* side = byName<QTableView>(m_screen, QStringLiteral("Where each member stands"));
    ASSERT_TRUE(side->isVisible());
    EXPECT_FALSE(m_tabs->isVisible()) << "all members at once";
    EXPECT_EQ(side->model()->rowCount(), 4);
    // Enter on a member leads back to the climb.
    side->setFocus();
    side->selectRow(0);
    QTest::keyClick(side, Qt::Key_Return);
    EXPECT_EQ(pages->currentIndex(), 0);
    EXPECT_EQ(m_tabs->currentIndex(), 0);
    QTest::keyClick(&m_screen, Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(pages->currentIndex(), 4);
    QTest::keyClick(&m_screen, Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(pages->currentIndex(), 0);
    EXPECT_TRUE(m_chart->hasFocus());
}

TEST_F(ProgressScreenTest, StoppedDaysAskNothing) {
    goTo(QStringLiteral("Gil Hale"));
    m_chart->setFocus();
    QTest::keyClick(m_chart, Qt::Key_End);
    EXPECT_TRUE(m_chart->accessibleDescription().contains(QStringLiteral("asked nothing")));
}

} // namespace ladlework::ui
