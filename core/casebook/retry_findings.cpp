#include "casebook/retry_findings.h"

#include "casebook/subject_name.h"
#include "foundation/day_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(RetryFindings)
};
using people::RetryPlan;
using people::ToleranceNote;
using Severity = Finding::Severity;

/// Is a recorded allergy or severe reaction in the way? Old notes count too.
bool isBarred(const Standing& standing, const people::Subject& subject, const Casebook& casebook) {
    QList<ToleranceNote> notes;
    for (const ToleranceNote& note : casebook.records().tolerances) {
        if (note.member == standing.member.id)
            notes.append(note);
    }
    // With the subject surely kept out, all that can still refuse is an allergy.
    ToleranceNote keepsOut;
    keepsOut.member = standing.member.id;
    keepsOut.subject = subject;
    keepsOut.verdict = ToleranceNote::Verdict::Avoid;
    keepsOut.noted = casebook.today().addDays(1);
    notes.append(keepsOut);
    return !people::mayRetry(notes, standing.cautions, subject, standing.member.name,
                             casebook.catalogue());
}

bool isOpen(const RetryPlan& plan, const Standing& standing) {
    return plan.member == standing.member.id && plan.outcome == RetryPlan::Ending::Open;
}

/// A try that a note has planned, while no plan has taken it up.
void addNoted(Findings& findings, const Standing& standing, const Casebook& casebook) {
    for (const ToleranceNote& note : standing.tolerances) {
        if (note.verdict != ToleranceNote::Verdict::TryAgainOn || !note.tryAgainOn ||
            *note.tryAgainOn > casebook.today())
            continue;
        const bool isTakenUp =
            std::ranges::any_of(casebook.records().retryPlans, [&](const RetryPlan& plan) {
                return isOpen(plan, standing) && plan.subject == note.subject;
            });
        if (isTakenUp || isBarred(standing, note.subject, casebook))
            continue;
        const QString what = subjectName(note.subject, casebook.catalogue());
        findings.append(
            makeFinding(Severity::Note, QStringLiteral("retry-due"),
                        Words::tr("%1: a new try of %2 was planned for %3. Agree on it or set "
                                  "another day.")
                            .arg(standing.member.name, what, dayInWords(*note.tryAgainOn)),
                        QStringLiteral("tolerances")));
    }
}

std::optional<int> stepOf(const RetryPlan& plan, QDate day) {
    for (int step = 0; step < plan.steps.size(); ++step) {
        if (plan.dayOfStep(step) == day)
            return step;
    }
    return std::nullopt;
}

Finding barred(const QString& name, const QString& what) {
    return makeFinding(
        Severity::Stop, QStringLiteral("retry-barred"),
        Words::tr("%1: the new try of %2 must not go on, an allergy or severe reaction is "
                  "recorded. Close it and refer to the treating clinician.")
            .arg(name, what),
        QStringLiteral("retryPlans"));
}

Finding stepDue(const RetryPlan& plan, int step, const QString& name, const QString& what,
                quantity::MeasureSystem measures) {
    return makeFinding(Severity::Note, QStringLiteral("retry-step-due"),
                       Words::tr("%1: step %2 of %3 of the new try of %4 is today: %5.")
                           .arg(name)
                           .arg(step + 1)
                           .arg(plan.steps.size())
                           .arg(what, quantity::printVolume(plan.steps[step], measures)),
                       QStringLiteral("retryPlans"));
}

Finding outcomeDue(const RetryPlan& plan, const QString& name, const QString& what) {
    return makeFinding(
        Severity::Note, QStringLiteral("retry-outcome-due"),
        Words::tr("%1: the new try of %2 was watched to its end on %3. Write down how it "
                  "went.")
            .arg(name, what, dayInWords(plan.lastDay())),
        QStringLiteral("retryPlans"));
}

void addPlanned(Findings& findings, const Standing& standing, const Casebook& casebook) {
    const FamilyRecords& records = casebook.records();
    const bool isStopped = standing.replay.state == intake::LadderState::Stopped;
    for (const RetryPlan& plan : records.retryPlans) {
        if (!isOpen(plan, standing))
            continue;
        const QString& name = standing.member.name;
        const QString what = subjectName(plan.subject, casebook.catalogue());
        const std::optional<int> step = stepOf(plan, casebook.today());
        if (isBarred(standing, plan.subject, casebook))
            findings.append(barred(name, what));
        else if (plan.lastDay() < casebook.today())
            findings.append(outcomeDue(plan, name, what));
        else if (step && !isStopped)
            findings.append(stepDue(plan, *step, name, what, records.family.measures));
    }
}
} // namespace

Findings retryFindings(const Standing& standing, const Casebook& casebook) {
    Findings findings;
    addPlanned(findings, standing, casebook);
    addNoted(findings, standing, casebook);
    return findings;
}

} // namespace ladlework::casebook
