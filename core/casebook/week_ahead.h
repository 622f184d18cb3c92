#pragma once

#include "foundation/id.h"
#include "week/week_problem.h"

#include <QDate>
#include <QList>
#include <QString>
#include <vector>

namespace ladlework::casebook {

/// Which cookings of a plan are settled when a week is looked at.
enum class Settled {
    All, ///< the week as it stands
    /// What is cooked, past or on a locked day: the rest is to be planned anew, with animals that
    /// each has had before (a new one is a retry, and hers to plan).
    Locked
};

/// A pot that the planner leaves alone, and why.
struct UnfitPot {
    PotId pot;
    QString why; ///< a sentence
};

/// One family's week as the planner sees it. In the week of today it begins today, with what is on
/// hand; a later week begins with what the weeks before it leave over (up to four weeks ahead); a
/// week that is over is shown as it was planned.
struct WeekAhead {
    QDate start; ///< day 0 of the problem
    week::WeekProblem problem;
    std::vector<MemberId> members;     ///< by drinker
    std::vector<PotId> pots;           ///< by pot of the problem
    std::vector<LotId> lots;           ///< by lot of the problem; 0: left over from a cooking
    std::vector<qsizetype> placements; ///< by settled cooking: its place in the plan
    QList<UnfitPot> unfit;
};

} // namespace ladlework::casebook
