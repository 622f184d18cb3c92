#include "intake/ladder_machine.h"

#include <QCoreApplication>
#include <QLocale>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(LadderMachine)
};

QString days(int count) {
    return count == 1 ? Words::tr("1 day") : Words::tr("%1 days").arg(count);
}

QString goodDays(int count) {
    return count == 1 ? Words::tr("1 good day") : Words::tr("%1 good days").arg(count);
}

QString stepDown(const LadderDay& day, int rungs) {
    if (day.rung == 0)
        return Words::tr("the ladder stays on its first rung");
    return rungs == 1 || day.rung == 1
               ? Words::tr("the ladder goes down one rung")
               : Words::tr("the ladder goes down %1 rungs").arg(std::min(rungs, day.rung));
}

QString holdAfter(const LadderRules& rules) {
    if (rules.holdDays == 0)
        return Words::tr("without a hold");
    return rules.holdDays == 1 ? Words::tr("and holds for the next day")
                               : Words::tr("and holds for the next %1 days").arg(rules.holdDays);
}

QString explainModerate(const LadderDay& day, const LadderRules& rules) {
    if (day.decision == LadderDecision::Back)
        return Words::tr("The second reaction stronger than %1 within %2: %3 %4.")
            .arg(rules.mildTo)
            .arg(days(rules.moderateWindowDays), stepDown(day, rules.rungsBack), holdAfter(rules));
    return Words::
        tr("A reaction stronger than %1: the amount is held and the good days count from 0 again.")
            .arg(rules.mildTo);
}

QString explainGap(const LadderDay& day, const LadderRules& rules) {
    if (day.decision == LadderDecision::Stale)
        return Words::tr("Nothing was entered for %1 running: %2.")
            .arg(days(rules.staleDays), stepDown(day, 1));
    return Words::tr("Nothing was entered: the count stays as it was.");
}

QString explainGoodDay(const LadderDay& day, const LadderRules& rules) {
    if (day.decision == LadderDecision::Advance)
        return Words::tr("A good day that makes %1: the next rung begins tomorrow.")
            .arg(goodDays(rules.daysToAdvance));
    return Words::tr("A good day: %1 counted on this rung.").arg(goodDays(day.goodDays));
}
} // namespace

QString decisionId(LadderDecision decision) {
    switch (decision) {
    case LadderDecision::Advance:
        return QStringLiteral("advance");
    case LadderDecision::Stay:
        return QStringLiteral("stay");
    case LadderDecision::Hold:
        return QStringLiteral("hold");
    case LadderDecision::Back:
        return QStringLiteral("back");
    case LadderDecision::Stop:
        return QStringLiteral("stop");
    case LadderDecision::Gap:
        return QStringLiteral("gap");
    case LadderDecision::Stale:
        return QStringLiteral("stale");
    }
    return {};
}

QString stateId(LadderState state) {
    switch (state) {
    case LadderState::Climbing:
        return QStringLiteral("climbing");
    case LadderState::Holding:
        return QStringLiteral("holding");
    case LadderState::Stopped:
        return QStringLiteral("stopped");
    case LadderState::AtTarget:
        return QStringLiteral("at-target");
    case LadderState::EasingOff:
        return QStringLiteral("easing-off");
    }
    return {};
}

QString stateName(LadderState state) {
    switch (state) {
    case LadderState::Climbing:
        return Words::tr("climbing");
    case LadderState::Holding:
        return Words::tr("holding");
    case LadderState::Stopped:
        return Words::tr("stopped");
    case LadderState::AtTarget:
        return Words::tr("at target");
    case LadderState::EasingOff:
        return Words::tr("easing off");
    }
    return {};
}

QString explain(const LadderDay& day, const LadderRules& rules) {
    switch (day.rule) {
    case 1:
        return Words::tr("The ladder is stopped until a decision to go on is recorded.");
    case 2:
        return Words::tr("A red flag or a reaction stronger than %1: the ladder stops until a "
                         "decision to go on "
                         "is recorded.")
            .arg(rules.strongTo);
    case 3:
        return Words::tr("A reaction stronger than %1: %2 %3.")
            .arg(rules.moderateTo)
            .arg(stepDown(day, rules.rungsBack), holdAfter(rules));
    case 4:
        return explainModerate(day, rules);
    case 5:
        return explainGap(day, rules);
    case 6:
        return Words::tr("Less than %1 % of the amount was drunk: the count stays as it was.")
            .arg(QLocale().toString(rules.goodShare * 100, 'g', 4));
    case 7:
        return Words::tr("A good day inside a hold: it is not counted.");
    case 8:
        return explainGoodDay(day, rules);
    default:
        return {};
    }
}

QString ruleName(const LadderDay& day) {
    return Words::tr("Rule %1 of the ladder").arg(day.rule);
}

} // namespace ladlework::intake
