#include "week/week_solver.h"

#include "week/greedy_week.h"
#include "week/level_solver.h"
#include "week/serving_plan.h"
#include "week/week_model.h"

#include <algorithm>
#include <cmath>

namespace ladlework::week {

namespace {

constexpr int none = -1;
using Cookings = std::vector<std::vector<int>>; // [day][pot], settled ones not included

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// The model with its cookings fixed, as a linear program.
LinearProgram withCookings(const WeekModel& model, const Cookings& cookings) {
    LinearProgram program = model.program;
    for (LinearProgram::Column& column : program.columns)
        column.whole = false;
    for (std::size_t day = 0; day < cookings.size(); ++day) {
        for (std::size_t pot = 0; pot < cookings[day].size(); ++pot) {
            if (model.cook[day][pot] == none)
                continue;
            LinearProgram::Column& column = program.columns[at(model.cook[day][pot])];
            column.lower = cookings[day][pot];
            column.upper = cookings[day][pot];
        }
    }
    return program;
}

/// The levels that still have a say when the cookings are fixed, and the tidying. Without cuts a
/// level can be held more tightly.
std::vector<LinearLevel> servingLevels(const WeekModel& model) {
    constexpr double tight = 2e-7;
    std::vector<LinearLevel> levels;
    for (std::size_t index = 0; index < model.levels.size(); ++index)
        if (model.levelNames[index] < WeekModel::Level::Cookings)
            levels.push_back(model.levels[index]);
    levels.push_back(model.tidy);
    for (LinearLevel& level : levels)
        level.slack = tight;
    return levels;
}

/// The best that can be done with these cookings; empty when the rooms do not hold them.
std::vector<double> served(const WeekModel& model, const Cookings& cookings) {
    return solveLevels(withCookings(model, cookings), servingLevels(model), {}, {}).point;
}

Cookings cookingsOf(const WeekModel& model, const std::vector<double>& point) {
    Cookings cookings;
    for (const std::vector<int>& day : model.cook) {
        std::vector<int>& counts = cookings.emplace_back();
        for (const int column : day)
            counts.push_back(column == none ? 0 : static_cast<int>(std::lround(point[at(column)])));
    }
    return cookings;
}

Cookings cookingsOf(const WeekProblem& problem, const WeekSolution& solution) {
    Cookings cookings(at(problem.days), std::vector<int>(problem.pots.size(), 0));
    for (const PlannedCooking& cooking : solution.cookings)
        if (!cooking.settled && cooking.day < problem.days && cooking.pot < problem.pots.size())
            ++cookings[at(cooking.day)][cooking.pot];
    return cookings;
}

WeekSolution planOf(const WeekProblem& problem, const WeekModel& model,
                    const std::vector<double>& point, WeekSolution::Status status) {
    WeekSolution solution = servingPlan(problem, model, point);
    const bool over = solution.objective.overRoom > quantity::Volume();
    solution.status = over ? WeekSolution::Status::Infeasible : status;
    return solution;
}

double gapOf(const LevelOutcome& level) {
    constexpr double least = 1e-9;
    if (level.proven)
        return 0;
    return (level.value - level.bound) / std::max(std::abs(level.value), least);
}

/// The same limits, with a progress in mL and g where the model counts litres and kilograms.
SolveLimits inKitchenUnits(const SolveLimits& limits, const WeekModel& model) {
    SolveLimits changed = limits;
    if (!limits.progress)
        return changed;
    changed.progress = [&limits, &model](SolveProgress reached) {
        constexpr double thousand = 1000;
        if (model.levelNames[at(reached.level)] < WeekModel::Level::Cookings) {
            reached.best *= thousand;
            reached.bound *= thousand;
        }
        limits.progress(reached);
    };
    return changed;
}

/// Nothing cooked but what is settled: what every problem allows.
Cookings nothingOf(const WeekProblem& problem) {
    return Cookings(at(problem.days), std::vector<int>(problem.pots.size(), 0));
}
} // namespace

WeekSolution greedyWeek(const WeekProblem& problem) {
    const WeekModel model = makeWeekModel(problem);
    std::vector<double> point = served(model, greedyCookings(problem));
    if (point.empty())
        point = served(model, nothingOf(problem));
    return planOf(problem, model, point, WeekSolution::Status::Feasible);
}

WeekSolution solveWeek(const WeekProblem& problem, const SolveLimits& limits,
                       const WeekSolution* start) {
    const WeekModel model = makeWeekModel(problem);
    const Cookings known = start != nullptr ? cookingsOf(problem, *start) : greedyCookings(problem);
    std::vector<double> first = served(model, known);
    if (first.empty())
        first = served(model, nothingOf(problem));
    const LevelsOutcome outcome =
        solveLevels(model.program, model.levels, first, inKitchenUnits(limits, model));
    const bool proven = outcome.levels.size() == model.levels.size() &&
                        std::ranges::all_of(outcome.levels, &LevelOutcome::proven);
    // Rounded to whole cookings and served once more, so that no rounding of the search is left.
    std::vector<double> point = served(model, cookingsOf(model, outcome.point));
    if (point.empty())
        point = first;
    WeekSolution solution =
        planOf(problem, model, point,
               proven ? WeekSolution::Status::Optimal : WeekSolution::Status::Feasible);
    for (const LevelOutcome& level : outcome.levels)
        solution.gap = std::max(solution.gap, gapOf(level));
    return solution;
}

WeekSolution serveSettled(const WeekProblem& problem) {
    const WeekModel model = makeWeekModel(problem);
    return planOf(problem, model, served(model, nothingOf(problem)), WeekSolution::Status::Optimal);
}

} // namespace ladlework::week
