#pragma once

#include "week/week_problem.h"

#include <vector>

namespace ladlework::week {

/// Cookings chosen without a search: day by day, for the first one on which someone would go short,
/// the pot that serves most of what is missing there and after, on the latest day that can still
/// take it. Keeps to slots, rooms and the limit of cookings of one animal; settled cookings are
/// counted as there. Returns what is added, by [day][pot].
std::vector<std::vector<int>> greedyCookings(const WeekProblem& problem);

} // namespace ladlework::week
