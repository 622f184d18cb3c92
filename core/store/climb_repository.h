#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "intake/ladder.h"
#include "intake/target.h"
#include "store/action.h"

#include <QList>

namespace ladlework::store {

class Database;

/// A decision has a day that is not after tomorrow (after a stop of today it counts from tomorrow),
/// a rung that is not negative and a reason.
Outcome checkDecision(const intake::Decision& decision, QDate today);

/// Targets, ladders and recorded decisions of members.
class ClimbRepository {
public:
    explicit ClimbRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    [[nodiscard]] QList<intake::Target> targets(FamilyId family) const;
    [[nodiscard]] QList<intake::Ladder> ladders(FamilyId family) const;
    [[nodiscard]] QList<intake::Decision> decisions(FamilyId family) const;

    Result<TargetId> addTarget(Action&, const intake::Target& target);
    Outcome changeTarget(Action&, const intake::Target& target);
    Outcome removeTarget(Action&, TargetId target);
    Result<LadderId> addLadder(Action&, const intake::Ladder& ladder);
    Outcome changeLadder(Action&, const intake::Ladder& ladder);
    Outcome removeLadder(Action&, LadderId ladder);
    /// A reason must be given; one decision a member and day.
    Result<DecisionId> addDecision(Action&, const intake::Decision& decision);
    Outcome removeDecision(Action&, DecisionId decision);

private:
    [[nodiscard]] Outcome checkTarget(const intake::Target& target) const;
    [[nodiscard]] Outcome checkLadder(const intake::Ladder& ladder) const;

    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
