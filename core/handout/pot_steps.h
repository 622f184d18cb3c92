#pragma once

#include "casebook/cooking_steps.h"
#include "handout/page_context.h"
#include "kitchen/brew.h"

namespace ladlework::handout {

/// The steps of a pot: a row each, and a column with the clock times of each planned cooking (the
/// time since the start for one whose start is not set). At most three cookings to a table.
QList<Table> stepTables(const PageContext& context, const kitchen::Pot& pot,
                        const kitchen::Brewed& brewed);

/// A line each for what goes in: "chicken legs: 2 lb", "onion: 2 x medium onion".
QStringList ingredientLines(const PageContext& context, const kitchen::Pot& pot);

using casebook::strainedNames;

} // namespace ladlework::handout
