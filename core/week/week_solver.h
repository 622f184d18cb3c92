#pragma once

#include "week/week_problem.h"

#include <functional>
#include <stop_token>

namespace ladlework::week {

/// How far a solution has come; told from the thread that solves.
struct SolveProgress {
    int level = 0;    ///< of the objective, from 0
    int levels = 0;   ///< how many there are
    double best = 0;  ///< of that level, in mL, g, cookings, minutes or cost
    double bound = 0; ///< no plan can be below this
};

struct SolveLimits {
    std::stop_token stop; ///< asked often; the best plan so far comes back as Feasible
    double seconds = 60;  ///< for all levels together
    std::function<void(const SolveProgress&)> progress; ///< may be empty
};

/// A plan at once: cookings chosen day by day where someone would go short, then served as well as
/// can be. Milliseconds; Feasible. `problem` must pass check().
WeekSolution greedyWeek(const WeekProblem& problem);

/// The best plan, proven level by level with CBC. Pure: the same problem gives the same plan (when
/// it is not cut short). `start`, a plan of the same problem, can only help. Thread-safe for
/// different calls. `problem` must pass check().
WeekSolution solveWeek(const WeekProblem& problem, const SolveLimits& limits = {},
                       const WeekSolution* start = nullptr);

/// How the settled cookings alone go, served as well as can be: what drinks which, what is frozen
/// and thawed, who is short. Optimal for those cookings.
WeekSolution serveSettled(const WeekProblem& problem);

} // namespace ladlework::week
