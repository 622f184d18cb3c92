#include "ui/shell/practice_page.h"

#include "ui/shared/text_field.h"
#include "ui/shared/workbook_fixture.h"

#include <QComboBox>
#include <QSpinBox>
#include <QTest>

namespace ladlework::ui {

class PracticePageTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_page = std::make_unique<PracticePage>(*m_context, nullptr);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
    }
    void TearDown() override { m_page.reset(); }
    std::unique_ptr<PracticePage> m_page;
};

TEST_F(PracticePageTest, everyChangeIsMadeAtOnceAndCanBeUndone) {
    auto* name = m_page->findChildren<TextField*>().first();
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Kettle Lane"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(m_workbook->practice().practice().name, QStringLiteral("Kettle Lane"));
    EXPECT_EQ(m_workbook->history().nextUndo()->sentence,
              QStringLiteral("Changed the practice's name"));
    auto* days = m_page->findChildren<QSpinBox*>().first();
    days->setValue(2);
    EXPECT_EQ(m_workbook->practice().practice().fridgeDays, 2);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(days->value(), 3);
    EXPECT_TRUE(m_desk.told.isEmpty());
}

TEST_F(PracticePageTest, refrigeratorDaysCannotBeLoosenedBeyondTheChart) {
    auto* days = m_page->findChildren<QSpinBox*>().first();
    // FoodSafety.gov cold storage chart: soups and stews 3 to 4 days.
    days->setValue(9);
    EXPECT_EQ(days->value(), 4);
    EXPECT_EQ(m_workbook->practice().practice().fridgeDays, 4);
}

TEST_F(PracticePageTest, anUnusableEmergencyNumberIsToldAndTakenBack) {
    auto* number = m_page->findChildren<TextField*>().last();
    const QString before = number->text();
    number->setFocus();
    number->selectAll();
    QTest::keyClicks(number, QStringLiteral("ask next door"));
    QTest::keyClick(number, Qt::Key_Return);
    EXPECT_EQ(m_desk.told.size(), 1);
    EXPECT_EQ(number->text(), before);
    EXPECT_EQ(m_workbook->practice().practice().emergencyNumber, before);
}

} // namespace ladlework::ui
