#pragma once

#include "casebook/family_records.h"
#include "exchange/practice_text.h"
#include "foundation/result.h"
#include "store/action.h"

#include <QHash>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::exchange {

/// The real ids that stand for the provisional ones of records about to be stored.
struct StoredIds {
    QHash<PhaseId, PhaseId> phases;
    QHash<PotId, PotId> pots;
};

/// Stores a family with all its records as new ones. Ids in the records are provisional: they only
/// say what belongs to what. Pots without a family are the practice's and must be in `known`, as
/// must the phases. The first Problem ends it; the caller's transaction takes everything back.
Result<FamilyId> storeFamily(store::Action& action, store::Workbook& workbook,
                             const casebook::FamilyRecords& records, const StoredIds& known);

/// Stores the letterhead, what the practice sets for all families (rules, templates, symptoms,
/// prices), the phases and the practice's own pots, and gives the ids of phases and pots. A
/// template or symptom with the name of a stored one takes its place.
Result<StoredIds> storeHouse(store::Action& action, store::Workbook& workbook,
                             const PracticeText& text);

/// Stores a practice that was read from text: letterhead, phases, pots and families.
Outcome storePractice(store::Action& action, store::Workbook& workbook, const PracticeText& text);

} // namespace ladlework::exchange
