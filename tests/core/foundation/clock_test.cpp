#include "foundation/clock.h"

#include <gtest/gtest.h>

namespace ladlework {
namespace {

QDateTime utc(int year, int month, int day, int hour, int minute, int second = 0) {
    return {QDate(year, month, day), QTime(hour, minute, second), Qt::UTC};
}

TEST(ClockTest, FixedClockStandsWhereItIsPut) {
    FixedClock clock(utc(2024, 5, 1, 12, 0));
    EXPECT_EQ(clock.nowUtc(), utc(2024, 5, 1, 12, 0));
    clock.set(utc(2025, 1, 1, 0, 0));
    EXPECT_EQ(clock.nowUtc(), utc(2025, 1, 1, 0, 0));
}

TEST(ClockTest, SystemClockTellsTheTimeInUtc) {
    const QDateTime before = QDateTime::currentDateTimeUtc();
    const QDateTime now = SystemClock().nowUtc();
    EXPECT_EQ(now.timeSpec(), Qt::UTC);
    EXPECT_GE(now, before);
    EXPECT_LE(now, QDateTime::currentDateTimeUtc());
}

struct DayCase {
    QDateTime utcTime;
    const char* zone;
    QDate day;
};

/// The day turns at local midnight, also on the days the clocks change. New York changed on
/// 10 March 2024 at 07:00 UTC and on 3 November 2024 at 06:00 UTC (IANA time zone database).
TEST(ClockTest, TodayTurnsAtLocalMidnight) {
    const DayCase cases[] = {
        {utc(2024, 1, 1, 4, 59, 59), "America/New_York", {2023, 12, 31}},
        {utc(2024, 1, 1, 5, 0), "America/New_York", {2024, 1, 1}},
        {utc(2024, 7, 1, 3, 59, 59), "America/New_York", {2024, 6, 30}},
        {utc(2024, 7, 1, 4, 0), "America/New_York", {2024, 7, 1}},
        {utc(2024, 3, 10, 4, 59, 59), "America/New_York", {2024, 3, 9}},
        {utc(2024, 3, 10, 7, 0), "America/New_York", {2024, 3, 10}},
        {utc(2024, 3, 11, 3, 59, 59), "America/New_York", {2024, 3, 10}},
        {utc(2024, 11, 4, 4, 59, 59), "America/New_York", {2024, 11, 3}},
        {utc(2024, 11, 4, 5, 0), "America/New_York", {2024, 11, 4}},
        {utc(2024, 2, 29, 23, 59, 59), "UTC", {2024, 2, 29}},
        {utc(2024, 2, 29, 12, 0), "Pacific/Kiritimati", {2024, 3, 1}},
    };
    for (const DayCase& c : cases) {
        SCOPED_TRACE(c.utcTime.toString(Qt::ISODate).toStdString() + " in " + c.zone);
        const QTimeZone zone{QByteArray(c.zone)};
        ASSERT_TRUE(zone.isValid());
        EXPECT_EQ(FixedClock(c.utcTime).today(zone), c.day);
    }
}

} // namespace
} // namespace ladlework
