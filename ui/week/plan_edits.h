#pragma once

#include "week/week_plan.h"
#include "week/week_template.h"

namespace ladlework::ui {

// The changes that a person makes to a week by hand, each on a copy of the plan.

/// The pot is put on a day; it starts when the same pot starts elsewhere in the plan, if it does.
week::WeekPlan withPot(week::WeekPlan plan, PotId pot, QDate day);
/// `index` counts the placements of the plan; one outside leaves the plan as it is.
week::WeekPlan withoutPlacement(week::WeekPlan plan, qsizetype index);
week::WeekPlan withMove(week::WeekPlan plan, qsizetype index, QDate day);
week::WeekPlan withStart(week::WeekPlan plan, qsizetype index, QTime start);
/// The placements of another week on the same weekdays, in place of the plan's own, and its
/// household extras with those that the plan has. Locked days stay as they are.
week::WeekPlan withCopyOf(week::WeekPlan plan, const week::WeekPlan& other);
/// The placements of a kept week in place of the plan's own. Locked days stay as they are.
week::WeekPlan withKept(week::WeekPlan plan, const week::WeekTemplate& kept);
/// The plan's placements under a name.
week::WeekTemplate keptFrom(const week::WeekPlan& plan, const QString& name);
week::WeekPlan withLock(week::WeekPlan plan, QDate day, bool locked);
/// These hours in place of the usual ones of the day; none: no cooking.
week::WeekPlan withHours(week::WeekPlan plan, QDate day, const QList<week::FreeHours>& hours);
week::WeekPlan withUsualHours(week::WeekPlan plan, QDate day);
/// Has the day hours of its own?
bool hasOwnHours(const week::WeekPlan& plan, QDate day);

/// So much of an item is at home; nothing of it takes the line away.
week::WeekPlan withAtHome(week::WeekPlan plan, const QString& item, quantity::Mass mass);
week::WeekPlan withExtra(week::WeekPlan plan, const week::HouseholdExtra& extra);
/// Without the last one like it; a plan that has none is left as it is.
week::WeekPlan withoutExtra(week::WeekPlan plan, const week::HouseholdExtra& extra);

/// The placements of a day in the order they are cooked: by start, those without one last.
QList<qsizetype> placementsOn(const week::WeekPlan& plan, QDate day);

} // namespace ladlework::ui
