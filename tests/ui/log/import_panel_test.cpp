#include "ui/log/import_panel.h"

#include "ui/log/log_screen.h"
#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/problem_line.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class ImportPanelTest : public ::testing::Test {
protected:
    ImportPanelTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        m_panel = m_screen.findChild<ImportPanel*>();
        m_sheet = byName<QPlainTextEdit>(m_screen, QStringLiteral("Lines of the sheet"));
        m_table = byName<QTableView>(m_screen, QStringLiteral("What becomes of each line"));
        QCoreApplication::processEvents();
    }
    void copy(const QString& text) { QGuiApplication::clipboard()->setText(text); }
    void pasteKey() {
        QTest::keyClick(&m_screen, Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
        QCoreApplication::processEvents();
    }
    [[nodiscard]] qsizetype entries() { return m_family.casebook()->records().entries.size(); }
    [[nodiscard]] QPushButton* add() const {
        for (auto* button : m_panel->findChildren<QPushButton*>())
            if (button->text().startsWith(QStringLiteral("Add th")))
                return button;
        return nullptr;
    }
    [[nodiscard]] ProblemLine* problem() const { return m_panel->findChild<ProblemLine*>(); }

    FamilyWorkbook m_family;
    LogScreen m_screen;
    ImportPanel* m_panel = nullptr;
    QPlainTextEdit* m_sheet = nullptr;
    QTableView* m_table = nullptr;
};

const auto sheet = QStringLiteral("day\tmember\tamount\n"
                                  "2026-11-02\tAna\t4 cups\n"
                                  "2026-11-02\tZoe\t1\n"
                                  "2026-11-03\tBo\tmissed\n");

} // namespace

TEST_F(ImportPanelTest, PastedLinesAreShownBeforeTheyAreAdded) {
    copy(sheet);
    pasteKey();
    ASSERT_TRUE(m_panel->isVisible());
    EXPECT_EQ(m_table->model()->rowCount(), 3);
    EXPECT_EQ(entries(), 0) << "a dry run";
    ASSERT_NE(add(), nullptr);
    EXPECT_EQ(add()->text().remove(u'&'), QStringLiteral("Add these 2 lines"));
    // The refused line is mended in the sheet itself.
    m_sheet->setPlainText(
        m_sheet->toPlainText().replace(QStringLiteral("Zoe"), QStringLiteral("Cy")));
    add()->click();
    EXPECT_EQ(entries(), 3);
    EXPECT_FALSE(m_panel->isVisible()) << "back to the day";
    EXPECT_EQ(m_screen.day(), QDate(2026, 11, 3)) << "the latest of the sheet";
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(entries(), 0) << "one action";
}

TEST_F(ImportPanelTest, LinesThatAreThereAreNotAddedAgain) {
    copy(sheet);
    pasteKey();
    add()->click();
    EXPECT_EQ(entries(), 2);
    ASSERT_TRUE(m_panel->isVisible()) << "the refused line is still to be mended";
    EXPECT_EQ(m_table->model()->index(0, 1).data().toString(), QStringLiteral("is there already"));
    EXPECT_EQ(m_table->model()->index(1, 1).data().toString(), QStringLiteral("refused"));
    EXPECT_FALSE(add()->isEnabled());
}

TEST_F(ImportPanelTest, FileIsOpenedAndABadOneSaid) {
    const QString name = m_family.file(QStringLiteral("sheet.csv"));
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("day;member;amount\n2026-11-03;Ana;1,5 cups\n");
    file.close();
    m_family.desk().fileAnswer = name;
    QTest::keyClick(&m_screen, Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(m_table->model()->rowCount(), 1);
    EXPECT_EQ(add()->text().remove(u'&'), QStringLiteral("Add this line"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("day;member;amount\n2026-11-03;An\xe9;1\n"); // Latin-1
    file.close();
    byText<QPushButton>(*m_panel, QStringLiteral("Open a file"))->click();
    EXPECT_TRUE(problem()->isVisible());
    EXPECT_TRUE(problem()->sentence().contains(QStringLiteral("UTF-8")));
    m_family.desk().fileAnswer = m_family.file(QStringLiteral("none.csv"));
    byText<QPushButton>(*m_panel, QStringLiteral("Open a file"))->click();
    EXPECT_TRUE(problem()->sentence().contains(QStringLiteral("none.csv")));
    EXPECT_TRUE(m_family.desk().told.isEmpty());
}

TEST_F(ImportPanelTest, NothingToPasteIsSaidAndEscapeLeaves) {
    copy(QString());
    pasteKey();
    EXPECT_TRUE(problem()->isVisible());
    QTest::keyClick(m_sheet, Qt::Key_Escape);
    EXPECT_FALSE(m_panel->isVisible());
    copy(QStringLiteral("hello"));
    pasteKey();
    EXPECT_TRUE(problem()->sentence().contains(QStringLiteral("hello")));
    EXPECT_EQ(m_table->model()->rowCount(), 0);
}

} // namespace ladlework::ui
