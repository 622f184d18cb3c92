#include "ui/handout/handout_parts_panel.h"
#include "ui/handout/handout_screen.h"
#include "ui/handout/handout_side.h"
#include "ui/handout/kept_choice.h"
#include "ui/handout/labels_panel.h"
#include "ui/handout/millimetre_edit.h"
#include "ui/handout/pages_preview.h"
#include "ui/print/page_painter.h"
#include "ui/shared/family_workbook.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class HandoutChoicesTest : public ::testing::Test {
protected:
    HandoutChoicesTest() : m_screen(m_family.context(), nullptr) {
        m_family.plan(FamilyWorkbook::monday(),
                      {week::Placement{FamilyWorkbook::today(), m_family.beef, QTime(9, 0)}});
        m_family.attach(m_screen);
        m_screen.setPrinting([this](QWidget*, const PageLayout& layout, const QString&) {
            m_printed << layout;
            return m_answer;
        });
        m_screen.resize(1136, 640);
        m_screen.show();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] HandoutSide& side() const { return *m_screen.findChild<HandoutSide*>(); }
    [[nodiscard]] QListView& list() const { return *side().parts()->list(); }
    [[nodiscard]] const PageLayout& pages() const {
        return m_screen.findChild<PagesPreview*>()->pages();
    }
    [[nodiscard]] QString words() const {
        QString all;
        for (qsizetype page = 0; page < pages().pages.size(); ++page)
            all += wordsOf(pages(), page) + QLatin1Char('\n');
        return all;
    }
    void choosePart(int row) { list().setCurrentIndex(list().model()->index(row, 0)); }
    void keepAs(const QString& name) {
        side().templates()->askForNewName();
        auto* field = side().templates()->findChild<QLineEdit*>();
        QTest::keyClicks(field, name);
        QTest::keyClick(field, Qt::Key_Return);
    }
    [[nodiscard]] QList<casebook::HandoutTemplate> templates() {
        return m_family.casebook()->records().handoutTemplates;
    }
    [[nodiscard]] QList<casebook::LabelStock> stocks() {
        return m_family.casebook()->records().labelStocks;
    }

    FamilyWorkbook m_family;
    HandoutScreen m_screen;
    QList<PageLayout> m_printed;
    Result<Printed> m_answer = Printed{true, {}};
};

} // namespace

TEST_F(HandoutChoicesTest, PartsAreMovedAndLeftOutByKeys) {
    choosePart(1);
    const QString first = list().model()->index(1, 0).data().toString();
    list().setFocus();
    QTest::keyClick(&list(), Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(list().model()->index(0, 0).data().toString(), first);
    EXPECT_EQ(list().currentIndex().row(), 0) << "the part moved stays chosen";
    EXPECT_LT(words().indexOf(QStringLiteral("The week at a glance")),
              words().indexOf(QStringLiteral("Whom to call")));
    QTest::keyClick(&list(), Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(list().model()->index(1, 0).data().toString(), first);
    QTest::keyClick(&list(), Qt::Key_Space);
    EXPECT_FALSE(words().contains(QStringLiteral("The week at a glance")));
}

TEST_F(HandoutChoicesTest, WordsGoToThePartThatWasChosenWhenTheyWereTyped) {
    auto* field = side().parts()->findChild<QPlainTextEdit*>();
    choosePart(4);
    QTest::keyClicks(field, QStringLiteral("Ask for feet."));
    choosePart(0); // before the typing rests
    EXPECT_TRUE(words().contains(QStringLiteral("Ask for feet.")));
    EXPECT_TRUE(field->toPlainText().isEmpty());
    choosePart(4);
    EXPECT_EQ(field->toPlainText(), QStringLiteral("Ask for feet."));
}

TEST_F(HandoutChoicesTest, ATemplateIsKeptUsedChangedRenamedRemovedAndUndone) {
    choosePart(1);
    QTest::keyClick(&list(), Qt::Key_Space);
    keepAs(QStringLiteral("Short"));
    ASSERT_EQ(templates().size(), 1);
    EXPECT_FALSE(templates().first().sections.at(1).shown);
    auto* box = side().templates()->findChild<QComboBox*>();
    EXPECT_EQ(box->currentText(), QStringLiteral("Short"));

    box->setCurrentIndex(box->findText(QStringLiteral("Usual pages")));
    EXPECT_TRUE(words().contains(QStringLiteral("The week at a glance")));
    box->setCurrentIndex(box->findText(QStringLiteral("Short")));
    EXPECT_FALSE(words().contains(QStringLiteral("The week at a glance")));

    choosePart(0);
    QTest::keyClick(&list(), Qt::Key_Space);
    Q_EMIT side().templates()->saveWanted();
    EXPECT_FALSE(templates().first().sections.at(0).shown);

    Q_EMIT side().templates()->renameWanted(QStringLiteral("Kitchen only"));
    EXPECT_EQ(templates().first().name, QStringLiteral("Kitchen only"));
    Q_EMIT side().templates()->removeWanted();
    EXPECT_TRUE(templates().isEmpty());
    EXPECT_EQ(side().templates()->current(), 0);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(templates().size(), 1);
    EXPECT_EQ(m_family.workbook().history().nextUndo()->sentence,
              QStringLiteral("Renamed the handout template Short to Kitchen only"));
}

TEST_F(HandoutChoicesTest, ASecondTemplateOfTheSameNameIsRefusedInWords) {
    keepAs(QStringLiteral("Short"));
    keepAs(QStringLiteral("Short"));
    EXPECT_EQ(templates().size(), 1);
    EXPECT_EQ(m_family.desk().told.size(), 1);
}

TEST_F(HandoutChoicesTest, TheLabelLeafShowsLabelsAloneAndKeepsMeasures) {
    side().showLeaf(HandoutSide::Leaf::Labels);
    ASSERT_FALSE(pages().pages.isEmpty());
    for (const Page& page : pages().pages)
        EXPECT_TRUE(page.isLabelSheet());
    EXPECT_TRUE(words().contains(QStringLiteral("Beef shank")));
    EXPECT_FALSE(words().contains(QStringLiteral("Whom to call")));

    Q_EMIT side().labels()->kept()->keepAsWanted(QStringLiteral("Round ones"));
    ASSERT_EQ(stocks().size(), 1);
    MillimetreEdit* width = nullptr;
    for (auto* edit : side().labels()->findChildren<MillimetreEdit*>())
        if (edit->accessibleName() == QStringLiteral("Width of a label"))
            width = edit;
    ASSERT_NE(width, nullptr);
    EXPECT_TRUE(width->isEnabled());
    width->setValue(80);
    EXPECT_DOUBLE_EQ(stocks().first().labelWidthMm, 80);
    width->setValue(400);
    EXPECT_DOUBLE_EQ(stocks().first().labelWidthMm, 80) << "labels that run over are not kept";
    Q_EMIT side().labels()->kept()->removeWanted();
    EXPECT_TRUE(stocks().isEmpty());
}

TEST_F(HandoutChoicesTest, LabelSheetsAreNotPrintedAmongThePages) {
    choosePart(list().model()->rowCount() - 1);
    ASSERT_EQ(list().currentIndex().data().toString(), QStringLiteral("Jar labels"));
    QTest::keyClick(&list(), Qt::Key_Space);
    const auto labels = labelSheetsOf(pages()).pages.size();
    ASSERT_GT(labels, 0);
    m_screen.print();
    ASSERT_EQ(m_printed.size(), 1);
    EXPECT_EQ(m_printed.last().pages.size(), pages().pages.size() - labels);
    side().showLeaf(HandoutSide::Leaf::Labels);
    m_screen.print();
    EXPECT_EQ(m_printed.last().pages.size(), labels);
    m_answer = Printed{true, QStringLiteral("Too near to the edge.")};
    m_screen.print();
    EXPECT_EQ(m_family.desk().told, QStringList{QStringLiteral("Too near to the edge.")});
}

TEST_F(HandoutChoicesTest, SavesThePagesAsPicturesAndAsksBeforeReplacingThem) {
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("week.png"));
    m_screen.savePictures();
    const QDir folder(QFileInfo(*m_family.desk().fileAnswer).path());
    EXPECT_EQ(folder.entryList({QStringLiteral("week-*.png")}).size(), pages().pages.size());
    m_family.desk().confirmAnswer = false;
    m_screen.savePictures();
    EXPECT_EQ(m_family.desk().asked.size(), 3)
        << "where to, where to again, and whether to replace";
}

TEST_F(HandoutChoicesTest, WhatAPrinterCannotReachIsTold) {
    EXPECT_TRUE(outOfReach(pages(), QMarginsF(4, 4, 4, 4)).isEmpty());
    const QString sentence = outOfReach(pages(), QMarginsF(25, 4, 4, 12));
    EXPECT_TRUE(sentence.contains(QStringLiteral("25.0 mm"))) << sentence.toStdString();
}

} // namespace ladlework::ui
