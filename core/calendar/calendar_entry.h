#pragma once

#include <QDate>
#include <QDateTime>
#include <QList>
#include <QString>
#include <QTimeZone>

namespace ladlework::calendar {

/// Rings so many seconds after the start of its entry (before it when negative); the start of a
/// whole day is its local midnight.
struct Alarm {
    qint64 secondsFromStart = 0;
    QString words;
    friend bool operator==(const Alarm&, const Alarm&) = default;
};

/// One entry of a calendar, free of any file format: at a time, or of a whole day.
struct Entry {
    QString uid; ///< the same at every export, so that a calendar updates what it holds already
    QString title;
    QString details; ///< lines; may be empty
    QDateTime start; ///< UTC; invalid for a whole day
    QDateTime end;   ///< UTC, after the start; invalid for a whole day
    QDate day;       ///< the whole day; null for an entry at a time
    QTimeZone zone = QTimeZone(QByteArrayLiteral("UTC")); ///< whose clocks it is told by
    bool busy = false; ///< takes up the time of the one whose calendar it is
    QList<Alarm> alarms;

    [[nodiscard]] bool isOfWholeDay() const { return day.isValid(); }
    friend bool operator==(const Entry&, const Entry&) = default;
};

/// Entries under a name.
struct Calendar {
    QString name;
    QList<Entry> entries;
};

} // namespace ladlework::calendar
