#include "ui/log/log_screen.h"

#include "intake/red_flags.h"
#include "ui/log/log_day_model.h"
#include "ui/shared/by_name.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/family_workbook.h"

#include <QAction>
#include <QLineEdit>
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
    EXPECT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(entries().size(), 2);
    goTo(0, drunk);
    QTest::keyClick(m_table, Qt::Key_Delete);
    EXPECT_EQ(m_family.desk().told.size(), 2);
    EXPECT_EQ(entries().size(), 2);
}

TEST_F(LogScreenTest, NonsenseIsToldAndChangesNothing) {
    goTo(0, drunk);
    type(QStringLiteral("lots"));
    EXPECT_TRUE(entries().isEmpty());
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_TRUE(m_family.desk().told.first().contains(QStringLiteral("lots")));
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
    EXPECT_TRUE(m_screen.findings().isEmpty());
    const QString flag = intake::symptomKinds().front().name; // red flags come first
    ASSERT_TRUE(intake::symptomKinds().front().redFlag);
    goTo(0, felt);
    type(flag);
    ASSERT_EQ(reactions().size(), 1);
    EXPECT_TRUE(reactions().first().redFlag);
    EXPECT_EQ(reactions().first().strength, 10);
    ASSERT_FALSE(m_screen.findings().isEmpty());
    EXPECT_TRUE(hasCode(m_screen.findings(), u"red-flag-call"));
    EXPECT_EQ(worstOf(m_screen.findings()), Finding::Severity::Stop);
    EXPECT_EQ(m_family.casebook()->standings().front().replay.state, intake::LadderState::Stopped);
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
