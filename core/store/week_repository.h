#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "store/action.h"
#include "week/week_plan.h"

#include <QList>

namespace ladlework::store {

class Database;
class Statement;

/// Week plans.
class WeekRepository {
public:
    explicit WeekRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    [[nodiscard]] QList<week::WeekPlan> plans(FamilyId family) const;
    /// The plans of all families that start on a day or later.
    [[nodiscard]] QList<week::WeekPlan> plansFrom(QDate start) const;
    /// Stores the plan of that family and week, in place of an earlier one; an empty plan without
    /// a note is removed, and the id is not stored (0) then. Starts are kept to the minute.
    Result<WeekPlanId> setPlan(Action&, const week::WeekPlan& plan);

private:
    /// Fills in the placements, from rows in order of plan and position.
    [[nodiscard]] static QList<week::WeekPlan> filled(QList<week::WeekPlan> plans, Statement& rows);

    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
