#include "casebook/standing_maker.h"

#include <algorithm>

namespace ladlework::casebook {

namespace {
/// Every day up to the one asked for is played through, so there must be a last one.
constexpr int mostYearsAhead = 10;

/// The last day on which a ladder of the list is in force, within `end`.
QDate lastDayOf(const QList<intake::Ladder>& ladders, qsizetype index, QDate end) {
    QDate last = end;
    for (const intake::Ladder& later : ladders.sliced(index + 1))
        last = std::min(last, later.from.addDays(-1));
    return last;
}

/// The log as it would go on when from `first` to `last` every day is a good day: a day on which
/// all was drunk that any rung asks, and nothing was felt.
QList<intake::LogDay> withGoodDays(QList<intake::LogDay> log, const intake::Ladder& ladder,
                                   QDate first, QDate last) {
    for (QDate day = first; day <= last; day = day.addDays(1)) {
        intake::LogDay good;
        good.day = day;
        good.drunk = ladder.rungs.last();
        log.append(good);
    }
    return log;
}

/// What one ladder asks on one of its days: nothing while it is stopped.
quantity::Volume askedOn(const intake::LadderReplay& replay, const intake::Ladder& ladder,
                         QDate day, QDate today) {
    if (replay.days.isEmpty() || day < replay.days.first().day)
        return ladder.rungs.first();
    const auto found = std::ranges::find(replay.days, day, &intake::LadderDay::day);
    if (found == replay.days.end())
        return {};
    // Rule 1 is the day that begins stopped. On the day of the event itself the amount was asked,
    // but when that day is today nothing more is.
    const bool stopped =
        found->decision == intake::LadderDecision::Stop && (found->rule == 1 || day >= today);
    return stopped ? quantity::Volume() : found->asked;
}
} // namespace

QList<quantity::Volume> Casebook::plannedAmounts(MemberId member, QDate start, int days) const {
    QList<quantity::Volume> amounts(std::max(days, 0));
    const Standing* standing = this->standing(member);
    if (standing == nullptr || days <= 0 || !start.isValid())
        return amounts;
    const MemberLog log = memberLog(m_records, standing->member, m_today);
    const QDate end = std::min(start.addDays(days - 1), m_today.addYears(mostYearsAhead));
    const QDate firstOpen = log.touches(m_today) ? m_today.addDays(1) : m_today;
    for (qsizetype index = 0; index < log.ladders.size(); ++index) {
        const intake::Ladder& ladder = log.ladders[index];
        const QDate last = lastDayOf(log.ladders, index, end);
        if (last < std::max(ladder.from, start))
            continue;
        const QList<intake::LogDay> known =
            intake::logDays(log.entries, log.reactions, ladder.from);
        const intake::LadderReplay replay = intake::replay(
            ladder, withGoodDays(known, ladder, std::max(firstOpen, ladder.from), last),
            decisionsFor(ladder, log), last, {stopBefore(log, index).has_value()});
        for (QDate day = std::max(ladder.from, start); day <= last; day = day.addDays(1))
            amounts[start.daysTo(day)] = easedOff(askedOn(replay, ladder, day, m_today),
                                                  targetOn(m_records, member, day), ladder, day);
    }
    return amounts;
}

} // namespace ladlework::casebook
