#include "intake/projection.h"

#include "intake/good_day_forecast.h"

#include <algorithm>

namespace ladlework::intake {

namespace {
constexpr int mostYears = 10;

/// The day the last rung came into force in the run of days that ends the replay.
QDate reachedOn(const LadderReplay& replay, int lastRung, QDate otherwise) {
    if (replay.days.isEmpty())
        return otherwise;
    QDate reached = replay.days.last().day.addDays(1);
    for (auto day = replay.days.crbegin(); day != replay.days.crend() && day->rung == lastRung;
         ++day)
        reached = day->day;
    return reached;
}

/// The first day that the replay has not decided, and not before today.
QDate firstDayToCome(const LadderReplay& replay, QDate today) {
    return replay.days.isEmpty() ? today : std::max(today, replay.days.last().day.addDays(1));
}
} // namespace

std::optional<TargetDate> projectTargetDate(const LadderReplay& replay, const Ladder& ladder,
                                            QDate today) {
    if (replay.state == LadderState::Stopped || ladder.rungs.isEmpty() || !today.isValid())
        return std::nullopt;
    const int lastRung = static_cast<int>(ladder.rungs.size()) - 1;
    if (replay.rung >= lastRung) {
        const QDate reached =
            reachedOn(replay, lastRung, ladder.from.isValid() ? ladder.from : today);
        return TargetDate{reached, reached, reached};
    }
    const QDate next = firstDayToCome(replay, today);
    const qint64 held = replay.holdUntil.isValid() && replay.holdUntil >= next
                            ? next.daysTo(replay.holdUntil) + 1
                            : 0;
    const QDate start = next.addDays(held);
    const int needed = (lastRung - replay.rung) * ladder.rules.daysToAdvance - replay.goodDays;
    const GoodDayForecast forecast(std::max(needed, 1), goodDayRate(replay));
    const int most = static_cast<int>(std::max<qint64>(0, start.daysTo(today.addYears(mostYears))));
    const std::optional<int> p10 = forecast.daysFor(0.10, most);
    const std::optional<int> median = forecast.daysFor(0.50, most);
    const std::optional<int> p90 = forecast.daysFor(0.90, most);
    if (!p10 || !median || !p90)
        return std::nullopt;
    return TargetDate{start.addDays(*p10), start.addDays(*median), start.addDays(*p90)};
}

} // namespace ladlework::intake
