#include "core/calendar/calendar_reader.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::calendar {

namespace {
QString iso(const QDateTime& moment) {
    return moment.toUTC().toString(QStringLiteral("yyyy-MM-ddTHH:mm:ssZ"));
}

QString text(const QJsonObject& object, const char* key) {
    return object.value(QLatin1String(key)).toString();
}

void expectMoment(const QDateTime& written, const QJsonObject& read, const std::string& what) {
    EXPECT_EQ(text(read, "utc").toStdString(), iso(written).toStdString()) << what;
    EXPECT_NE(text(read, "told"), QStringLiteral("floating")) << what;
    if (read.contains(QLatin1String("by_file"))) {
        EXPECT_EQ(text(read, "by_file").toStdString(), iso(written).toStdString())
            << what << ", by the file's own VTIMEZONE";
    }
}

void expectAlarms(const QList<Alarm>& written, const QJsonArray& read, const std::string& what) {
    ASSERT_EQ(written.size(), read.size()) << what;
    for (qsizetype index = 0; index < written.size(); ++index) {
        const QJsonObject alarm = read[index].toObject();
        EXPECT_EQ(written[index].secondsFromStart,
                  alarm.value(QLatin1String("seconds")).toInteger())
            << what;
        EXPECT_EQ(written[index].words.toStdString(), text(alarm, "words").toStdString()) << what;
        EXPECT_EQ(text(alarm, "action"), QStringLiteral("DISPLAY"));
    }
}
} // namespace

QDateTime exportedAt() {
    return {QDate(2026, 11, 1), QTime(12, 34, 56), Qt::UTC};
}

QJsonObject readBack(const QByteArray& ics) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("calendar.ics")));
    if (!file.open(QIODevice::WriteOnly))
        return {};
    file.write(ics);
    file.close();
    QProcess python;
    python.start(QStringLiteral(LADLEWORK_PYTHON),
                 {QStringLiteral(LADLEWORK_SOURCE_DIR "/tests/core/calendar/read_back.py"),
                  file.fileName()});
    constexpr int mostMilliseconds = 120'000;
    EXPECT_TRUE(python.waitForFinished(mostMilliseconds)) << qPrintable(python.errorString());
    EXPECT_EQ(python.exitCode(), 0) << python.readAllStandardError().constData() << ics.constData();
    const QJsonObject read = QJsonDocument::fromJson(python.readAllStandardOutput()).object();
    EXPECT_EQ(text(read, "version"), QStringLiteral("2.0"));
    EXPECT_TRUE(read.value(QLatin1String("complaints")).toArray().isEmpty())
        << QJsonDocument(read.value(QLatin1String("complaints")).toArray()).toJson().constData();
    return read;
}

QJsonObject readBack(const QList<Entry>& entries, const QString& name) {
    return readBack(toICalendar({name, entries}, exportedAt()));
}

void expectSame(const QList<Entry>& entries, const QJsonObject& read) {
    const QJsonArray events = read.value(QLatin1String("events")).toArray();
    ASSERT_EQ(events.size(), entries.size());
    for (qsizetype index = 0; index < entries.size(); ++index) {
        const Entry& entry = entries[index];
        const QJsonObject event = events[index].toObject();
        const std::string what = entry.title.toStdString();
        EXPECT_EQ(text(event, "uid").toStdString(), entry.uid.toStdString());
        EXPECT_EQ(text(event, "summary").toStdString(), what);
        EXPECT_EQ(text(event, "description").toStdString(), entry.details.toStdString());
        EXPECT_EQ(text(event, "transp") == QStringLiteral("OPAQUE"), entry.busy) << what;
        EXPECT_EQ(text(event, "stamp").toStdString(), iso(exportedAt()).toStdString());
        const QJsonObject start = event.value(QLatin1String("start")).toObject();
        const QJsonObject end = event.value(QLatin1String("end")).toObject();
        if (entry.isOfWholeDay()) {
            EXPECT_EQ(text(start, "day"), entry.day.toString(Qt::ISODate)) << what;
            EXPECT_EQ(text(end, "day"), entry.day.addDays(1).toString(Qt::ISODate)) << what;
        } else {
            expectMoment(entry.start, start, what + ", start");
            expectMoment(entry.end, end, what + ", end");
        }
        expectAlarms(entry.alarms, event.value(QLatin1String("alarms")).toArray(), what);
    }
}

Entry timedEntry(const QString& title, const QDateTime& start, const QByteArray& zone) {
    Entry entry;
    entry.uid = QStringLiteral("uid-") + title;
    entry.title = title;
    entry.start = start;
    entry.end = start.addSecs(15LL * 60);
    entry.zone = QTimeZone(zone);
    entry.alarms = {{0, title}};
    return entry;
}

} // namespace ladlework::calendar
