#pragma once

#include "week/linear_program.h"
#include "week/week_solver.h"

#include <memory>
#include <vector>

namespace ladlework::week {

/// What came of one level.
struct LevelOutcome {
    double value = 0;
    double bound = 0; ///< proven: no solution is below it
    bool proven = false;
};

struct LevelsOutcome {
    bool feasible = false;
    std::vector<double> point; ///< by column; empty when nothing was found
    std::vector<LevelOutcome> levels;
};

/// Makes the levels small one after the other, each among the solutions that are best in all before
/// it, with CBC's branch and cut over Clp. A level whose linear relaxation already proves the
/// solution at hand costs no search. Stops at the first level that it cannot prove in the limits:
/// the levels after it are not looked at (the outcome has fewer). `start` is a solution by column,
/// or empty; one that does not hold is not used.
LevelsOutcome solveLevels(const LinearProgram& program, const std::vector<LinearLevel>& levels,
                          const std::vector<double>& start, const SolveLimits& limits);

} // namespace ladlework::week
