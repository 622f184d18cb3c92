#include "intake/log.h"

#include <QCoreApplication>
#include <algorithm>
#include <compare>

namespace ladlework::intake {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(IntakeLog)
};

constexpr double mostDrunkL = 6;
constexpr int strongest = 10;
constexpr int minutesADay = 1440;
constexpr int mostReactionMinutes = 30 * minutesADay;

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkDay(QDate day, QDate today) {
    if (!day.isValid())
        return bad(Words::tr("Enter the day."), QStringLiteral("day"));
    if (day > today)
        return bad(Words::tr("The day lies in the future; enter today or an earlier day."),
                   QStringLiteral("day"));
    return {};
}

bool counts(QDate day, QDate from) {
    return day.isValid() && (!from.isValid() || day >= from);
}
} // namespace

Outcome check(const IntakeEntry& entry, QDate today) {
    const double litres = entry.drunk.toLitres();
    if (!(litres >= 0 && litres <= mostDrunkL))
        return bad(Words::tr("The amount drunk must be 0 to 6 litres (25 cups) in one entry."),
                   QStringLiteral("drunk"));
    return checkDay(entry.day, today);
}

Outcome check(const Reaction& reaction, QDate today) {
    if (reaction.symptom.trimmed().isEmpty())
        return bad(Words::tr("Enter what was felt: choose from the list or use your own words."),
                   QStringLiteral("symptom"));
    if (reaction.strength < 0 || reaction.strength > strongest)
        return bad(Words::tr("The strength must be a whole number from 0 to 10."),
                   QStringLiteral("strength"));
    if (reaction.startMinute && (*reaction.startMinute < 0 || *reaction.startMinute >= minutesADay))
        return bad(Words::tr("The start must be a time of the day, from 0:00 to 23:59."),
                   QStringLiteral("startMinute"));
    if (reaction.minutes && (*reaction.minutes < 0 || *reaction.minutes > mostReactionMinutes))
        return bad(Words::tr("The length must be 0 minutes to 30 days."),
                   QStringLiteral("minutes"));
    return checkDay(reaction.day, today);
}

QList<LogDay> mergedDays(QList<LogDay> items) {
    // The volumes of a day are added in order of size, so that the order of the list cannot change
    // the last digit.
    std::ranges::sort(items, [](const LogDay& a, const LogDay& b) {
        if (a.day != b.day)
            return a.day < b.day;
        return std::is_lt(std::strong_order(a.drunk.toMillilitres(), b.drunk.toMillilitres()));
    });
    QList<LogDay> days;
    days.reserve(items.size());
    for (const LogDay& item : std::as_const(items)) {
        if (days.isEmpty() || days.constLast().day != item.day) {
            days.append(item);
            continue;
        }
        LogDay& day = days.last();
        day.drunk += item.drunk;
        day.redFlag = day.redFlag || item.redFlag;
        if (item.worstReaction)
            day.worstReaction = std::max(day.worstReaction.value_or(0), *item.worstReaction);
    }
    return days;
}

QList<LogDay> logDays(const QList<IntakeEntry>& entries, const QList<Reaction>& reactions,
                      QDate from) {
    QList<LogDay> items;
    items.reserve(entries.size() + reactions.size());
    for (const IntakeEntry& entry : entries)
        if (counts(entry.day, from))
            items.append({entry.day, entry.drunk, std::nullopt, false});
    for (const Reaction& reaction : reactions)
        if (counts(reaction.day, from))
            items.append({reaction.day, Volume(), reaction.strength, reaction.redFlag});
    return mergedDays(std::move(items));
}

} // namespace ladlework::intake
