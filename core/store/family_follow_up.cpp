#include "store/belonging.h"
#include "store/family_repository.h"
#include "store/people_rows.h"
#include "store/records.h"
#include "store/removal.h"
#include "store/volume_steps.h"

#include <algorithm>

// What is followed over time of a member: retry plans and observations.

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr StepsTable stepsTable{"retry_step"_L1, "retry_plan_id"_L1};

template <class Record>
QList<Record> ofMember(QList<Record> records, MemberId member) {
    records.removeIf([member](const Record& record) { return record.member != member; });
    return records;
}
} // namespace

QList<people::RetryPlan> FamilyRepository::retryPlans(FamilyId family) const {
    QList<people::RetryPlan> plans =
        readAll(m_database,
                QStringLiteral("SELECT plan.* FROM member JOIN retry_plan AS plan "
                               "ON plan.member_id = member.id WHERE member.family_id = ? "
                               "ORDER BY plan.start_day, plan.id"),
                readRetryPlan, family);
    Statement rows = m_database.statement(
        QStringLiteral("SELECT step.* FROM member JOIN retry_plan AS plan "
                       "ON plan.member_id = member.id "
                       "JOIN retry_step AS step ON step.retry_plan_id = plan.id "
                       "WHERE member.family_id = ? ORDER BY step.retry_plan_id, step.position"));
    rows.with(family);
    giveSteps(plans, &people::RetryPlan::steps, rows, stepsTable);
    return plans;
}

QList<people::Observation> FamilyRepository::observations(FamilyId family) const {
    return readAll(m_database,
                   QStringLiteral("SELECT observation.* FROM member JOIN observation "
                                  "ON observation.member_id = member.id "
                                  "WHERE member.family_id = ? "
                                  "ORDER BY observation.day, observation.id"),
                   readObservation, family);
}

Outcome FamilyRepository::checkRetryPlan(const people::RetryPlan& plan) const {
    const Result<QDate> today = Belonging(m_database).todayOf(plan.member, m_clock);
    if (!today)
        return passOn(today);
    return people::check(plan, *today);
}

Outcome FamilyRepository::mayPlanRetry(const people::RetryPlan& plan) const {
    const FamilyId family = Belonging(m_database).familyOf(plan.member).value_or(FamilyId{});
    const QList<people::Member> all = members(family);
    const auto member = std::ranges::find(all, plan.member, &people::Member::id);
    return people::mayRetry(ofMember(tolerances(family), plan.member),
                            ofMember(cautions(family), plan.member), plan.subject,
                            member == all.end() ? QString() : member->name, m_catalogue);
}

Result<RetryPlanId> FamilyRepository::addRetryPlan(Action&, const people::RetryPlan& plan) {
    if (const Outcome checked = checkRetryPlan(plan); !checked)
        return passOn(checked);
    if (plan.outcome == people::RetryPlan::Ending::Open)
        if (const Outcome may = mayPlanRetry(plan); !may)
            return passOn(may);
    const RetryPlanId id{insertRow(m_database, "retry_plan"_L1, fieldsOf(plan))};
    setSteps(m_database, stepsTable, id.value, plan.steps);
    return id;
}

Outcome FamilyRepository::changeRetryPlan(Action&, const people::RetryPlan& plan) {
    const Belonging belonging(m_database);
    if (const Outcome move = belonging.mayMove("retry_plan"_L1, plan.id.value, plan.member); !move)
        return move;
    if (const Outcome checked = checkRetryPlan(plan); !checked)
        return checked;
    const QList<people::RetryPlan> before =
        readAll(m_database, QStringLiteral("SELECT * FROM retry_plan WHERE id = ?"), readRetryPlan,
                plan.id);
    const bool goesOver =
        before.first().subject != plan.subject || before.first().member != plan.member;
    if (goesOver && plan.outcome == people::RetryPlan::Ending::Open)
        if (const Outcome may = mayPlanRetry(plan); !may)
            return may;
    updateRow(m_database, "retry_plan"_L1, plan.id.value, fieldsOf(plan));
    setSteps(m_database, stepsTable, plan.id.value, plan.steps);
    return {};
}

Outcome FamilyRepository::removeRetryPlan(Action&, RetryPlanId plan) {
    if (!removeRetryRows(m_database, plan))
        return noSuchRecord();
    return {};
}

Outcome FamilyRepository::checkObservation(const people::Observation& observation) const {
    const Result<QDate> today = Belonging(m_database).todayOf(observation.member, m_clock);
    if (!today)
        return passOn(today);
    return people::check(observation, *today);
}

Result<ObservationId> FamilyRepository::addObservation(Action&,
                                                       const people::Observation& observation) {
    if (const Outcome checked = checkObservation(observation); !checked)
        return passOn(checked);
    return ObservationId{insertRow(m_database, "observation"_L1, fieldsOf(observation))};
}

Outcome FamilyRepository::changeObservation(Action&, const people::Observation& observation) {
    const Belonging belonging(m_database);
    if (const Outcome move =
            belonging.mayMove("observation"_L1, observation.id.value, observation.member);
        !move)
        return move;
    if (const Outcome checked = checkObservation(observation); !checked)
        return checked;
    updateRow(m_database, "observation"_L1, observation.id.value, fieldsOf(observation));
    return {};
}

Outcome FamilyRepository::removeObservation(Action&, ObservationId observation) {
    if (!deleteRow(m_database, "observation"_L1, observation.value))
        return noSuchRecord();
    return {};
}

} // namespace ladlework::store
