#pragma once

#include "core/week/rivals/week_levels.h"
#include "week/week_problem.h"

#include <cstddef>

namespace ladlework::week::rivals {

/// How many choices of cookings the slots of a problem leave, the ones with too many of one animal
/// included.
std::size_t choicesOf(const WeekProblem& problem);

/// What came out when every choice of cookings was tried.
struct EveryPlan {
    rules::Levels best{};
    /// Among the plans that are as good as the best, the fewest times that the most cooked animal
    /// is cooked.
    int fewestOfOneAnimal = 0;
};

/// The best of all choices of cookings. For each, the serving is a linear problem of its own
/// (GLPK's simplex method), the meat is eaten the soonest to spoil first (which saves the most:
/// every gram of it is a job of the same size with a release and a due day), and the rest is
/// counted.
EveryPlan everyPlan(const WeekProblem& problem);

/// The same for the settled cookings alone.
rules::Levels settledAlone(const WeekProblem& problem);

} // namespace ladlework::week::rivals
