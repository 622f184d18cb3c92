#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/pot.h"
#include "people/caution.h"
#include "people/family.h"
#include "people/member.h"
#include "people/tolerance.h"
#include "store/action.h"

#include <QList>
#include <optional>

namespace ladlework::store {

class Database;

/// Families with their members, vessels, tolerance notes and cautions. add... stores a new record
/// (its id is ignored) and gives its id; change... and remove... give NotFound for a record that is
/// not there. Every record must pass its check().
class FamilyRepository {
public:
    explicit FamilyRepository(Database& database, const Clock& clock)
        : m_database(database), m_clock(clock) {}

    /// All families by name.
    [[nodiscard]] QList<people::Family> families() const;
    /// Nothing when there is no such family.
    [[nodiscard]] std::optional<people::Family> family(FamilyId family) const;
    [[nodiscard]] QList<people::Member> members(FamilyId family) const;
    [[nodiscard]] QList<kitchen::Vessel> vessels(FamilyId family) const;
    [[nodiscard]] QList<people::ToleranceNote> tolerances(FamilyId family) const;
    [[nodiscard]] QList<people::Caution> cautions(FamilyId family) const;

    Result<FamilyId> addFamily(Action&, const people::Family& family);
    Outcome changeFamily(Action&, const people::Family& family);
    /// Removes the family with all its records.
    Outcome removeFamily(Action&, FamilyId family);

    Result<MemberId> addMember(Action&, const people::Member& member);
    Outcome changeMember(Action&, const people::Member& member);
    /// Removes the member with notes, targets, ladders, entries and reactions.
    Outcome removeMember(Action&, MemberId member);

    Result<VesselId> addVessel(Action&, const kitchen::Vessel& vessel);
    Outcome changeVessel(Action&, const kitchen::Vessel& vessel);
    /// Pots that used it are left without a vessel.
    Outcome removeVessel(Action&, VesselId vessel);

    Result<ToleranceId> addTolerance(Action&, const people::ToleranceNote& note);
    Outcome changeTolerance(Action&, const people::ToleranceNote& note);
    Outcome removeTolerance(Action&, ToleranceId note);

    Result<CautionId> addCaution(Action&, const people::Caution& caution);
    Outcome changeCaution(Action&, const people::Caution& caution);
    Outcome removeCaution(Action&, CautionId caution);

private:
    [[nodiscard]] Outcome checkMember(const people::Member& member) const;
    [[nodiscard]] Outcome checkTolerance(const people::ToleranceNote& note) const;
    [[nodiscard]] Outcome checkCaution(const people::Caution& caution) const;

    Database& m_database;
    const Clock& m_clock;
};

} // namespace ladlework::store
