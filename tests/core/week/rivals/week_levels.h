#pragma once

#include "week/week_problem.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace ladlework::week::rules {

/// The objective as plain numbers, the level that counts most in front: mL, mL, mL, g, cookings,
/// minutes, money.
using Levels = std::array<double, 7>;

inline Levels levelsOf(const WeekObjective& objective) {
    return {objective.overRoom.toMillilitres(),
            objective.shortBy.toMillilitres(),
            objective.spoilt.toMillilitres(),
            objective.spoiltMeat.toGrams(),
            static_cast<double>(objective.cookings),
            objective.handsOn.toMinutes(),
            objective.cost};
}

/// How far apart two answers may lie in each level and still be the same: a hundredth of a
/// millilitre or gram, which no kitchen can measure and which is a thousand times what the solvers'
/// own tolerances (1e-7 relative) can leave of sums of some litres; counts exactly; money and
/// minutes are sums over whole cookings.
inline constexpr Levels tolerances{0.01, 0.01, 0.01, 0.01, 0.5, 1e-6, 1e-6};

/// Below 0 when `a` is better, above 0 when `b` is, 0 when they are the same within tolerances.
inline int compare(const Levels& a, const Levels& b) {
    for (std::size_t level = 0; level < a.size(); ++level) {
        if (std::abs(a[level] - b[level]) > tolerances[level])
            return a[level] < b[level] ? -1 : 1;
    }
    return 0;
}

} // namespace ladlework::week::rules
