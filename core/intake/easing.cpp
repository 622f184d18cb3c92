#include "intake/easing.h"

#include <algorithm>

namespace ladlework::intake {

namespace {
using quantity::Volume;

/// The rung that stays: the lowest that is at least what stays by the plan; -1 when nothing stays.
qint64 lastToStay(const Target& target, const Ladder& ladder) {
    if (!(target.easeTo > Volume()))
        return -1;
    const auto found = std::ranges::find_if(
        ladder.rungs, [&target](Volume rung) { return rung >= target.easeTo; });
    return std::min<qint64>(found - ladder.rungs.begin(), ladder.rungs.size() - 1);
}

bool isPlanned(const Target& target, const Ladder& ladder) {
    return target.easeOffFrom.isValid() && target.easeEveryDays >= 1 && !ladder.rungs.isEmpty();
}
} // namespace

std::optional<Volume> easedAmount(const Target& target, const Ladder& ladder, QDate day) {
    if (!isPlanned(target, ladder) || !day.isValid() || day < target.easeOffFrom)
        return std::nullopt;
    const qint64 stepsDown = 1 + target.easeOffFrom.daysTo(day) / target.easeEveryDays;
    const qint64 rung = std::max(ladder.rungs.size() - 1 - stepsDown, lastToStay(target, ladder));
    return rung < 0 ? Volume() : ladder.rungs[rung];
}

QDate easingEnds(const Target& target, const Ladder& ladder) {
    if (!isPlanned(target, ladder))
        return {};
    const qint64 stepsDown = ladder.rungs.size() - 1 - lastToStay(target, ladder);
    return target.easeOffFrom.addDays(std::max<qint64>(0, stepsDown - 1) * target.easeEveryDays);
}

} // namespace ladlework::intake
