#include "ui/log/log_screen.h"

#include "intake/red_flags.h"
#include "ui/log/day_strip.h"
#include "ui/log/log_day_model.h"
#include "ui/log/what_now_panel.h"
#include "ui/shared/by_name.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/problem_line.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Volume;

namespace {

class LogScreenTest : public ::testing::Test {
protected:
    LogScreenTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        m_table = byName<QTableView>(m_screen,
                                     QStringLiteral("What each member drank and what was felt"));
        m_table->setFocus();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QList<intake::IntakeEntry> entries() {
        return m_family.casebook()->records().entries;
    }
    [[nodiscard]] QList<intake::Reaction> reactions() {
        return m_family.casebook()->records().reactions;
    }
    [[nodiscard]] QString lastSentence() {
        return m_family.workbook().history().nextUndo()->sentence;
    }
    [[nodiscard]] qint64 lastAction() { return m_family.workbook().history().nextUndo()->id; }
    void goTo(int row, int column) {
        m_table->setCurrentIndex(m_table->model()->index(row, column));
    }
    /// Types into the table as a person does: the first key opens the editor of the cell.
    void type(const QString& text, Qt::Key end = Qt::Key_Return) {
        QTest::keyClicks(m_table, text.left(1));
        QLineEdit* editor = editorOf(m_table);
        ASSERT_NE(editor, nullptr);
        QTest::keyClicks(editor, text.mid(1));
        QTest::keyClick(editor, end);
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    /// What stands under the table in words because it was not kept; empty when all was.
    [[nodiscard]] QString problem() const {
        for (const auto* line : m_screen.findChildren<ProblemLine*>())
            if (line->isVisible())
                return line->sentence();
        return {};
    }
    static QLineEdit* editorOf(QTableView* table) {
        const auto editors = table->viewport()->findChildren<QLineEdit*>();
        return editors.isEmpty() ? nullptr : editors.last();
    }

    FamilyWorkbook m_family;
    LogScreen m_screen;
    QTableView* m_table = nullptr;
};

constexpr int drunk = LogDayModel::DrunkColumn;
constexpr int felt = LogDayModel::BorneColumn;

} // namespace

TEST_F(LogScreenTest, AmountIsTypedAndEnterMovesDown) {
    goTo(0, drunk);
    const qint64 before = lastAction();
    type(QStringLiteral("3/4"));
    ASSERT_EQ(entries().size(), 1);
    EXPECT_EQ(entries().first().drunk, Volume::fromCups(0.75));
    EXPECT_EQ(entries().first().day, FamilyWorkbook::today());
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Entered ¾ cup for Ana Hale on Wed, Nov 4, 2026"));
    EXPECT_EQ(m_table->currentIndex(), m_table->model()->index(1, drunk));
    EXPECT_TRUE(m_table->hasFocus());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(entries().isEmpty());
}

TEST_F(LogScreenTest, FamilysDayInFewKeys) {
    goTo(0, drunk);
    const auto keys = QStringLiteral("=");
    int strokes = 0;
    for (int row = 0; row < 3; ++row) {
        type(keys);
        strokes += static_cast<int>(keys.size()) + 1;
    }
    ASSERT_EQ(entries().size(), 3);
    EXPECT_LT(strokes, 20);
    EXPECT_EQ(entries().at(1).drunk, Volume::fromCups(2)) << "what was asked of Bo";
    EXPECT_EQ(m_table->currentIndex().row(), 2) << "there is no row below the last";
}

TEST_F(LogScreenTest, FamilysDayWithOneExceptionAndAReactionInUnderTwentyKeys) {
    // Bo drank half a cup less and felt bloated; everybody else drank what was asked.
    goTo(1, drunk);
    int strokes = 0;
    const auto typed = [&](const QString& text, Qt::Key end) {
        type(text, end);
        strokes += static_cast<int>(text.size()) + 1;
    };
    typed(QStringLiteral("3/2"), Qt::Key_Tab);
    QLineEdit* editor = editorOf(m_table);
    ASSERT_NE(editor, nullptr);
    const QString felt3 = QStringLiteral("bloat 3");
    QTest::keyClicks(editor, felt3);
    QTest::keyClick(editor, Qt::Key_Return);
    strokes += static_cast<int>(felt3.size()) + 1;
    QCoreApplication::processEvents();
    QTest::keyClick(&m_screen, Qt::Key_E, Qt::ControlModifier);
    ++strokes;
    ASSERT_EQ(entries().size(), 3);
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_EQ(reactions().first().symptom, QStringLiteral("Bloating or wind"));
    EXPECT_LT(strokes, 20);
}

TEST_F(LogScreenTest, EveryoneAsAskedLeavesEntriesAlone) {
    goTo(1, drunk);
    type(QStringLiteral("missed"));
    for (QAction* action : m_screen.actions())
        if (action->text() == QStringLiteral("Everyone drank what was asked"))
            action->trigger();
    ASSERT_EQ(entries().size(), 3);
    const auto bo = m_family.casebook()->standings().at(1).member.id;
    for (const intake::IntakeEntry& entry : entries())
        EXPECT_EQ(entry.drunk == Volume{}, entry.member == bo);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(entries().size(), 1) << "one action for all of them";
}

TEST_F(LogScreenTest, AnotherDrinkIsAddedNotPutInPlace) {
    goTo(0, drunk);
    type(QStringLiteral("1"));
    goTo(0, drunk);
    type(QStringLiteral("2"));
    ASSERT_EQ(entries().size(), 1) << "typing over puts it right";
    EXPECT_EQ(entries().first().drunk, Volume::fromCups(2));
    goTo(0, drunk);
    type(QStringLiteral("+ 1/2 cup"));
    ASSERT_EQ(entries().size(), 2);
    // With two drinks a bare amount is ambiguous: told, and nothing is written.
    goTo(0, drunk);
    type(QStringLiteral("3"));
    EXPECT_TRUE(problem().contains(QStringLiteral("2 drinks")));
    EXPECT_EQ(entries().size(), 2);
    goTo(0, drunk);
    QTest::keyClick(m_table, Qt::Key_Delete);
    EXPECT_FALSE(problem().isEmpty());
    EXPECT_EQ(entries().size(), 2);
    goTo(0, drunk);
    type(QStringLiteral("+ 1/4"));
    EXPECT_TRUE(problem().isEmpty()) << "gone once something is kept";
    EXPECT_EQ(entries().size(), 3);
}

TEST_F(LogScreenTest, NonsenseIsToldAndChangesNothing) {
    goTo(0, drunk);
    type(QStringLiteral("lots"));
    EXPECT_TRUE(entries().isEmpty());
    EXPECT_TRUE(problem().contains(QStringLiteral("lots")));
    EXPECT_TRUE(m_family.desk().told.isEmpty()) << "in words under the table, not in a box";
    goTo(0, felt);
    type(QStringLiteral("bloating 11"));
    EXPECT_TRUE(problem().contains(QStringLiteral("11")));
    EXPECT_TRUE(reactions().isEmpty());
}

TEST_F(LogScreenTest, ReactionIsTypedAndEnterMovesDown) {
    goTo(0, felt);
    type(QStringLiteral("bloating 3"));
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_EQ(reactions().first().strength, 3);
    EXPECT_EQ(m_table->currentIndex(), m_table->model()->index(1, felt));
    EXPECT_EQ(lastSentence(), QStringLiteral("Entered %1 3 for Ana Hale on Wed, Nov 4, 2026")
                                  .arg(reactions().first().symptom));
    goTo(0, felt);
    QTest::keyClick(m_table, Qt::Key_Delete);
    EXPECT_TRUE(reactions().isEmpty());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(reactions().size(), 1);
}

TEST_F(LogScreenTest, RedFlagStopsAndSaysWhatToDo) {
    auto* panel = m_screen.findChild<WhatNowPanel*>();
    EXPECT_FALSE(panel->isVisible());
    const QString flag = intake::symptomKinds().front().name; // red flags come first
    ASSERT_TRUE(intake::symptomKinds().front().redFlag);
    goTo(0, felt);
    type(flag);
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_TRUE(reactions().first().redFlag);
    EXPECT_EQ(reactions().first().strength, 10);
    ASSERT_TRUE(panel->isVisible());
    EXPECT_EQ(panel->accessibleDescription().left(4), QStringLiteral("Call"));
    EXPECT_EQ(m_family.casebook()->standings().front().replay.state, intake::LadderState::Stopped);
    byText<QPushButton>(*panel, QStringLiteral("Record the decision"));
    QSignalSpy wanted(&m_screen, &FamilyScreen::screenWanted);
    byText<QPushButton>(*panel, QStringLiteral("Record the decision"))->click();
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("progress"));
    m_screen.setDay(FamilyWorkbook::today().addDays(-1));
    EXPECT_FALSE(panel->isVisible()) << "it belongs to its day";
}

TEST_F(LogScreenTest, SeveralReactionsGoInAsOneAction) {
    goTo(0, felt);
    type(QStringLiteral("tingling 3; wheezing 2"));
    ASSERT_EQ(reactions().size(), 2);
    EXPECT_EQ(reactions().first().symptom, QStringLiteral("tingling"));
    EXPECT_FALSE(reactions().first().redFlag);
    EXPECT_TRUE(reactions().last().redFlag);
    EXPECT_TRUE(m_screen.findChild<WhatNowPanel*>()->isVisible());
    const QString follows = m_table->model()->index(0, felt + 1).data().toString();
    EXPECT_TRUE(follows.contains(QStringLiteral("\"tingling\" is not on the list")))
        << qPrintable(follows);
    EXPECT_FALSE(follows.contains(QStringLiteral("wheezing\" is not"))) << qPrintable(follows);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(reactions().isEmpty());
}

TEST_F(LogScreenTest, RedFlagOfAChildShowsDehydrationAndTheNumber) {
    people::Practice practice = m_family.workbook().practice().practice();
    practice.emergencyNumber = QStringLiteral("112");
    ASSERT_TRUE(m_family.workbook().act(QStringLiteral("Set"), [&](store::Action& action) {
        return m_family.workbook().practice().setPractice(action, practice);
    }));
    goTo(1, felt); // Bo, a child
    type(intake::symptomKinds().front().name);
    auto* panel = m_screen.findChild<WhatNowPanel*>();
    ASSERT_TRUE(panel->isVisible());
    QStringList words;
    for (const QLabel* label : panel->findChildren<QLabel*>())
        words << label->text();
    EXPECT_TRUE(words.contains(QStringLiteral("Call 112")));
    EXPECT_EQ(words.filter(QStringLiteral("drying out")).size(), 1);
    EXPECT_EQ(words.filter(QStringLiteral("severe allergic reaction")).size(), 1);
    EXPECT_EQ(words.filter(QStringLiteral("Bo Hale's ladder is stopped")).size(), 1);
    // Folded it still says whom to call; one more red flag unfolds it.
    auto* fold = byText<QPushButton>(*panel, QStringLiteral("Fold"));
    fold->click();
    EXPECT_EQ(fold->text(), QStringLiteral("Show what to do"));
    goTo(0, felt);
    type(intake::symptomKinds().front().name);
    EXPECT_EQ(fold->text(), QStringLiteral("Fold"));
}

TEST_F(LogScreenTest, DrinkSaysWhatItCameOutOf) {
    goTo(0, drunk);
    type(QStringLiteral("3/4 from chick"));
    ASSERT_EQ(entries().size(), 1);
    EXPECT_EQ(entries().first().pot, m_family.chicken);
    EXPECT_EQ(entries().first().drunk, Volume::fromCups(0.75));
    goTo(0, drunk);
    type(QStringLiteral("+ 1 from beef shank"));
    ASSERT_EQ(entries().size(), 2);
    EXPECT_EQ(entries().at(1).pot, m_family.beef);
    goTo(1, drunk);
    type(QStringLiteral("1 from the moon"));
    EXPECT_TRUE(problem().contains(QStringLiteral("the moon")));
    EXPECT_EQ(entries().size(), 2);
    // What is chosen at the head counts from then on, and for everyone.
    auto* source = byName<QComboBox>(
        m_screen, QStringLiteral("What the drinks entered from now on come out of"));
    source->setFocus();
    QTest::keyClicks(source, QStringLiteral("Chicken"));
    Q_EMIT source->activated(source->currentIndex());
    QTest::keyClick(&m_screen, Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(entries().size(), 4);
    for (const intake::IntakeEntry& entry : entries())
        EXPECT_TRUE(entry.pot.isStored());
    goTo(0, drunk);
    type(QStringLiteral("+ missed from chick"));
    EXPECT_FALSE(entries().last().pot.isStored()) << "nothing came out of nothing";
}

TEST_F(LogScreenTest, ReactionIsTypedWithItsTimes) {
    goTo(0, felt);
    type(QStringLiteral("headache 2 at 14:30 for 2 h"));
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_EQ(reactions().first().symptom, QStringLiteral("Headache"));
    EXPECT_EQ(reactions().first().startMinute, 14 * 60 + 30);
    EXPECT_EQ(reactions().first().minutes, 120);
    goTo(0, felt);
    type(QStringLiteral("headache 3"));
    EXPECT_EQ(reactions().first().strength, 3);
    EXPECT_EQ(reactions().first().minutes, 120) << "put right, the times stay";
}

TEST_F(LogScreenTest, PracticesOwnRedFlagStops) {
    intake::Symptom symptom;
    symptom.name = QStringLiteral("Shaking spells");
    symptom.position = 99;
    symptom.redFlag = true;
    ASSERT_TRUE(
        m_family.workbook().act(QStringLiteral("Added"), [&](store::Action& action) -> Outcome {
            const auto added = m_family.workbook().practice().addSymptom(action, symptom);
            return added ? Outcome{} : Outcome(passOn(added));
        }));
    goTo(0, felt);
    type(QStringLiteral("shaking 1"));
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_TRUE(reactions().first().redFlag);
    EXPECT_EQ(m_family.casebook()->standings().front().replay.state, intake::LadderState::Stopped);
}

TEST_F(LogScreenTest, StripLeadsToTheDayThatLacksAnEntry) {
    auto* strip = m_screen.findChild<DayStrip*>();
    EXPECT_EQ(strip->latestOpen(), QDate(2026, 11, 3));
    QTest::keyClick(&m_screen, Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(m_screen.day(), QDate(2026, 11, 3));
    QTest::keyClick(&m_screen, Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(strip->latestOpen(), QDate(2026, 11, 2));
    strip->setFocus();
    QTest::keyClick(strip, Qt::Key_Left);
    EXPECT_EQ(m_screen.day(), QDate(2026, 11, 2));
    EXPECT_TRUE(strip->accessibleDescription().contains(QStringLiteral("0 of 3")));
    QTest::keyClick(strip, Qt::Key_End);
    EXPECT_EQ(m_screen.day(), FamilyWorkbook::today());
    QTest::keyClick(strip, Qt::Key_Right);
    EXPECT_EQ(m_screen.day(), FamilyWorkbook::today()) << "no day to come";
}

TEST_F(LogScreenTest, TabGoesFromWhatWasDrunkToWhatWasFelt) {
    goTo(0, drunk);
    type(QStringLiteral("1"), Qt::Key_Tab);
    EXPECT_EQ(entries().size(), 1);
    EXPECT_EQ(m_table->currentIndex(), m_table->model()->index(0, felt));
    QLineEdit* editor = editorOf(m_table);
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, QStringLiteral("headache 2"));
    QTest::keyClick(editor, Qt::Key_Tab);
    QCoreApplication::processEvents();
    EXPECT_EQ(reactions().size(), 1);
    EXPECT_EQ(m_table->currentIndex(), m_table->model()->index(1, drunk)) << "the next member";
}

TEST_F(LogScreenTest, EarlierDayIsEntered) {
    QTest::keyClick(&m_screen, Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(m_screen.day(), QDate(2026, 11, 3));
    goTo(0, drunk);
    type(QStringLiteral("1"));
    ASSERT_EQ(entries().size(), 1);
    EXPECT_EQ(entries().first().day, QDate(2026, 11, 3));
    EXPECT_EQ(m_screen.day(), QDate(2026, 11, 3)) << "the day stays after an entry";
    auto* day = byName<DayEdit>(m_screen, QStringLiteral("Day of the log"));
    day->setFocus();
    day->selectAll();
    QTest::keyClicks(day, QStringLiteral("2026-10-20"));
    QTest::keyClick(day, Qt::Key_Return);
    EXPECT_EQ(m_screen.day(), QDate(2026, 10, 20));
    QTest::keyClick(&m_screen, Qt::Key_Home, Qt::AltModifier);
    EXPECT_EQ(m_screen.day(), FamilyWorkbook::today());
    QTest::keyClick(&m_screen, Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(m_screen.day(), FamilyWorkbook::today()) << "no day to come";
}

TEST_F(LogScreenTest, DrinkIsChangedAndDeletedInTheList) {
    goTo(0, drunk);
    type(QStringLiteral("1"));
    goTo(0, drunk);
    auto* drinks = byName<QTableView>(m_screen, QStringLiteral("Drinks of the member"));
    ASSERT_TRUE(drinks->isVisible());
    drinks->setFocus();
    drinks->setCurrentIndex(drinks->model()->index(0, 2));
    QTest::keyClicks(drinks, QStringLiteral("w"));
    QLineEdit* editor = editorOf(drinks);
    ASSERT_NE(editor, nullptr);
    QTest::keyClicks(editor, QStringLiteral("ith lunch"));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_EQ(entries().first().note, QStringLiteral("with lunch"));
    EXPECT_TRUE(drinks->hasFocus());
    EXPECT_EQ(drinks->currentIndex().row(), 0);
    QTest::keyClick(drinks, Qt::Key_Delete);
    EXPECT_TRUE(entries().isEmpty());
    EXPECT_EQ(lastSentence(), QStringLiteral("Removed a drink of Ana Hale on Wed, Nov 4, 2026"));
}

} // namespace ladlework::ui
