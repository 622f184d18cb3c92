#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "store/action.h"
#include "week/week_plan.h"
#include "week/week_template.h"

#include <QList>

namespace ladlework::store {

class Database;
class Statement;

/// Week plans, and weeks that are kept under a name to be used again.
class WeekRepository {
public:
    explicit WeekRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    /// Locked days and days of their own hours in order of the day, what is at home by item.
    [[nodiscard]] QList<week::WeekPlan> plans(FamilyId family) const;
    /// The plans of all families that start on a day or later, with their cookings only: what the
    /// list of families asks for.
    [[nodiscard]] QList<week::WeekPlan> plansFrom(QDate start) const;
    /// Stores the plan of that family and week, in place of an earlier one; one that isEmpty() is
    /// removed, and the id is not stored (0) then. Starts are kept to the minute.
    Result<WeekPlanId> setPlan(Action&, const week::WeekPlan& plan);

    /// By name.
    [[nodiscard]] QList<week::WeekTemplate> templates(FamilyId family) const;
    /// Refused when the family keeps another week of the same name. Starts are kept to the minute.
    Result<WeekTemplateId> addTemplate(Action&, const week::WeekTemplate& kept);
    Outcome changeTemplate(Action&, const week::WeekTemplate& kept);
    Outcome removeTemplate(Action&, WeekTemplateId kept);

private:
    [[nodiscard]] Outcome checkPlan(const week::WeekPlan& plan) const;
    [[nodiscard]] Outcome checkTemplate(const week::WeekTemplate& kept) const;

    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
