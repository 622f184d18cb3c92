#pragma once

#include "foundation/reference_table.h"
#include "kitchen/catalogue.h"

namespace ladlework::kitchen {

/// The columns `source` and `basis` of a row.
Provenance provenanceOf(const ReferenceTable::Row& row);

/// A row with the columns id, value, low, high and unit; a bound that is left empty is the value.
Figure figureOf(const ReferenceTable::Row& row);

} // namespace ladlework::kitchen
