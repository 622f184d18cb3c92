#pragma once

#include "core/week/rivals/glpk_week.h"

namespace ladlework::week::rivals {

/// The best week as GLPK finds it, in as small a model as the rules allow: pots that the same
/// people may drink are one kind of stock, people who may drink the same kinds are one drinker,
/// everything frozen of a kind is one store, and slots are counted by how long a pot they hold. For
/// comparing times fairly, and a third answer where the plain model takes long.
RivalAnswer compactWeek(const WeekProblem& problem, double secondsALevel = 0);

} // namespace ladlework::week::rivals
