#include "kitchen/cooling_run.h"

#include "cooling_samples.h"
#include "foundation/reference_table.h"

namespace ladlework::kitchen {

using namespace samples;

namespace {
const CoolingFigures& figures() {
    return CoolingFigures::shipped();
}

CoolingRun run(const CoolingInput& input, const Liquid& liquid, const RunDetail& detail = {},
               double mostHours = 200) {
    return runCooling(input, liquid, detail, quantity::Duration::fromHours(mostHours), figures());
}

/// What is thick conducts like water and does not move.
Liquid thick() {
    Liquid liquid = Liquid::stock(figures());
    liquid.mixesItself = false;
    return liquid;
}

/// Hours in which the core falls from one temperature (°F) to another.
double hoursBetween(const CoolingRun& run, double fromF, double toF) {
    const auto passedAt = [&run](double fahrenheit) {
        for (const CoolingPoint& point : run.curve)
            if (point.core.toFahrenheit() <= fahrenheit)
                return point.at.toHours();
        throw std::runtime_error("never that cold");
    };
    return passedAt(toF) - passedAt(fromF);
}

/// A cylinder as high as wide that holds so many US gallons.
Container gallons(double count) {
    const double millilitres = quantity::Volume::fromGallons(count).toMillilitres();
    const double size = std::cbrt(millilitres * 4 / std::numbers::pi);
    return potOf(size, size);
}

std::vector<CoolingInput> variety() {
    CoolingInput iced = full(potOf(26, 12));
    iced.stages.insert(iced.stages.begin(), {CoolingStage::Place::IceBath, celsius(1),
                                             quantity::Duration::fromMinutes(15), true});
    CoolingInput counter = full(potOf(26, 12, true));
    counter.stages.insert(counter.stages.begin(), {CoolingStage::Place::Counter, celsius(21),
                                                   quantity::Duration::fromHours(2), false});
    return {full(pan(5)), full(potOf(20.3, 20.3, true)), full(potOf(9, 16)), iced, counter};
}
} // namespace

// Heat lost through the faces, summed over time, is what the stock held: 0.5 %.
TEST(CoolingRunTest, HeatIsAccountedFor) {
    for (const CoolingInput& input : variety())
        for (const Liquid& liquid : {Liquid::stock(figures()), thick()}) {
            const CoolingRun cooled = run(input, liquid);
            ASSERT_GT(cooled.heatGoneJ, 0);
            EXPECT_NEAR(cooled.heatLostJ, cooled.heatGoneJ, 0.005 * cooled.heatGoneJ);
            // Water holds 4.18 kJ/(kg K), 998 kg/m3 (IAPWS-IF97 at 20 °C); the mean ends below the
            // warmest place, which is at 5 °C.
            const double heldJ = input.volume.toLitres() * 0.998 * 4184 * (95 - 5);
            EXPECT_GT(cooled.heatGoneJ, heldJ * 0.999);
            EXPECT_LT(cooled.heatGoneJ, heldJ * 1.05);
        }
}

// Half the cells and half the error a step: 2 % of the times.
TEST(CoolingRunTest, FinerGridSaysTheSame) {
    RunDetail fine;
    fine.across *= 2;
    fine.down *= 2;
    fine.errorK /= 2;
    for (const CoolingInput& input : variety())
        for (const Liquid& liquid : {Liquid::stock(figures()), thick()}) {
            const CoolingRun usual = run(input, liquid);
            const CoolingRun finer = run(input, liquid, fine);
            ASSERT_TRUE(usual.toEnd && finer.toEnd);
            EXPECT_NEAR(*usual.toMiddle / *finer.toMiddle, 1, 0.02);
            EXPECT_NEAR(*usual.toEnd / *finer.toEnd, 1, 0.02);
        }
}

// Dickerson and Read, Cooling rates of foods: measured in refrigerators whose air is not told.
// White sauce in 8 gallons, 105 to 57 °F, 25 h; beef stew in 14 gallons, 115 to 50 °F, 84 h. Both
// are thick. Air, lid and shape of the container are free, so within a factor of two.
TEST(CoolingRunTest, ThickFoodCoolsAsMeasured) {
    struct Measured {
        double gallonCount, fromF, toF, hours;
    };
    for (const Measured& row : {Measured{8, 105, 57, 25}, Measured{14, 115, 50, 84}}) {
        CoolingInput input = full(gallons(row.gallonCount));
        input.start = quantity::Temperature::fromFahrenheit(row.fromF);
        const CoolingRun cooled = run(input, thick());
        EXPECT_GT(hoursBetween(cooled, row.fromF, row.toF), row.hours / 2);
        EXPECT_LT(hoursBetween(cooled, row.fromF, row.toF), row.hours * 2);
        EXPECT_FALSE(passes(cooled, TwoStageRule::shipped()));
    }
}

// The same: conduction-controlled, time goes as the square of the shortest dimension, doubling it
// takes four times as long. That is the limit of cold walls; with all of the resistance in the air
// it would be twice. A wide pan, so that its rim counts little.
TEST(CoolingRunTest, TwiceTheDepthTakesTwoToFourTimesAsLong) {
    const auto hours = [](double depthCm) {
        Container wide = pan(depthCm);
        wide.across = wide.width = centimetres(90);
        return run(full(wide), thick()).toEnd->toHours();
    };
    EXPECT_GT(hours(8) / hours(4), 2);
    EXPECT_LT(hours(8) / hours(4), 4);
}

// Roberts and others, Food Prot. Trends 33:27, 2013 (chili and sauce), Olds and others, Food Nutr.
// Sci. 4:735, 2013: neither 2 nor 3 inches in uncovered steel pans met both limits in a walk-in
// cooler.
TEST(CoolingRunTest, PansOfThickFoodFailInARefrigerator) {
    for (const double inches : {2.0, 3.0})
        EXPECT_FALSE(passes(run(full(pan(inches * 2.54)), thick()), TwoStageRule::shipped()));
}

// What mixes itself cools no slower than what is thick.
TEST(CoolingRunTest, ThinStockIsFasterThanThickFood) {
    for (const CoolingInput& input : variety()) {
        const CoolingRun thin = run(input, Liquid::stock(figures()));
        const CoolingRun dense = run(input, thick());
        EXPECT_LT(*thin.toEnd, *dense.toEnd);
        EXPECT_LE(*thin.toMiddle, *dense.toMiddle);
    }
}

TEST(CoolingRunTest, StopsAsSoonAsTheRuleIsMissed) {
    RunDetail detail;
    detail.onlyWhilePassing = true;
    const CoolingInput deep = full(potOf(20.3, 20.3, true));
    const CoolingRun stopped = run(deep, Liquid::stock(figures()), detail);
    EXPECT_FALSE(passes(stopped, TwoStageRule::shipped()));
    EXPECT_LT(stopped.curve.back().at, quantity::Duration::fromHours(6));
    const CoolingInput shallow = full(pan(2.5));
    EXPECT_EQ(run(shallow, Liquid::stock(figures()), detail).toEnd,
              run(shallow, Liquid::stock(figures())).toEnd);
}

// The limits in degrees and hours, as in FDA Food Code 2022, 3-501.14(A).
TEST(CoolingRunTest, TheRuleIsThatOfTheFoodCode) {
    const TwoStageRule rule = TwoStageRule::shipped();
    EXPECT_NEAR(rule.fromC, 57, 0.3);
    EXPECT_NEAR(rule.middleC, 21, 0.3);
    EXPECT_NEAR(rule.endC, 5, 1e-9);
    EXPECT_DOUBLE_EQ(rule.middleWithin.toHours(), 2);
    EXPECT_DOUBLE_EQ(rule.endWithin.toHours(), 6);
}

TEST(CoolingRunTest, UncertainFiguresEncloseTheirValue) {
    const auto table = ReferenceTable::load(QStringLiteral("cooling"));
    ASSERT_TRUE(table);
    for (qsizetype index = 0; index < table->size(); ++index) {
        const Figure& figure = figures().figure(table->row(index).text(QStringLiteral("id")));
        EXPECT_LE(figure.low, figure.value) << figure.id.toStdString();
        EXPECT_GE(figure.high, figure.value) << figure.id.toStdString();
    }
}

// A film of stock and a barrel of it: nothing runs away.
TEST(CoolingRunTest, ExtremesComeToAnEnd) {
    for (const double millilitres : {0.01, 1.0, 100000.0}) {
        CoolingInput input = full(pan(80));
        input.volume = quantity::Volume::fromMillilitres(millilitres);
        const CoolingRun cooled = run(input, Liquid::stock(figures()));
        EXPECT_LT(cooled.curve.size(), 2000U) << millilitres;
        for (const CoolingPoint& point : cooled.curve) {
            EXPECT_GE(point.core, celsius(2.9)) << millilitres;
            EXPECT_LE(point.core, celsius(95.01)) << millilitres;
            EXPECT_GE(point.surface, celsius(2.9)) << millilitres;
        }
    }
}

TEST(CoolingRunTest, NothingToCoolIsABrokenInvariant) {
    CoolingInput input = full(pan(5));
    input.stages.clear();
    EXPECT_THROW(run(input, thick()), std::logic_error);
    input = full(pan(5));
    input.volume = {};
    EXPECT_THROW(run(input, thick()), std::logic_error);
}

} // namespace ladlework::kitchen
