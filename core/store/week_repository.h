#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "store/action.h"
#include "week/week_plan.h"

#include <QList>

namespace ladlework::store {

class Database;

/// Week plans.
class WeekRepository {
public:
    explicit WeekRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    [[nodiscard]] QList<week::WeekPlan> plans(FamilyId family) const;
    /// Stores the plan of that family and week, in place of an earlier one; an empty plan without
    /// a note is removed, and the id is not stored (0) then. Starts are kept to the minute.
    Result<WeekPlanId> setPlan(Action&, const week::WeekPlan& plan);

private:
    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
