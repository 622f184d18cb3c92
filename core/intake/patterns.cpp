#include "intake/patterns.h"

#include "intake/figure_table.h"

#include <QCoreApplication>
#include <QHash>
#include <QMap>
#include <algorithm>

namespace ladlework::intake {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Patterns)
};

double figure(const QString& id) {
    static const FigureTable figures(QStringLiteral("pattern-figures"));
    return figures.value(id);
}

/// One day for each date, whatever the order of the list.
QMap<QDate, PatternDay> merged(const QList<PatternDay>& days) {
    QMap<QDate, PatternDay> byDay;
    for (const PatternDay& day : days) {
        if (!day.day.isValid())
            continue;
        PatternDay& kept = byDay[day.day];
        kept.day = day.day;
        kept.exposures += day.exposures;
        kept.worstReaction = std::max(kept.worstReaction, day.worstReaction);
    }
    return byDay;
}

/// The four counts of each subject. Of the days before a day only those in the list can expose it.
QHash<QString, Pattern> counted(const QMap<QDate, PatternDay>& days, const PatternRules& rules) {
    QHash<QString, Pattern> patterns;
    QHash<QString, QDate> lastTaken;
    for (const PatternDay& day : days)
        for (const QString& subject : day.exposures)
            patterns[subject].subject = subject;
    for (const PatternDay& day : days) {
        for (const QString& subject : day.exposures)
            lastTaken[subject] = day.day;
        const bool reacted = day.worstReaction >= rules.reactionAtLeast;
        for (Pattern& pattern : patterns) {
            const QDate taken = lastTaken.value(pattern.subject);
            const bool exposed = taken.isValid() && taken.daysTo(day.day) <= rules.windowDays;
            int& count = exposed ? (reacted ? pattern.exposedReacted : pattern.exposedFine)
                                 : (reacted ? pattern.otherReacted : pattern.otherFine);
            ++count;
        }
    }
    return patterns;
}

void judge(Pattern& pattern) {
    const int exposed = pattern.exposedReacted + pattern.exposedFine;
    const int other = pattern.otherReacted + pattern.otherFine;
    const int reacted = pattern.exposedReacted + pattern.otherReacted;
    pattern.p = fisherExact(pattern.exposedReacted, pattern.exposedFine, pattern.otherReacted,
                            pattern.otherFine);
    if (exposed > 0 && other > 0) {
        const RiskRatio ratio = riskRatio(pattern.exposedReacted, pattern.exposedFine,
                                          pattern.otherReacted, pattern.otherFine);
        pattern.riskRatio = ratio.ratio;
        pattern.riskLow = ratio.low;
        pattern.riskHigh = ratio.high;
    }
    pattern.enough = exposed >= figure(QStringLiteral("exposed-days-least")) &&
                     other >= figure(QStringLiteral("other-days-least")) &&
                     reacted >= figure(QStringLiteral("reacted-days-least"));
}

QString daysOf(int count) {
    return count == 1 ? Words::tr("1 day") : Words::tr("%1 days").arg(count);
}
} // namespace

QList<Pattern> patterns(const QList<PatternDay>& days, const PatternRules& rules) {
    QList<Pattern> found = counted(merged(days), rules).values();
    std::ranges::sort(found, {}, &Pattern::subject);
    QList<double> p;
    for (Pattern& pattern : found) {
        judge(pattern);
        p.append(pattern.p);
    }
    const QList<double> q = benjaminiHochberg(p);
    for (qsizetype i = 0; i < found.size(); ++i)
        found[i].q = q[i];
    std::ranges::stable_sort(found, [](const Pattern& one, const Pattern& other) {
        return std::pair(one.q, one.p) < std::pair(other.q, other.p);
    });
    return found;
}

bool isWorthTalkingAbout(const Pattern& pattern) {
    return pattern.enough && pattern.riskRatio.value_or(0) > 1 &&
           pattern.q <= figure(QStringLiteral("adjusted-p-most"));
}

QString explain(const Pattern& pattern, const QString& subjectName) {
    const int exposed = pattern.exposedReacted + pattern.exposedFine;
    const int other = pattern.otherReacted + pattern.otherFine;
    const QString counts = Words::tr("%1: reactions on %2 of %3 with or soon after it and on %4 of "
                                     "%5 without it.")
                               .arg(subjectName)
                               .arg(pattern.exposedReacted)
                               .arg(daysOf(exposed))
                               .arg(pattern.otherReacted)
                               .arg(daysOf(other));
    QString verdict = Words::tr("Nothing stands out.");
    if (!pattern.enough)
        verdict = Words::tr("There are not enough days to say anything.");
    else if (isWorthTalkingAbout(pattern))
        verdict = Words::tr("Worth talking about; it does not say what the cause is.");
    return QStringLiteral("%1 %2").arg(counts, verdict);
}

} // namespace ladlework::intake
