#pragma once

#include "casebook/casebook.h"
#include "week/week_solver.h"

namespace ladlework::ui {

/// What there is to say of a week as it goes, and its new tries, each as a note. Fields are
/// "day:N", counted from Monday, and "tolerances".
Findings weekNotes(const casebook::Casebook& casebook, QDate monday,
                   const casebook::WeekAhead& ahead, const week::WeekSolution& solution);

} // namespace ladlework::ui
