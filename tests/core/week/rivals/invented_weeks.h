#pragma once

#include "week/week_problem.h"

namespace ladlework::week::samples {

/// A small week of all sorts, the same for the same seed: few days and slots, everything that can
/// be tight now and then tight (rooms, meat, slots, one animal too often, who may drink what),
/// stock on hand in both places, cookings that are settled. At most `mostChoices` choices of
/// cookings.
WeekProblem smallWeek(unsigned seed, std::size_t mostChoices);

struct FamilySize {
    int days = 7;
    int drinkers = 8;
    int pots = 8;
};
/// A family as there are: 250 to 1500 mL a day each, pots of 2 to 6 L of three animals, two to five
/// slots a week, some stock and meat on hand, a refrigerator and a freezer of a household.
WeekProblem familyWeek(unsigned seed, const FamilySize& size);

} // namespace ladlework::week::samples
