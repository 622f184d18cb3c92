#pragma once

namespace ladlework::kitchen {

/// 10 %, 50 % and 90 % of the stated uncertainty.
struct Range {
    double low = 0;
    double best = 0;
    double high = 0;
};

} // namespace ladlework::kitchen
