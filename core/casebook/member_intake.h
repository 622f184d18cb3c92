#pragma once

#include "casebook/casebook.h"
#include "intake/daily_totals.h"
#include "intake/patterns.h"

#include <optional>

namespace ladlework::casebook {

/// What a member took and felt as far as the log knows it, for patterns: see
/// intake::exposureDays(). Pots of the records, their lots and the catalogue say what was in it.
QList<intake::Pattern> memberPatterns(const Casebook& casebook, MemberId member,
                                      const intake::PatternRules& rules);

/// The mean day of a member from `from` to `to` (both included); see intake::dailyTotals(). Each
/// pot counts as this family cooks it. Nothing when there is no entry.
std::optional<intake::DailyTotals> memberTotals(const Casebook& casebook, MemberId member,
                                                QDate from, QDate to);

} // namespace ladlework::casebook
