#pragma once

#include "casebook/casebook.h"
#include "week/week_solver.h"

namespace ladlework::casebook {

/// The plan with the cookings of a solution in place of those that were not settled. `ahead` is the
/// Settled::Locked view of `plan`, `solution` one of its problem. A cooking starts when its free
/// hours begin: on each day the longest pots take the longest hours, and where the hours have no
/// beginning the start is left open. What the plan says beside its cookings stays.
week::WeekPlan plannedWeek(const Casebook& casebook, const week::WeekPlan& plan,
                           const WeekAhead& ahead, const week::WeekSolution& solution);

} // namespace ladlework::casebook
