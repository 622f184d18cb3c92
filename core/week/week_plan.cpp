#include "week/week_plan.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekPlan)
};

constexpr int mostCookingsADay = 6;
} // namespace

Outcome check(const WeekPlan& plan) {
    if (!plan.start.isValid())
        return problem(Problem::Kind::BadInput, Words::tr("Choose the first day of the week."),
                       QStringLiteral("start"));
    QHash<QDate, int> cookings;
    for (qsizetype index = 0; index < plan.placements.size(); ++index) {
        const Placement& placement = plan.placements[index];
        const QString place = QStringLiteral("placements[%1].day").arg(index);
        const qint64 day = placement.day.isValid() ? plan.start.daysTo(placement.day) : -1;
        if (day < 0 || day >= daysAWeek)
            return problem(Problem::Kind::BadInput,
                           Words::tr("A cooking stands outside this week; put it on one of its "
                                     "seven days."),
                           place);
        if (++cookings[placement.day] > mostCookingsADay)
            return problem(Problem::Kind::BadInput,
                           Words::tr("%1 has more than %2 cookings; move some to another day.")
                               .arg(QLocale().dayName(placement.day.dayOfWeek()))
                               .arg(mostCookingsADay),
                           place);
    }
    return {};
}

QDate weekStart(QDate day) {
    return day.isValid() ? day.addDays(1 - day.dayOfWeek()) : QDate();
}

} // namespace ladlework::week
