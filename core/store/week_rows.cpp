#include "store/week_rows.h"

#include "store/statement.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr int minutesPerHour = 60;

QTime readStart(const Statement& row) {
    const std::optional<int> minute = row.optionalInteger("start_minute"_L1);
    return minute ? QTime(*minute / minutesPerHour, *minute % minutesPerHour) : QTime();
}
} // namespace

std::optional<int> minuteOf(QTime time) {
    if (!time.isValid())
        return std::nullopt;
    return time.hour() * minutesPerHour + time.minute();
}

Fields fieldsOf(const week::FreeHours& hours) {
    return {{"start_minute"_L1, minuteOf(hours.from)},
            {"length_min"_L1, hours.length.toMinutes()},
            {"pots"_L1, hours.pots}};
}

week::FreeHours readFreeHours(const Statement& row) {
    return {readStart(row), quantity::Duration::fromMinutes(row.real("length_min"_L1)),
            row.integer("pots"_L1)};
}

week::UsualHours readUsualHours(const Statement& row) {
    return {row.integer("weekday"_L1), readFreeHours(row)};
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
    return {row.day("day"_L1), row.id<PotId>("pot_id"_L1), readStart(row)};
}

week::HouseholdExtra readHouseholdExtra(const Statement& row) {
    return {row.text("text"_L1), row.word("section"_L1, week::shopSectionFromId)};
}

week::AtHome readAtHome(const Statement& row) {
    return {row.text("item"_L1), quantity::Mass::fromGrams(row.real("mass_g"_L1))};
}

week::WeekTemplate readWeekTemplate(const Statement& row) {
    week::WeekTemplate kept;
    kept.id = row.id<WeekTemplateId>("id"_L1);
    kept.family = row.id<FamilyId>("family_id"_L1);
    kept.name = row.text("name"_L1);
    return kept;
}

week::TemplatePlacement readTemplatePlacement(const Statement& row) {
    return {row.integer("day"_L1), row.id<PotId>("pot_id"_L1), readStart(row)};
}

} // namespace ladlework::store
