#pragma once

#include "calendar/calendar_entry.h"
#include "calendar/icalendar.h"

#include <QByteArray>
#include <QJsonObject>

namespace ladlework::calendar {

/// The day of every export in these tests: 1 November 2026, 12:34:56 UTC.
QDateTime exportedAt();

/// What the independent reader (read_back.py) says of a calendar; empty when it fails, which is a
/// failure of the test.
QJsonObject readBack(const QByteArray& ics);
QJsonObject readBack(const QList<Entry>& entries, const QString& name = QStringLiteral("Stock"));

/// Compares what was read with what was written: every word, moment and alarm.
void expectSame(const QList<Entry>& entries, const QJsonObject& read);

/// An entry at a time, for a quarter of an hour.
Entry timedEntry(const QString& title, const QDateTime& start, const QByteArray& zone);

} // namespace ladlework::calendar
