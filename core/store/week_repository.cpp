#include "store/week_repository.h"

#include "store/belonging.h"
#include "store/records.h"
#include "store/rows.h"

#include <QHash>
#include <optional>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr int minutesPerHour = 60;

std::optional<int> minuteOf(QTime time) {
    if (!time.isValid())
        return std::nullopt;
    return time.hour() * minutesPerHour + time.minute();
}

week::WeekPlan readPlan(const Statement& row) {
    week::WeekPlan plan;
    plan.id = row.id<WeekPlanId>("id"_L1);
    plan.family = row.id<FamilyId>("family_id"_L1);
    plan.start = row.day("start_day"_L1);
    plan.note = row.text("note"_L1);
    return plan;
}

week::Placement readPlacement(const Statement& row) {
    week::Placement placement;
    placement.day = row.day("day"_L1);
    placement.pot = row.id<PotId>("pot_id"_L1);
    if (const std::optional<int> minute = row.optionalInteger("start_minute"_L1))
        placement.start = QTime(*minute / minutesPerHour, *minute % minutesPerHour);
    return placement;
}

/// Positions that are given again unchanged leave no change behind.
void setPlacements(Database& database, WeekPlanId plan, const QList<week::Placement>& placements) {
    run(database, QStringLiteral("DELETE FROM week_placement WHERE week_plan_id = ?"), plan);
    for (qint64 position = 0; position < placements.size(); ++position) {
        const week::Placement& placement = placements.at(position);
        insertRow(database, "week_placement"_L1,
                  {{"week_plan_id"_L1, plan},
                   {"position"_L1, position},
                   {"day"_L1, placement.day},
                   {"pot_id"_L1, placement.pot},
                   {"start_minute"_L1, minuteOf(placement.start)}});
    }
}

WeekPlanId planOf(Database& database, FamilyId family, QDate start) {
    Statement find = database.statement(
        QStringLiteral("SELECT id FROM week_plan WHERE family_id = ? AND start_day = ?"));
    return find.with(family, start).next() ? find.id<WeekPlanId>("id"_L1) : WeekPlanId{};
}
} // namespace

QList<week::WeekPlan> WeekRepository::filled(QList<week::WeekPlan> plans, Statement& rows) {
    QHash<WeekPlanId, QList<week::Placement>> placements;
    while (rows.next())
        placements[rows.id<WeekPlanId>("week_plan_id"_L1)].append(readPlacement(rows));
    for (week::WeekPlan& plan : plans)
        plan.placements = placements.value(plan.id);
    return plans;
}

QList<week::WeekPlan> WeekRepository::plans(FamilyId family) const {
    QList<week::WeekPlan> plans =
        readAll(m_database,
                QStringLiteral("SELECT * FROM week_plan WHERE family_id = ? ORDER BY start_day"),
                readPlan, family);
    Statement rows = m_database.statement(
        QStringLiteral("SELECT placement.* FROM week_plan JOIN week_placement AS placement "
                       "ON placement.week_plan_id = week_plan.id WHERE week_plan.family_id = ? "
                       "ORDER BY placement.week_plan_id, placement.position"));
    rows.with(family);
    return filled(std::move(plans), rows);
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
    return filled(std::move(plans), rows);
}

Result<WeekPlanId> WeekRepository::setPlan(Action&, const week::WeekPlan& plan) {
    if (const Outcome checked = week::check(plan); !checked)
        return passOn(checked);
    const Belonging belonging(m_database);
    if (const Result<QDate> today = belonging.todayOf(plan.family, m_clock); !today)
        return passOn(today);
    for (const week::Placement& placement : plan.placements)
        if (const Outcome use = belonging.mayUse(plan.family, placement.pot); !use)
            return passOn(use);

    WeekPlanId id = planOf(m_database, plan.family, plan.start);
    if (plan.placements.isEmpty() && plan.note.trimmed().isEmpty()) {
        setPlacements(m_database, id, {});
        deleteRow(m_database, "week_plan"_L1, id.value);
        return WeekPlanId{};
    }
    if (id.isStored())
        updateRow(m_database, "week_plan"_L1, id.value, {{"note"_L1, plan.note}});
    else
        id = WeekPlanId{insertRow(
            m_database, "week_plan"_L1,
            {{"family_id"_L1, plan.family}, {"start_day"_L1, plan.start}, {"note"_L1, plan.note}})};
    setPlacements(m_database, id, plan.placements);
    return id;
}

} // namespace ladlework::store
