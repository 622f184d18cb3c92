#include "kitchen/calibration.h"

#include "kitchen/evaporation.h"
#include "kitchen_samples.h"

#include <cmath>

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
const QDate firstDay(2026, 1, 5);

/// A batch of this pot whose vessel really loses `factor` times the physical estimate.
MeasuredBatch cookedAt(const BrewInput& pot, double factor, int number) {
    BrewInput truth = pot;
    truth.vessel.evaporationFactor = factor;
    MeasuredBatch measured;
    measured.batch.id = BatchId{number};
    measured.batch.day = firstDay.addDays(number);
    measured.batch.cooked = asPlanned(pot.pot, &pot.vessel);
    measured.batch.yield = quantity::Volume::fromMillilitres(brew(truth, catalogue()).stockMl.best);
    measured.input = pot;
    return measured;
}

MeasuredBatch withYield(const BrewInput& pot, double millilitres, int number) {
    MeasuredBatch measured = cookedAt(pot, 1, number);
    measured.batch.yield = quantity::Volume::fromMillilitres(millilitres);
    return measured;
}

Calibration calibrated(const std::vector<MeasuredBatch>& batches) {
    return calibrate(samples::chickenPot().vessel, batches, catalogue());
}

double logWidth(const Range& range) {
    return std::log(range.high / range.low);
}
} // namespace

TEST(CalibrationTest, ThePriorIsTheVesselsOwnFactorWithThePhysicalSpread) {
    Vessel vessel = samples::chickenPot().vessel;
    vessel.evaporationFactor = 1.4;
    const Calibration calibration = calibrate(vessel, {}, catalogue());
    EXPECT_NEAR(calibration.prior.best, 1.4, 1e-12);
    EXPECT_TRUE(calibration.points.empty());
    EXPECT_EQ(calibration.posterior.low, calibration.prior.low);
    EXPECT_EQ(calibration.posterior.best, calibration.prior.best);
    EXPECT_EQ(calibration.posterior.high, calibration.prior.high);
    // Correlation 0.7 to 1.3 and lid ajar 0.18 to 0.50 about 0.30: squares of the logarithms add.
    const double down = std::hypot(std::log(1 / 0.7), std::log(0.30 / 0.18));
    const double up = std::hypot(std::log(1.3), std::log(0.50 / 0.30));
    EXPECT_NEAR(logWidth(calibration.prior), down + up, 1e-9);
}

// Mass balance: what was put in and what came out give back the factor that was cooked with.
TEST(CalibrationTest, ABatchGivesBackItsFactor) {
    for (double factor : {0.5, 1.0, 1.6, 2.5}) {
        const Calibration calibration = calibrated({cookedAt(samples::chickenPot(), factor, 1)});
        ASSERT_EQ(calibration.points.size(), 1U);
        const MeasuredLoss& point = calibration.points.front();
        EXPECT_EQ(point.batch, BatchId{1});
        EXPECT_EQ(point.day, firstDay.addDays(1));
        EXPECT_NEAR(point.factor.best, factor, 1e-9);
        EXPECT_LT(point.factor.low, factor);
        EXPECT_GT(point.factor.high, factor);
    }
}

TEST(CalibrationTest, FiveAgreeingBatchesNarrowTheForecastAndMoveItsCentre) {
    const BrewInput pot = samples::chickenPot();
    std::vector<MeasuredBatch> batches;
    double width = logWidth(calibrated({}).prior);
    for (int number = 1; number <= 5; ++number) {
        batches.push_back(cookedAt(pot, 1.5, number));
        const double now = logWidth(calibrated(batches).posterior);
        EXPECT_LT(now, width) << number;
        width = now;
    }
    const Calibration calibration = calibrated(batches);
    for (const MeasuredLoss& point : calibration.points)
        EXPECT_EQ(point.weight, 1) << "inside its own spread";
    EXPECT_NEAR(calibration.posterior.best, 1.5, 0.05 * 1.5);
    EXPECT_LT(calibration.posterior.best, 1.5) << "still drawn to the prior a little";

    BrewInput next = pot;
    const Brewed before = brew(next, catalogue());
    next.learntEvaporation = calibration.posterior;
    const Brewed after = brew(next, catalogue());
    const double measured = batches.front().batch.yield->toMillilitres();
    EXPECT_LT(after.stockMl.high - after.stockMl.low,
              0.75 * (before.stockMl.high - before.stockMl.low));
    EXPECT_LT(std::abs(after.stockMl.best - measured),
              0.15 * std::abs(before.stockMl.best - measured));
    EXPECT_GE(measured, after.stockMl.low);
    EXPECT_LE(measured, after.stockMl.high);
}

// Stated: one odd batch of six moves the centre by less than a twentieth and, where it is far off
// for what a kitchen can measure, counts less than a quarter.
TEST(CalibrationTest, OneOddBatchOfSixHardlyMovesIt) {
    const BrewInput pot = samples::chickenPot();
    std::vector<MeasuredBatch> agreeing;
    for (int number = 1; number <= 5; ++number)
        agreeing.push_back(cookedAt(pot, 1.1 + 0.02 * number, number));
    const double centre = calibrated(agreeing).posterior.best;
    const auto withOdd = [&](double yield) {
        std::vector<MeasuredBatch> all = agreeing;
        all.push_back(withYield(pot, yield, 6));
        return calibrated(all);
    };
    const double water = pot.pot.water.toMillilitres();
    // Much of it spilt; a jug counted twice; a slip of a digit.
    for (double yield : {600.0, water + 300, 10 * water})
        EXPECT_NEAR(withOdd(yield).posterior.best, centre, 0.05 * centre) << yield;
    EXPECT_LT(withOdd(600).points.back().weight, 0.25);
}

// More stock than there was liquid: kept, at the floor, with a spread that says how little it says.
TEST(CalibrationTest, ALossBelowNothingIsKeptAndCountsLittle) {
    const BrewInput pot = samples::chickenPot();
    const Calibration calibration =
        calibrated({withYield(pot, 2 * pot.pot.water.toMillilitres(), 1)});
    ASSERT_EQ(calibration.points.size(), 1U);
    EXPECT_NEAR(calibration.points.front().factor.best,
                catalogue().figure(QStringLiteral("evaporation-factor-floor")).value, 1e-12);
    EXPECT_GT(logWidth(calibration.points.front().factor), 3 * logWidth(calibration.prior));
    EXPECT_NEAR(calibration.posterior.best, 1, 0.25);
    EXPECT_LE(logWidth(calibration.posterior), logWidth(calibration.prior));
}

TEST(CalibrationTest, BatchesThatSayNothingAreLeftOut) {
    MeasuredBatch unmeasured = cookedAt(samples::chickenPot(), 1, 1);
    unmeasured.batch.yield.reset();
    BrewInput dry = samples::chickenPot();
    dry.vessel.lid = Vessel::Lid::Open;
    dry.pot.simmer = quantity::Duration::fromHours(24);
    const MeasuredBatch toppedUp = withYield(dry, 1500, 2);
    ASSERT_TRUE(brew(dry, catalogue()).boilsDry);
    EXPECT_TRUE(calibrated({unmeasured, toppedUp}).points.empty());
}

TEST(CalibrationTest, PointsComeByDay) {
    const BrewInput pot = samples::chickenPot();
    const Calibration calibration =
        calibrated({cookedAt(pot, 1.2, 3), cookedAt(pot, 1.1, 1), cookedAt(pot, 1.0, 2)});
    ASSERT_EQ(calibration.points.size(), 3U);
    EXPECT_EQ(calibration.points[0].batch, BatchId{1});
    EXPECT_EQ(calibration.points[1].batch, BatchId{2});
    EXPECT_EQ(calibration.points[2].batch, BatchId{3});
}

TEST(CalibrationTest, ABatchUnderAnotherLidSaysLess) {
    BrewInput pot = samples::chickenPot();
    pot.vessel.lid = Vessel::Lid::On;
    const Calibration other = calibrated({cookedAt(pot, 1.3, 1)});
    pot.vessel.lid = Vessel::Lid::Ajar;
    const Calibration same = calibrated({cookedAt(pot, 1.3, 1)});
    EXPECT_GT(logWidth(other.points.front().factor), logWidth(same.points.front().factor));
    EXPECT_GT(logWidth(other.posterior), logWidth(same.posterior));
}

TEST(CalibrationTest, ThePosteriorLiesBetweenPriorAndBatches) {
    for (double factor : {0.3, 0.7, 1.8, 3.0}) {
        const Calibration calibration = calibrated({cookedAt(samples::chickenPot(), factor, 1),
                                                    cookedAt(samples::chickenPot(), factor, 2)});
        EXPECT_GE(calibration.posterior.best, std::min(1.0, factor));
        EXPECT_LE(calibration.posterior.best, std::max(1.0, factor));
    }
}

// A wide open pan at full heat loses what the burner gives: the factor is told from what the
// surface would lose, and the forecast is capped again.
TEST(CalibrationTest, ALearntForecastKeepsToTheBurner) {
    BrewInput pan = samples::chickenPot();
    pan.vessel.diameter = quantity::Length::fromCentimetres(80);
    pan.vessel.lid = Vessel::Lid::Open;
    pan.pot.simmer = quantity::Duration::fromMinutes(30);
    const double most = brew(pan, catalogue()).evaporatedMl.best;
    pan.learntEvaporation = Range{1.8, 2.0, 2.2};
    EXPECT_NEAR(brew(pan, catalogue()).evaporatedMl.best, most, 1e-9);
}

} // namespace ladlework::kitchen
