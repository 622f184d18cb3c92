#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"

namespace ladlework::kitchen {

/// The height of a vessel of this width and place that holds the pot with its headspace.
quantity::Length heightNeeded(quantity::Volume fill, const Vessel& vessel,
                              const Catalogue& catalogue);

/// What a vessel may hold with its headspace: 5 cm or a tenth of its height, whichever is more
/// (common practice), and no more than two thirds of a pressure cooker; nothing when it is lower
/// than that.
quantity::Volume fillAllowed(const Vessel& vessel, const Catalogue& catalogue);

/// The bones that water is measured against: meaty ones, or all when every bone is bare.
quantity::Mass meatyMass(const Pot& pot, const Catalogue& catalogue);

/// The bones and meat themselves, without the gaps between them.
quantity::Volume bonesVolume(const Pot& pot, const Catalogue& catalogue);

/// What stands in the vessel at the start: water, bones and extras.
quantity::Volume fillVolume(const Pot& pot, const Catalogue& catalogue);

} // namespace ladlework::kitchen
