#pragma once

#include "foundation/age_band.h"
#include "foundation/finding.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/volume.h"

#include <QDate>
#include <optional>

namespace ladlework::intake {

/// The daily range a member works towards, and how long it is held once reached.
struct Target {
    TargetId id;
    MemberId member;
    quantity::Volume low;
    quantity::Volume high;
    QDate from;
    int holdDays = 90; ///< days at target before easing off; 2-12 months by common practice
    /// From this day the amount is eased off, by the practitioner's plan; may be null.
    QDate easeOffFrom;
    int easeEveryDays = 7;   ///< a rung less every so many days; 1 to 90
    quantity::Volume easeTo; ///< what stays; 0: down to nothing
};

/// 0 < low <= high <= 4 L; hold days 1 to 730; easing off, when set, not before `from`; a rung less
/// every 1 to 90 days; what stays 0 up to `low`. The place of the Problem is the field.
Outcome check(const Target& target);

/// The programme's usual target for an age band, from resources/reference/targets.csv; nothing for
/// an infant under 6 months, who has no ladder.
std::optional<Target> usualTarget(AgeBand band);

/// Stop (code "no-ladder-under-6-months") for a member under 6 months; Caution (code
/// "target-above-usual") for a target above the band's usual high end.
Findings reviewTarget(const Target& target, AgeBand band);

} // namespace ladlework::intake
