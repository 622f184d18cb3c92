#pragma once

#include "casebook/casebook.h"

namespace ladlework::casebook {

/// What a member's climb itself asks a word about: a rung that was not left upwards for many times
/// the good days that it asks ("ladder-stuck", a Caution), and a target that was reached in the
/// last days ("target-reached", a Note, until a visit note is written). Nothing while the ladder is
/// stopped, eased off or silent: those are told by themselves. The figures are in
/// resources/reference/ladder-figures.csv.
Findings climbFindings(const Standing& standing, const FamilyRecords& records, QDate today);

} // namespace ladlework::casebook
