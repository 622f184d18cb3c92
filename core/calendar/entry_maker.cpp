#include "calendar/entry_maker.h"

#include "foundation/local_moment.h"

#include <QCoreApplication>
#include <QLocale>
#include <QUuid>
#include <cmath>

namespace ladlework::calendar {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Calendar)
};

/// How long a calendar shows what is done in a moment.
constexpr qint64 momentSeconds = 5LL * 60;

qint64 secondsOf(quantity::Duration duration) {
    constexpr qint64 secondsAMinute = 60;
    return std::llround(duration.toMinutes()) * secondsAMinute;
}

/// RFC 7986 asks for ids that tell nothing: a name-based UUID (RFC 4122, version 5) is the same for
/// the same name. The day a family was taken on keeps families of several workbooks apart; names
/// are left out, for they change.
QString uidOf(const people::Family& family, const QString& key) {
    static const QUuid ladlework(QStringLiteral("{6f0b7f52-3d0e-5a86-9c57-2f6a1c94e0d3}"));
    const QString name =
        QStringLiteral("%1/%2/%3")
            .arg(QString::number(family.id.value), family.since.toString(Qt::ISODate), key);
    return QUuid::createUuidV5(ladlework, name).toString(QUuid::WithoutBraces);
}
} // namespace

bool EntryMaker::isAsked(QDate day) const {
    return day >= m_options.from && day < m_options.from.addDays(m_options.days);
}

QString EntryMaker::called(MemberId member) const {
    return casebook::calledName(m_casebook, member, m_options.names);
}

QString EntryMaker::weekday(QDate day) {
    return QLocale().toString(day, QStringLiteral("dddd d MMMM"));
}

QString EntryMaker::clock(const QDateTime& moment, QDate day) const {
    const QDateTime local = moment.toTimeZone(zone());
    const QString time = measures() == quantity::MeasureSystem::UsCustomary
                             ? QLocale().toString(local.time(), QStringLiteral("h:mm AP"))
                             : QLocale().toString(local.time(), QStringLiteral("HH:mm"));
    return local.date() == day
               ? time
               : Words::tr("%1, %2").arg(time, QLocale().dayName(local.date().dayOfWeek()));
}

QString EntryMaker::print(quantity::Volume volume) const {
    return quantity::printVolume(volume, measures());
}

QString EntryMaker::print(quantity::Temperature temperature) const {
    using quantity::MeasureSystem;
    const MeasureSystem other =
        measures() == MeasureSystem::Metric ? MeasureSystem::UsCustomary : MeasureSystem::Metric;
    return QStringLiteral("%1 (%2)").arg(quantity::printTemperature(temperature, measures()),
                                         quantity::printTemperature(temperature, other));
}

QString EntryMaker::titleOf(const QString& title) const {
    if (!m_options.familyInTitles)
        return title;
    const people::Family& family = records().family;
    const QString called = casebook::calledFamily(m_casebook, m_options.names);
    return Words::tr("%1: %2").arg(
        called.isEmpty() ? Words::tr("Family %1").arg(family.id.value) : called, title);
}

Entry EntryMaker::made(const QString& key, const QString& title, const QStringList& details) const {
    Entry entry;
    entry.uid = uidOf(records().family, key);
    entry.title = titleOf(title);
    entry.details = details.join(QLatin1Char('\n'));
    entry.zone = zone();
    return entry;
}

Entry EntryMaker::wholeDay(const QString& key, QDate day, const QString& title,
                           const QStringList& details) const {
    Entry entry = made(key, title, details);
    entry.day = day;
    // Counted, not taken from the clock's face: on some days eight in the morning is seven or nine
    // hours after midnight.
    const qint64 seconds =
        momentOf(day, QTime(0, 0), zone()).secsTo(momentOf(day, m_options.morning, zone()));
    entry.alarms = {{seconds, entry.title}};
    return entry;
}

Entry EntryMaker::timed(const QString& key, const QDateTime& start, const QDateTime& end,
                        quantity::Duration ahead, const QString& title,
                        const QStringList& details) const {
    Entry entry = made(key, title, details);
    entry.start = start;
    entry.end = end;
    entry.alarms = {{-secondsOf(ahead), entry.title}};
    return entry;
}

Entry EntryMaker::reminder(const QString& key, const QDateTime& moment, const QString& title,
                           const QStringList& details) const {
    return timed(key, moment, moment.addSecs(momentSeconds), {}, title, details);
}

Entry EntryMaker::limit(const QString& key, const QDateTime& latest, const QString& title,
                        const QStringList& details) const {
    const qint64 before = std::max(momentSeconds, secondsOf(m_options.aheadOfLimit));
    return timed(key, latest.addSecs(-before), latest, {}, title, details);
}

} // namespace ladlework::calendar
