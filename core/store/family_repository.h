#pragma once

#include "foundation/clock.h"
#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/catalogue.h"
#include "kitchen/container.h"
#include "kitchen/pot.h"
#include "people/caution.h"
#include "people/family.h"
#include "people/member.h"
#include "people/observation.h"
#include "people/retry_plan.h"
#include "people/tolerance.h"
#include "store/action.h"
#include "week/free_hours.h"

#include <QList>
#include <optional>

namespace ladlework::store {

class Database;

/// Families with their members, vessels, containers, tolerance notes, cautions, retry plans and
/// observations. add... stores a new record
/// (its id is ignored) and gives its id; change... and remove... give NotFound for a record that is
/// not there. Every record must pass its check().
class FamilyRepository {
public:
    /// The catalogue says what an allergy covers; it must outlive the repository.
    FamilyRepository(Database& database, const Clock& clock, const kitchen::Catalogue& catalogue)
        : m_database(database), m_clock(clock), m_catalogue(catalogue) {}

    /// All families by name.
    [[nodiscard]] QList<people::Family> families() const;
    /// Nothing when there is no such family.
    [[nodiscard]] std::optional<people::Family> family(FamilyId family) const;
    [[nodiscard]] QList<people::Member> members(FamilyId family) const;
    [[nodiscard]] QList<kitchen::Vessel> vessels(FamilyId family) const;
    [[nodiscard]] QList<kitchen::Container> containers(FamilyId family) const;
    /// The free hours of every week, in the order in which they were entered.
    [[nodiscard]] QList<week::UsualHours> usualHours(FamilyId family) const;
    [[nodiscard]] QList<people::ToleranceNote> tolerances(FamilyId family) const;
    [[nodiscard]] QList<people::Caution> cautions(FamilyId family) const;

    /// By day of their start.
    [[nodiscard]] QList<people::RetryPlan> retryPlans(FamilyId family) const;
    /// By day.
    [[nodiscard]] QList<people::Observation> observations(FamilyId family) const;

    Result<FamilyId> addFamily(Action&, const people::Family& family);
    Outcome changeFamily(Action&, const people::Family& family);
    /// Removes the family with all its records.
    Outcome removeFamily(Action&, FamilyId family);

    /// In place of those that were there. Starts are kept to the minute. The place of a Problem
    /// names the line and the field: "usualHours[2].pots".
    Outcome setUsualHours(Action&, FamilyId family, const QList<week::UsualHours>& hours);

    Result<MemberId> addMember(Action&, const people::Member& member);
    Outcome changeMember(Action&, const people::Member& member);
    /// Removes the member with notes, retry plans, observations, targets, ladders, entries and
    /// reactions.
    Outcome removeMember(Action&, MemberId member);

    Result<VesselId> addVessel(Action&, const kitchen::Vessel& vessel);
    Outcome changeVessel(Action&, const kitchen::Vessel& vessel);
    /// Pots that used it and batches cooked in it are left without a vessel.
    Outcome removeVessel(Action&, VesselId vessel);

    Result<ContainerId> addContainer(Action&, const kitchen::Container& container);
    Outcome changeContainer(Action&, const kitchen::Container& container);
    /// Pots that were to cool in it are left without one.
    Outcome removeContainer(Action&, ContainerId container);

    Result<ToleranceId> addTolerance(Action&, const people::ToleranceNote& note);
    Outcome changeTolerance(Action&, const people::ToleranceNote& note);
    Outcome removeTolerance(Action&, ToleranceId note);

    Result<CautionId> addCaution(Action&, const people::Caution& caution);
    Outcome changeCaution(Action&, const people::Caution& caution);
    Outcome removeCaution(Action&, CautionId caution);

    /// Refused when a plan that is new, or goes over to another subject or member, has something in
    /// the way (people::mayRetry()). The outcome of a plan can always be written down.
    Result<RetryPlanId> addRetryPlan(Action&, const people::RetryPlan& plan);
    Outcome changeRetryPlan(Action&, const people::RetryPlan& plan);
    Outcome removeRetryPlan(Action&, RetryPlanId plan);

    Result<ObservationId> addObservation(Action&, const people::Observation& observation);
    Outcome changeObservation(Action&, const people::Observation& observation);
    Outcome removeObservation(Action&, ObservationId observation);

private:
    [[nodiscard]] Outcome checkMember(const people::Member& member) const;
    [[nodiscard]] Outcome checkTolerance(const people::ToleranceNote& note) const;
    [[nodiscard]] Outcome checkCaution(const people::Caution& caution) const;
    [[nodiscard]] Outcome checkRetryPlan(const people::RetryPlan& plan) const;
    [[nodiscard]] Outcome mayPlanRetry(const people::RetryPlan& plan) const;
    [[nodiscard]] Outcome checkObservation(const people::Observation& observation) const;

    Database& m_database;
    const Clock& m_clock;
    const kitchen::Catalogue& m_catalogue;
};

} // namespace ladlework::store
