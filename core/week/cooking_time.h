#pragma once

#include "kitchen/pot.h"
#include "quantity/duration.h"

namespace ladlework::week {

/// What a cooking asks of a day.
struct CookingTime {
    quantity::Duration total;   ///< from the first move until the stock is put away
    quantity::Duration handsOn; ///< of it, the time that someone stands at it
};

/// Both are estimates: the simmer, and what resources/reference/cooking-times.csv adds to it for
/// heating, preparing each cut and extra, straining and putting away.
CookingTime cookingTime(const kitchen::Pot& pot);

/// How long before the simmer a cooking begins.
quantity::Duration heatUpTime();

/// Stock that is thawed is drunk within this many days after the day it was moved, and not on it.
int thawKeepsDays();

} // namespace ladlework::week
