#pragma once

#include "core/week/rivals/week_levels.h"
#include "week/week_problem.h"

namespace ladlework::week::rivals {

/// What a formulation came to.
struct RivalAnswer {
    rules::Levels objective{};
    int columns = 0;
    int rows = 0;
};

/// The best week as GLPK finds it, level by level, in a model that says the rules one by one: a
/// whole column for each slot and pot, and for each of these batches and each lot a column for
/// every drinker, day and, once frozen, day of thawing. Slow and plain on purpose.
RivalAnswer glpkWeek(const WeekProblem& problem, double secondsALevel = 0);

} // namespace ladlework::week::rivals
