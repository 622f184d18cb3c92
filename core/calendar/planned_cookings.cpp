#include "calendar/planned_cookings.h"

#include <QHash>
#include <algorithm>

namespace ladlework::calendar {

std::vector<PlannedCooking> plannedCookings(const casebook::Casebook& casebook) {
    const casebook::FamilyRecords& records = casebook.records();
    std::vector<PlannedCooking> all;
    for (const week::WeekPlan& plan : records.weeks) {
        QList<week::Placement> placements = plan.placements;
        std::ranges::stable_sort(placements, {}, [](const week::Placement& placement) {
            return std::pair(placement.day, placement.start);
        });
        QHash<PotId, int> count;
        for (const casebook::Cooking& cooking :
             casebook::matchBatches(placements, records.batches)) {
            const week::Placement& placement = cooking.placement;
            const kitchen::Pot* pot = casebook.pot(placement.pot);
            // A pot of cuts that this catalogue does not know cannot be reckoned or described.
            if (pot == nullptr || !kitchen::check(*pot, casebook.catalogue()))
                continue;
            const QString key =
                QStringLiteral("cooking/%1/%2/%3")
                    .arg(plan.start.toString(Qt::ISODate), QString::number(pot->id.value),
                         QString::number(++count[pot->id]));
            all.push_back({cooking, pot, key, placement.day.addDays(records.practice.fridgeDays)});
        }
    }
    return all;
}

bool isStored(const kitchen::Batch& batch, const casebook::FamilyRecords& records) {
    return std::ranges::any_of(records.lots,
                               [&batch](const kitchen::Lot& lot) { return lot.batch == batch.id; });
}

} // namespace ladlework::calendar
