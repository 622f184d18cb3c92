#include "core/calendar/calendar_fixture.h"

namespace ladlework::calendar {
namespace {

using CookingEntriesTest = CalendarFixture;
using namespace hand_made;

// The legs simmer 2 h 30 min from 9:00. The extras table puts onion in 90 minutes before the end
// and peppercorns 60; garlic goes in with the heat off.
TEST_F(CookingEntriesTest, aCookingHasItsStepsAsTheyFallDue) {
    plan().placements = {{monday, legs, QTime(9, 0)}};
    struct Case {
        const char* title;
        const char* start;
        const char* end;
        int alarm; ///< seconds from the start
    };
    // Limits of resources/reference/keeping.csv, counted from turning off the heat at 11:30: 70 °F
    // and the refrigerator within 2 h, 41 °F within 6 h (FDA Food Code 3-501.14, USDA FSIS).
    const QList<Case> cases{
        {"Cook Chicken legs", "Mon 09:00", "Mon 11:30", -900},
        {"Chicken legs: add onion", "Mon 10:00", "Mon 10:05", 0},
        {"Chicken legs: add peppercorns, whole", "Mon 10:30", "Mon 10:35", 0},
        {"Chicken legs: turn off the heat and strain", "Mon 11:30", "Mon 11:35", 0},
        {"Chicken legs: is it down to 70 °F (21 °C)?", "Mon 13:00", "Mon 13:30", 0},
        {"Chicken legs: into the refrigerator by 1:30 PM", "Mon 13:00", "Mon 13:30", 0},
        {"Chicken legs: is it down to 41 °F (5 °C)?", "Mon 17:00", "Mon 17:30", 0},
    };
    for (const Case& one : cases) {
        const Entry entry = titled(QString::fromUtf8(one.title));
        EXPECT_EQ(local(entry.start), QLatin1String(one.start)) << one.title;
        EXPECT_EQ(local(entry.end), QLatin1String(one.end)) << one.title;
        EXPECT_EQ(entry.alarms, (QList<Alarm>{{one.alarm, entry.title}})) << one.title;
        EXPECT_EQ(entry.busy, entry.title.startsWith(QStringLiteral("Cook "))) << one.title;
    }
    const Entry last = titled(QStringLiteral("Last day for Chicken legs"));
    EXPECT_EQ(last.day, monday.addDays(records.practice.fridgeDays));
    EXPECT_EQ(last.alarms, (QList<Alarm>{{8 * 3600, last.title}}));
    EXPECT_EQ(entries().size(), cases.size() + 1);
}

TEST_F(CookingEntriesTest, theDetailsHoldTheWholeCookingAndWhoMayNot) {
    records.pots[1].note = QStringLiteral("Ask the butcher to saw the bones.");
    const QString text = titled(QStringLiteral("Cook Beef shank")).details;
    for (const char* part :
         {"5:30 PM: Put in", "quarts of water", "10:30 PM: Turn off the heat. Stir in garlic.",
          "Strain out: meat and bones", "Into the refrigerator by 12:30 AM, Friday.",
          "Stock to expect: about ", "Not for Ben", "Not for Leo", "saw the bones."})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in\n" << qPrintable(text);
}

TEST_F(CookingEntriesTest, goesOnAfterMidnight) {
    plan().placements = {{monday, shank, QTime(22, 0)}};
    EXPECT_EQ(local(titled(QStringLiteral("Cook Beef shank")).end), QStringLiteral("Tue 03:00"));
    const Entry off = titled(QStringLiteral("Beef shank: turn off the heat"));
    EXPECT_EQ(local(off.start), QStringLiteral("Tue 03:00"));
    EXPECT_TRUE(
        titles().contains(QStringLiteral("Beef shank: into the refrigerator by 5:00 AM, Tuesday")));
}

// Five hours of simmer are five hours, whatever the clocks do. In the United States they went from
// 2:00 to 3:00 on 8 March 2026 and back from 2:00 to 1:00 on 1 November.
TEST_F(CookingEntriesTest, simmersAsLongAsItMustWhenTheClocksChange) {
    struct Case {
        QDate day;
        const char* zone;
        QTime start;
        const char* startUtc;
        const char* end;
    };
    const QList<Case> cases{
        {QDate(2026, 3, 7), "America/New_York", QTime(23, 0), "2026-03-08T04:00:00Z", "Sun 05:00"},
        {QDate(2026, 3, 8), "America/New_York", QTime(1, 0), "2026-03-08T06:00:00Z", "Sun 07:00"},
        // Shown by no clock: RFC 5545, section 3.3.5, takes the offset before the gap.
        {QDate(2026, 3, 8), "America/New_York", QTime(2, 30), "2026-03-08T07:30:00Z", "Sun 08:30"},
        {QDate(2026, 10, 31), "America/New_York", QTime(23, 0), "2026-11-01T03:00:00Z",
         "Sun 03:00"},
        // Shown twice: the first of the two.
        {QDate(2026, 11, 1), "America/New_York", QTime(1, 30), "2026-11-01T05:30:00Z", "Sun 05:30"},
        // Sydney puts the clocks back on 5 April 2026 at 3:00 and forward on 4 October at 2:00.
        {QDate(2026, 4, 4), "Australia/Sydney", QTime(23, 0), "2026-04-04T12:00:00Z", "Sun 03:00"},
        {QDate(2026, 10, 3), "Australia/Sydney", QTime(23, 0), "2026-10-03T13:00:00Z", "Sun 05:00"},
        // A leap day, and the turn of a year.
        {QDate(2028, 2, 28), "America/New_York", QTime(22, 0), "2028-02-29T03:00:00Z", "Tue 03:00"},
        {QDate(2026, 12, 31), "Europe/London", QTime(22, 0), "2026-12-31T22:00:00Z", "Fri 03:00"},
    };
    for (const Case& one : cases) {
        records.family.zone = QTimeZone(one.zone);
        options.from = week::weekStart(one.day);
        plan().start = options.from;
        plan().placements = {{one.day, shank, one.start}};
        const Entry cooking = titled(QStringLiteral("Cook Beef shank"));
        EXPECT_EQ(cooking.start.toString(Qt::ISODate).toStdString(), one.startUtc);
        EXPECT_EQ(cooking.start.secsTo(cooking.end), 5 * 3600);
        EXPECT_EQ(local(cooking.end).toStdString(), one.end) << one.startUtc;
    }
}

TEST_F(CookingEntriesTest, withoutAStartItIsAWholeDayWithItsSteps) {
    plan().placements = {{monday, legs, QTime()}};
    const Entry entry = titled(QStringLiteral("Cook Chicken legs"));
    EXPECT_EQ(entry.day, monday);
    EXPECT_FALSE(entry.start.isValid());
    EXPECT_EQ(entries().size(), 2) << "the cooking and its last day";
    for (const char* part :
         {"Start: Put in", "After 1 h: Add onion.", "After 2 h 30 min: Turn off the heat.",
          "Into the refrigerator within 2 h of turning off the heat",
          "Down to 70 °F (21 °C) within 2 h, and to 41 °F (5 °C) within 6 h."})
        EXPECT_TRUE(entry.details.contains(QString::fromUtf8(part))) << part << " in\n"
                                                                     << qPrintable(entry.details);
}

TEST_F(CookingEntriesTest, theMorningOfAWholeDayIsEightByTheClocksOfThatDay) {
    // 8:00 is 7 hours after midnight on the day of the gap and 9 on the day of the repeated hour.
    for (const auto& [day, hours] : {std::pair(QDate(2026, 3, 8), 7), {QDate(2026, 11, 1), 9}}) {
        options.from = week::weekStart(day);
        plan().start = options.from;
        plan().placements = {{day, legs, QTime()}};
        EXPECT_EQ(titled(QStringLiteral("Cook Chicken legs")).alarms.first().secondsFromStart,
                  hours * 3600);
    }
}

TEST_F(CookingEntriesTest, usesTheFamilysMeasures) {
    records.family.measures = quantity::MeasureSystem::Metric;
    plan().placements = {{monday, legs, QTime(9, 0)}};
    EXPECT_TRUE(titles().contains(QStringLiteral("Chicken legs: into the refrigerator by 13:30")));
    EXPECT_TRUE(titles().contains(QString::fromUtf8("Chicken legs: is it down to 21 °C (70 °F)?")));
}

TEST_F(CookingEntriesTest, leavesOutAPotThatCannotBeReckoned) {
    records.pots[0].cuts[0].cut = QStringLiteral("no-such-cut");
    EXPECT_TRUE(titles().filter(QStringLiteral("Chicken legs")).isEmpty());
    plan().placements[1].pot = PotId{999};
    EXPECT_TRUE(entries().isEmpty());
}

TEST_F(CookingEntriesTest, aCookingOfTheDaysBeforeStillHasItsLastDay) {
    plan().placements = {{monday.addDays(6), legs, QTime(9, 0)}};
    options.from = monday.addDays(7);
    EXPECT_EQ(titles(), QStringList(QStringLiteral("Last day for Chicken legs")));
    options.from = monday.addDays(14);
    EXPECT_TRUE(entries().isEmpty());
}

} // namespace
} // namespace ladlework::calendar
