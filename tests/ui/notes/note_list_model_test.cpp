#include "ui/notes/note_list_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

casebook::VisitNote note(qint64 id, QDate day, const QString& text) {
    casebook::VisitNote made;
    made.id = NoteId{id};
    made.day = day;
    made.text = text;
    return made;
}

} // namespace

TEST(NoteListModelTest, DayAndFirstWords) {
    NoteListModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QString words = QStringLiteral("one two three four five ");
    model.setNotes({note(2, QDate(2026, 11, 3), words.repeated(5)),
                    note(1, QDate(2026, 10, 5), QStringLiteral("Begins.\n\nWell."))});
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(1).data().toString(), QStringLiteral("Mon, Oct 5, 2026\nBegins. Well."));
    const QString first = model.index(0).data().toString();
    EXPECT_TRUE(first.endsWith(u'…'));
    // Cut between two words: what is left is a beginning of the text that ends with a whole word.
    const QString kept = first.section(u'\n', 1).chopped(1);
    EXPECT_TRUE(words.repeated(5).startsWith(QString(kept + u' '))) << kept.toStdString();
    EXPECT_EQ(model.rowOf(NoteId{1}), 1);
    EXPECT_EQ(model.rowOf(NoteId{9}), -1);
    EXPECT_EQ(model.noteAt(-1), nullptr);
}

TEST(NoteListModelTest, SameNotesAreChangedInPlace) {
    NoteListModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setNotes({note(1, QDate(2026, 10, 5), QStringLiteral("Begins."))});
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.setNotes({note(1, QDate(2026, 10, 5), QStringLiteral("Begins well."))});
    EXPECT_EQ(reset.size(), 0);
    EXPECT_EQ(changed.size(), 1);
    model.setNotes({});
    EXPECT_EQ(reset.size(), 1);
}

} // namespace ladlework::ui
