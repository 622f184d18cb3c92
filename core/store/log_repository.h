#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "intake/log.h"
#include "store/action.h"
#include "store/rows.h"

#include <QList>

namespace ladlework::store {

class Database;

/// What was drunk and how it was borne.
class LogRepository {
public:
    explicit LogRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    [[nodiscard]] QList<intake::IntakeEntry> entries(FamilyId family) const;
    [[nodiscard]] QList<intake::Reaction> reactions(FamilyId family) const;

    /// An entry without the moment at which it was entered gets the moment of now.
    Result<IntakeId> addEntry(Action&, const intake::IntakeEntry& entry);
    Outcome changeEntry(Action&, const intake::IntakeEntry& entry);
    Outcome removeEntry(Action&, IntakeId entry);
    Result<ReactionId> addReaction(Action&, const intake::Reaction& reaction);
    Outcome changeReaction(Action&, const intake::Reaction& reaction);
    Outcome removeReaction(Action&, ReactionId reaction);

private:
    [[nodiscard]] Outcome checkEntry(const intake::IntakeEntry& entry) const;
    [[nodiscard]] Outcome checkReaction(const intake::Reaction& reaction) const;
    [[nodiscard]] Fields stamped(intake::IntakeEntry entry) const;

    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
