#pragma once

#include <QDate>
#include <QDateTime>
#include <QTime>
#include <QTimeZone>

namespace ladlework {

/// The moment, in UTC, at which the clocks of a zone show this time on this day. A time that they
/// show twice is the first of the two; one that they leap over counts with the offset before the
/// leap, so that 2:30 becomes 3:30 (RFC 5545, section 3.3.5). Qt itself leaves both open. Invalid
/// for an invalid day, time or zone.
QDateTime momentOf(QDate day, QTime time, const QTimeZone& zone);

/// True when the clocks of the zone show the local time of this moment for the second time.
bool isShownAgain(const QDateTime& moment, const QTimeZone& zone);

} // namespace ladlework
