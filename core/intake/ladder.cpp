#include "intake/ladder.h"

#include <QCoreApplication>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Ladder)
};

constexpr int strongest = 10;
constexpr int mostDays = 365;
constexpr int mostHoldTargetDays = 730;
constexpr int mostRungsBack = 20;
constexpr double mostRungL = 4;

auto bad(const QString& sentence, const QString& field) {
    return problem(Problem::Kind::BadInput, sentence, field);
}

Outcome checkStrengths(const LadderRules& rules) {
    const QString sentence = Words::tr(
        "The strengths must lie within 0 to 10, the mild limit not above the moderate one "
        "and the moderate limit not above the strong one.");
    if (rules.mildTo < 0)
        return bad(sentence, QStringLiteral("mildTo"));
    if (rules.moderateTo < rules.mildTo)
        return bad(sentence, QStringLiteral("moderateTo"));
    if (rules.strongTo < rules.moderateTo || rules.strongTo > strongest)
        return bad(sentence, QStringLiteral("strongTo"));
    return {};
}

struct DayCount {
    int value;
    int least;
    int most;
    QString field;
    QString sentence;
};

QList<DayCount> dayCounts(const LadderRules& rules) {
    return {
        {rules.daysToAdvance, 1, mostDays, QStringLiteral("daysToAdvance"),
         Words::tr("The good days asked for before a rung is left must be 1 to 365.")},
        {rules.holdDays, 0, mostDays, QStringLiteral("holdDays"),
         Words::tr("The days held after a step back must be 0 to 365; 0 means no hold.")},
        {rules.moderateWindowDays, 0, mostDays, QStringLiteral("moderateWindowDays"),
         Words::tr("The window for a second moderate day must be 0 to 365 days; 0 and 1 mean that "
                   "moderate days are never counted together.")},
        {rules.staleDays, 1, mostDays, QStringLiteral("staleDays"),
         Words::tr("The days without an entry before the ladder goes stale must be 1 to 365.")},
        {rules.rungsBack, 1, mostRungsBack, QStringLiteral("rungsBack"),
         Words::tr("The rungs of a step back must be 1 to 20.")},
        {rules.holdTargetDays, 1, mostHoldTargetDays, QStringLiteral("holdTargetDays"),
         Words::tr("The days held at the target must be 1 to 730.")},
    };
}
} // namespace

Outcome check(const LadderRules& rules) {
    if (!(rules.goodShare > 0 && rules.goodShare <= 1))
        return bad(
            Words::tr("The share of the asked amount that makes a good day must lie above 0 and "
                      "not above 1."),
            QStringLiteral("goodShare"));
    if (const Outcome strengths = checkStrengths(rules); !strengths)
        return strengths;
    for (const DayCount& count : dayCounts(rules))
        if (count.value < count.least || count.value > count.most)
            return bad(count.sentence, count.field);
    return {};
}

Outcome check(const Ladder& ladder) {
    if (ladder.rungs.isEmpty())
        return bad(Words::tr("A ladder needs at least one rung; enter the first amount."),
                   QStringLiteral("rungs"));
    quantity::Volume before;
    for (qsizetype i = 0; i < ladder.rungs.size(); ++i) {
        const quantity::Volume rung = ladder.rungs[i];
        const QString field = QStringLiteral("rungs[%1]").arg(i);
        if (!(rung.toMillilitres() > 0))
            return bad(Words::tr("Every rung must be more than nothing."), field);
        if (rung.toLitres() > mostRungL)
            return bad(Words::tr("No rung may be above 4 litres (17 cups) a day."), field);
        if (rung <= before)
            return bad(Words::tr("Each rung must be more than the one before it."), field);
        before = rung;
    }
    return check(ladder.rules);
}

} // namespace ladlework::intake
