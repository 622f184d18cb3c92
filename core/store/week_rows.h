#pragma once

#include "store/rows.h"
#include "week/free_hours.h"
#include "week/week_plan.h"
#include "week/week_template.h"

#include <QTime>
#include <optional>

namespace ladlework::store {

class Statement;

// What the records of a week are in their tables, and back with them.

/// Minutes after midnight, as a start is kept; nothing while it is not told.
std::optional<int> minuteOf(QTime time);

/// Start, length and pots: the columns that usual hours and those of one day have in common.
Fields fieldsOf(const week::FreeHours& hours);
week::FreeHours readFreeHours(const Statement& row);
week::UsualHours readUsualHours(const Statement& row);
/// Without its parts, which have their own tables.
week::WeekPlan readPlan(const Statement& row);
week::Placement readPlacement(const Statement& row);
week::HouseholdExtra readHouseholdExtra(const Statement& row);
week::AtHome readAtHome(const Statement& row);
/// Without its placements.
week::WeekTemplate readWeekTemplate(const Statement& row);
week::TemplatePlacement readTemplatePlacement(const Statement& row);

} // namespace ladlework::store
