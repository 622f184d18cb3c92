#pragma once

#include "calendar/calendar_entry.h"

#include <QByteArray>
#include <QDateTime>

namespace ladlework::calendar {

/// The calendar in the format of RFC 5545, written by libical: UTF-8, lines folded and text escaped
/// by it. Times are told by the clocks of each entry's zone, which comes along as a VTIMEZONE with
/// every change of the clocks from before the first entry to a year after the last; a time that
/// the clocks show twice is told in UTC where the second is meant. Control characters are left out
/// of text. `now` is the DTSTAMP; SEQUENCE counts the minutes since 2020, so that a later export
/// always goes before an earlier one. There must be an entry: the format knows no empty calendar.
QByteArray toICalendar(const Calendar& calendar, const QDateTime& now);

} // namespace ladlework::calendar
