#include "kitchen/brew.h"

#include "kitchen_samples.h"

#include <QElapsedTimer>

namespace ladlework::kitchen {

using samples::catalogue;
using samples::drinker;

TEST(BrewTest, MeasuresAreThoseOfThePot) {
    const BrewInput input = samples::chickenPot();
    const Brewed brewed = brew(input, catalogue());
    EXPECT_NEAR(brewed.waterRatioMlPerKg.best, 1300, 1e-9);
    EXPECT_EQ(brewed.waterRatioMlPerKg.low, brewed.waterRatioMlPerKg.high);
    EXPECT_NEAR(brewed.wateredLeast.toMillilitres(), 2 * 521.59, 1e-6);
    EXPECT_NEAR(brewed.wateredMost.toMillilitres(), 2 * 2086.35, 1e-6);
    EXPECT_NEAR(brewed.fill.toMillilitres(), 2600 + brewed.bonesVolume.toMillilitres() + 220, 1e-6);
    EXPECT_EQ(brewed.capacity, input.vessel.capacity());
    EXPECT_LT(brewed.covered, brewed.wateredLeast);
    EXPECT_EQ(brewed.animals, QStringList{QStringLiteral("chicken")});
    EXPECT_FALSE(brewed.lowMeat);
}

TEST(BrewTest, ASimmerNeverPassesTheBoilingPoint) {
    BrewInput input = samples::chickenPot();
    EXPECT_EQ(brew(input, catalogue()).simmering.toCelsius(), 93);
    input.altitude = quantity::Length::fromMetres(3000);
    const Brewed high = brew(input, catalogue());
    EXPECT_EQ(high.simmering, high.boiling);
    EXPECT_LT(high.boiling.toCelsius(), 91);
}

TEST(BrewTest, CoverCountsThoseWhoMayOnly) {
    BrewInput input = samples::chickenPot();
    EXPECT_FALSE(brew(input, catalogue()).coverDays);
    Drinker bo = drinker(QStringLiteral("Bo"), AgeBand::Adult, 700);
    bo.mayNot = {QStringLiteral("chicken")};
    input.drinkers = {drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000), bo};
    const Brewed brewed = brew(input, catalogue());
    ASSERT_TRUE(brewed.coverDays);
    EXPECT_NEAR(brewed.coverDays->best, brewed.stockMl.best / 1000, 1e-9);
    ASSERT_EQ(brewed.who.size(), 2);
    EXPECT_TRUE(brewed.who[0].may);
    EXPECT_FALSE(brewed.who[1].may);
}

TEST(BrewTest, CostAddsUpWhatHasAPrice) {
    BrewInput input = samples::chickenPot();
    EXPECT_FALSE(brew(input, catalogue()).cost);
    input.prices = {{QStringLiteral("chicken-leg"), 6.0},
                    {QStringLiteral("chicken-back"), 2.0},
                    {QStringLiteral("onion"), 3.0},
                    {QStringLiteral("salt"), 1.0}};
    const Brewed brewed = brew(input, catalogue());
    ASSERT_TRUE(brewed.cost);
    EXPECT_NEAR(*brewed.cost, 1.5 * 6 + 0.5 * 2 + 0.22 * 3 + 0.008, 1e-9);
}

TEST(BrewTest, SetFollowsTheGelatin) {
    BrewInput input = samples::chickenPot();
    input.pot.cuts = {samples::cut(QStringLiteral("chicken-foot"), 2000)};
    EXPECT_EQ(brew(input, catalogue()).set, Set::Firm);
    input = samples::chickenPot();
    input.pot.water = quantity::Volume::fromLitres(8);
    EXPECT_EQ(brew(input, catalogue()).set, Set::Pours);
    EXPECT_EQ(setId(Set::Pours), QStringLiteral("pours"));
    EXPECT_EQ(setId(Set::Soft), QStringLiteral("soft"));
    EXPECT_EQ(setId(Set::Firm), QStringLiteral("firm"));
}

TEST(BrewTest, MoreWaterIsMoreAndThinnerStock) {
    BrewInput input = samples::beefPot();
    double stock = 0;
    double protein = 1e9;
    for (double litres : {2.0, 2.5, 3.0, 3.5, 4.0}) {
        input.pot.water = quantity::Volume::fromLitres(litres);
        const Brewed brewed = brew(input, catalogue());
        EXPECT_GT(brewed.stockMl.best, stock);
        EXPECT_LT(brewed.proteinGPer100Ml.best, protein);
        stock = brewed.stockMl.best;
        protein = brewed.proteinGPer100Ml.best;
    }
}

TEST(BrewTest, EveryCutOfTheCatalogueBrews) {
    for (const Cut& cut : catalogue().cuts()) {
        BrewInput input = samples::chickenPot();
        input.pot.cuts = {samples::cut(cut.id, 1000)};
        for (Vessel::Place place : {Vessel::Place::Stovetop, Vessel::Place::Oven,
                                    Vessel::Place::SlowCooker, Vessel::Place::PressureCooker}) {
            input.vessel.place = place;
            const Brewed brewed = brew(input, catalogue());
            EXPECT_GT(brewed.stockMl.best, 0) << cut.id.toStdString();
            EXPECT_GT(brewed.gelatinGPer100Ml.best, 0) << cut.id.toStdString();
            EXPECT_TRUE(std::isfinite(brewed.proteinGPer100Ml.high)) << cut.id.toStdString();
        }
    }
}

TEST(BrewTest, APotWithoutBonesIsABrokenInvariant) {
    BrewInput input = samples::chickenPot();
    input.pot.cuts.clear();
    EXPECT_THROW((void)brew(input, catalogue()), std::logic_error);
}

// The pot answers while the water line is dragged: far under a frame (16 ms), also unoptimised.
TEST(BrewTest, IsQuick) {
    const BrewInput input = samples::beefPot();
    QElapsedTimer timer;
    timer.start();
    constexpr int times = 50;
    for (int index = 0; index < times; ++index)
        (void)brew(input, catalogue());
    EXPECT_LT(timer.elapsed() / times, 5);
}

// NIST Handbook 44: a US cup is 236.588 mL.
TEST(BrewTest, ACupIsTwoAndAThirdOfAHundredMillilitres) {
    const Range cup = perCup({1, 2, 3});
    EXPECT_NEAR(cup.low, 2.36588, 1e-4);
    EXPECT_NEAR(cup.best, 4.73176, 1e-4);
    EXPECT_NEAR(cup.high, 7.09765, 1e-4);
}

} // namespace ladlework::kitchen
