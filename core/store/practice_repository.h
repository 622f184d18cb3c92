#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "people/phase.h"
#include "people/practice.h"
#include "store/action.h"

#include <QList>

namespace ladlework::store {

class Database;

/// The practice itself and its phases.
class PracticeRepository {
public:
    explicit PracticeRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    [[nodiscard]] people::Practice practice() const;
    /// In order of position.
    [[nodiscard]] QList<people::Phase> phases() const;

    Outcome setPractice(Action&, const people::Practice& practice);
    Result<PhaseId> addPhase(Action&, const people::Phase& phase);
    Outcome changePhase(Action&, const people::Phase& phase);
    /// Refused while a member stands in it.
    Outcome removePhase(Action&, PhaseId phase);

private:
    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
