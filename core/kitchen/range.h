#pragma once

namespace ladlework::kitchen {

/// 10 %, 50 % and 90 % of the stated uncertainty.
struct Range {
    double low = 0;
    double best = 0;
    double high = 0;
};

/// Where a standard normal distribution has nine tenths below it: a Range reaches so many standard
/// deviations to either side.
constexpr double ninetyPercent = 1.2815515655446004;

} // namespace ladlework::kitchen
