#include "kitchen/balance.h"

#include "kitchen_samples.h"

#include <functional>
#include <vector>

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
Balance balanced(const BrewInput& input, const Range& evaporated = {200, 300, 400}) {
    return balanceOf(input, timelineOf(input, catalogue()), quantity::Temperature::fromCelsius(93),
                     evaporated, catalogue());
}

std::vector<Range> rangesOf(const Balance& balance) {
    return {balance.evaporatedMl,     balance.heldBySolidsMl,
            balance.cookOutMl,        balance.stockMl,
            balance.meatLeftG,        balance.fatG,
            balance.proteinGPer100Ml, balance.gelatinGPer100Ml,
            balance.sodiumMgPer100Ml, balance.potassiumMgPer100Ml};
}
} // namespace

TEST(BalanceTest, WaterBalances) {
    for (const BrewInput& input : {samples::chickenPot(), samples::beefPot(), samples::fishPot()}) {
        const Balance balance = balanced(input);
        EXPECT_NEAR(balance.stockMl.best,
                    input.pot.water.toMillilitres() - balance.evaporatedMl.best -
                        balance.heldBySolidsMl.best + balance.cookOutMl.best,
                    1e-6);
    }
}

TEST(BalanceTest, EveryRangeEnclosesItsBest) {
    for (const BrewInput& input : {samples::chickenPot(), samples::beefPot(), samples::fishPot()})
        for (const Range& range : rangesOf(balanced(input))) {
            EXPECT_GE(range.low, 0);
            EXPECT_LE(range.low, range.best);
            EXPECT_LE(range.best, range.high);
            EXPECT_LT(range.low, range.high);
        }
}

// The stock's own range from evaporation alone: +-100 mL in, at least +-100 mL out.
TEST(BalanceTest, UncertaintyAddsUpAsSquares) {
    const BrewInput input = samples::chickenPot();
    const Balance sharp = balanced(input, {300, 300, 300});
    const Balance wide = balanced(input, {200, 300, 400});
    const double own = sharp.stockMl.best - sharp.stockMl.low;
    EXPECT_NEAR(wide.stockMl.best - wide.stockMl.low, std::hypot(own, 100), 1e-6);
}

TEST(BalanceTest, TwiceThePotIsTwiceTheAmountsAndTheSameStrength) {
    const BrewInput once = samples::chickenPot();
    BrewInput twice = once;
    for (CutInPot& cut : twice.pot.cuts)
        cut.mass = cut.mass * 2;
    for (ExtraInPot& extra : twice.pot.extras)
        extra.mass = extra.mass * 2;
    twice.pot.water = twice.pot.water * 2;
    twice.pot.salt = twice.pot.salt * 2;
    const Balance one = balanced(once, {200, 300, 400});
    const Balance two = balanced(twice, {400, 600, 800});
    EXPECT_NEAR(two.stockMl.best, 2 * one.stockMl.best, 1e-6);
    EXPECT_NEAR(two.fatG.best, 2 * one.fatG.best, 1e-9);
    EXPECT_NEAR(two.proteinGPer100Ml.best, one.proteinGPer100Ml.best, 1e-9);
    EXPECT_NEAR(two.sodiumMgPer100Ml.high, one.sodiumMgPer100Ml.high, 1e-9);
}

TEST(BalanceTest, GelatinGrowsWithTimeAndNeverPassesTheCollagen) {
    BrewInput input = samples::chickenPot();
    double last = 0;
    for (double hours : {0.25, 0.5, 1.0, 2.0, 3.0, 24.0, 168.0}) {
        input.pot.simmer = quantity::Duration::fromHours(hours);
        const Balance balance = balanced(input, {0, 0, 0});
        const double liquid = balance.stockMl.best + balance.heldBySolidsMl.best;
        const double gelatin = balance.gelatinGPer100Ml.best / 100 * liquid;
        EXPECT_GT(gelatin, last);
        last = gelatin;
    }
    double collagen = 0;
    for (const CutInPot& inPot : input.pot.cuts)
        collagen += inPot.mass.toGrams() * catalogue().cut(inPot.cut)->collagenShare;
    EXPECT_LE(last, collagen);
    EXPECT_NEAR(last, collagen, 0.01 * collagen);
}

TEST(BalanceTest, HotterWaterReleasesMore) {
    const BrewInput input = samples::beefPot();
    const Timeline timeline = timelineOf(input, catalogue());
    const auto gelatin = [&](double celsius) {
        return balanceOf(input, timeline, quantity::Temperature::fromCelsius(celsius), {0, 0, 0},
                         catalogue())
            .gelatinGPer100Ml.best;
    };
    EXPECT_LT(gelatin(83), gelatin(93));
}

TEST(BalanceTest, ProteinHoldsTheGelatin) {
    for (const BrewInput& input : {samples::chickenPot(), samples::beefPot(), samples::fishPot()}) {
        const Balance balance = balanced(input);
        EXPECT_GT(balance.proteinGPer100Ml.best, balance.gelatinGPer100Ml.best);
    }
}

// All sodium of the salt has to be in the liquid or the solids: never more than was put in.
TEST(BalanceTest, SaltIsKept) {
    BrewInput input = samples::chickenPot();
    const Balance salted = balanced(input, {300, 300, 300});
    input.pot.salt = quantity::Mass();
    const Balance unsalted = balanced(input, {300, 300, 300});
    const double liquid = salted.stockMl.best + salted.heldBySolidsMl.best;
    const double added =
        (salted.sodiumMgPer100Ml.best - unsalted.sodiumMgPer100Ml.best) / 100 * liquid;
    const double all = 8 * 387.58;
    EXPECT_LT(added, all);
    EXPECT_GT(added, 0.75 * all);
}

// USDA SR28 raw and cooked pairs: 25 to 41 % of the meat's sodium leave it.
TEST(BalanceTest, AThirdOfTheMeatsSodiumMovesIntoTheLiquid) {
    BrewInput input = samples::chickenPot();
    input.pot.salt = quantity::Mass();
    input.pot.extras.clear();
    input.pot.cuts = {samples::cut(QStringLiteral("chicken-leg"), 1000)};
    const Balance balance = balanced(input, {300, 300, 300});
    const double inMeat = 1000 * 0.73 * 84 / 100;
    const double moved =
        balance.sodiumMgPer100Ml.best / 100 * (balance.stockMl.best + balance.heldBySolidsMl.best);
    EXPECT_GE(moved, 0.25 * inMeat);
    EXPECT_LE(moved, 0.41 * inMeat);
}

TEST(BalanceTest, MeatThatWasCookedBeforeGivesNoJuice) {
    BrewInput input = samples::chickenPot();
    input.pot.extras.clear();
    const double raw = balanced(input).proteinGPer100Ml.best;
    for (CutInPot& cut : input.pot.cuts)
        cut.raw = false;
    const Balance balance = balanced(input);
    EXPECT_EQ(balance.cookOutMl.best, 0);
    EXPECT_EQ(balance.fatG.best, 0);
    EXPECT_LT(balance.proteinGPer100Ml.best, raw);
}

TEST(BalanceTest, VegetablesLeftInHoldNothingBack) {
    BrewInput input = samples::chickenPot();
    const double strained = balanced(input).heldBySolidsMl.best;
    input.phase.strainVegetables = false;
    EXPECT_LT(balanced(input).heldBySolidsMl.best, strained);
}

TEST(BalanceTest, APotThatBoilsDryStaysFinite) {
    const BrewInput input = samples::chickenPot();
    const Balance balance = balanced(input, {1e5, 1e6, 1e7});
    for (const Range& range : rangesOf(balance)) {
        EXPECT_TRUE(std::isfinite(range.low));
        EXPECT_TRUE(std::isfinite(range.high));
    }
    EXPECT_GE(balance.stockMl.best, 0);
    EXPECT_LE(balance.evaporatedMl.best, input.pot.water.toMillilitres() + balance.cookOutMl.best);
}

// At the driest the loss is clamped: low and high of the evaporation both leave it where it is or
// below. One input may then move a result only by its own larger deviation.
TEST(BalanceTest, AnInputThatMovesAResultOneWayCountsOnce) {
    BrewInput input = samples::chickenPot();
    input.pot.extras.clear();
    const Balance sharp = balanced(input, {300, 300, 300});
    // Both bounds below the best: the larger of the deviations is 100 mL, not hypot(50, 100).
    const Balance oneWay = balanced(input, {200, 300, 250});
    const double own = sharp.stockMl.high - sharp.stockMl.best;
    EXPECT_NEAR(oneWay.stockMl.high - oneWay.stockMl.best, std::hypot(own, 100), 1e-6);
    EXPECT_NEAR(oneWay.stockMl.low, sharp.stockMl.low, 1e-6);
}

TEST(BalanceTest, NoLiquidHoldsMoreThanItCan) {
    BrewInput input = samples::chickenPot();
    input.pot.water = quantity::Volume::fromMillilitres(100);
    input.pot.salt = quantity::Mass::fromGrams(35);
    const Balance balance = balanced(input, {1e5, 1e5, 1e5});
    EXPECT_TRUE(balance.boilsDry);
    // Dry protein weighs about 1.37 g/mL; saturated brine holds 26.4 % salt at 1.2 g/mL, of which
    // 38.758 % is sodium (CRC Handbook; USDA SR28 02047): 1 %.
    EXPECT_LE(balance.proteinGPer100Ml.high, 137);
    EXPECT_LE(balance.gelatinGPer100Ml.high, 137);
    EXPECT_LE(balance.sodiumMgPer100Ml.high, 1.01 * 26.4 * 1.2 * 387.58);
    EXPECT_FALSE(balanced(samples::chickenPot()).boilsDry);
}

} // namespace ladlework::kitchen
