#pragma once

#include "casebook/casebook.h"

namespace ladlework::casebook {

/// What the rungs of a member's ladder ask a word about: a last rung above the high end of the
/// target ("ladder-above-target", a Stop), and every step that is a leap (intake::isLeap();
/// "ladder-leap", a Caution with the two amounts). Nothing without a ladder.
Findings rungFindings(const Standing& standing, quantity::MeasureSystem measures);

} // namespace ladlework::casebook
