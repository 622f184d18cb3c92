#include "ui/notes/notes_screen.h"

#include "ui/shared/by_name.h"
#include "ui/shared/day_edit.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/note_edit.h"

#include <QAction>
#include <QListView>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class NotesScreenTest : public ::testing::Test {
protected:
    NotesScreenTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QList<casebook::VisitNote> notes() {
        return m_family.casebook()->records().notes;
    }
    [[nodiscard]] QDate familyReview() { return m_family.casebook()->records().family.reviewOn; }
    [[nodiscard]] QString lastSentence() {
        return m_family.workbook().history().nextUndo()->sentence;
    }
    [[nodiscard]] qint64 lastAction() { return m_family.workbook().history().nextUndo()->id; }
    void startNew() {
        for (QAction* action : m_screen.actions())
            if (action->text() == QStringLiteral("Write a note"))
                action->trigger();
    }
    void write(const QString& words) {
        startNew();
        ASSERT_TRUE(text()->hasFocus());
        QTest::keyClicks(text(), words);
        QTest::keyClick(text(), Qt::Key_Return, Qt::ControlModifier);
    }
    [[nodiscard]] NoteEdit* text() const { return m_screen.findChildren<NoteEdit*>().at(0); }
    [[nodiscard]] NoteEdit* agreed() const { return m_screen.findChildren<NoteEdit*>().at(1); }
    [[nodiscard]] DayEdit* day() const { return m_screen.findChildren<DayEdit*>().at(0); }
    [[nodiscard]] DayEdit* review() const { return m_screen.findChildren<DayEdit*>().at(1); }
    void type(DayEdit* edit, const QString& words) {
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, words);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    [[nodiscard]] QListView* list() const {
        return byName<QListView>(m_screen, QStringLiteral("Visit notes, newest first"));
    }

    FamilyWorkbook m_family;
    NotesScreen m_screen;
};

} // namespace

TEST_F(NotesScreenTest, EmptyPlaceLeadsToTheFirstNote) {
    auto* button = qobject_cast<QPushButton*>(m_screen.firstField());
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isVisible());
    button->click();
    EXPECT_TRUE(text()->hasFocus());
    EXPECT_EQ(day()->day(), FamilyWorkbook::today());
}

TEST_F(NotesScreenTest, NoteIsWrittenByKeysInOneAction) {
    const qint64 before = lastAction();
    write(QStringLiteral("Ana sleeps better."));
    ASSERT_EQ(notes().size(), 1);
    EXPECT_EQ(notes().first().text, QStringLiteral("Ana sleeps better."));
    EXPECT_EQ(notes().first().day, FamilyWorkbook::today());
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Wrote a note of Wed, Nov 4, 2026"));
    EXPECT_TRUE(text()->hasFocus()) << "she can write on";
    EXPECT_EQ(list()->currentIndex().row(), 0) << "the new note is chosen";
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(notes().isEmpty());
}

TEST_F(NotesScreenTest, NoteIsChanged) {
    write(QStringLiteral("Ana sleeps better."));
    agreed()->setFocus();
    QTest::keyClicks(agreed(), QStringLiteral("A cup more."));
    day()->setFocus(); // leaving it keeps it
    EXPECT_EQ(notes().first().agreed, QStringLiteral("A cup more."));
    EXPECT_EQ(lastSentence(), QStringLiteral("Changed the note of Wed, Nov 4, 2026"));
    type(day(), QStringLiteral("yesterday"));
    EXPECT_EQ(notes().first().day, QDate(2026, 11, 3));
    EXPECT_TRUE(day()->hasFocus());
    const qint64 before = lastAction();
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(m_screen.focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(lastAction(), before) << "walking through changes nothing";
}

TEST_F(NotesScreenTest, DayToComeIsRefused) {
    write(QStringLiteral("Ana sleeps better."));
    type(day(), QStringLiteral("2026-11-05"));
    EXPECT_FALSE(day()->isGood());
    EXPECT_EQ(notes().first().day, FamilyWorkbook::today());
}

TEST_F(NotesScreenTest, ReviewOfTheLatestNoteIsKeptOnTheFamily) {
    write(QStringLiteral("Ana sleeps better."));
    EXPECT_FALSE(familyReview().isValid());
    type(review(), QStringLiteral("2026-12-01"));
    EXPECT_EQ(notes().first().reviewOn, QDate(2026, 12, 1));
    EXPECT_EQ(familyReview(), QDate(2026, 12, 1));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_FALSE(familyReview().isValid()) << "both in one action";
    EXPECT_EQ(review()->day(), QDate());
}

TEST_F(NotesScreenTest, ReviewOfAnOlderNoteLeavesTheFamilyAlone) {
    write(QStringLiteral("First."));
    type(day(), QStringLiteral("2026-10-05"));
    write(QStringLiteral("Second."));
    type(review(), QStringLiteral("2026-12-01"));
    list()->setCurrentIndex(list()->model()->index(1, 0));
    EXPECT_EQ(text()->text(), QStringLiteral("First."));
    type(review(), QStringLiteral("2026-11-09"));
    EXPECT_EQ(familyReview(), QDate(2026, 12, 1));
}

TEST_F(NotesScreenTest, AnotherNewNoteKeepsWhatWasTyped) {
    startNew();
    QTest::keyClicks(text(), QStringLiteral("First, not handed over yet"));
    startNew();
    ASSERT_EQ(notes().size(), 1);
    EXPECT_TRUE(text()->text().isEmpty());
    EXPECT_TRUE(text()->hasFocus());
    QTest::keyClicks(text(), QStringLiteral("Second"));
    list()->setFocus();
    EXPECT_EQ(notes().size(), 2);
}

TEST_F(NotesScreenTest, EscapeGivesUpANewNote) {
    write(QStringLiteral("First."));
    startNew();
    QTest::keyClicks(text(), QStringLiteral("Never mind"));
    QTest::keyClick(text(), Qt::Key_Escape);
    EXPECT_EQ(notes().size(), 1);
    EXPECT_EQ(text()->text(), QStringLiteral("First."));
}

TEST_F(NotesScreenTest, NoteIsRemovedAndComesBack) {
    write(QStringLiteral("First."));
    write(QStringLiteral("Second."));
    list()->setFocus();
    list()->setCurrentIndex(list()->model()->index(0, 0));
    QTest::keyClick(list(), Qt::Key_Delete);
    ASSERT_EQ(notes().size(), 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Removed the note of Wed, Nov 4, 2026"));
    EXPECT_EQ(text()->text(), notes().first().text);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(notes().size(), 2);
    byText<QPushButton>(m_screen, QStringLiteral("Remove note"))->click();
    EXPECT_EQ(notes().size(), 1);
}

TEST_F(NotesScreenTest, NoteCannotBeEmptied) {
    write(QStringLiteral("First."));
    text()->selectAll();
    QTest::keyClick(text(), Qt::Key_Delete);
    QTest::keyClick(text(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(notes().first().text, QStringLiteral("First."));
    EXPECT_EQ(text()->text(), QStringLiteral("First.")) << "nothing is lost";
}

} // namespace ladlework::ui
