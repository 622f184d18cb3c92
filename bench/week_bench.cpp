#include "core/week/rivals/compact_week.h"
#include "core/week/rivals/glpk_week.h"
#include "core/week/rivals/invented_weeks.h"
#include "goals.h"
#include "week/week_solver.h"

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iomanip>
#include <iostream>
#include <set>
#include <stdexcept>

// What it costs to plan a week: the exact planner beside GLPK with the same levels in two models of
// its own (one says the rules one by one, one is as small as the rules allow), the plan at once,
// and a ladder of sizes. Families are invented; each time is processor time, and of several
// families the median and the worst are told. A goal that is missed ends the program with 1.
namespace ladlework::bench {

using namespace week;
using rivals::RivalAnswer;
using samples::FamilySize;
using samples::familyWeek;

namespace {
constexpr unsigned families = 12;
constexpr unsigned familiesOfLadder = 3;
constexpr double secondsALevelForGlpk = 5;
constexpr double secondsForLadder = 10;
constexpr double nanosecondsPerMillisecond = 1e6;

constexpr FamilySize sevenDays{7, 8, 8};
constexpr FamilySize fourteenDays{14, 8, 8};
constexpr FamilySize ladder[] = {{7, 4, 4},  {7, 8, 8},    {7, 12, 16}, {14, 4, 4},
                                 {14, 8, 8}, {14, 12, 16}, {21, 8, 8},  {21, 12, 16},
                                 {28, 4, 4}, {28, 8, 8},   {28, 12, 16}};

std::string nameOf(const char* who, const FamilySize& size, unsigned seed) {
    return std::string(who) + "/" + std::to_string(size.days) + " days, " +
           std::to_string(size.drinkers) + " drinkers, " + std::to_string(size.pots) +
           " pots/family " + std::to_string(seed);
}

using Solve = std::function<void(const WeekProblem&, benchmark::State&)>;

/// Small weeks are solved several times, long ones once.
void add(const char* who, const FamilySize& size, unsigned seed, const Solve& solve) {
    benchmark::RegisterBenchmark(nameOf(who, size, seed).c_str(),
                                 [size, seed, solve](benchmark::State& state) {
                                     const WeekProblem problem = familyWeek(seed, size);
                                     for (auto _ : state)
                                         solve(problem, state);
                                 })
        ->Unit(benchmark::kMillisecond)
        ->MinTime(0.05)
        ->MeasureProcessCPUTime();
}

/// The counter "proven" is 1 when every level was.
Solve planner(double seconds) {
    return [seconds](const WeekProblem& problem, benchmark::State& state) {
        SolveLimits limits;
        limits.seconds = seconds;
        const WeekSolution plan = solveWeek(problem, limits);
        state.counters["proven"] = plan.status == WeekSolution::Status::Feasible ? 0 : 1;
    };
}

/// Stopped when a level takes too long: its time is then less than it needs.
Solve glpk(RivalAnswer (*rival)(const WeekProblem&, double)) {
    return [rival](const WeekProblem& problem, benchmark::State& state) {
        bool isProven = true;
        try {
            benchmark::DoNotOptimize(rival(problem, secondsALevelForGlpk));
        } catch (const std::runtime_error&) {
            isProven = false;
        }
        state.counters["proven"] = isProven ? 1 : 0;
    };
}

/// Names of the benchmarks whose plan was proven within the time.
using Proven = std::set<std::string>;

void addAll(Proven& proven) {
    for (unsigned seed = 1; seed <= families; ++seed) {
        for (const FamilySize& size : {sevenDays, fourteenDays}) {
            add("planner", size, seed, planner(60));
            add("at once", size, seed, [](const WeekProblem& problem, benchmark::State&) {
                benchmark::DoNotOptimize(greedyWeek(problem));
            });
        }
        add("GLPK, small model", sevenDays, seed, glpk(rivals::compactWeek));
        add("GLPK, plain model", sevenDays, seed, glpk(rivals::glpkWeek));
    }
    for (const FamilySize& size : ladder) {
        for (unsigned seed = 1; seed <= familiesOfLadder; ++seed)
            add("ladder", size, seed,
                [&proven, name = nameOf("ladder", size, seed)](const WeekProblem& problem,
                                                               benchmark::State& state) {
                    planner(secondsForLadder)(problem, state);
                    if (state.counters["proven"] > 0)
                        proven.insert(name);
                });
    }
}

struct Times {
    double median = 0; ///< ms
    double worst = 0;
    double all = 0;
};

Times timesOf(const KeepingReporter& reporter, const char* who, const FamilySize& size,
              unsigned count) {
    std::vector<double> times;
    for (unsigned seed = 1; seed <= count; ++seed)
        times.push_back(reporter.nanoseconds(nameOf(who, size, seed)) / nanosecondsPerMillisecond);
    std::ranges::sort(times);
    Times result{(times[(times.size() - 1) / 2] + times[times.size() / 2]) / 2, times.back(), 0};
    for (const double time : times)
        result.all += time;
    return result;
}

void printLadder(const KeepingReporter& reporter, const Proven& proven) {
    std::cout << "\nLadder of sizes (at most " << secondsForLadder
              << " s each; growth against the first size)\n"
              << std::fixed << std::setprecision(1);
    const double first = timesOf(reporter, "ladder", ladder[0], familiesOfLadder).median;
    for (const FamilySize& size : ladder) {
        const Times times = timesOf(reporter, "ladder", size, familiesOfLadder);
        unsigned count = 0;
        for (unsigned seed = 1; seed <= familiesOfLadder; ++seed)
            count += proven.contains(nameOf("ladder", size, seed)) ? 1U : 0U;
        std::cout << std::setw(4) << size.days << " days " << std::setw(3) << size.drinkers
                  << " drinkers " << std::setw(3) << size.pots << " pots: median " << std::setw(8)
                  << times.median << " ms, worst " << std::setw(8) << times.worst << " ms, "
                  << times.median / first << " times, " << count << " of " << familiesOfLadder
                  << " proven\n";
    }
}

int run(int argc, char** argv) {
    Proven proven;
    addAll(proven);
    KeepingReporter reporter;
    if (!runAll(reporter, argc, argv))
        return 2;
    printLadder(reporter, proven);
    const Times week = timesOf(reporter, "planner", sevenDays, families);
    const Times fortnight = timesOf(reporter, "planner", fourteenDays, families);
    const Times atOnce = timesOf(reporter, "at once", sevenDays, families);
    const Times small = timesOf(reporter, "GLPK, small model", sevenDays, families);
    const Times plain = timesOf(reporter, "GLPK, plain model", sevenDays, families);
    const std::vector<Goal> goals{
        {"seven days, median", week.median, 500, "ms"},
        {"seven days, worst", week.worst, 500, "ms"},
        {"seven days over GLPK with a plain model, median", week.median / plain.median, 1, "times"},
        {"seven days over GLPK with a plain model, all families", week.all / plain.all, 1, "times"},
        {"seven days over GLPK with a small model, median", week.median / small.median, 1, "times"},
        {"seven days over GLPK with a small model, all families", week.all / small.all, 1, "times"},
        {"fourteen days, median", fortnight.median, 1500, "ms"},
        {"fourteen days, worst", fortnight.worst, 1500, "ms"},
        {"the plan at once, worst", atOnce.worst, 10, "ms"}};
    return allMet(goals, std::cout) ? EXIT_SUCCESS : EXIT_FAILURE;
}
} // namespace

} // namespace ladlework::bench

int main(int argc, char** argv) {
    try {
        return ladlework::bench::run(argc, argv);
    } catch (const std::exception& broken) {
        std::cerr << broken.what() << '\n';
        return EXIT_FAILURE;
    }
}
