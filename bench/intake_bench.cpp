#include "goals.h"
#include "intake/ladder_machine.h"
#include "intake/patterns.h"
#include "intake/projection.h"

#include <cstdlib>
#include <iostream>
#include <random>

// What looking at one member costs after ten years of log. A goal that is missed ends the program
// with 1.
namespace ladlework::bench {

using namespace intake;
using quantity::Volume;

namespace {
constexpr int tenYears = 3650;
const QDate firstDay(2014, 1, 1);
const QDate lastDay = firstDay.addDays(tenYears - 1);

Ladder ladderOf(int rungs) {
    Ladder ladder;
    ladder.from = firstDay;
    for (int i = 1; i <= rungs; ++i)
        ladder.rungs.append(Volume::fromMillilitres(50.0 * i));
    return ladder;
}

struct MemberDiary {
    QList<IntakeEntry> entries;
    QList<Reaction> reactions;
};

/// Three drinks a day, a reaction every tenth day, in no order.
MemberDiary tenYearsOfDiary() {
    std::mt19937 engine(1);
    MemberDiary diary;
    for (int day = 0; day < tenYears; ++day) {
        for (int drink = 0; drink < 3; ++drink) {
            IntakeEntry entry;
            entry.day = firstDay.addDays(day);
            entry.drunk = Volume::fromMillilitres(280 + static_cast<double>(engine() % 80));
            diary.entries.append(entry);
        }
        if (engine() % 10 != 0)
            continue;
        Reaction reaction;
        reaction.day = firstDay.addDays(day);
        reaction.strength = static_cast<int>(engine() % 6);
        diary.reactions.append(reaction);
    }
    std::ranges::shuffle(diary.entries, engine);
    return diary;
}

const MemberDiary& diary() {
    static const MemberDiary made = tenYearsOfDiary();
    return made;
}

/// The least that any replay does: each day's amount against a rung that grows.
void bareLoop(benchmark::State& state) {
    std::vector<double> drunk;
    for (const LogDay& day : logDays(diary().entries, diary().reactions, firstDay))
        drunk.push_back(day.drunk.toMillilitres());
    for (auto _ : state) {
        benchmark::DoNotOptimize(drunk.data());
        double asked = 50;
        int good = 0;
        for (double ml : drunk) {
            good = ml >= 0.9 * asked ? good + 1 : good;
            if (good == 3 && asked < 1000) {
                asked += 50;
                good = 0;
            }
        }
        benchmark::DoNotOptimize(asked);
    }
}
BENCHMARK(bareLoop)->Unit(benchmark::kMicrosecond);

void replayOfTenYears(benchmark::State& state) {
    const Ladder ladder = ladderOf(20);
    const QList<LogDay> log = logDays(diary().entries, diary().reactions, firstDay);
    for (auto _ : state)
        benchmark::DoNotOptimize(replay(ladder, log, {}, lastDay));
}
BENCHMARK(replayOfTenYears)->Unit(benchmark::kMillisecond);

void entriesToReplay(benchmark::State& state) {
    const Ladder ladder = ladderOf(20);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            replay(ladder, logDays(diary().entries, diary().reactions, firstDay), {}, lastDay));
}
BENCHMARK(entriesToReplay)->Unit(benchmark::kMillisecond);

void projection(benchmark::State& state) {
    const Ladder ladder = ladderOf(60);
    const QDate today = firstDay.addDays(200);
    const LadderReplay replayed =
        replay(ladder, logDays(diary().entries, diary().reactions, firstDay), {}, today);
    for (auto _ : state)
        benchmark::DoNotOptimize(projectTargetDate(replayed, ladder, today));
}
BENCHMARK(projection)->Unit(benchmark::kMillisecond);

void patternsOfTenYears(benchmark::State& state) {
    std::mt19937 engine(2);
    QList<PatternDay> days;
    for (int offset = 0; offset < tenYears; ++offset) {
        PatternDay day;
        day.day = firstDay.addDays(offset);
        day.worstReaction = static_cast<int>(engine() % 6);
        for (int subject = 0; subject < 40; ++subject)
            if (engine() % 5 == 0)
                day.exposures.append(QStringLiteral("subject %1").arg(subject));
        days.append(day);
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(patterns(days, {}));
}
BENCHMARK(patternsOfTenYears)->Unit(benchmark::kMillisecond);

int run(int argc, char** argv) {
    KeepingReporter reporter;
    if (!runAll(reporter, argc, argv))
        return 2;

    constexpr double nanosecondsPerMillisecond = 1e6;
    const double bare = reporter.nanoseconds("bareLoop");
    const double replayed = reporter.nanoseconds("replayOfTenYears");
    const auto milliseconds = [&reporter](const char* name) {
        return reporter.nanoseconds(name) / nanosecondsPerMillisecond;
    };
    const std::vector<Goal> goals{
        {"ten years replayed over a bare loop", replayed / bare, 200, "times"},
        {"ten years replayed", milliseconds("replayOfTenYears"), 5, "ms"},
        {"ten years from entries to standing", milliseconds("entriesToReplay"), 5, "ms"},
        {"date of the target", milliseconds("projection"), 5, "ms"},
        {"patterns of ten years and 40 subjects", milliseconds("patternsOfTenYears"), 50, "ms"}};
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
