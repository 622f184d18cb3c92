#pragma once

#include "week/week_model.h"

namespace ladlework::week {

/// The plan that a point of the model stands for, with kinds, tables and sources taken apart into
/// pots, lots and drinkers again: frozen stock is used in the order it was frozen, and who sits at
/// one table shares what is short in the measure of what they want. Status and gap are the
/// caller's.
WeekSolution servingPlan(const WeekProblem& problem, const WeekModel& model,
                         const std::vector<double>& point);

} // namespace ladlework::week
