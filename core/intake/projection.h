#pragma once

#include "intake/ladder_machine.h"

#include <QDate>
#include <optional>

namespace ladlework::intake {

/// When the target may be reached: 10 %, 50 % and 90 % of the distribution.
struct TargetDate {
    QDate p10;
    QDate median;
    QDate p90;
};

/// The first day on which the last rung is in force, from the member's own good-day rate (Beta
/// prior updated by the replayed days; see good_day_forecast.h for prior and formula). The days to
/// come begin after the last replayed day, and not before `today`; what is left of a hold passes
/// uncounted. The day the last rung came into force when it is already reached; nothing when the
/// ladder is stopped or the p90 lies over 10 years out.
std::optional<TargetDate> projectTargetDate(const LadderReplay& replay, const Ladder& ladder,
                                            QDate today);

} // namespace ladlework::intake
