#pragma once

#include "kitchen/brew.h"
#include "kitchen/pot_measures.h"

namespace ladlework::kitchen {

/// What is to be said about the pot itself: its bones, water, vessel, times and vegetables.
/// `brewed` holds everything but findings.
Findings potFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue);

/// What is to be said because of those who drink it: age, sodium, small bones, meat left over.
Findings drinkerFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue);

} // namespace ladlework::kitchen
