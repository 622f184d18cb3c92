#include "casebook/retry_steps.h"

#include "casebook/subject_name.h"

#include <algorithm>

namespace ladlework::casebook {

namespace {
using people::RetryPlan;

bool mayGoOn(const RetryPlan& plan, const Standing& standing, const Casebook& casebook) {
    QList<people::ToleranceNote> notes = casebook.records().tolerances;
    notes.removeIf([&plan](const auto& note) { return note.member != plan.member; });
    return plan.outcome == RetryPlan::Ending::Open &&
           standing.replay.state != intake::LadderState::Stopped &&
           people::mayRetry(notes, standing.cautions, plan.subject, standing.member.name,
                            casebook.catalogue())
               .has_value();
}
} // namespace

QList<RetryStep> retrySteps(const Casebook& casebook, QDate from, QDate to) {
    QList<RetryStep> steps;
    for (const Standing& standing : casebook.standings()) {
        for (const RetryPlan& plan : casebook.records().retryPlans) {
            if (plan.member != standing.member.id || !mayGoOn(plan, standing, casebook))
                continue;
            for (int step = 0; step < plan.steps.size(); ++step) {
                const QDate day = plan.dayOfStep(step);
                if (day >= from && day <= to)
                    steps.append({&plan, &standing, subjectName(plan.subject, casebook.catalogue()),
                                  step, day, plan.steps[step]});
            }
        }
    }
    std::ranges::stable_sort(steps, {}, &RetryStep::day);
    return steps;
}

bool isTriedAgain(const Casebook& casebook, MemberId member, const people::Subject& subject,
                  QDate from, QDate to) {
    return std::ranges::any_of(retrySteps(casebook, from, to), [&](const RetryStep& step) {
        return step.plan->member == member && step.plan->subject == subject;
    });
}

} // namespace ladlework::casebook
