#pragma once

#include "kitchen/pot.h"

namespace ladlework::casebook {

/// What a new pot starts with while there is none at hand to start from: a small pot of
/// resources/reference/first-pot.csv, without name, family and vessel. A broken table is a broken
/// invariant (throws).
kitchen::Pot firstPot();

/// The mass that is offered for one more cut; from the same table.
quantity::Mass firstCutMass();

} // namespace ladlework::casebook
