#include "store/week_repository.h"

#include "store/belonging.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/week_rows.h"

#include <QHash>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr auto ofTheFamily = "JOIN week_plan AS plan ON plan.id = part.week_plan_id "
                             "WHERE plan.family_id = ?"_L1;

/// The rows of one of the tables that hang on the plans of a family, handed to `take` one by one.
template <class Take>
void eachPart(Database& database, FamilyId family, QLatin1StringView table,
              QLatin1StringView orderedBy, Take take) {
    Statement rows = database.statement(
        QStringLiteral("SELECT part.* FROM %1 AS part %2 ORDER BY part.week_plan_id, part.%3")
            .arg(table, ofTheFamily, orderedBy));
    rows.with(family);
    while (rows.next())
        take(rows);
}

/// Fills the parts of plans in, each found by its id.
class PlanParts {
public:
    explicit PlanParts(QList<week::WeekPlan>& plans) {
        for (week::WeekPlan& plan : plans)
            m_plans.insert(plan.id, &plan);
    }

    void readPlacements(Statement& rows) {
        while (rows.next())
            of(rows).placements.append(readPlacement(rows));
    }

    void readAll(Database& database, FamilyId family) {
        const auto each = [&](QLatin1StringView table, QLatin1StringView orderedBy, auto take) {
            eachPart(database, family, table, orderedBy, take);
        };
        each("week_placement"_L1, "position"_L1,
             [this](Statement& row) { of(row).placements.append(readPlacement(row)); });
        each("week_locked_day"_L1, "day"_L1,
             [this](Statement& row) { of(row).lockedDays.append(row.day("day"_L1)); });
        each("week_own_day"_L1, "day"_L1, [this](Statement& row) {
            of(row).hours.append({row.day("day"_L1), {}});
        });
        each("week_own_hours"_L1, "day, part.position"_L1, [this](Statement& row) {
            const QDate day = row.day("day"_L1);
            for (week::DayHours& own : of(row).hours)
                if (own.day == day)
                    own.hours.append(readFreeHours(row));
        });
        each("week_extra"_L1, "position"_L1,
             [this](Statement& row) { of(row).extras.append(readHouseholdExtra(row)); });
        each("week_at_home"_L1, "item"_L1,
             [this](Statement& row) { of(row).atHome.append(readAtHome(row)); });
    }

private:
    week::WeekPlan& of(const Statement& row) {
        return *m_plans.value(row.id<WeekPlanId>("week_plan_id"_L1));
    }

    QHash<WeekPlanId, week::WeekPlan*> m_plans;
};

/// Rows that were removed before and are written again unchanged leave no change behind.
void setParts(Database& database, WeekPlanId id, const week::WeekPlan& plan) {
    for (qint64 position = 0; position < plan.placements.size(); ++position) {
        const week::Placement& placement = plan.placements.at(position);
        insertRow(database, "week_placement"_L1,
                  {{"week_plan_id"_L1, id},
                   {"position"_L1, position},
                   {"day"_L1, placement.day},
                   {"pot_id"_L1, placement.pot},
                   {"start_minute"_L1, minuteOf(placement.start)}});
    }
    for (const QDate day : plan.lockedDays)
        insertRow(database, "week_locked_day"_L1, {{"week_plan_id"_L1, id}, {"day"_L1, day}});
    for (const week::DayHours& own : plan.hours) {
        insertRow(database, "week_own_day"_L1, {{"week_plan_id"_L1, id}, {"day"_L1, own.day}});
        for (qint64 position = 0; position < own.hours.size(); ++position) {
            Fields fields = fieldsOf(own.hours.at(position));
            fields += {{"week_plan_id"_L1, id}, {"day"_L1, own.day}, {"position"_L1, position}};
            insertRow(database, "week_own_hours"_L1, fields);
        }
    }
    for (qint64 position = 0; position < plan.extras.size(); ++position) {
        const week::HouseholdExtra& extra = plan.extras.at(position);
        insertRow(database, "week_extra"_L1,
                  {{"week_plan_id"_L1, id},
                   {"position"_L1, position},
                   {"text"_L1, extra.text.trimmed()},
                   {"section"_L1, week::shopSectionId(extra.section)}});
    }
    for (const week::AtHome& atHome : plan.atHome)
        insertRow(database, "week_at_home"_L1,
                  {{"week_plan_id"_L1, id},
                   {"item"_L1, atHome.item},
                   {"mass_g"_L1, atHome.mass.toGrams()}});
}

WeekPlanId planOf(Database& database, FamilyId family, QDate start) {
    Statement find = database.statement(
        QStringLiteral("SELECT id FROM week_plan WHERE family_id = ? AND start_day = ?"));
    return find.with(family, start).next() ? find.id<WeekPlanId>("id"_L1) : WeekPlanId{};
}
} // namespace

QList<week::WeekPlan> WeekRepository::plans(FamilyId family) const {
    QList<week::WeekPlan> plans =
        readAll(m_database,
                QStringLiteral("SELECT * FROM week_plan WHERE family_id = ? ORDER BY start_day"),
                readPlan, family);
    PlanParts(plans).readAll(m_database, family);
    return plans;
}

QList<week::WeekPlan> WeekRepository::plansFrom(QDate start) const {
    // From the families, so that the index on family and start finds the latest plans of each.
    const QString from = QStringLiteral("FROM family CROSS JOIN week_plan AS plan "
                                        "ON plan.family_id = family.id AND plan.start_day >= ? ");
    QList<week::WeekPlan> plans = readAll(
        m_database,
        QStringLiteral("SELECT plan.* %1 ORDER BY plan.family_id, plan.start_day").arg(from),
        readPlan, start);
    Statement rows = m_database.statement(
        QStringLiteral("SELECT placement.* %1 CROSS JOIN week_placement AS placement "
                       "ON placement.week_plan_id = plan.id "
                       "ORDER BY placement.week_plan_id, placement.position")
            .arg(from));
    rows.with(start);
    PlanParts(plans).readPlacements(rows);
    return plans;
}

Outcome WeekRepository::checkPlan(const week::WeekPlan& plan) const {
    if (const Outcome checked = week::check(plan); !checked)
        return checked;
    const Belonging belonging(m_database);
    if (const Result<QDate> today = belonging.todayOf(plan.family, m_clock); !today)
        return passOn(today);
    for (const week::Placement& placement : plan.placements)
        if (const Outcome use = belonging.mayUse(plan.family, placement.pot); !use)
            return use;
    return {};
}

Result<WeekPlanId> WeekRepository::setPlan(Action&, const week::WeekPlan& plan) {
    if (const Outcome checked = checkPlan(plan); !checked)
        return passOn(checked);
    WeekPlanId id = planOf(m_database, plan.family, plan.start);
    if (week::isEmpty(plan)) {
        removeWeekRows(m_database, id);
        return WeekPlanId{};
    }
    if (id.isStored()) {
        removeWeekParts(m_database, id);
        updateRow(m_database, "week_plan"_L1, id.value, {{"note"_L1, plan.note}});
    } else {
        id = WeekPlanId{insertRow(
            m_database, "week_plan"_L1,
            {{"family_id"_L1, plan.family}, {"start_day"_L1, plan.start}, {"note"_L1, plan.note}})};
    }
    setParts(m_database, id, plan);
    return id;
}

} // namespace ladlework::store
