#pragma once

#include "calendar/ical_parts.h"

#include <QTimeZone>

namespace ladlework::calendar {

/// True for a zone whose clocks always show UTC: its times need no VTIMEZONE.
bool isUtc(const QTimeZone& zone);

/// The VTIMEZONE of a zone under its own name (IANA), with one observance for each change of its
/// clocks between two moments and the one in force at the first. Qt tells the changes, so that the
/// rules are the ones that the entries were reckoned by.
Component zoneComponent(const QTimeZone& zone, const QDateTime& from, const QDateTime& to);

} // namespace ladlework::calendar
