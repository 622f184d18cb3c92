#pragma once

#include "kitchen/pot.h"

namespace ladlework::casebook {

/// The vessel that a pot is reckoned with while the family has none (its id is not stored): the
/// sizes of resources/reference/usual-vessel.csv.
kitchen::Vessel usualVessel();

} // namespace ladlework::casebook
