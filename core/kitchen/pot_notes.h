#pragma once

#include "kitchen/brew.h"

namespace ladlework::kitchen {

/// What holds of every pot like this one, whatever its amounts: how long its raw cuts keep before
/// they are cooked and how they are handled, that stock is not canned by these steps, and that
/// local rules go first. Kept apart from brew()'s findings, which a change of the pot can mend.
Findings standingNotes(const Pot& pot, const Catalogue& catalogue);

} // namespace ladlework::kitchen
