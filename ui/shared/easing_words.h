#pragma once

#include "casebook/casebook.h"

#include <QString>

namespace ladlework::ui {

/// "A rung less every 7 days from 3 March: 3 cups, 2½ cups, 2 cups, ... down to 1 cup by 14 April."
/// Empty while no easing off is planned.
QString easingWords(const intake::Target& target, const intake::Ladder& ladder,
                    quantity::MeasureSystem measures);

/// "climbing", "stopped", "at target"...: the state of the ladder, and "easing off" only while a
/// plan to ease off is under way.
QString climbState(const casebook::Standing& standing);

} // namespace ladlework::ui
