#pragma once

#include "kitchen/brew.h"

namespace ladlework::kitchen {

/// What is to be said about the pot itself: its bones, water, vessel, times and vegetables.
/// `brewed` holds everything but findings.
Findings potFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue);

/// What is to be said because of those who drink it: age, sodium, small bones, meat left over.
Findings drinkerFindings(const BrewInput& input, const Brewed& brewed, const Catalogue& catalogue);

/// The height of a vessel of this width that holds the pot with its headspace.
quantity::Length heightNeeded(quantity::Volume fill, quantity::Length diameter,
                              const Catalogue& catalogue);

/// What a vessel may hold with its headspace: 5 cm or a tenth of its height, whichever is more
/// (common practice); nothing when it is lower than that.
quantity::Volume fillAllowed(const Vessel& vessel, const Catalogue& catalogue);

/// The bones that water is measured against: meaty ones, or all when every bone is bare.
quantity::Mass meatyMass(const Pot& pot, const Catalogue& catalogue);

} // namespace ladlework::kitchen
