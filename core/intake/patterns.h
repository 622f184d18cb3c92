#pragma once

#include "intake/contingency.h"

#include <QDate>
#include <QList>
#include <QString>
#include <QStringList>
#include <optional>

namespace ladlework::intake {

/// What a member took and how the day was.
struct PatternDay {
    QDate day;
    QStringList exposures; ///< ids of animals, cuts, ingredients
    int worstReaction = 0; ///< 0-10; 0: none
};

struct PatternRules {
    /// A day counts as exposed to what was taken on it or on one of so many days before; 0 or more.
    int windowDays = 1;
    int reactionAtLeast = 3; ///< a day counts as reacted from this strength on
};

/// Reactions on days with a subject against days without it.
struct Pattern {
    QString subject;
    int exposedReacted = 0;
    int exposedFine = 0;
    int otherReacted = 0;
    int otherFine = 0;
    std::optional<double> riskRatio; ///< nothing when there is no day of one of the two kinds
    double riskLow = 0;              ///< 95 % log-normal interval, when there is a ratio
    double riskHigh = 0;
    double p = 1;        ///< Fisher's exact test, two-sided
    double q = 1;        ///< Benjamini-Hochberg over all subjects
    bool enough = false; ///< days enough on both sides to say anything
};

/// One pattern for each subject, by q, then p, then name. Days not in `days` are not counted. The
/// order of `days` does not matter; two of the same day are merged. Days that follow one another
/// are not independent of each other, which the tests take them to be: see the wording of
/// explain(). The minimum counts are in resources/reference/pattern-figures.csv.
QList<Pattern> patterns(const QList<PatternDay>& days, const PatternRules& rules);

/// One sober sentence on a pattern, with the days behind it: "worth talking about" at most; under
/// the minimum count that there is not enough to say. `subjectName` is for people. Translated.
QString explain(const Pattern& pattern, const QString& subjectName);

/// Enough days, reactions more common with the subject than without, and a q of at most the limit
/// of resources/reference/pattern-figures.csv.
bool isWorthTalkingAbout(const Pattern& pattern);

} // namespace ladlework::intake
