#pragma once

#include "casebook/family_records.h"

namespace ladlework::casebook {

/// The latest day set for a review, on the family or in its notes; null when none is set. It may
/// lie in the past: then it is overdue, or was held.
QDate nextReview(const FamilyRecords& records);

} // namespace ladlework::casebook
