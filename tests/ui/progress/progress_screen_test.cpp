#include "ui/progress/progress_screen.h"

#include "ui/progress/climb_chart.h"
#include "ui/progress/climbing_family.h"
#include "ui/shared/by_name.h"
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
        m_tabs = m_screen.findChild<QTabBar*>();
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
    EXPECT_EQ(rung->currentIndex(), 0) << "one rung below the one in force";
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
    EXPECT_EQ(m_family.workbook.desk().told.size(), 1);
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

} // namespace ladlework::ui
