#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "quantity/measure.h"

#include <QString>

namespace ladlework::ui {

/// What was changed in a pot as one sentence for the history: "Set the water of Chicken legs to
/// 3 quarts". Of several changes the first that differs is named; "Changed the pot ..." otherwise.
QString potChange(const kitchen::Pot& before, const kitchen::Pot& after,
                  const kitchen::Catalogue& catalogue, quantity::MeasureSystem measures);

} // namespace ladlework::ui
