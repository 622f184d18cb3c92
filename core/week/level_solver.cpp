#include "week/level_solver.h"

#include <CbcEventHandler.hpp>
#include <CbcHeuristic.hpp>
#include <CbcHeuristicRINS.hpp>
#include <CbcModel.hpp>
#include <CglFlowCover.hpp>
#include <CglKnapsackCover.hpp>
#include <CglMixedIntegerRounding2.hpp>
#include <CglTwomir.hpp>
#include <CoinPackedMatrix.hpp>
#include <OsiClpSolverInterface.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace ladlework::week {

namespace {

/// Clp's own feasibility tolerance is 1e-7; a whole column within this of a whole number is one.
constexpr double wholeWithin = 1e-6;
constexpr double rowWithin = 1e-6;

double valueOf(const LinearTerms& terms, const std::vector<double>& point) {
    double value = 0;
    for (const auto& [column, factor] : terms)
        value += factor * point[static_cast<std::size_t>(column)];
    return value;
}

/// Does a point hold, within the tolerances of the solver?
bool holds(const LinearProgram& program, const std::vector<double>& point) {
    if (point.size() != program.columns.size())
        return false;
    for (std::size_t index = 0; index < point.size(); ++index) {
        const LinearProgram::Column& column = program.columns[index];
        if (point[index] < column.lower - rowWithin || point[index] > column.upper + rowWithin ||
            (column.whole && std::abs(point[index] - std::round(point[index])) > wholeWithin))
            return false;
    }
    return std::ranges::all_of(program.rows, [&](const LinearProgram::Row& row) {
        const double value = valueOf(row.terms, point);
        return value >= row.lower - rowWithin && value <= row.upper + rowWithin;
    });
}

/// Tells how the search goes and ends it when it is asked to.
class Watcher final : public CbcEventHandler {
public:
    Watcher(const SolveLimits& limits, SolveProgress at) : m_limits(&limits), m_at(at) {}
    CbcAction event(CbcEvent which) override {
        if (m_limits->stop.stop_requested())
            return stop;
        if (m_limits->progress && model_ != nullptr && (which == node || which == solution)) {
            m_at.best = std::min(m_at.best, model_->getObjValue());
            m_at.bound = std::max(m_at.bound, model_->getBestPossibleObjValue());
            m_limits->progress(m_at);
        }
        return noAction;
    }
    [[nodiscard]] CbcEventHandler* clone() const override { return new Watcher(*this); }

private:
    const SolveLimits* m_limits;
    SolveProgress m_at;
};

class LevelSolver {
public:
    LevelSolver(const LinearProgram& program, const SolveLimits& limits);
    LevelsOutcome run(const std::vector<LinearLevel>& levels, const std::vector<double>& start);

private:
    [[nodiscard]] double secondsLeft() const;
    void aimAt(const LinearLevel& level);
    void keep(const LinearLevel& level, double value);
    [[nodiscard]] std::vector<double> relaxed() const;
    [[nodiscard]] bool isWhole(const std::vector<double>& point) const;
    /// Nothing when there is no solution at all.
    bool solve(const LinearLevel& level, SolveProgress at, LevelOutcome& outcome);
    void search(const LinearLevel& level, SolveProgress at, LevelOutcome& outcome);

    const LinearProgram& m_program;
    const SolveLimits& m_limits;
    std::chrono::steady_clock::time_point m_began = std::chrono::steady_clock::now();
    OsiClpSolverInterface m_relaxation;
    bool m_solved = false;
    std::vector<double> m_best; ///< the solution at hand; empty while there is none
};

LevelSolver::LevelSolver(const LinearProgram& program, const SolveLimits& limits)
    : m_program(program), m_limits(limits) {
    m_relaxation.messageHandler()->setLogLevel(0);
    m_relaxation.getModelPtr()->setLogLevel(0);
    const int columns = static_cast<int>(program.columns.size());
    CoinPackedMatrix matrix(false, 0, 0);
    matrix.setDimensions(0, columns);
    std::vector<double> lower;
    std::vector<double> upper;
    const double infinity = m_relaxation.getInfinity();
    for (const LinearProgram::Row& row : program.rows) {
        CoinPackedVector vector;
        vector.reserve(static_cast<int>(row.terms.size()));
        for (const auto& [column, factor] : row.terms)
            vector.insert(column, factor);
        matrix.appendRow(vector);
        lower.push_back(std::max(row.lower, -infinity));
        upper.push_back(std::min(row.upper, infinity));
    }
    std::vector<double> least;
    std::vector<double> most;
    for (const LinearProgram::Column& column : program.columns) {
        least.push_back(column.lower);
        most.push_back(std::min(column.upper, infinity));
    }
    const std::vector<double> nothing(program.columns.size());
    m_relaxation.loadProblem(matrix, least.data(), most.data(), nothing.data(), lower.data(),
                             upper.data());
    for (int index = 0; index < columns; ++index)
        if (program.columns[static_cast<std::size_t>(index)].whole)
            m_relaxation.setInteger(index);
}

double LevelSolver::secondsLeft() const {
    const std::chrono::duration<double> gone = std::chrono::steady_clock::now() - m_began;
    return m_limits.seconds - gone.count();
}

void LevelSolver::aimAt(const LinearLevel& level) {
    std::vector<double> factors(m_program.columns.size());
    for (const auto& [column, factor] : level.terms)
        factors[static_cast<std::size_t>(column)] += factor;
    m_relaxation.setObjective(factors.data());
    if (m_solved)
        m_relaxation.resolve();
    else
        m_relaxation.initialSolve();
    m_solved = true;
}

/// From now on no solution may be worse in this level.
void LevelSolver::keep(const LinearLevel& level, double value) {
    if (level.exact && value <= level.slack) {
        for (const auto& [column, factor] : level.terms)
            m_relaxation.setColUpper(column, 0);
        return;
    }
    CoinPackedVector row;
    for (const auto& [column, factor] : level.terms)
        row.insert(column, factor);
    m_relaxation.addRow(row, -m_relaxation.getInfinity(), value + level.slack);
}

std::vector<double> LevelSolver::relaxed() const {
    const double* point = m_relaxation.getColSolution();
    return {point, point + m_relaxation.getNumCols()};
}

bool LevelSolver::isWhole(const std::vector<double>& point) const {
    for (std::size_t index = 0; index < point.size(); ++index)
        if (m_program.columns[index].whole &&
            std::abs(point[index] - std::round(point[index])) > wholeWithin)
            return false;
    return true;
}

bool LevelSolver::solve(const LinearLevel& level, SolveProgress at, LevelOutcome& outcome) {
    aimAt(level);
    if (m_relaxation.isProvenOptimal()) {
        outcome.bound = m_relaxation.getObjValue();
        if (level.grain > 0)
            outcome.bound = std::ceil(outcome.bound / level.grain - wholeWithin) * level.grain;
        if (m_best.empty() || valueOf(level.terms, m_best) > outcome.bound + level.slack) {
            const std::vector<double> point = relaxed();
            if (isWhole(point))
                m_best = point;
        }
    } else if (m_best.empty()) {
        return false;
    } else {
        // A solution is at hand, so that this can only be rounding: nothing is proven here.
        outcome.bound = -LinearProgram::unbounded;
    }
    if (m_best.empty() || valueOf(level.terms, m_best) > outcome.bound + level.slack)
        search(level, at, outcome);
    if (m_best.empty())
        return false;
    outcome.value = valueOf(level.terms, m_best);
    outcome.proven = outcome.proven || outcome.value <= outcome.bound + level.slack;
    return true;
}

void LevelSolver::search(const LinearLevel& level, SolveProgress at, LevelOutcome& outcome) {
    if (m_limits.stop.stop_requested() || secondsLeft() <= 0)
        return;
    CbcModel model(m_relaxation);
    model.setLogLevel(0);
    model.messageHandler()->setLogLevel(0);
    model.solver()->messageHandler()->setLogLevel(0);
    model.findIntegers(true);
    std::vector<int> ranks;
    for (const LinearProgram::Column& column : m_program.columns)
        if (column.whole)
            ranks.push_back(column.rank + 1);
    model.passInPriorities(ranks.data(), false);
    CglKnapsackCover knapsack;
    CglMixedIntegerRounding2 rounding(1, true, 1);
    CglFlowCover flow;
    CglTwomir twomir;
    model.addCutGenerator(&knapsack, -98, "knapsack");
    model.addCutGenerator(&rounding, -98, "rounding");
    model.addCutGenerator(&flow, -98, "flow");
    model.addCutGenerator(&twomir, -98, "twomir");
    CbcRounding near(model);
    model.addHeuristic(&near, "rounding");
    CbcHeuristicRINS neighbours(model);
    model.addHeuristic(&neighbours, "neighbours");
    model.setNumberStrong(0);
    model.setNumberBeforeTrust(5);
    model.setMaximumCutPassesAtRoot(20);
    model.setMaximumCutPasses(2);
    model.setUseElapsedTime(true);
    model.setMaximumSeconds(secondsLeft());
    model.setDblParam(CbcModel::CbcAllowableGap, level.slack / 2);
    model.setDblParam(CbcModel::CbcCutoffIncrement,
                      level.grain > 0 ? level.grain * (1 - wholeWithin) : level.slack / 2);
    if (!m_best.empty()) {
        at.best = valueOf(level.terms, m_best);
        model.setBestSolution(m_best.data(), static_cast<int>(m_best.size()), at.best);
    } else {
        at.best = LinearProgram::unbounded;
    }
    at.bound = outcome.bound;
    Watcher watcher(m_limits, at);
    model.passInEventHandler(&watcher);
    model.branchAndBound();
    if (const double* found = model.bestSolution(); found != nullptr) {
        std::vector<double> point(found, found + m_program.columns.size());
        if (m_best.empty() || valueOf(level.terms, point) < valueOf(level.terms, m_best))
            m_best = std::move(point);
    }
    outcome.bound = std::max(outcome.bound, model.getBestPossibleObjValue());
    outcome.proven = model.isProvenOptimal() || model.isProvenInfeasible();
}

LevelsOutcome LevelSolver::run(const std::vector<LinearLevel>& levels,
                               const std::vector<double>& start) {
    LevelsOutcome outcome;
    if (holds(m_program, start))
        m_best = start;
    SolveProgress at;
    at.levels = static_cast<int>(levels.size());
    for (const LinearLevel& level : levels) {
        LevelOutcome reached;
        if (!solve(level, at, reached))
            return outcome;
        if (reached.proven)
            reached.bound = reached.value;
        outcome.levels.push_back(reached);
        if (m_limits.progress) {
            at.best = reached.value;
            at.bound = reached.bound;
            m_limits.progress(at);
        }
        ++at.level;
        if (!reached.proven)
            break;
        keep(level, reached.value);
    }
    outcome.feasible = true;
    outcome.point = m_best;
    return outcome;
}

} // namespace

LevelsOutcome solveLevels(const LinearProgram& program, const std::vector<LinearLevel>& levels,
                          const std::vector<double>& start, const SolveLimits& limits) {
    return LevelSolver(program, limits).run(levels, start);
}

} // namespace ladlework::week
