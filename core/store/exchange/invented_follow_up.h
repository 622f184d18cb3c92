#pragma once

#include "exchange/invented_family.h"

namespace ladlework::exchange {

/// Adds what is followed over time to an invented family: retries of what its notes keep out, and
/// weights of some members.
void inventFollowUp(Chance& chance, const InventedGround& ground, casebook::FamilyRecords& records);

} // namespace ladlework::exchange
