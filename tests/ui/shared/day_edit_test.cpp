#include "ui/shared/day_edit.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace ladlework::ui {

class DayEditTest : public ::testing::Test {
protected:
    DayEditTest() {
        auto* row = new QHBoxLayout(&m_window);
        row->addWidget(&m_edit);
        row->addWidget(&m_other);
        m_edit.setToday(m_today);
        m_edit.setRange({}, m_today);
        m_edit.setDay(m_today);
        m_window.show();
        QApplication::setActiveWindow(&m_window);
        m_edit.setFocus();
        m_edit.selectAll();
    }

    const QDate m_today{2026, 11, 4};
    QWidget m_window;
    DayEdit m_edit;
    QLineEdit m_other;
};

TEST_F(DayEditTest, stepsByKeysInsideItsRange) {
    const QSignalSpy edited(&m_edit, &QuantityEdit::valueEdited);
    QTest::keyClick(&m_edit, Qt::Key_Down);
    EXPECT_EQ(m_edit.day(), QDate(2026, 11, 3));
    QTest::keyClick(&m_edit, Qt::Key_PageDown);
    EXPECT_EQ(m_edit.day(), QDate(2026, 10, 27));
    QTest::keyClick(&m_edit, Qt::Key_PageUp);
    QTest::keyClick(&m_edit, Qt::Key_Up);
    EXPECT_EQ(m_edit.day(), m_today);
    EXPECT_EQ(edited.count(), 4);
    QTest::keyClick(&m_edit, Qt::Key_Up);
    EXPECT_EQ(m_edit.day(), m_today) << "tomorrow is outside";
}

TEST_F(DayEditTest, typedDaysCommitOnEnter) {
    const QSignalSpy committed(&m_edit, &QuantityEdit::valueCommitted);
    QTest::keyClicks(&m_edit, QStringLiteral("mon"));
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(committed.count(), 1);
    EXPECT_EQ(m_edit.day(), QDate(2026, 11, 2));
    EXPECT_EQ(m_edit.text(), QStringLiteral("Mon, Nov 2, 2026"));
}

TEST_F(DayEditTest, aDayOutsideTheRangeIsExplained) {
    QTest::keyClicks(&m_edit, QStringLiteral("tomorrow"));
    EXPECT_FALSE(m_edit.isGood());
    EXPECT_TRUE(m_edit.problemSentence().contains(QStringLiteral("Nov 4, 2026")))
        << m_edit.problemSentence().toStdString();
    QTest::keyClick(&m_edit, Qt::Key_Tab);
    EXPECT_EQ(m_edit.day(), m_today);
}

TEST_F(DayEditTest, emptyOnlyWhereItMayBe) {
    QTest::keyClick(&m_edit, Qt::Key_Backspace);
    EXPECT_FALSE(m_edit.isGood());
    QTest::keyClick(&m_edit, Qt::Key_Escape);
    m_edit.setMayBeEmpty(true);
    m_edit.selectAll();
    QTest::keyClick(&m_edit, Qt::Key_Backspace);
    EXPECT_TRUE(m_edit.isGood());
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_TRUE(m_edit.day().isNull());
    EXPECT_TRUE(m_edit.text().isEmpty());
}

} // namespace ladlework::ui
