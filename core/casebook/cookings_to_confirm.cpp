#include "casebook/cookings_to_confirm.h"

#include <algorithm>
#include <tuple>

namespace ladlework::casebook {

QList<week::Placement> cookingsToConfirm(const Casebook& casebook) {
    const QDate today = casebook.today();
    const QDate first = today.addDays(-week::daysAWeek);
    QList<kitchen::Batch> batches = casebook.records().batches;
    QList<week::Placement> open;
    for (const week::WeekPlan& plan : casebook.records().weeks) {
        for (const week::Placement& placement : plan.placements) {
            if (placement.day < first || placement.day >= today)
                continue;
            const auto cooked = std::ranges::find_if(batches, [&](const kitchen::Batch& batch) {
                return batch.pot == placement.pot && batch.day == placement.day;
            });
            if (cooked != batches.end())
                batches.erase(cooked); // one batch confirms one cooking
            else
                open.append(placement);
        }
    }
    std::ranges::stable_sort(open, {}, [](const week::Placement& placement) {
        return std::tuple(placement.day, placement.start);
    });
    return open;
}

} // namespace ladlework::casebook
