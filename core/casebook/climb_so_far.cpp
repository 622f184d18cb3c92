#include "casebook/climb_so_far.h"

#include "casebook/standing_maker.h"

#include <algorithm>

namespace ladlework::casebook {

ClimbSoFar climbSoFar(const MemberLog& log) {
    ClimbSoFar soFar;
    const std::optional<QDate> last = log.lastLogged();
    if (!last)
        return soFar;
    soFar.lastLogged = *last;
    const intake::Ladder* ladder = log.ladderOn(*last);
    if (ladder == nullptr)
        return soFar;
    const std::optional<Stop> before = stopBefore(log, ladder - log.ladders.constData());
    const intake::LadderReplay replay =
        intake::replay(*ladder, intake::logDays(log.entries, log.reactions, ladder->from),
                       decisionsFor(*ladder, log), *last, {before.has_value()});
    soFar.ladder = ladder->id;
    soFar.state = replay.end;
    if (before && replay.end.stopped && !replay.end.stop)
        soFar.earlier = ClimbSoFar::EarlierStop{before->ladder, before->day};
    return soFar;
}

std::optional<Stop> earlierStop(const MemberLog& log) {
    if (!log.soFar || !log.soFar->earlier)
        return std::nullopt;
    const ClimbSoFar::EarlierStop& earlier = *log.soFar->earlier;
    const auto stopped = std::ranges::find(log.ladders, earlier.ladder, &intake::Ladder::id);
    if (stopped == log.ladders.end())
        return std::nullopt;
    return Stop{earlier.day, stopped->rules, stopped->id};
}

bool canGoOn(const MemberLog& log, QDate today) {
    if (!log.soFar)
        return false;
    const ClimbSoFar& soFar = *log.soFar;
    if (!soFar.lastLogged.isValid())
        return true;
    if (soFar.lastLogged > today)
        return false;
    const intake::Ladder* ladder = log.ladderOn(today);
    if (ladder == nullptr)
        return true;
    return ladder->id == soFar.ladder && soFar.state.rung < ladder->rungs.size() &&
           (!soFar.state.stopped || soFar.state.stop || earlierStop(log));
}

} // namespace ladlework::casebook
