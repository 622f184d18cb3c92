#pragma once

#include "casebook/casebook.h"
#include "week/in_the_way.h"
#include "week/week_solver.h"

#include <QList>
#include <QString>
#include <optional>

namespace ladlework::ui {

/// One thing in the way of a good week, and where it can be mended.
struct PlanHint {
    QString what;
    QString wouldHelp;
    QString screen; ///< "members", "pots", or "hours" for the line of the day; may be empty
    friend bool operator==(const PlanHint&, const PlanHint&) = default;
};

/// What is worked on: "nobody short", "nothing spoilt", ... "most variety".
QString levelWords(const week::SolveProgress& progress);

/// How far the planner is, with the best plan and what is proven of it.
QString progressWords(const casebook::Casebook& casebook, const week::SolveProgress& progress);

/// What was proven, or how far from it the plan was cut short.
QString resultWords(const casebook::Casebook& casebook, const week::WeekProblem& problem,
                    const week::WeekSolution& solution);

/// Why the week cannot be planned at all; nothing when it can.
std::optional<PlanHint> obstacle(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                                 const casebook::WeekAhead& ahead);

/// The ways out, and what else limits a week: no room at all, pots that were left out.
QList<PlanHint> hints(const casebook::Casebook& casebook, const casebook::WeekAhead& ahead,
                      const std::vector<week::WayOut>& ways);

} // namespace ladlework::ui
