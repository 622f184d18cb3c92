// The format itself, by the text and the examples of RFC 5545.
#include "calendar/icalendar.h"

#include "core/calendar/calendar_reader.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace ladlework::calendar {
namespace {

QByteArray written(const QString& title, const QString& details = {}) {
    Entry entry = timedEntry(title, QDateTime(QDate(2026, 11, 2), QTime(9, 0), Qt::UTC), "UTC");
    entry.details = details;
    return toICalendar({QStringLiteral("Stock"), {entry}}, exportedAt());
}

/// Lines put together again as section 3.1 says: a line break and one blank are taken away.
QByteArray unfolded(QByteArray ics) {
    return ics.replace("\r\n ", "").replace("\r\n\t", "");
}

TEST(ICalendarTest, escapesAsTheStandardsExampleDoes) {
    // RFC 5545, section 3.3.11: the example of a multiple line value.
    const QByteArray ics = unfolded(
        written(QStringLiteral("Review"), QStringLiteral("Project XYZ Final Review\nConference "
                                                         "Room - 3B\nCome Prepared.")));
    EXPECT_TRUE(ics.contains("\r\nDESCRIPTION:Project XYZ Final Review\\nConference Room - 3B"
                             "\\nCome Prepared.\r\n"))
        << ics.constData();
}

TEST(ICalendarTest, escapesEachSignThatTheGrammarAsksFor) {
    // RFC 5545, section 3.3.11: ESCAPED-CHAR = "\\" / "\;" / "\," / "\N" / "\n"; a colon and a
    // quotation mark stand as they are.
    const QByteArray ics = unfolded(written(QStringLiteral("a\\b;c,d\ne:f\"g\\n%2C")));
    EXPECT_TRUE(ics.contains("\r\nSUMMARY:a\\\\b\\;c\\,d\\ne:f\"g\\\\n%2C\r\n")) << ics.constData();
}

TEST(ICalendarTest, foldsAt75OctetsAndNeverInsideACharacter) {
    // RFC 5545, section 3.1: lines of text SHOULD NOT be longer than 75 octets, excluding the line
    // break; a folded line begins with one white space.
    const QList<QString> titles{QString(200, QLatin1Char('x')), QString(100, QChar(0x5e9)),
                                QString::fromUcs4(U"\U0001F372").repeated(60),
                                QString(73, QLatin1Char('y')) + QChar(0x20ac)};
    for (const QString& title : titles) {
        const QByteArray ics = written(title);
        for (const QByteArray& line : ics.split('\n')) {
            EXPECT_LE(line.size(), 76) << line.constData(); // with its carriage return
            EXPECT_FALSE(QString::fromUtf8(line).contains(QChar::ReplacementCharacter));
        }
        const QByteArray whole = QByteArray("\r\nSUMMARY:").append(title.toUtf8()).append("\r\n");
        EXPECT_TRUE(unfolded(ics).contains(whole));
    }
}

TEST(ICalendarTest, endsEveryLineWithCarriageReturnAndLineFeed) {
    const QByteArray ics = written(QStringLiteral("Cook"), QStringLiteral("one\r\ntwo\rthree"));
    EXPECT_EQ(ics.count('\n'), ics.count("\r\n"));
    EXPECT_EQ(ics.count('\r'), ics.count("\r\n"));
    EXPECT_TRUE(ics.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_TRUE(ics.endsWith("END:VCALENDAR\r\n"));
    EXPECT_TRUE(unfolded(ics).contains("DESCRIPTION:one\\ntwo\\nthree\r\n"));
}

TEST(ICalendarTest, leavesControlCharactersOut) {
    // RFC 5545, section 3.1: CONTROL may stand in no value.
    QString title = QStringLiteral("a_b_c_d\te");
    title[1] = QChar(0);
    title[3] = QChar(0x1b);
    title[5] = QChar(0x7f);
    EXPECT_TRUE(written(title).contains("SUMMARY:abcd\te\r\n"));
}

TEST(ICalendarTest, aNameOfTheCalendarCannotBreakTheFile) {
    const QString name = QStringLiteral("Stock: Ana, Ben; \"x\" \\ 1\nBEGIN:VEVENT");
    const Entry entry =
        timedEntry(QStringLiteral("a"), QDateTime(QDate(2026, 11, 2), QTime(9, 0), Qt::UTC), "UTC");
    const QJsonObject read = readBack({entry}, name);
    EXPECT_EQ(read.value(QLatin1String("new_name")).toString(), name);
    EXPECT_EQ(read.value(QLatin1String("name")).toString(), name);
    EXPECT_EQ(read.value(QLatin1String("events")).toArray().size(), 1);
}

TEST(ICalendarTest, aLaterExportGoesBeforeAnEarlierOne) {
    // RFC 5546, section 2.1.5: the greater SEQUENCE is newer, then the later DTSTAMP.
    const Entry entry =
        timedEntry(QStringLiteral("a"), QDateTime(QDate(2026, 11, 2), QTime(9, 0), Qt::UTC), "UTC");
    const auto sequenceAt = [&entry](const QDateTime& now) {
        const QJsonObject read = readBack(toICalendar({QStringLiteral("Stock"), {entry}}, now));
        return read.value(QLatin1String("events"))
            .toArray()[0]
            .toObject()
            .value(QLatin1String("sequence"))
            .toInteger();
    };
    const qint64 first = sequenceAt(exportedAt());
    EXPECT_GT(first, 0);
    EXPECT_EQ(sequenceAt(exportedAt().addSecs(60)), first + 1);
    EXPECT_EQ(sequenceAt(QDateTime(QDate(1999, 1, 1), QTime(0, 0), Qt::UTC)), 0);
    EXPECT_GT(sequenceAt(QDateTime(QDate(2999, 1, 1), QTime(0, 0), Qt::UTC)), first);
}

} // namespace
} // namespace ladlework::calendar
