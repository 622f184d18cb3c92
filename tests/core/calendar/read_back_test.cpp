// What is written is read back by the icalendar module of Python, with the zones of zoneinfo.
#include "core/calendar/calendar_reader.h"
#include "foundation/local_moment.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QRandomGenerator>

#include <gtest/gtest.h>

namespace ladlework::calendar {
namespace {

QList<QString> oddTexts() {
    return {QStringLiteral("Plain words"),
            QStringLiteral("One, two; three: \"four\" \\ five"),
            QStringLiteral("First line\nsecond line\n\nfourth line"),
            QStringLiteral("  blanks before and after  "),
            QString::fromUtf8("Emoji \xF0\x9F\x8D\xB2 and a family "
                              "\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x91\xA7 together"),
            QString::fromUtf8("\xD7\x9E\xD7\xA8\xD7\xA7 \xD7\xA2\xD7\x95\xD7\xA3, 2 \xD7\xA9"),
            QString::fromUtf8("\xD8\xB4\xD9\x88\xD8\xB1\xD8\xA8\xD8\xA9; 3"),
            QString::fromUtf8("e\xCC\x81 combined, \xC3\xA9 composed, \xE2\x82\xAC 5"),
            QString(200, QLatin1Char('w')),
            QStringLiteral("word, ").repeated(40).trimmed(),
            QString(200, QChar(0x20ac)),
            QStringLiteral("BEGIN:VALARM\nEND:VEVENT\nEND:VCALENDAR"),
            QStringLiteral("tab\there; percent 5 %; caret ^n")};
}

TEST(ReadBackTest, losesNothingOfOddTexts) {
    QList<Entry> entries;
    for (const QString& text : oddTexts()) {
        Entry entry = timedEntry(text, QDateTime(QDate(2026, 11, 2), QTime(14, 0), Qt::UTC),
                                 "America/New_York");
        entry.uid = QStringLiteral("uid-%1").arg(entries.size());
        entry.details = text + QLatin1Char('\n') + text;
        entry.busy = entries.size() % 2 == 0;
        entry.alarms = {{-900, text}, {0, text}, {3601, text}};
        entries.append(entry);
    }
    for (const QString& text : oddTexts())
        expectSame(entries, readBack(entries, text));
    const QJsonObject read = readBack(entries);
    EXPECT_EQ(read.value(QLatin1String("zone")).toString(), QStringLiteral("America/New_York"));
}

TEST(ReadBackTest, keepsWholeDaysALeapDayAndTheTurnOfTheYear) {
    QList<Entry> entries;
    for (const QDate day : {QDate(2028, 2, 29), QDate(2026, 12, 31), QDate(2027, 2, 28),
                            QDate(2026, 3, 8), QDate(2026, 11, 1)}) {
        Entry entry;
        entry.uid = day.toString(Qt::ISODate);
        entry.title = QStringLiteral("Whole day");
        entry.day = day;
        entry.zone = QTimeZone("America/New_York");
        entry.alarms = {{8 * 3600, entry.title}};
        entries.append(entry);
    }
    expectSame(entries, readBack(entries));
}

/// A moment in a zone and what its clocks then show.
struct Change {
    const char* zone;
    QDateTime moment; ///< UTC, the change of the clocks itself
};

QDateTime utc(int year, int month, int day, int hour, int minute = 0) {
    return {QDate(year, month, day), QTime(hour, minute), Qt::UTC};
}

/// Changes of the clocks from the published tables of each country's law, in UTC.
QList<Change> changes() {
    return {{"America/New_York", utc(2026, 3, 8, 7)},     // US: second Sunday of March, 2:00
            {"America/New_York", utc(2026, 11, 1, 6)},    // first Sunday of November, 2:00
            {"Europe/Berlin", utc(2026, 3, 29, 1)},       // EU: last Sunday of March, 1:00 UTC
            {"Europe/Berlin", utc(2026, 10, 25, 1)},      // last Sunday of October, 1:00 UTC
            {"Europe/Dublin", utc(2026, 10, 25, 1)},      // the law calls winter the exception
            {"Australia/Sydney", utc(2026, 4, 4, 16)},    // first Sunday of April, 3:00
            {"Australia/Sydney", utc(2026, 10, 3, 16)},   // first Sunday of October, 2:00
            {"Pacific/Auckland", utc(2026, 4, 4, 14)},    // first Sunday of April, 3:00
            {"Pacific/Auckland", utc(2026, 9, 26, 14)},   // last Sunday of September, 2:00
            {"America/Santiago", utc(2026, 4, 5, 3)},     // at midnight
            {"Australia/Lord_Howe", utc(2026, 4, 4, 15)}, // by half an hour
            {"Asia/Kolkata", utc(2026, 6, 1, 0)},         // none
            {"America/Sao_Paulo", utc(2026, 6, 1, 0)},    // none any more
            {"Asia/Kathmandu", utc(2026, 6, 1, 0)},       // 5:45
            {"Etc/GMT+5", utc(2026, 6, 1, 0)},
            {"UTC", utc(2026, 6, 1, 0)},
            {"America/New_York", utc(2028, 2, 29, 12)}};
}

TEST(ReadBackTest, tellsEveryMomentAroundAChangeOfTheClocks) {
    QList<Entry> entries;
    for (const Change& change : changes()) {
        for (int quarters = -12; quarters <= 12; ++quarters) {
            Entry entry =
                timedEntry(QStringLiteral("%1 %2 %3")
                               .arg(QLatin1String(change.zone), change.moment.toString(Qt::ISODate),
                                    QString::number(quarters)),
                           change.moment.addSecs(quarters * 900LL), change.zone);
            entry.end = entry.start.addSecs(5 * 900LL);
            entries.append(entry);
        }
    }
    expectSame(entries, readBack(entries));
}

TEST(ReadBackTest, keepsAZoneThatNoDatabaseKnows) {
    const QList<Entry> entries{
        timedEntry(QStringLiteral("east"), utc(2026, 11, 2, 14), "UTC+03:30"),
        timedEntry(QStringLiteral("west"), utc(2026, 11, 2, 15), "UTC-04:00")};
    const QJsonObject read = readBack(entries);
    expectSame(entries, read);
    EXPECT_EQ(read.value(QLatin1String("zones")).toArray().size(), 2);
}

/// Words of signs that are easily spoilt. No "n" follows a backslash and no "2C" a percent sign,
/// because this reader takes them for a line break and a comma (icalendar_test holds those).
QString randomText(QRandomGenerator& random) {
    static const QStringList pieces{QStringLiteral(" "),     QStringLiteral(","),
                                    QStringLiteral(";"),     QStringLiteral(":"),
                                    QStringLiteral("\\ "),   QStringLiteral("\n"),
                                    QStringLiteral("\""),    QString(QChar(0x5e9)),
                                    QString(QChar(0x20ac)),  QString::fromUcs4(U"\U0001F372"),
                                    QStringLiteral("stock"), QStringLiteral("x")};
    QString text = QStringLiteral("t");
    for (int count = random.bounded(1, 90); count > 0; --count)
        text += pieces[random.bounded(pieces.size())];
    return text + QLatin1Char('.');
}

TEST(ReadBackTest, losesNothingOfRandomCalendars) {
    QRandomGenerator random(20261102);
    const QList<QByteArray> zones{
        "America/New_York", "America/Denver",    "Europe/London",   "Australia/Adelaide",
        "Asia/Tokyo",       "Africa/Casablanca", "Pacific/Chatham", "UTC"};
    constexpr int calendars = 10;
    for (int round = 0; round < calendars; ++round) {
        QList<Entry> entries;
        for (int count = 0; count < 20; ++count) {
            Entry entry = timedEntry(randomText(random),
                                     utc(2026, 1, 1, 0).addSecs(random.bounded(900'000) * 60LL),
                                     zones[random.bounded(zones.size())]);
            entry.uid = QStringLiteral("%1-%2").arg(round).arg(count);
            entry.end = entry.start.addSecs(random.bounded(1, 2000) * 60LL);
            entry.details = random.bounded(4) == 0 ? QString() : randomText(random);
            for (int alarms = random.bounded(3); alarms > 0; --alarms)
                entry.alarms.append({random.bounded(-100'000, 100'000), randomText(random)});
            if (random.bounded(5) == 0) {
                entry.day = entry.start.date();
                entry.start = entry.end = {};
            }
            entries.append(entry);
        }
        ASSERT_NO_FATAL_FAILURE(expectSame(entries, readBack(entries, randomText(random))));
    }
}

} // namespace
} // namespace ladlework::calendar
