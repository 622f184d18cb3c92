#pragma once

#include "exchange/family_text.h"

namespace ladlework::exchange {

/// Reads "free_hours": [{"weekday": "saturday", "from": "9:00", "length": "6 h", "pots": 2}].
/// "from" can be left out, and "pots" when it is one.
void readUsualHours(TextReader& reader, FamilyText& family);

/// Reads "weeks": the cookings of each, and where there are: days that are locked ("locked"), days
/// with hours of their own ("hours", an empty list of "free" for no cooking), household extras
/// ("extras") and what is at home ("at_home").
void readWeeks(TextReader& reader, FamilyText& family);

} // namespace ladlework::exchange
