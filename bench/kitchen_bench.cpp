#include "goals.h"
#include "kitchen/brew.h"
#include "kitchen/cooling.h"
#include "kitchen/evaporation.h"

#include <cstdlib>
#include <iostream>
#include <stdexcept>

// What a key pressed in the pot builder costs. The goals are ratios and times within one run on one
// machine; a goal that is missed ends the program with 1.
namespace ladlework::bench {

using namespace kitchen;

namespace {
const Catalogue& catalogue() {
    static const Catalogue loaded = [] {
        Result<Catalogue> result = Catalogue::load();
        if (!result)
            throw std::runtime_error(toLine(result.error()).toStdString());
        return *std::move(result);
    }();
    return loaded;
}

quantity::Length centimetres(double number) {
    return quantity::Length::fromCentimetres(number);
}

/// Six cuts, vegetables and a table of three.
BrewInput sixCutPot() {
    BrewInput input;
    input.pot.name = QStringLiteral("six cuts");
    for (const QString& cut : {QStringLiteral("chicken-leg"), QStringLiteral("chicken-back"),
                               QStringLiteral("chicken-foot"), QStringLiteral("chicken-wing"),
                               QStringLiteral("chicken-neck"), QStringLiteral("turkey-neck")})
        input.pot.cuts.append({cut, quantity::Mass::fromGrams(400), true});
    input.pot.extras = {{QStringLiteral("onion"), quantity::Mass::fromGrams(220)},
                        {QStringLiteral("carrot"), quantity::Mass::fromGrams(120)}};
    input.pot.water = quantity::Volume::fromLitres(3.5);
    input.pot.salt = quantity::Mass::fromGrams(10);
    input.pot.simmer = quantity::Duration::fromHours(2.5);
    input.vessel.name = QStringLiteral("stockpot");
    input.vessel.diameter = centimetres(28);
    input.vessel.height = centimetres(22);
    for (const char* name : {"one", "two", "three"}) {
        Drinker drinker;
        drinker.name = QString::fromLatin1(name);
        drinker.mayNot = {QStringLiteral("beef")};
        drinker.sodiumLimitMg = 1500;
        drinker.band = AgeBand::Adult;
        drinker.perDay = quantity::Volume::fromMillilitres(900);
        input.drinkers.push_back(drinker);
    }
    input.meatPerDay = quantity::Mass::fromGrams(400);
    return input;
}

/// The usual container, full, in the refrigerator.
CoolingInput usualCooling() {
    const Container& container = usualContainers().front();
    return {container.capacity(), container, quantity::Temperature::fromCelsius(95),
            stagesOf(CoolingWay::Refrigerator, quantity::Temperature::fromCelsius(21))};
}

void bareEvaporation(benchmark::State& state) {
    const Catalogue& figures = catalogue();
    double simmering = 93.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(simmering);
        benchmark::DoNotOptimize(openSurfaceRate(
            centimetres(28), quantity::Temperature::fromCelsius(simmering),
            quantity::Temperature::fromCelsius(21), quantity::Length::fromMetres(100), figures));
    }
}
BENCHMARK(bareEvaporation);

void sixCutPotRecomputed(benchmark::State& state) {
    const Catalogue& figures = catalogue();
    BrewInput input = sixCutPot();
    for (auto _ : state) {
        benchmark::DoNotOptimize(input);
        benchmark::DoNotOptimize(brew(input, figures));
    }
}
BENCHMARK(sixCutPotRecomputed)->Unit(benchmark::kMicrosecond);

void coolingCurve(benchmark::State& state) {
    CoolingInput input = usualCooling();
    for (auto _ : state) {
        benchmark::DoNotOptimize(input);
        benchmark::DoNotOptimize(cool(input));
    }
}
BENCHMARK(coolingCurve)->Unit(benchmark::kMillisecond);

void coolingWithSearch(benchmark::State& state) {
    CoolingInput input = usualCooling();
    for (auto _ : state) {
        benchmark::DoNotOptimize(input);
        benchmark::DoNotOptimize(cool(input));
        benchmark::DoNotOptimize(fewestContainers(quantity::Volume::fromLitres(8), input));
    }
}
BENCHMARK(coolingWithSearch)->Unit(benchmark::kMillisecond);

int run(int argc, char** argv) {
    KeepingReporter reporter;
    if (!runAll(reporter, argc, argv))
        return 2;

    constexpr double nanosecondsPerMillisecond = 1e6;
    const double bare = reporter.nanoseconds("bareEvaporation");
    const double pot = reporter.nanoseconds("sixCutPotRecomputed");
    const double cooling = reporter.nanoseconds("coolingWithSearch");
    const std::vector<Goal> goals{
        {"six-cut pot over bare evaporation", pot / bare, 200, "times"},
        {"six-cut pot", pot / nanosecondsPerMillisecond, 1, "ms"},
        {"cooling curve with container search", cooling / nanosecondsPerMillisecond, 20, "ms"}};
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
