#pragma once

#include "foundation/clock.h"
#include "foundation/finding.h"
#include "kitchen/catalogue.h"

namespace ladlework::store {

class Database;
class Workbook;

/// One finding for each thing that is wrong with the file ("file-damaged"), with a reference
/// ("lost-reference"), with a recorded change ("history-damaged") or with a record that does not
/// pass its check ("record-not-valid"; `field` names table and row).
Findings verifyWorkbook(Workbook& workbook, Database& database, const kitchen::Catalogue& catalogue,
                        const Clock& clock);

} // namespace ladlework::store
