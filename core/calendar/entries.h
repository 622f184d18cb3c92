#pragma once

#include "calendar/entry_maker.h"

namespace ladlework::calendar {

/// The cookings of the days asked for: from the start to the end of the simmer, what goes in
/// later, turning off, the cooling checks and the way into the refrigerator; of a cooking without a
/// start one whole day with its steps. And the last day of what a cooking of these days or before
/// gives, unless its stock is stored in containers, which count themselves.
QList<Entry> cookingEntries(const EntryMaker& maker);

/// Stock to be thawed, and the last days of what is stored.
QList<Entry> stockEntries(const EntryMaker& maker);

/// New tries of what was avoided, and the next review.
QList<Entry> followUpEntries(const EntryMaker& maker);

} // namespace ladlework::calendar
