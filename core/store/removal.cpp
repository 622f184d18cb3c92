#include "store/removal.h"

#include "store/records.h"
#include "store/rows.h"

#include <array>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr std::array memberTables{"tolerance_note"_L1, "caution"_L1,      "retry_plan"_L1,
                                  "observation"_L1,    "target"_L1,       "ladder"_L1,
                                  "decision"_L1,       "intake_entry"_L1, "reaction"_L1};

/// In the order in which one names the next.
constexpr std::array weekTables{"week_placement"_L1, "week_locked_day"_L1, "week_own_hours"_L1,
                                "week_own_day"_L1,   "week_extra"_L1,      "week_at_home"_L1};

/// Removes what belongs to the members that `whose` selects by one number.
void removeMembersRecords(Database& database, const QString& whose, qint64 id) {
    run(database,
        QStringLiteral("DELETE FROM ladder_rung WHERE ladder_id IN "
                       "(SELECT ladder.id FROM ladder WHERE member_id IN (%1))")
            .arg(whose),
        id);
    run(database,
        QStringLiteral("DELETE FROM retry_step WHERE retry_plan_id IN "
                       "(SELECT plan.id FROM retry_plan AS plan WHERE member_id IN (%1))")
            .arg(whose),
        id);
    for (const QLatin1StringView table : memberTables)
        run(database, QStringLiteral("DELETE FROM %1 WHERE member_id IN (%2)").arg(table, whose),
            id);
}

/// Removes the rows of a family that hang on other tables of the family.
void removeFamilyChildren(Database& database, QLatin1StringView child, QLatin1StringView column,
                          QLatin1StringView parent, FamilyId family) {
    run(database,
        QStringLiteral("DELETE FROM %1 WHERE %2 IN (SELECT id FROM %3 WHERE family_id = ?)")
            .arg(child, column, parent),
        family);
}
} // namespace

bool removeFamilyRows(Database& database, FamilyId family) {
    removeMembersRecords(database, QStringLiteral("SELECT id FROM member WHERE family_id = ?"),
                         family.value);
    for (const QLatin1StringView table : weekTables)
        removeFamilyChildren(database, table, "week_plan_id"_L1, "week_plan"_L1, family);
    removeFamilyChildren(database, "week_template_placement"_L1, "week_template_id"_L1,
                         "week_template"_L1, family);
    removeFamilyChildren(database, "lot"_L1, "batch_id"_L1, "batch"_L1, family);
    run(database, QStringLiteral("DELETE FROM batch WHERE family_id = ?"), family);
    removeFamilyChildren(database, "pot_cut"_L1, "pot_id"_L1, "pot"_L1, family);
    removeFamilyChildren(database, "pot_extra"_L1, "pot_id"_L1, "pot"_L1, family);
    // In the order in which one names the next.
    for (const QLatin1StringView table :
         {"week_plan"_L1, "week_template"_L1, "pot"_L1, "vessel"_L1, "container"_L1, "member"_L1,
          "visit_note"_L1, "handout"_L1, "usual_hours"_L1})
        run(database, QStringLiteral("DELETE FROM %1 WHERE family_id = ?").arg(table), family);
    return deleteRow(database, "family"_L1, family.value);
}

bool removeMemberRows(Database& database, MemberId member) {
    removeMembersRecords(database, QStringLiteral("SELECT ?"), member.value);
    return deleteRow(database, "member"_L1, member.value);
}

bool removeVesselRows(Database& database, VesselId vessel) {
    run(database, QStringLiteral("UPDATE pot SET vessel_id = NULL WHERE vessel_id = ?"), vessel);
    run(database, QStringLiteral("UPDATE batch SET vessel_id = NULL WHERE vessel_id = ?"), vessel);
    return deleteRow(database, "vessel"_L1, vessel.value);
}

bool removeContainerRows(Database& database, ContainerId container) {
    run(database, QStringLiteral("UPDATE pot SET cool_in = NULL WHERE cool_in = ?"), container);
    return deleteRow(database, "container"_L1, container.value);
}

bool removeRetryRows(Database& database, RetryPlanId plan) {
    run(database, QStringLiteral("DELETE FROM retry_step WHERE retry_plan_id = ?"), plan);
    return deleteRow(database, "retry_plan"_L1, plan.value);
}

bool removeTemplateRows(Database& database, LadderTemplateId ladderTemplate) {
    run(database, QStringLiteral("DELETE FROM ladder_template_rung WHERE ladder_template_id = ?"),
        ladderTemplate);
    return deleteRow(database, "ladder_template"_L1, ladderTemplate.value);
}

bool removeLadderRows(Database& database, LadderId ladder) {
    run(database, QStringLiteral("DELETE FROM ladder_rung WHERE ladder_id = ?"), ladder);
    return deleteRow(database, "ladder"_L1, ladder.value);
}

bool removeHandoutTemplateRows(Database& database, HandoutTemplateId handoutTemplate) {
    run(database,
        QStringLiteral("DELETE FROM handout_template_section WHERE handout_template_id = ?"),
        handoutTemplate);
    return deleteRow(database, "handout_template"_L1, handoutTemplate.value);
}

void removeWeekParts(Database& database, WeekPlanId plan) {
    for (const QLatin1StringView table : weekTables)
        run(database, QStringLiteral("DELETE FROM %1 WHERE week_plan_id = ?").arg(table), plan);
}

bool removeWeekRows(Database& database, WeekPlanId plan) {
    removeWeekParts(database, plan);
    return deleteRow(database, "week_plan"_L1, plan.value);
}

bool removeWeekTemplateRows(Database& database, WeekTemplateId weekTemplate) {
    run(database, QStringLiteral("DELETE FROM week_template_placement WHERE week_template_id = ?"),
        weekTemplate);
    return deleteRow(database, "week_template"_L1, weekTemplate.value);
}

bool removePotRows(Database& database, PotId pot) {
    run(database, QStringLiteral("DELETE FROM pot_cut WHERE pot_id = ?"), pot);
    run(database, QStringLiteral("DELETE FROM pot_extra WHERE pot_id = ?"), pot);
    return deleteRow(database, "pot"_L1, pot.value);
}

bool removeBatchRows(Database& database, BatchId batch) {
    run(database,
        QStringLiteral("UPDATE intake_entry SET lot_id = NULL WHERE lot_id IN "
                       "(SELECT id FROM lot WHERE batch_id = ?)"),
        batch);
    run(database, QStringLiteral("DELETE FROM lot WHERE batch_id = ?"), batch);
    return deleteRow(database, "batch"_L1, batch.value);
}

bool removeLotRows(Database& database, LotId lot) {
    run(database, QStringLiteral("UPDATE intake_entry SET lot_id = NULL WHERE lot_id = ?"), lot);
    return deleteRow(database, "lot"_L1, lot.value);
}

} // namespace ladlework::store
