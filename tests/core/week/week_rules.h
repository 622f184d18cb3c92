#pragma once

#include "week/week_problem.h"

#include <string>
#include <vector>

namespace ladlework::week::rules {

/// What a plan comes to when it is acted out day by day.
struct Replayed {
    std::vector<std::string> breaches; ///< of the rules, in words; none in a plan that keeps them
    WeekObjective objective;
    std::vector<StoreDay> stores;
    std::vector<std::vector<quantity::Volume>> shortBy; ///< [day][drinker]
    std::vector<Spoiling> spoiling;                     ///< stock and meat in entries of their own
};

/// Acts out the moves of a plan (cookings, servings, freezing, thawing, meat) by the rules of
/// `ladlework reckon week` alone, with nothing of how the plan was found. Of one source the stock
/// that spoils first is drunk first, except what the plan says it lets spoil: the rules leave the
/// choice, and what spoils soon makes room. What else the plan says of itself (stores, who is
/// short, the objective) is not looked at. Amounts may be off by a thousandth of a mL or g.
Replayed replay(const WeekProblem& problem, const WeekSolution& plan);

/// The breaches of replay(), and every place where what the plan says of itself is not what came
/// out when it was acted out. Within a hundredth of a mL or g, counts exactly.
std::vector<std::string> breaches(const WeekProblem& problem, const WeekSolution& plan);

} // namespace ladlework::week::rules
