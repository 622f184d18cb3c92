#pragma once

#include "casebook/handout_template.h"
#include "store/rows.h"

namespace ladlework::store {

class Statement;

// What the practice's pages and label sheets are in their tables, without their id, and back.

/// Without the sections, which have their own table.
Fields fieldsOf(const casebook::HandoutTemplate& kept);
casebook::HandoutTemplate readHandoutTemplate(const Statement& row);
Fields fieldsOf(const casebook::HandoutSection& section);
casebook::HandoutSection readHandoutSection(const Statement& row);
Fields fieldsOf(const casebook::LabelStock& stock);
casebook::LabelStock readLabelStock(const Statement& row);

} // namespace ladlework::store
