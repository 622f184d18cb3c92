#include "casebook/cookings_to_confirm.h"

#include "casebook/cooking.h"

#include <algorithm>
#include <tuple>

namespace ladlework::casebook {

QList<week::Placement> cookingsToConfirm(const Casebook& casebook) {
    const QDate today = casebook.today();
    const QDate first = today.addDays(-week::daysAWeek);
    QList<week::Placement> planned;
    for (const week::WeekPlan& plan : casebook.records().weeks) {
        for (const week::Placement& placement : plan.placements) {
            if (placement.day >= first && placement.day < today)
                planned.append(placement);
        }
    }
    QList<week::Placement> open;
    for (const Cooking& cooking : matchBatches(planned, casebook.records().batches)) {
        if (cooking.batch == nullptr)
            open.append(cooking.placement);
    }
    std::ranges::stable_sort(open, {}, [](const week::Placement& placement) {
        return std::tuple(placement.day, placement.start);
    });
    return open;
}

} // namespace ladlework::casebook
