#pragma once

#include "calendar/entry_maker.h"
#include "casebook/cooking.h"

#include <vector>

namespace ladlework::calendar {

/// A planned cooking with the key of its entries, the same wherever in its week it stands.
struct PlannedCooking {
    casebook::Cooking cooking;
    const kitchen::Pot* pot = nullptr; ///< owned by the records
    QString key;                       ///< "cooking/2026-11-02/10/1": week, pot, which of that pot
    QDate lastDay;                     ///< on which its stock may be drunk
};

/// The cookings of all plans whose pot is there and can be reckoned, in order of time.
std::vector<PlannedCooking> plannedCookings(const casebook::Casebook& casebook);

/// True when stock of the batch was stored in containers.
bool isStored(const kitchen::Batch& batch, const casebook::FamilyRecords& records);

} // namespace ladlework::calendar
