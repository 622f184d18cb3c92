#include "casebook/climb_findings.h"

#include "foundation/day_words.h"
#include "intake/ladder_figures.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ClimbFindings)
};

/// The first day on the rung that was reached by the last step up; the first day of all without
/// one.
QDate lastStepUp(const intake::ClimbState& climb) {
    return climb.steppedUp.isValid() ? climb.steppedUp : climb.firstDay;
}

Finding made(Finding::Severity severity, const QString& code, const QString& text) {
    return makeFinding(severity, code, text, QStringLiteral("ladder"));
}

Findings stuck(const Standing& standing, const FamilyRecords& records, QDate today) {
    const intake::LadderRules& rules = standing.ladder->rules;
    const qint64 days = lastStepUp(standing.replay.end).daysTo(today);
    const double most = rules.daysToAdvance * intake::ladderFigure(QStringLiteral("stuck-factor"));
    const bool silent = !standing.lastEntry || standing.lastEntry->daysTo(today) > rules.staleDays;
    if (static_cast<double>(days) < most || silent)
        return {};
    Finding finding =
        made(Finding::Severity::Caution, QStringLiteral("ladder-stuck"),
             Words::tr("%1 has been stuck for %2 days and stands on %3. See in the log what holds "
                       "it up; smaller steps may help.")
                 .arg(standing.member.name)
                 .arg(days)
                 .arg(quantity::printVolume(standing.ladder->rungs.value(standing.replay.rung),
                                            records.family.measures)));
    finding.value = static_cast<double>(days);
    finding.limit = most;
    finding.unit = Words::tr("days");
    return {finding};
}

Findings reached(const Standing& standing, const FamilyRecords& records, QDate today) {
    // On a ladder that began at the target nothing was reached.
    const QDate day = lastStepUp(standing.replay.end);
    const bool climbed = day != standing.replay.end.firstDay;
    if (!climbed || static_cast<double>(day.daysTo(today)) >
                        intake::ladderFigure(QStringLiteral("reached-told-days")))
        return {};
    const bool answered = std::ranges::any_of(
        records.notes, [day](const VisitNote& note) { return note.day >= day; });
    if (answered)
        return {};
    return {made(Finding::Severity::Note, QStringLiteral("target-reached"),
                 Words::tr("%1 reached the target on %2. It is held for %3 good days.")
                     .arg(standing.member.name, dayInWords(day))
                     .arg(standing.ladder->rules.holdTargetDays))};
}
} // namespace

Findings climbFindings(const Standing& standing, const FamilyRecords& records, QDate today) {
    const bool climbs = standing.ladder && standing.replay.end.day.isValid() &&
                        standing.replay.state != intake::LadderState::Stopped &&
                        !standing.easedToday;
    if (!climbs)
        return {};
    const bool top = standing.replay.rung + 1 >= standing.ladder->rungs.size();
    return top ? reached(standing, records, today) : stuck(standing, records, today);
}

} // namespace ladlework::casebook
