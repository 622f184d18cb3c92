#include "intake/reckon_ladder.h"

#include "foundation/finding_json.h"
#include "intake/ladder_input.h"
#include "intake/ladder_machine.h"
#include "intake/projection.h"
#include "intake/target.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <cmath>

namespace ladlework::intake {

namespace {
using quantity::Volume;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReckonLadder)
};

/// A rung beyond the ladder is a slip of the pen rather than a wish.
Outcome checkDecisions(const LadderInput& input) {
    for (qsizetype i = 0; i < input.decisions.size(); ++i)
        if (input.decisions[i].resumeAtRung >= input.ladder.rungs.size())
            return problem(
                Problem::Kind::BadInput,
                Words::tr("The ladder has no such rung: its last one is %1, counted from 0.")
                    .arg(input.ladder.rungs.size() - 1),
                QStringLiteral("decisions[%1].resume_at_rung").arg(i));
    return {};
}

/// To a millionth of a millilitre, so that what is printed is what was reckoned with.
double roundedMl(double ml) {
    constexpr double places = 1e6;
    return std::round(ml * places) / places;
}

/// The rungs in US measures when the input gives none.
Outcome designIfNone(LadderInput& input) {
    if (!input.ladder.rungs.isEmpty())
        return {};
    if (input.start > input.target.low)
        return problem(Problem::Kind::BadInput,
                       Words::tr("The first amount lies above the low end of the target; start "
                                 "lower, or give the rungs."),
                       QStringLiteral("start_ml"));
    const Result<QList<Volume>> designed =
        designRungs(input.start, input.target.low, quantity::MeasureSystem::UsCustomary);
    if (!designed)
        return problem(designed.error().kind, designed.error().sentence,
                       QStringLiteral("start_ml"));
    for (Volume rung : *designed) {
        const Volume rounded = Volume::fromMillilitres(roundedMl(rung.toMillilitres()));
        // A start a hair below the target is the target once both are rounded.
        if (input.ladder.rungs.isEmpty() || input.ladder.rungs.last() < rounded)
            input.ladder.rungs.append(rounded);
    }
    return {};
}

QJsonArray toJson(const QList<LadderDay>& days) {
    QJsonArray list;
    for (const LadderDay& day : days)
        list.append(QJsonObject{{QStringLiteral("day"), day.day.toString(Qt::ISODate)},
                                {QStringLiteral("rung"), day.rung},
                                {QStringLiteral("asked_ml"), roundedMl(day.asked.toMillilitres())},
                                {QStringLiteral("decision"), decisionId(day.decision)},
                                {QStringLiteral("rule"), day.rule}});
    return list;
}

QJsonValue toJson(const std::optional<TargetDate>& date) {
    if (!date)
        return QJsonValue(QJsonValue::Null);
    return QJsonObject{{QStringLiteral("p10"), date->p10.toString(Qt::ISODate)},
                       {QStringLiteral("median"), date->median.toString(Qt::ISODate)},
                       {QStringLiteral("p90"), date->p90.toString(Qt::ISODate)}};
}

QJsonObject toJson(const QList<Volume>& rungs, const LadderReplay& replayed,
                   const std::optional<TargetDate>& date, const Findings& findings) {
    QJsonArray amounts;
    for (Volume rung : rungs)
        amounts.append(roundedMl(rung.toMillilitres()));
    return {{QStringLiteral("rungs_ml"), amounts},
            {QStringLiteral("days"), toJson(replayed.days)},
            {QStringLiteral("state"), stateId(replayed.state)},
            {QStringLiteral("rung"), replayed.rung},
            {QStringLiteral("good_days"), replayed.goodDays},
            {QStringLiteral("days_at_target"), replayed.daysAtTarget},
            {QStringLiteral("target_date"), toJson(date)},
            {QStringLiteral("findings"), findingsJson(findings)}};
}

Finding rungsAboveTarget(const LadderInput& input) {
    Finding finding;
    finding.severity = Finding::Severity::Caution;
    finding.code = QStringLiteral("rungs-above-target");
    finding.text =
        Words::tr("The last rung lies above the high end of the target: shorten the ladder or "
                  "raise the target.");
    finding.value = roundedMl(input.ladder.rungs.last().toMillilitres());
    finding.limit = roundedMl(input.target.high.toMillilitres());
    finding.unit = QStringLiteral("mL");
    finding.source = Words::tr("the target given");
    finding.field = QStringLiteral("rungs_ml");
    return finding;
}
} // namespace

Result<QJsonObject> reckonLadder(const QJsonObject& object) {
    Result<LadderInput> input = readLadderInput(object);
    if (!input)
        return passOn(input);
    Findings findings = reviewTarget(input->target, input->band);
    if (input->band == AgeBand::InfantUnderSixMonths) {
        LadderReplay none;
        none.state = LadderState::Stopped;
        return toJson({}, none, std::nullopt, findings);
    }
    if (const Outcome designed = designIfNone(*input); !designed)
        return passOn(designed);
    if (const Outcome fit = checkDecisions(*input); !fit)
        return passOn(fit);
    if (input->ladder.rungs.last() > input->target.high)
        findings.append(rungsAboveTarget(*input));
    const LadderReplay replayed = replay(input->ladder, input->log, input->decisions, input->today);
    const std::optional<TargetDate> date = projectTargetDate(replayed, input->ladder, input->today);
    return toJson(input->ladder.rungs, replayed, date, findings);
}

} // namespace ladlework::intake
