#include "casebook/casebook.h"
#include "casebook/climb_findings.h"
#include "casebook/retry_findings.h"
#include "foundation/day_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Attention)
};
using Severity = Finding::Severity;

void addStopped(Findings& findings, const Standing& standing) {
    for (const Finding& finding : standing.findings) {
        if (finding.code == QLatin1String("ladder-stopped"))
            findings.append(finding);
    }
}

/// A red flag that no decision has answered; one that stopped a ladder is told there.
void addRedFlags(Findings& findings, const Standing& standing, const FamilyRecords& records) {
    if (standing.ladder && standing.replay.state == intake::LadderState::Stopped)
        return;
    const intake::Reaction* latest = nullptr;
    for (const intake::Reaction& reaction : records.reactions) {
        if (reaction.member == standing.member.id && reaction.redFlag &&
            (latest == nullptr || reaction.day > latest->day))
            latest = &reaction;
    }
    if (latest == nullptr)
        return;
    const bool answered =
        std::ranges::any_of(records.decisions, [&](const intake::Decision& decision) {
            return decision.member == standing.member.id && decision.day >= latest->day;
        });
    const bool seen = std::ranges::any_of(
        records.notes, [&](const VisitNote& note) { return note.day >= latest->day; });
    if (answered || seen)
        return;
    findings.append(
        makeFinding(Severity::Stop, QStringLiteral("red-flag"),
                    Words::tr("%1: a red flag on %2 (%3) is not answered yet. Call, and "
                              "record what was decided.")
                        .arg(standing.member.name, dayInWords(latest->day), latest->symptom),
                    QStringLiteral("reactions")));
}

/// From half the days after which the ladder counts as stale a silence is worth a question.
void addSilence(Findings& findings, const Standing& standing, QDate today) {
    if (!standing.ladder || standing.replay.state == intake::LadderState::Stopped)
        return;
    if (standing.easedToday && *standing.easedToday <= quantity::Volume())
        return; // eased off to nothing: there is nothing to enter
    const int stale = standing.ladder->rules.staleDays;
    const QDate since = std::max(standing.lastEntry.value_or(standing.ladder->from.addDays(-1)),
                                 standing.ladder->from.addDays(-1));
    const qint64 days = since.daysTo(today) - 1; // today is not over
    if (days < std::max(1, (stale + 1) / 2))
        return;
    Finding finding =
        makeFinding(days >= stale ? Severity::Caution : Severity::Note, QStringLiteral("no-entry"),
                    days == 1 ? Words::tr("%1: nothing was entered yesterday. Ask how it "
                                          "went.")
                                    .arg(standing.member.name)
                              : Words::tr("%1: nothing was entered for %2 days. Ask how it "
                                          "goes.")
                                    .arg(standing.member.name)
                                    .arg(days),
                    QStringLiteral("log"));
    finding.value = static_cast<double>(days);
    finding.limit = stale;
    finding.unit = Words::tr("days");
    findings.append(finding);
}

/// What the series of the weight says.
void addWeight(Findings& findings, const Standing& standing) {
    for (const Finding& finding : standing.findings) {
        if (finding.code.startsWith(QLatin1String("weight-")))
            findings.append(finding);
    }
}

/// A target that was held as long as the rules say wants a word on what comes after it.
void addHeldLongEnough(Findings& findings, const Standing& standing) {
    if (!standing.target || standing.replay.state != intake::LadderState::EasingOff ||
        standing.target->easeOffFrom.isValid())
        return;
    Finding finding = makeFinding(
        Severity::Note, QStringLiteral("target-held"),
        Words::tr("%1 has held the target for %2 good days. Agree on the day from which the "
                  "amount is eased off, or on holding it longer.")
            .arg(standing.member.name)
            .arg(standing.replay.daysAtTarget),
        QStringLiteral("easeOffFrom"));
    finding.value = standing.replay.daysAtTarget;
    finding.limit = standing.ladder->rules.holdTargetDays;
    finding.unit = Words::tr("days");
    findings.append(finding);
}
/// The latest day set for a review, unless a note was written on it or later.
void addReview(Findings& findings, const FamilyRecords& records, QDate today) {
    QDate due = records.family.reviewOn;
    QDate lastNote;
    for (const VisitNote& note : records.notes) {
        if (note.reviewOn.isValid() && (!due.isValid() || note.reviewOn > due))
            due = note.reviewOn;
        if (!lastNote.isValid() || note.day > lastNote)
            lastNote = note.day;
    }
    if (!due.isValid() || due > today || (lastNote.isValid() && lastNote >= due))
        return;
    findings.append(
        due == today
            ? makeFinding(Severity::Note, QStringLiteral("review-due"),
                          Words::tr("The %1 family has a review today.").arg(records.family.name),
                          QStringLiteral("reviewOn"))
            : makeFinding(
                  Severity::Caution, QStringLiteral("review-due"),
                  Words::tr("The review of the %1 family was due on %2. Hold it or set another "
                            "day.")
                      .arg(records.family.name, dayInWords(due)),
                  QStringLiteral("reviewOn")));
}

void addPastUse(Findings& findings, const Casebook& casebook) {
    const quantity::MeasureSystem measures = casebook.records().family.measures;
    for (const StockItem& item : casebook.stockOnHand()) {
        if (!item.pastUse)
            continue;
        const bool frozen = item.lot.place == kitchen::Lot::Place::Freezer;
        const QString what = quantity::printVolume(item.left, measures);
        Finding finding = makeFinding(
            frozen ? Severity::Note : Severity::Caution, QStringLiteral("stock-past-use"),
            frozen ? Words::tr("In the freezer %1 of %2 is past its use-by day, %3. Use it soon.")
                         .arg(what, item.potName, dayInWords(item.lot.useBy))
                   : Words::tr("In the refrigerator %1 of %2 is past its use-by day, %3. It is to "
                               "be thrown away; mark it as gone.")
                         .arg(what, item.potName, dayInWords(item.lot.useBy)),
            QStringLiteral("lots"));
        finding.value = item.left.toMillilitres();
        finding.unit = QStringLiteral("mL");
        findings.append(finding);
    }
}
} // namespace

Findings Casebook::attention() const {
    Findings findings;
    if (m_records.family.status == people::Family::Status::Finished)
        return findings;
    for (const Standing& standing : m_standings)
        addStopped(findings, standing);
    for (const Standing& standing : m_standings)
        addRedFlags(findings, standing, m_records);
    if (m_records.family.status == people::Family::Status::Active) {
        for (const Standing& standing : m_standings)
            findings += climbFindings(standing, m_records, m_today);
        for (const Standing& standing : m_standings)
            addSilence(findings, standing, m_today);
    }
    addReview(findings, m_records, m_today);
    addPastUse(findings, *this);
    for (const Standing& standing : m_standings) {
        addWeight(findings, standing);
        addHeldLongEnough(findings, standing);
        findings += retryFindings(standing, *this);
    }
    std::ranges::stable_sort(findings, std::ranges::greater(), &Finding::severity);
    return findings;
}

} // namespace ladlework::casebook
