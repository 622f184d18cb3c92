#pragma once

#include "foundation/finding.h"
#include "quantity/measure.h"
#include "week/week_problem.h"

#include <QDate>

namespace ladlework::week {

/// What is to be said of a week as it will go. Codes: "week-short" (a day, with names),
/// "nothing-to-drink" and "may-not-drink-rest" (a member who is short while stock stands that they
/// may not have), "week-spoilt" and "meat-spoilt" (a lot or cooking), "fridge-full" and
/// "freezer-full" (a day). Values and limits in mL, of meat in g; fields "day:N" and "tolerances".
/// `start` is day 0. Pots and lots are called by their names in the problem.
Findings weekFindings(const WeekProblem& problem, const WeekSolution& solution, QDate start,
                      quantity::MeasureSystem measures);

/// "Chicken legs, jar 1" of a lot, "Chicken legs, Tuesday" of a cooking.
QString sourceName(const WeekProblem& problem, const WeekSolution& solution,
                   const StockSource& source, QDate start);

} // namespace ladlework::week
