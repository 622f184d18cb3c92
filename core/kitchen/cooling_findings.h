#pragma once

#include "kitchen/cooling_run.h"

namespace ladlework::kitchen {

/// What is to be said about a cooling: the two-stage rule, depth, the counter, the refrigerator,
/// lid and glass, and that it is an estimate.
Findings coolingFindings(const CoolingInput& input, const CoolingRun& run, const TwoStageRule& rule,
                         const CoolingFigures& figures);

/// How long food may stand out: the home rule, less on a hot day (resources/reference/keeping.csv).
quantity::Duration counterAllowed(quantity::Temperature room);

} // namespace ladlework::kitchen
