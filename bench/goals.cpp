#include "goals.h"

#include <algorithm>
#include <iomanip>

namespace ladlework::bench {

void KeepingReporter::ReportRuns(const std::vector<Run>& runs) {
    for (const Run& run : runs) {
        if (run.run_type != Run::RT_Iteration)
            continue;
        const double nanoseconds =
            run.GetAdjustedCPUTime() * 1e9 / benchmark::GetTimeUnitMultiplier(run.time_unit);
        const auto [place, isNew] = m_times.try_emplace(run.run_name.function_name, nanoseconds);
        // Of several runs the fastest is the least disturbed.
        if (!isNew)
            place->second = std::min(place->second, nanoseconds);
    }
    ConsoleReporter::ReportRuns(runs);
}

bool runAll(KeepingReporter& reporter, int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv))
        return false;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    return true;
}

bool allMet(const std::vector<Goal>& goals, std::ostream& out) {
    bool all = true;
    out << "\nGoals\n" << std::fixed << std::setprecision(3);
    for (const Goal& goal : goals) {
        const bool isMet = goal.value < goal.limit;
        all = all && isMet;
        out << (isMet ? "  met     " : "  MISSED  ") << goal.what << ": " << goal.value << " "
            << goal.unit << " (below " << goal.limit << ")\n";
    }
    return all;
}

} // namespace ladlework::bench
