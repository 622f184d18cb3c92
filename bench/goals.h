#pragma once

#include <benchmark/benchmark.h>

#include <map>
#include <ostream>
#include <string>
#include <vector>

namespace ladlework::bench {

/// Prints the usual table and keeps the processor time of each benchmark, in nanoseconds an
/// iteration: a busy machine must not miss a goal.
class KeepingReporter : public benchmark::ConsoleReporter {
public:
    void ReportRuns(const std::vector<Run>& runs) override;
    /// Throws std::out_of_range when the benchmark has not run (filtered out).
    [[nodiscard]] double nanoseconds(const std::string& name) const { return m_times.at(name); }

private:
    std::map<std::string, double> m_times;
};

/// Runs the benchmarks of this program that the arguments ask for; false when an argument is not
/// known (said on standard error).
bool runAll(KeepingReporter& reporter, int argc, char** argv);

/// Something that must stay below a limit.
struct Goal {
    std::string what;
    double value = 0;
    double limit = 0;
    std::string unit;
};

/// Prints every goal; true when all are met.
bool allMet(const std::vector<Goal>& goals, std::ostream& out);

} // namespace ladlework::bench
