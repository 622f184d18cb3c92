#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/batch.h"
#include "kitchen/pot.h"
#include "store/action.h"

#include <QList>

namespace ladlework::store {

class Database;

/// Pots with their cuts and extras, batches and lots.
class PotRepository {
public:
    /// The catalogue says which cuts and extras there are; it must outlive the repository.
    PotRepository(Database& database, const Clock& clock, const kitchen::Catalogue& catalogue)
        : m_database(database), m_clock(clock), m_catalogue(catalogue) {}

    /// The family's own pots and the practice's, by name. FamilyId 0: the practice's only.
    [[nodiscard]] QList<kitchen::Pot> pots(FamilyId family) const;
    [[nodiscard]] QList<kitchen::Batch> batches(FamilyId family) const;
    [[nodiscard]] QList<kitchen::Lot> lots(FamilyId family) const;

    Result<PotId> addPot(Action&, const kitchen::Pot& pot);
    /// A pot can be made one of the practice's own (family 0), but not another family's.
    Outcome changePot(Action&, const kitchen::Pot& pot);
    /// Refused while a batch, a week plan or an intake entry uses it (the sentence says which).
    Outcome removePot(Action&, PotId pot);

    Result<BatchId> addBatch(Action&, const kitchen::Batch& batch);
    Outcome changeBatch(Action&, const kitchen::Batch& batch);
    /// Removes its lots too; intake entries that named them stay, without the lot.
    Outcome removeBatch(Action&, BatchId batch);
    Result<LotId> addLot(Action&, const kitchen::Lot& lot);
    Outcome changeLot(Action&, const kitchen::Lot& lot);
    Outcome removeLot(Action&, LotId lot);

private:
    [[nodiscard]] Outcome checkPot(const kitchen::Pot& pot) const;
    [[nodiscard]] Outcome notInUse(PotId pot) const;
    [[nodiscard]] Outcome checkBatch(const kitchen::Batch& batch) const;
    [[nodiscard]] Outcome checkLot(const kitchen::Lot& lot) const;

    Database& m_database;
    const Clock& m_clock;
    const kitchen::Catalogue& m_catalogue;
};

} // namespace ladlework::store
