#include "kitchen/cooling.h"

#include "kitchen/cooling_findings.h"
#include "kitchen/cooling_run.h"
#include "kitchen/id_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

// The model is in cooling_run.cpp: stages, mixing and gelling of the stock; cooling_surfaces.cpp:
// what goes off through top, wall and floor; cooling_grid.cpp: heat conduction in the liquid.
namespace ladlework::kitchen {

namespace {
using Place = CoolingStage::Place;

constexpr std::array placeWords{std::pair{Place::Counter, "counter"},
                                std::pair{Place::Refrigerator, "refrigerator"},
                                std::pair{Place::IceBath, "ice-bath"}};

constexpr std::size_t mostPoints = 300; // no screen shows more

quantity::Duration giveUp(const CoolingFigures& figures) {
    return quantity::Duration::fromHours(figures.value(QStringLiteral("give-up")));
}

/// At most so many points, evenly chosen, with the first and the last.
std::vector<CoolingPoint> thinned(const std::vector<CoolingPoint>& curve) {
    if (curve.size() <= mostPoints)
        return curve;
    std::vector<CoolingPoint> thin;
    thin.reserve(mostPoints);
    for (std::size_t index = 0; index < mostPoints; ++index)
        thin.push_back(curve[index * (curve.size() - 1) / (mostPoints - 1)]);
    return thin;
}

CoolingInput sharedBy(quantity::Volume total, const CoolingInput& one, int count) {
    CoolingInput shared = one;
    shared.volume = total / count;
    return shared;
}

bool passesShared(quantity::Volume total, const CoolingInput& one, int count,
                  const CoolingFigures& figures) {
    RunDetail detail;
    detail.onlyWhilePassing = true;
    return passes(runCooling(sharedBy(total, one, count), Liquid::stock(figures), detail,
                             giveUp(figures), figures),
                  TwoStageRule::shipped());
}
} // namespace

Cooling cool(const CoolingInput& input) {
    const CoolingFigures& figures = CoolingFigures::shipped();
    const TwoStageRule rule = TwoStageRule::shipped();
    const CoolingRun run = runCooling(input, Liquid::stock(figures), {}, giveUp(figures), figures);
    return {run.toMiddle, run.toEnd, passes(run, rule), thinned(run.curve),
            coolingFindings(input, run, rule, figures)};
}

std::optional<SharedOut> fewestContainers(quantity::Volume total, const CoolingInput& one) {
    const CoolingFigures& figures = CoolingFigures::shipped();
    const double most = figures.value(QStringLiteral("containers-most"));
    // A container that is full to the brim is not one more.
    constexpr double hair = 1e-9;
    const double least = std::ceil(total / one.container.capacity() - hair);
    if (!(total > quantity::Volume()) || !(least <= most))
        return std::nullopt;

    // Shallower is faster, so that the counts that pass lie above those that do not. Few will do
    // mostly: strides that double find one that passes, halving finds the first.
    const auto works = [&](int count) {
        return passesShared(total, one, count, figures);
    };
    int fails = std::max(1, static_cast<int>(least)) - 1;
    int first = fails + 1;
    for (int stride = 1; !works(first); stride *= 2) {
        if (first >= most)
            return std::nullopt;
        fails = first;
        first = std::min(static_cast<int>(most), first + stride);
    }
    while (first - fails > 1) {
        const int middle = (fails + first) / 2;
        (works(middle) ? first : fails) = middle;
    }
    return SharedOut{first, depthOf(total / first, one.container)};
}

std::vector<CoolingStage> stagesOf(CoolingWay way, quantity::Temperature room) {
    const CoolingFigures& figures = CoolingFigures::shipped();
    const auto celsius = [&figures](const QString& id) {
        return quantity::Temperature::fromCelsius(figures.value(id));
    };
    const CoolingStage refrigerator{
        Place::Refrigerator, celsius(QStringLiteral("refrigerator-temperature")), {}, false};
    switch (way) {
    case CoolingWay::Refrigerator:
        return {refrigerator};
    case CoolingWay::IceBath:
        return {{Place::IceBath, celsius(QStringLiteral("ice-bath-temperature")),
                 quantity::Duration::fromMinutes(figures.value(QStringLiteral("ice-bath-time"))),
                 true},
                refrigerator};
    case CoolingWay::Counter:
        return {{Place::Counter, room, counterAllowed(room), false}, refrigerator};
    }
    return {refrigerator};
}

QString coolingPlaceId(Place place) {
    return wordOf(placeWords, place);
}

std::optional<Place> coolingPlaceFromId(QStringView id) {
    return valueOf<Place>(placeWords, id);
}

} // namespace ladlework::kitchen
