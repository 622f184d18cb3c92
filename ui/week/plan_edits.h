#pragma once

#include "week/week_plan.h"

namespace ladlework::ui {

// The changes that a person makes to a week by hand, each on a copy of the plan.

/// The pot is put on a day; it starts when the same pot starts elsewhere in the plan, if it does.
week::WeekPlan withPot(week::WeekPlan plan, PotId pot, QDate day);
/// `index` counts the placements of the plan; one outside leaves the plan as it is.
week::WeekPlan withoutPlacement(week::WeekPlan plan, qsizetype index);
week::WeekPlan withMove(week::WeekPlan plan, qsizetype index, QDate day);
week::WeekPlan withStart(week::WeekPlan plan, qsizetype index, QTime start);
/// The placements of another week on the same weekdays, in place of the plan's own.
week::WeekPlan withCopyOf(week::WeekPlan plan, const week::WeekPlan& other);

/// So much of an item is at home; nothing of it takes the line away.
week::WeekPlan withAtHome(week::WeekPlan plan, const QString& item, quantity::Mass mass);
week::WeekPlan withExtra(week::WeekPlan plan, const week::HouseholdExtra& extra);
/// Without the last one like it; a plan that has none is left as it is.
week::WeekPlan withoutExtra(week::WeekPlan plan, const week::HouseholdExtra& extra);

/// The placements of a day in the order they are cooked: by start, those without one last.
QList<qsizetype> placementsOn(const week::WeekPlan& plan, QDate day);

} // namespace ladlework::ui
