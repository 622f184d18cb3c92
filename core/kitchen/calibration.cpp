#include "kitchen/calibration.h"

#include "kitchen/evaporation.h"
#include "kitchen/robust_update.h"

#include <algorithm>
#include <cmath>

// The loss of a cooking is the physical estimate times a factor that belongs to the vessel. The
// logarithm of that factor is taken as normal: known beforehand to lie about the vessel's own
// factor within the spread of correlation, lid and place, and measured by each batch within the
// spread of what differs from cooking to cooking and of what a kitchen can measure. So the update
// of robust_update.h applies to the logarithms.
namespace ladlework::kitchen {

namespace {
struct Point {
    BatchId batch;
    QDate day;
    Normal logFactor;
};

double square(double value) {
    return value * value;
}

/// One standard deviation of a figure with these bounds, on average.
double deviationOf(const Range& range) {
    return (range.high - range.low) / 2.0 / ninetyPercent;
}

Range factorOf(const Normal& logFactor) {
    const double reach = ninetyPercent * logFactor.deviation;
    return {std::exp(logFactor.mean - reach), std::exp(logFactor.mean),
            std::exp(logFactor.mean + reach)};
}

/// A lid or place other than the one asked about adds what is not known of both.
double deviationOfOtherLid(const Vessel& used, const Vessel& asked, const Catalogue& catalogue) {
    if (used.lid == asked.lid && used.place == asked.place)
        return 0.0;
    return lidAndPlaceSpread(used, catalogue).with(lidAndPlaceSpread(asked, catalogue)).deviation();
}

/// What one batch says; nothing when it was not measured, or when the forecast boils it dry, so
/// that it must have been topped up.
std::optional<Point> pointOf(const MeasuredBatch& measured, const Vessel& vessel,
                             const Catalogue& catalogue) {
    if (!measured.batch.yield)
        return std::nullopt;
    const BrewInput& input = measured.input;
    const Brewed forecast = brew(input, catalogue);
    const PhysicalLoss physical = physicalLoss(input.vessel, forecast.simmering, input.room,
                                               input.altitude, input.pot.simmer, catalogue);
    if (forecast.boilsDry || physical.ml <= 0.0)
        return std::nullopt;

    const double water = input.pot.water.toMillilitres();
    const double yield = measured.batch.yield->toMillilitres();
    const double loss = water + forecast.cookOutMl.best - forecast.heldBySolidsMl.best - yield;
    const Figure& reading = catalogue.figure(QStringLiteral("kitchen-measuring"));
    const double readingDeviation = deviationOf({reading.low, reading.value, reading.high});
    const double variance = square(deviationOf(forecast.cookOutMl)) +
                            square(deviationOf(forecast.heldBySolidsMl)) +
                            square(readingDeviation * water) + square(readingDeviation * yield);

    // A loss of nothing or less has no logarithm. Such a batch is not left out: it is raised to a
    // floor, where the same error in millilitres is large beside the loss, so that it counts
    // little.
    const double floor = catalogue.figure(QStringLiteral("evaporation-factor-floor")).value;
    const double factor = std::max(loss / physical.ml, floor);
    // The logarithm of a log-normal figure with this relative variance has the variance log1p of
    // it.
    const double relativeVariance = variance / square(factor * physical.ml);
    const double deviation =
        std::sqrt(std::log1p(relativeVariance) + square(physical.ofCooking.deviation()) +
                  square(deviationOfOtherLid(input.vessel, vessel, catalogue)));
    return Point{measured.batch.id, measured.batch.day, {std::log(factor), deviation}};
}
} // namespace

Calibration calibrate(const Vessel& vessel, const std::vector<MeasuredBatch>& batches,
                      const Catalogue& catalogue) {
    std::vector<Point> points;
    for (const MeasuredBatch& batch : batches)
        if (const std::optional<Point> point = pointOf(batch, vessel, catalogue))
            points.push_back(*point);
    std::ranges::stable_sort(points, {}, &Point::day);
    std::vector<Normal> measured;
    measured.reserve(points.size());
    for (const Point& point : points)
        measured.push_back(point.logFactor);

    const Normal prior{std::log(vessel.evaporationFactor),
                       vesselSpread(vessel, catalogue).deviation()};
    const double freedom = catalogue.figure(QStringLiteral("odd-batch-freedom")).value;
    const RobustUpdate update = robustlyUpdated(prior, measured, freedom);

    Calibration calibration;
    calibration.prior = factorOf(prior);
    calibration.posterior = factorOf(points.empty() ? prior : update.posterior);
    for (size_t index = 0; index < points.size(); ++index)
        calibration.points.push_back({points[index].batch, points[index].day,
                                      factorOf(points[index].logFactor), update.weights[index]});
    return calibration;
}

} // namespace ladlework::kitchen
