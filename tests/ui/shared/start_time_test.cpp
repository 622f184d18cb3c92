#include "ui/shared/start_time.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

struct TimeCase {
    const char* typed;
    QTime time; ///< null: not understood
};

class StartTimeTest : public ::testing::TestWithParam<TimeCase> {};

} // namespace

TEST_P(StartTimeTest, ReadsWhatPeopleType) {
    const Result<QTime> read = parseStartTime(QString::fromUtf8(GetParam().typed));
    if (!GetParam().time.isValid()) {
        ASSERT_FALSE(read) << GetParam().typed;
        EXPECT_EQ(read.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(read.error().sentence.contains(QString::fromUtf8(GetParam().typed).trimmed()));
        return;
    }
    ASSERT_TRUE(read) << GetParam().typed;
    EXPECT_EQ(*read, GetParam().time) << GetParam().typed;
}

INSTANTIATE_TEST_SUITE_P(
    Cases, StartTimeTest,
    ::testing::Values(TimeCase{"9", QTime(9, 0)}, TimeCase{"9:30", QTime(9, 30)},
                      TimeCase{" 09:30 ", QTime(9, 30)}, TimeCase{"930", QTime(9, 30)},
                      TimeCase{"9.05", QTime(9, 5)}, TimeCase{"9h15", QTime(9, 15)},
                      TimeCase{"9am", QTime(9, 0)}, TimeCase{"9 A.M.", QTime(9, 0)},
                      TimeCase{"2:30 pm", QTime(14, 30)}, TimeCase{"2:30p", QTime(14, 30)},
                      TimeCase{"14:00", QTime(14, 0)}, TimeCase{"1430", QTime(14, 30)},
                      TimeCase{"3", QTime(15, 0)}, TimeCase{"130", QTime(13, 30)},
                      TimeCase{"6", QTime(6, 0)}, TimeCase{"05:00", QTime(5, 0)},
                      TimeCase{"noon", QTime(12, 0)}, TimeCase{"12", QTime(12, 0)},
                      TimeCase{"12 am", QTime(0, 0)}, TimeCase{"12 pm", QTime(12, 0)},
                      TimeCase{"0:30", QTime(0, 30)}, TimeCase{"23:59", QTime(23, 59)},
                      TimeCase{"24:00", QTime()}, TimeCase{"9:60", QTime()},
                      TimeCase{"13 pm", QTime()}, TimeCase{"0 am", QTime()},
                      TimeCase{"9:3", QTime()}, TimeCase{"-9", QTime()}, TimeCase{"soon", QTime()},
                      TimeCase{"9 9 9", QTime()}, TimeCase{"99999", QTime()}));

TEST_F(StartTimeTest, BlankMeansNoStart) {
    for (const QString& blank : {QString(), QStringLiteral("  ")}) {
        const Result<QTime> read = parseStartTime(blank);
        ASSERT_TRUE(read);
        EXPECT_FALSE(read->isValid());
    }
    EXPECT_TRUE(printStartTime(QTime()).isEmpty());
}

TEST_F(StartTimeTest, WhatIsPrintedReadsBack) {
    const QLocale before;
    for (const QLocale& locale :
         {QLocale(QLocale::English, QLocale::UnitedStates),
          QLocale(QLocale::English, QLocale::UnitedKingdom), QLocale(QLocale::Czech)}) {
        QLocale::setDefault(locale);
        for (int minutes = 0; minutes < 24 * 60; minutes += 5) {
            const QTime time = QTime(0, 0).addSecs(minutes * 60);
            const Result<QTime> back = parseStartTime(printStartTime(time));
            ASSERT_TRUE(back) << printStartTime(time).toStdString();
            EXPECT_EQ(*back, time) << printStartTime(time).toStdString();
        }
    }
    QLocale::setDefault(before);
}

} // namespace ladlework::ui
