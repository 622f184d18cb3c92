#include "ui/week/day_hours_bar.h"

#include "ui/shared/time_edit.h"
#include "ui/week/free_hours_row.h"
#include "ui/week/hours_words.h"

#include <QAction>
#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

const QDate monday(2026, 11, 2);

class DayHoursBarTest : public ::testing::Test {
protected:
    DayHoursBarTest() {
        m_shown.day = monday;
        m_shown.hours = {{QTime(9, 0), quantity::Duration::fromHours(6), 1}};
        m_shown.longest = quantity::Duration::fromHours(5);
        m_bar.showDay(m_shown);
    }
    [[nodiscard]] static QList<week::FreeHours> hoursOf(const QSignalSpy& spy) {
        return spy.last().at(1).value<QList<week::FreeHours>>();
    }
    QAction m_lock{QStringLiteral("Lock the day"), nullptr};
    DayHoursShown m_shown;
    DayHoursBar m_bar{&m_lock};
    QSignalSpy m_wanted{&m_bar, &DayHoursBar::hoursWanted};
};

} // namespace

TEST_F(DayHoursBarTest, EachFieldIsOneWish) {
    FreeHoursRow* row = m_bar.rows().first();
    row->from()->selectAll();
    QTest::keyClicks(row->from(), QStringLiteral("2 pm"));
    QTest::keyClick(row->from(), Qt::Key_Return);
    ASSERT_EQ(m_wanted.size(), 1);
    EXPECT_EQ(hoursOf(m_wanted).first().from, QTime(14, 0));
    EXPECT_EQ(m_wanted.first().first().toDate(), monday);
    row->length()->selectAll();
    QTest::keyClicks(row->length(), QStringLiteral("4 h"));
    QTest::keyClick(row->length(), Qt::Key_Return);
    ASSERT_EQ(m_wanted.size(), 2);
    EXPECT_EQ(hoursOf(m_wanted).first().length, quantity::Duration::fromHours(4));
    QTest::keyClick(row->pots(), Qt::Key_Down);
    ASSERT_EQ(m_wanted.size(), 3);
    EXPECT_EQ(hoursOf(m_wanted).first().pots, 2);
}

TEST_F(DayHoursBarTest, WhatIsNoTimeIsRefusedInWords) {
    FreeHoursRow* row = m_bar.rows().first();
    row->from()->selectAll();
    QTest::keyClicks(row->from(), QStringLiteral("soon"));
    EXPECT_TRUE(row->from()->problemSentence().contains(QStringLiteral("soon")));
    QTest::keyClick(row->from(), Qt::Key_Return);
    EXPECT_TRUE(m_wanted.isEmpty());
}

TEST_F(DayHoursBarTest, HoursAreAddedAndTakenAway) {
    QTest::keyClick(m_bar.addButton(), Qt::Key_Space);
    ASSERT_EQ(m_wanted.size(), 1);
    EXPECT_EQ(hoursOf(m_wanted).size(), 2);
    EXPECT_EQ(hoursOf(m_wanted).last().length, m_shown.longest);
    QTest::keyClick(m_bar.noneButton(), Qt::Key_Space);
    EXPECT_TRUE(hoursOf(m_wanted).isEmpty());
}

TEST_F(DayHoursBarTest, OffersOnlyWhatMakesSense) {
    EXPECT_FALSE(m_bar.usualButton()->isVisibleTo(&m_bar)) << "it is as usual";
    m_shown.own = true;
    m_shown.hours.clear();
    m_bar.showDay(m_shown);
    EXPECT_TRUE(m_bar.usualButton()->isVisibleTo(&m_bar));
    EXPECT_FALSE(m_bar.noneButton()->isVisibleTo(&m_bar));
    EXPECT_FALSE(m_bar.rows().first()->isVisibleTo(&m_bar));
    m_shown.past = true;
    m_bar.showDay(m_shown);
    EXPECT_FALSE(m_bar.addButton()->isVisibleTo(&m_bar));
}

TEST_F(DayHoursBarTest, HoursInWords) {
    EXPECT_EQ(hoursInShort({}), QStringLiteral("no time"));
    EXPECT_EQ(hoursInShort(m_shown.hours), QStringLiteral("6 h free"));
    m_shown.hours << week::FreeHours{QTime(), quantity::Duration::fromHours(2), 2};
    EXPECT_EQ(hoursInShort(m_shown.hours), QStringLiteral("8 h free, 2 pots"));
    EXPECT_EQ(hoursInWords(m_shown.hours),
              QStringLiteral("free from 9:00 AM for 6 h; for 2 h, 2 pots at once"));
}

} // namespace ladlework::ui
