#pragma once

#include "intake/ladder.h"
#include "intake/target.h"

namespace ladlework::intake {

/// What is asked on a day of easing off: on `target.easeOffFrom` the rung below the last one, then
/// a rung less every `target.easeEveryDays` days, down to the lowest rung that is at least
/// `target.easeTo`, or to nothing at all when that is 0. Nothing (nullopt) while the target does
/// not ease off on that day. A member who stands lower than this is asked for the lower amount: the
/// plan says how much at most.
std::optional<quantity::Volume> easedAmount(const Target& target, const Ladder& ladder, QDate day);

/// The day from which no less is asked any more; null when the target has no easing off. It is the
/// first day of easing off when nothing is left to ease.
QDate easingEnds(const Target& target, const Ladder& ladder);

} // namespace ladlework::intake
