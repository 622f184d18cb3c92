#pragma once

#include "casebook/casebook.h"

#include <QString>

namespace ladlework::ui {

/// True for a day on which the ladder stood stopped from the morning on: nothing was asked.
bool beganStopped(const intake::LadderDay& day);

/// What was asked of a member on a day of the climb: nothing while stopped, and no more than the
/// easing off of the target leaves.
quantity::Volume askedOn(const casebook::Casebook& book, const casebook::Standing& standing,
                         const intake::LadderDay& day);

/// "3 cups", or "nothing".
QString amountWords(quantity::Volume amount, quantity::MeasureSystem measures);

/// One sentence on a day: what the ladder decided and why, or that the plan of easing off asked
/// less than the ladder does.
QString whyWords(const casebook::Casebook& book, const casebook::Standing& standing,
                 const intake::LadderDay& day);

} // namespace ladlework::ui
