#pragma once

#include "calendar/calendar_entry.h"
#include "calendar/calendar_options.h"
#include "casebook/casebook.h"

namespace ladlework::calendar {

/// What a family has to do in the days of the options, in order of time: cooking with its steps
/// and limits, thawing, last days of stock, new tries, the next review. The options must pass
/// check(). An entry has the same uid at every export: a cooking keeps it when it is moved inside
/// its week, and when its start is set.
QList<Entry> familyEntries(const casebook::Casebook& casebook, const CalendarOptions& options);

/// What the calendar of one family is called: "Stock: Ana, Ben", or "Stock" without names.
QString calendarName(const casebook::Casebook& casebook, casebook::Names names);

} // namespace ladlework::calendar
