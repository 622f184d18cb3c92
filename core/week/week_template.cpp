#include "week/week_template.h"

#include "foundation/name.h"
#include "week/week_plan.h"

#include <QCoreApplication>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekTemplate)
};
} // namespace

Outcome check(const WeekTemplate& kept) {
    if (const Result<Name> name = Name::from(kept.name, Words::tr("week that is kept")); !name)
        return problem(Problem::Kind::BadInput, name.error().sentence, QStringLiteral("name"));
    if (kept.placements.isEmpty())
        return problem(Problem::Kind::BadInput,
                       Words::tr("A week without a pot is not worth keeping; put a pot on one of "
                                 "its days first."),
                       QStringLiteral("placements"));
    for (qsizetype index = 0; index < kept.placements.size(); ++index)
        if (const int day = kept.placements[index].day; day < 0 || day >= daysAWeek)
            return problem(Problem::Kind::BadInput,
                           Words::tr("A cooking stands outside the week; put it on one of its "
                                     "seven days."),
                           QStringLiteral("placements[%1].day").arg(index));
    return {};
}

} // namespace ladlework::week
