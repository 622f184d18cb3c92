#pragma once

#include "week/week_problem.h"

#include <vector>

namespace ladlework::week {

/// Stock that is still good when the horizon is over.
struct StockLeft {
    StockSource from;
    kitchen::Lot::Place place = kitchen::Lot::Place::Fridge;
    int lastDay =
        0; ///< counted as in the problem, so at least its `days`; of no use in the freezer
    quantity::Volume volume;
};

/// What a plan leaves over, by source: in the refrigerator, thawed, and in the freezer. Amounts
/// under a drop are what the arithmetic leaves of an empty jar and are left out.
std::vector<StockLeft> stockLeft(const WeekProblem& problem, const WeekSolution& solution);

} // namespace ladlework::week
