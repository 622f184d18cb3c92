#include "ui/week/week_notes.h"

#include "casebook/retry_steps.h"
#include "week/week_findings.h"
#include "week/week_plan.h"

#include <QCoreApplication>
#include <QLocale>

namespace ladlework::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekNotes)
};

/// Findings count days from the first that is planned; the screen from Monday.
Findings fromMonday(Findings findings, qint64 over) {
    const QString day = QStringLiteral("day:");
    for (Finding& finding : findings)
        if (finding.field.startsWith(day))
            finding.field = day + QString::number(finding.field.mid(day.size()).toInt() + over);
    return findings;
}

Findings retries(const casebook::Casebook& casebook, QDate monday) {
    Findings findings;
    for (const casebook::RetryStep& step :
         casebook::retrySteps(casebook, monday, monday.addDays(week::daysAWeek - 1))) {
        Finding finding;
        finding.code = QStringLiteral("retry-step");
        finding.text =
            Words::tr("%1: %2 tries %3 of stock with %4 (step %5 of %6).")
                .arg(QLocale().toString(step.day, QStringLiteral("dddd d MMMM")),
                     step.standing->member.name,
                     quantity::printVolume(step.amount, casebook.records().family.measures),
                     step.what)
                .arg(step.step + 1)
                .arg(step.plan->steps.size());
        finding.field = QStringLiteral("tolerances");
        findings.append(finding);
    }
    return findings;
}

} // namespace

Findings weekNotes(const casebook::Casebook& casebook, QDate monday,
                   const casebook::WeekAhead& ahead, const week::WeekSolution& solution) {
    return fromMonday(week::weekFindings(ahead.problem, solution, ahead.start,
                                         casebook.records().family.measures),
                      monday.daysTo(ahead.start)) +
           retries(casebook, monday);
}

} // namespace ladlework::ui
