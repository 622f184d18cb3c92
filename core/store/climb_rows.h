#pragma once

#include "casebook/climb_so_far.h"
#include "foundation/finding.h"

#include <QHash>

namespace ladlework::store {

class Database;

// Where each member's log has led, kept beside the records so that it need not be replayed.

/// What is kept; members without a row are missing.
QHash<MemberId, casebook::ClimbSoFar> keptClimbs(Database& database);

/// True when every member has its row.
bool allClimbsKept(Database& database);

/// Makes the missing rows from the records, inside the transaction that is running. A member with a
/// ladder that does not pass its check gets none.
void makeMissingClimbs(Database& database);

/// A finding for each row that does not say what follows from the records. A missing row is none.
Findings checkClimbs(Database& database);

} // namespace ladlework::store
