#include "calendar/zone_component.h"

#include <gtest/gtest.h>

namespace ladlework::calendar {
namespace {

QByteArray written(const QByteArray& zone, QDate from, QDate to) {
    const Component component =
        zoneComponent(QTimeZone(zone), QDateTime(from, QTime(0, 0), Qt::UTC),
                      QDateTime(to, QTime(0, 0), Qt::UTC));
    char* text = icalcomponent_as_ical_string_r(component.get());
    QByteArray bytes(text);
    icalmemory_free_buffer(text);
    return bytes.replace("\r\n", "\n");
}

TEST(ZoneComponentTest, hasTheChangesOfItsDays) {
    // RFC 5545, section 3.6.5: the standard's own example of New York since 2007, with one
    // observance for each change in place of its recurrence.
    EXPECT_EQ(written("America/New_York", QDate(2007, 6, 1), QDate(2008, 6, 1)).toStdString(),
              "BEGIN:VTIMEZONE\nTZID:America/New_York\n"
              "BEGIN:DAYLIGHT\nDTSTART:20070311T020000\nTZOFFSETFROM:-0500\nTZOFFSETTO:-0400\n"
              "TZNAME:EDT\nEND:DAYLIGHT\n"
              "BEGIN:STANDARD\nDTSTART:20071104T020000\nTZOFFSETFROM:-0400\nTZOFFSETTO:-0500\n"
              "TZNAME:EST\nEND:STANDARD\n"
              "BEGIN:DAYLIGHT\nDTSTART:20080309T020000\nTZOFFSETFROM:-0500\nTZOFFSETTO:-0400\n"
              "TZNAME:EDT\nEND:DAYLIGHT\nEND:VTIMEZONE\n");
}

TEST(ZoneComponentTest, aZoneWithoutChangesHasOneObservance) {
    for (const auto& [zone, offset] : {std::pair<const char*, const char*>("Asia/Kolkata", "+0530"),
                                       {"Etc/GMT+5", "-0500"},
                                       {"UTC+03:30", "+0330"},
                                       {"Asia/Kathmandu", "+0545"}}) {
        const QByteArray text = written(zone, QDate(2026, 1, 1), QDate(2027, 1, 1));
        EXPECT_EQ(text.count("BEGIN:STANDARD"), 1) << text.constData();
        EXPECT_EQ(text.count("BEGIN:DAYLIGHT"), 0) << text.constData();
        EXPECT_TRUE(text.contains(QByteArray("TZOFFSETTO:").append(offset))) << text.constData();
    }
}

TEST(ZoneComponentTest, knowsUtcByWhateverName) {
    for (const char* zone : {"UTC", "Etc/UTC", "UTC+00:00"})
        EXPECT_TRUE(isUtc(QTimeZone(zone))) << zone;
    // Greenwich winter time is not UTC: London had other clocks, and has in summer.
    for (const char* zone : {"Europe/London", "UTC+01:00", "Etc/GMT+5"})
        EXPECT_FALSE(isUtc(QTimeZone(zone))) << zone;
}

} // namespace
} // namespace ladlework::calendar
