#pragma once

#include "kitchen/brew.h"

#include <vector>

namespace ladlework::kitchen {

/// How long one cut or extra is in the pot, and whether it is strained out.
struct Stay {
    quantity::Duration inPot;
    bool strained = true;
};

/// When everything goes in. The stays stand in the order of the pot's own lists.
struct Timeline {
    QList<Addition> additions; ///< in order of time
    std::vector<Stay> cuts;
    std::vector<Stay> extras;
};

/// What would let all cuts end inside their own windows together.
struct CommonWindow {
    quantity::Duration least; ///< the longest of the least times
    quantity::Duration most;  ///< the longest of the most times
    bool several = false;     ///< cuts of more than one window
};

/// How long a cut simmers in this pot: bare bones take the long window of bone broth only in a bone
/// broth; beside meaty cuts they go with their animal.
const CookWindow& windowIn(const Pot& pot, const Cut& cut, const Catalogue& catalogue);

/// The simmer times that suit all cuts of the pot, the quick ones going in later.
CommonWindow commonWindow(const Pot& pot, const Catalogue& catalogue);

/// Works out when each cut and extra goes in so that all of them end together: slow cuts at the
/// start, quick cuts as long before the end as their window allows. Where the simmer is too short
/// or too long for a cut, it goes in at the start; pot findings say so.
Timeline timelineOf(const BrewInput& input, const Catalogue& catalogue);

} // namespace ladlework::kitchen
