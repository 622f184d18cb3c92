#include "ui/shared/time_edit.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class TimeEditTest : public ::testing::Test {
protected:
    TimeEditTest() {
        m_edit.show();
        m_edit.setFocus();
        QCoreApplication::processEvents();
    }
    void type(const QString& text) {
        m_edit.selectAll();
        QTest::keyClick(&m_edit, Qt::Key_Delete);
        QTest::keyClicks(&m_edit, text);
        QTest::keyClick(&m_edit, Qt::Key_Return);
    }
    TimeEdit m_edit;
};

} // namespace

TEST_F(TimeEditTest, TakesATimeAsPeopleTypeItAndTellsOnce) {
    m_edit.setTime(QTime(9, 0));
    const QSignalSpy told(&m_edit, &QuantityEdit::valueCommitted);
    type(QStringLiteral("2:30 pm"));
    EXPECT_EQ(m_edit.time(), QTime(14, 30));
    EXPECT_EQ(told.size(), 1);
    type(QStringLiteral("14:30"));
    EXPECT_EQ(told.size(), 1) << "the same time is no change";
}

TEST_F(TimeEditTest, AnEmptyFieldIsNoTime) {
    m_edit.setTime(QTime(9, 0));
    type(QString());
    EXPECT_FALSE(m_edit.time().isValid());
    EXPECT_TRUE(m_edit.isGood());
}

TEST_F(TimeEditTest, WhatIsNoTimeIsMarkedAndNotTaken) {
    m_edit.setTime(QTime(9, 0));
    const QSignalSpy told(&m_edit, &QuantityEdit::valueCommitted);
    m_edit.selectAll();
    QTest::keyClicks(&m_edit, QStringLiteral("25:00"));
    EXPECT_FALSE(m_edit.isGood());
    EXPECT_TRUE(m_edit.problemSentence().contains(QStringLiteral("25:00")));
    QTest::keyClick(&m_edit, Qt::Key_Escape);
    EXPECT_EQ(m_edit.time(), QTime(9, 0));
    EXPECT_EQ(told.size(), 0);
}

} // namespace ladlework::ui
