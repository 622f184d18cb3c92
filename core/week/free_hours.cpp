#include "week/free_hours.h"

#include <QCoreApplication>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(FreeHours)
};
constexpr double hoursADay = 24;
} // namespace

Outcome check(const FreeHours& hours) {
    if (!(hours.length > quantity::Duration()) ||
        hours.length > quantity::Duration::fromHours(hoursADay))
        return problem(Problem::Kind::BadInput,
                       Words::tr("Free time for cooking is more than nothing and at most 24 hours "
                                 "a day."),
                       QStringLiteral("length"));
    if (hours.pots < 1 || hours.pots > mostPotsAtOnce)
        return problem(Problem::Kind::BadInput,
                       Words::tr("Between 1 and %1 pots can be on at once.").arg(mostPotsAtOnce),
                       QStringLiteral("pots"));
    return {};
}

Outcome check(const UsualHours& usual) {
    if (usual.weekday < 1 || usual.weekday > 7)
        return problem(Problem::Kind::BadInput, Words::tr("Choose a day of the week."),
                       QStringLiteral("weekday"));
    return check(usual.hours);
}

} // namespace ladlework::week
