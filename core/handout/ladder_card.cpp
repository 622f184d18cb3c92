#include "handout/cards.h"
#include "intake/easing.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Handout)
};
using intake::LadderRules;

constexpr int worstStrength = 10;

/// "3 to 5", "8", or nothing when there is no such strength.
QString strengths(int from, int to) {
    if (from > to)
        return {};
    return from == to ? QString::number(from) : Words::tr("%1 to %2").arg(from).arg(to);
}

QString days(int count) {
    return Words::tr("%n day(s)", nullptr, count);
}

QString steps(int count) {
    return Words::tr("%n step(s)", nullptr, count);
}

QString goUp(const LadderRules& rules) {
    const int percent = qRound(rules.goodShare * 100);
    const QString good = Words::tr("A day is good when nearly all was drunk (%1 % or more) and "
                                   "nothing above %2 was felt.")
                             .arg(percent)
                             .arg(rules.mildTo);
    const QString up = rules.daysToAdvance == 1 ? Words::tr("Go up 1 step after a good day.")
                                                : Words::tr("Go up 1 step after %n good day(s).",
                                                            nullptr, rules.daysToAdvance);
    return QStringLiteral("%1 %2").arg(up, good);
}

QString goBack(const LadderRules& rules) {
    return rules.holdDays == 0 ? Words::tr("go back %1.").arg(steps(rules.rungsBack))
                               : Words::tr("go back %1 and stay there for %2.")
                                     .arg(steps(rules.rungsBack), days(rules.holdDays));
}

/// The rules in the order in which they are looked at, each in plain words.
QStringList ruleLines(const PageContext& context, const LadderRules& rules, bool easing) {
    QStringList lines{easing ? Words::tr("Do not go up: the amounts go down by our plan.")
                             : goUp(rules)};
    const QString mild = strengths(0, rules.mildTo);
    lines.append(Words::tr("Felt %1: go on as planned.").arg(mild));
    const QString moderate = strengths(rules.mildTo + 1, rules.moderateTo);
    if (!moderate.isEmpty()) {
        QString line =
            Words::tr("Felt %1: stay on the same step and count the good days anew.").arg(moderate);
        if (rules.moderateWindowDays > 1)
            line += QLatin1Char(' ') + Words::tr("If it comes again within %1: %2")
                                           .arg(days(rules.moderateWindowDays), goBack(rules));
        lines.append(line);
    }
    const QString strong = strengths(rules.moderateTo + 1, rules.strongTo);
    if (!strong.isEmpty())
        lines.append(Words::tr("Felt %1: %2").arg(strong, goBack(rules)));
    lines.append(Words::tr("Drank less than planned: stay on the same step."));
    lines.append(Words::tr("Missed a day: stay on the same step. Missed %1 in a row: go back 1 "
                           "step.")
                     .arg(days(rules.staleDays)));
    const QString severe = strengths(rules.strongTo + 1, worstStrength);
    lines.append(severe.isEmpty()
                     ? Words::tr("Any stop sign (see \"Take care\"): stop the stock. Call %1, "
                                 "then call us.")
                           .arg(context.emergencyNumber())
                     : Words::tr("Felt %1, or any stop sign (see \"Take care\"): stop the stock. "
                                 "Call %2 if it is bad, then call us.")
                           .arg(severe, context.emergencyNumber()));
    return lines;
}

Table weekTable(const PageContext& context, const QList<quantity::Volume>& amounts) {
    Table table;
    table.header = {Words::tr("Day"), Words::tr("Amount"), Words::tr("Done"),
                    Words::tr("How it was borne, 0 to 10")};
    table.weights = {1.6, 1.2, 0.7, 3.0};
    for (qsizetype day = 0; day < amounts.size(); ++day) {
        const bool some = amounts[day] > quantity::Volume();
        table.rows.append(
            QList<Cell>{{PageContext::weekday(context.options().week.addDays(day)), false, false},
                        {some ? context.print(amounts[day]) : QStringLiteral("-"), true, false},
                        {QString(), false, some},
                        {QString(), false, false}});
    }
    return table;
}

/// The step of the first amount of the week, counted from 0; nothing when it is no rung.
std::optional<qsizetype> startingStep(const intake::Ladder& ladder,
                                      const QList<quantity::Volume>& amounts) {
    for (const quantity::Volume amount : amounts) {
        if (amount <= quantity::Volume())
            continue;
        const qsizetype rung = ladder.rungs.indexOf(amount);
        return rung < 0 ? std::nullopt : std::optional(rung);
    }
    return std::nullopt;
}

/// True when the plan of easing off speaks about a day of this week.
bool easesOff(const PageContext& context, const casebook::Standing& standing) {
    const QDate sunday = context.options().week.addDays(week::daysAWeek - 1);
    return standing.target &&
           intake::easedAmount(*standing.target, *standing.ladder, sunday).has_value();
}

Lines stepLines(const PageContext& context, const intake::Ladder& ladder,
                const QList<quantity::Volume>& amounts) {
    Lines lines;
    lines.sign = Lines::Sign::Number;
    const std::optional<qsizetype> start = startingStep(ladder, amounts);
    for (qsizetype rung = 0; rung < ladder.rungs.size(); ++rung) {
        const QString amount = context.print(ladder.rungs[rung]);
        lines.items.append(rung == start ? Words::tr("%1 (this week starts here)").arg(amount)
                                         : amount);
    }
    return lines;
}
} // namespace

Card ladderCard(const PageContext& context, const casebook::Standing& standing) {
    Card card;
    card.kind = Card::Kind::Ladder;
    card.title = context.called(standing);
    card.startsPage = true;
    const intake::Ladder& ladder = *standing.ladder;
    const QList<quantity::Volume> amounts = context.amounts(standing.member.id);
    if (isStopped(standing)) {
        card.blocks.append(
            Warning{Words::tr("Stop"), Words::tr("No stock for now. Wait until we have talked.")});
    } else {
        card.blocks.append(
            Paragraph{Words::tr("Drink the amount of the day. Tick the box. Then write down how it "
                                "was borne: 0 is nothing felt, 10 is the worst there is.")});
        card.blocks.append(weekTable(context, amounts));
        const bool easing = easesOff(context, standing);
        card.blocks.append(
            Paragraph{easing ? Words::tr("The amounts go down by our plan. If a day was not good, "
                                         "use the rules below.")
                             : Words::tr("The amounts hold when each day is a good day. If a day "
                                         "was not, use the steps and the rules below.")});
        const QStringList retries = retryLines(context, standing.member.id);
        if (!retries.isEmpty()) {
            card.blocks.append(Heading{Words::tr("New tries this week")});
            card.blocks.append(Lines{Lines::Sign::TickBox, retries});
            card.blocks.append(Paragraph{Words::tr("When anything is felt after a new try: write "
                                                   "it down, stop the new try and call us.")});
        }
        card.blocks.append(Heading{Words::tr("The steps")});
        card.blocks.append(stepLines(context, ladder, amounts));
        card.blocks.append(Heading{Words::tr("When to go up, stay, go back or stop")});
        card.blocks.append(Lines{Lines::Sign::Dot, ruleLines(context, ladder.rules, easing)});
    }
    card.blocks.append(Heading{Words::tr("Whom to call")});
    card.blocks.append(context.whomToCall());
    return card;
}

} // namespace ladlework::handout
