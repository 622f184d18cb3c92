#include "kitchen/pot_sizing.h"

#include "kitchen/pot_measures.h"
#include "kitchen_samples.h"

#include <QRegularExpression>
#include <array>
#include <cmath>
#include <limits>

namespace ladlework::kitchen {

using quantity::Length;
using quantity::Mass;
using quantity::MeasureSystem;
using quantity::Volume;
using samples::catalogue;
using samples::drinker;

namespace {
constexpr std::array systems{MeasureSystem::UsCustomary, MeasureSystem::Metric};

std::vector<BrewInput> pots() {
    std::vector<BrewInput> all{samples::chickenPot(), samples::beefPot(), samples::fishPot()};
    for (BrewInput& input : all) // a stockpot that holds them all
        input.vessel.height = Length::fromCentimetres(40);
    return all;
}

Brewed rebrewed(BrewInput input, const Pot& pot) {
    input.pot = pot;
    return brew(input, catalogue());
}

/// What rounding can do to the stock: half a mark of the water, and of each mass what it gives off.
double roundingMl(const Pot& pot, MeasureSystem measures) {
    const bool us = measures == MeasureSystem::UsCustomary;
    const double litres = pot.water.toLitres();
    const double usMark = litres < 1.5 ? 59.15 : litres < 9.4 ? 236.6 : 473.2;
    const double metricMark = litres < 5 ? 50 : 100;
    const double massMark = us ? 28.4 : 10;
    const auto things = static_cast<double>(pot.cuts.size() + pot.extras.size());
    return (us ? usMark : metricMark) / 2 + things * massMark / 2 * 0.4;
}

double fillMl(const Pot& pot) {
    return fillVolume(pot, catalogue()).toMillilitres();
}

double allowedMl(const Vessel& vessel) {
    return fillAllowed(vessel, catalogue()).toMillilitres();
}
} // namespace

TEST(PotSizingTest, ScalingKeepsProportionsWithinTheMarks) {
    for (MeasureSystem measures : systems)
        for (const BrewInput& input : pots())
            for (double factor : {0.5, 0.9, 1.0, 1.7, 3.0}) {
                const Pot pot = scaled(input.pot, factor, measures);
                EXPECT_EQ(pot.water, quantity::roundToKitchen(input.pot.water * factor, measures));
                EXPECT_EQ(pot.simmer, input.pot.simmer);
                EXPECT_EQ(pot.name, input.pot.name);
                ASSERT_EQ(pot.cuts.size(), input.pot.cuts.size());
                for (qsizetype index = 0; index < pot.cuts.size(); ++index)
                    EXPECT_NEAR(pot.cuts[index].mass.toGrams(),
                                factor * input.pot.cuts[index].mass.toGrams(), 14.2);
                EXPECT_NEAR(pot.salt.toGrams(), factor * input.pot.salt.toGrams(), 0.5);
            }
}

TEST(PotSizingTest, ASmallAmountNeverRoundsAway) {
    BrewInput input = samples::chickenPot();
    input.pot.extras = {samples::extra(QStringLiteral("bay-leaf"), 0.2),
                        samples::extra(QStringLiteral("peppercorns"), 1)};
    for (MeasureSystem measures : systems)
        for (double factor : {0.001, 0.01, 0.1}) {
            const Pot pot = scaled(input.pot, factor, measures);
            for (const ExtraInPot& extra : pot.extras)
                EXPECT_GT(extra.mass, Mass());
            EXPECT_GT(pot.salt, Mass());
            EXPECT_GT(pot.water, Volume());
        }
    input.pot.salt = Mass();
    EXPECT_EQ(scaled(input.pot, 2, MeasureSystem::Metric).salt, Mass());
}

TEST(PotSizingTest, ThePotFillsTheVesselUpToItsHeadspace) {
    for (MeasureSystem measures : systems)
        for (BrewInput input : pots())
            for (double height : {14.0, 22.0, 40.0}) {
                input.vessel.height = Length::fromCentimetres(height);
                const Result<Pot> pot = sizedToVessel(input, measures, catalogue());
                ASSERT_TRUE(pot) << toLine(pot.error()).toStdString();
                EXPECT_LE(fillMl(*pot), allowedMl(input.vessel));
                // One mark more of everything would be too much.
                const double marks =
                    2 * roundingMl(*pot, measures) + 30 * static_cast<double>(pot->cuts.size());
                EXPECT_GT(fillMl(*pot), allowedMl(input.vessel) - marks);
                EXPECT_EQ(
                    samples::findingOf(rebrewed(input, *pot), QStringLiteral("vessel-too-small")),
                    nullptr);
            }
}

TEST(PotSizingTest, AVesselLowerThanItsHeadspaceIsRefused) {
    BrewInput input = samples::chickenPot();
    input.vessel.height = Length::fromCentimetres(5);
    const Result<Pot> pot = sizedToVessel(input, MeasureSystem::Metric, catalogue());
    ASSERT_FALSE(pot);
    EXPECT_EQ(pot.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(pot.error().place, QStringLiteral("vessel"));
}

TEST(PotSizingTest, ThePotGivesTheStockThatWasAskedFor) {
    for (MeasureSystem measures : systems)
        for (const BrewInput& input : pots())
            for (double litres : {1.0, 2.0, 3.3, 5.0, 7.5}) {
                const Result<Pot> pot =
                    sizedToYield(input, Volume::fromLitres(litres), measures, catalogue());
                ASSERT_TRUE(pot) << litres << " " << toLine(pot.error()).toStdString();
                EXPECT_NEAR(rebrewed(input, *pot).stockMl.best, litres * 1000,
                            roundingMl(*pot, measures))
                    << input.pot.name.toStdString() << " " << litres;
                EXPECT_LE(fillMl(*pot), allowedMl(input.vessel));
            }
}

// The evaporation does not grow with the pot: half the stock asks for more than half of it.
TEST(PotSizingTest, TheStockIsNoMultipleOfThePot) {
    const BrewInput input = samples::chickenPot();
    const double stock = brew(input, catalogue()).stockMl.best;
    const Result<Pot> half =
        sizedToYield(input, Volume::fromMillilitres(stock / 2), MeasureSystem::Metric, catalogue());
    ASSERT_TRUE(half);
    EXPECT_GT(half->water.toMillilitres(), 1.05 * input.pot.water.toMillilitres() / 2);
}

TEST(PotSizingTest, WhatIsLearntOfTheVesselIsReckonedWith) {
    BrewInput input = samples::beefPot();
    const auto waterFor = [&] {
        return sizedToYield(input, Volume::fromLitres(3), MeasureSystem::Metric, catalogue())
            ->water.toMillilitres();
    };
    const double plain = waterFor();
    input.learntEvaporation = Range{1.8, 2, 2.2};
    EXPECT_GT(waterFor(), plain);
}

TEST(PotSizingTest, ThePotCoversTheDaysOfThoseWhoMay) {
    for (MeasureSystem measures : systems) {
        BrewInput input = pots().front();
        Drinker bo = drinker(QStringLiteral("Bo"), AgeBand::Adult, 900);
        bo.mayNot = {QStringLiteral("chicken")};
        input.drinkers = {drinker(QStringLiteral("Ana"), AgeBand::Adult, 1000),
                          drinker(QStringLiteral("Cy"), AgeBand::Child, 500), bo};
        for (double days : {1.0, 2.0, 3.0, 4.5}) {
            const Result<Pot> pot = sizedToCover(input, days, measures, catalogue());
            ASSERT_TRUE(pot) << toLine(pot.error()).toStdString();
            const Brewed brewed = rebrewed(input, *pot);
            ASSERT_TRUE(brewed.coverDays);
            EXPECT_GE(brewed.coverDays->best, days) << "what is rounded is never too little";
            EXPECT_LE(brewed.coverDays->best, days + 2 * roundingMl(*pot, measures) / 1500);
        }
    }
}

TEST(PotSizingTest, CoverSaysWhyNobodyDrinks) {
    struct Case {
        std::vector<Drinker> drinkers;
        double days;
        const char* place;
        const char* word;
    };
    Drinker barred = drinker(QStringLiteral("Bo"), AgeBand::Adult, 900);
    barred.mayNot = {QStringLiteral("chicken")};
    const Drinker ana = drinker(QStringLiteral("Ana"), AgeBand::Adult, 900);
    const std::vector<Case> cases{
        {{}, 3, "members", "Add a member"},
        {{barred}, 3, "members", "no chicken"},
        {{drinker(QStringLiteral("Ana"), AgeBand::Adult, 0)}, 3, "members", "target"},
        {{ana}, 0, "days", "more than zero"},
        {{ana}, -1, "days", "more than zero"},
        {{ana}, 366, "days", "365"},
        {{ana}, std::numeric_limits<double>::quiet_NaN(), "days", "more than zero"}};
    for (const Case& one : cases) {
        BrewInput input = samples::chickenPot();
        input.drinkers = one.drinkers;
        const Result<Pot> pot =
            sizedToCover(input, one.days, MeasureSystem::UsCustomary, catalogue());
        ASSERT_FALSE(pot) << one.word;
        EXPECT_EQ(pot.error().place, QLatin1String(one.place));
        EXPECT_TRUE(pot.error().sentence.contains(QLatin1String(one.word)))
            << pot.error().sentence.toStdString();
    }
}

TEST(PotSizingTest, AVesselTooSmallIsToldWithWhatWouldDo) {
    BrewInput input = samples::chickenPot();
    const Result<Pot> pot =
        sizedToYield(input, Volume::fromLitres(12), MeasureSystem::Metric, catalogue());
    ASSERT_FALSE(pot);
    EXPECT_EQ(pot.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(pot.error().place, QStringLiteral("vessel"));
    // The height named would do: the same pot fits when the vessel is as high.
    const QString sentence = pot.error().sentence;
    const QRegularExpressionMatch height =
        QRegularExpression(QStringLiteral("and (\\d+) cm high")).match(sentence);
    ASSERT_TRUE(height.hasMatch()) << sentence.toStdString();
    input.vessel.height = Length::fromCentimetres(height.captured(1).toDouble());
    EXPECT_TRUE(sizedToYield(input, Volume::fromLitres(12), MeasureSystem::Metric, catalogue()));
    input.vessel.height = input.vessel.height - Length::fromCentimetres(1);
    EXPECT_FALSE(sizedToYield(input, Volume::fromLitres(12), MeasureSystem::Metric, catalogue()));
    // So many cookings would do: each then fits.
    const QRegularExpressionMatch cookings =
        QRegularExpression(QStringLiteral("Cook it (\\d+) times")).match(sentence);
    ASSERT_TRUE(cookings.hasMatch()) << sentence.toStdString();
    input.vessel = samples::chickenPot().vessel;
    const double times = cookings.captured(1).toDouble();
    EXPECT_TRUE(
        sizedToYield(input, Volume::fromLitres(12 / times), MeasureSystem::Metric, catalogue()));
    EXPECT_FALSE(sizedToYield(input, Volume::fromLitres(12 / (times - 1)), MeasureSystem::Metric,
                              catalogue()));
}

TEST(PotSizingTest, AYieldThatOnlyADryPotWouldGiveIsRefused) {
    BrewInput input = samples::beefPot();
    input.vessel.lid = Vessel::Lid::Open;
    input.vessel.diameter = Length::fromCentimetres(40);
    const Result<Pot> pot =
        sizedToYield(input, Volume::fromMillilitres(150), MeasureSystem::Metric, catalogue());
    ASSERT_FALSE(pot);
    EXPECT_TRUE(pot.error().sentence.contains(QStringLiteral("boils dry")))
        << pot.error().sentence.toStdString();
}

TEST(PotSizingTest, YieldsThatMakeNoSenseAreRefused) {
    for (double litres : {0.0, -1.0, 1e-9, 1e7, std::numeric_limits<double>::quiet_NaN()}) {
        const Result<Pot> pot = sizedToYield(samples::chickenPot(), Volume::fromLitres(litres),
                                             MeasureSystem::Metric, catalogue());
        ASSERT_FALSE(pot) << litres;
        EXPECT_FALSE(pot.error().sentence.isEmpty());
    }
}

TEST(PotSizingTest, APotThatCannotBeIsRefusedAsByItsCheck) {
    BrewInput bare = samples::chickenPot();
    bare.pot.cuts.clear();
    BrewInput unknown = samples::chickenPot();
    unknown.pot.cuts[0].cut = QStringLiteral("dragon-tail");
    for (BrewInput input : {bare, unknown}) {
        input.drinkers = {drinker(QStringLiteral("Ana"), AgeBand::Adult, 900)};
        const auto measures = MeasureSystem::Metric;
        const QString leg = QStringLiteral("chicken-leg");
        for (const Result<Pot>& pot :
             {sizedToVessel(input, measures, catalogue()),
              sizedToCover(input, 3, measures, catalogue()),
              sizedToYield(input, Volume::fromLitres(2), measures, catalogue()),
              sizedToBones(input, leg, Mass::fromGrams(500), measures, catalogue()),
              lowMeatOfSameYield(input, measures, catalogue())}) {
            ASSERT_FALSE(pot);
            EXPECT_TRUE(pot.error().place.startsWith(QStringLiteral("cuts")));
        }
    }
    BrewInput unnamed = samples::chickenPot();
    unnamed.pot.name.clear();
    EXPECT_TRUE(sizedToVessel(unnamed, MeasureSystem::Metric, catalogue()));
}

TEST(PotSizingTest, AllBonesAtHandAreUsed) {
    for (MeasureSystem measures : systems) {
        const BrewInput input = pots().front();
        const Mass inHand = Mass::fromGrams(1137);
        const Result<Pot> pot =
            sizedToBones(input, QStringLiteral("chicken-leg"), inHand, measures, catalogue());
        ASSERT_TRUE(pot) << toLine(pot.error()).toStdString();
        EXPECT_NEAR(pot->cuts[0].mass.toGrams(), 1137, 1e-9);
        EXPECT_NEAR(pot->cuts[1].mass.toGrams(), 1137.0 / 3, 14.2);
        EXPECT_NEAR(pot->water.toMillilitres(), 2600 * 1137.0 / 1500, 120);
    }
}

TEST(PotSizingTest, BonesThatAreNotInThePotOrTooManyAreRefused) {
    struct Case {
        const char* cut;
        double grams;
        const char* place;
        const char* word;
    };
    constexpr std::array cases{Case{"beef-shank", 1000, "cuts", "no beef shank"},
                               Case{"dragon-tail", 1000, "cuts", "dragon-tail"},
                               Case{"chicken-leg", 0, "cuts", "more than nothing"},
                               Case{"chicken-leg", -5, "cuts", "more than nothing"},
                               Case{"chicken-leg", 20000, "vessel", "pots"}};
    for (const Case& one : cases) {
        const Result<Pot> pot =
            sizedToBones(samples::chickenPot(), QLatin1String(one.cut), Mass::fromGrams(one.grams),
                         MeasureSystem::Metric, catalogue());
        ASSERT_FALSE(pot) << one.cut << one.grams;
        EXPECT_EQ(pot.error().place, QLatin1String(one.place));
        EXPECT_TRUE(pot.error().sentence.contains(QLatin1String(one.word)))
            << pot.error().sentence.toStdString();
    }
}

TEST(PotSizingTest, TheLowMeatPotGivesTheSameStockAndLessMeat) {
    for (MeasureSystem measures : systems)
        for (const BrewInput& input : {pots()[0], pots()[1]}) {
            const Brewed asItIs = brew(input, catalogue());
            const Result<Pot> pot = lowMeatOfSameYield(input, measures, catalogue());
            ASSERT_TRUE(pot) << toLine(pot.error()).toStdString();
            const Brewed lean = rebrewed(input, *pot);
            EXPECT_TRUE(lean.lowMeat);
            EXPECT_NEAR(lean.stockMl.best, asItIs.stockMl.best, roundingMl(*pot, measures));
            EXPECT_LT(lean.meatLeftG.best, 0.8 * asItIs.meatLeftG.best);
        }
}

TEST(PotSizingTest, NoLowMeatPotIsSaidToBeSo) {
    BrewInput input = samples::fishPot(); // heads and frames
    const Result<Pot> already = lowMeatOfSameYield(input, MeasureSystem::Metric, catalogue());
    ASSERT_FALSE(already);
    EXPECT_TRUE(already.error().sentence.contains(QStringLiteral("already")));
    input = samples::chickenPot();
    input.pot.cuts = {samples::cut(QStringLiteral("quail-whole"), 1500)};
    const Result<Pot> none = lowMeatOfSameYield(input, MeasureSystem::Metric, catalogue());
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, Problem::Kind::Refused);
    EXPECT_FALSE(none.error().sentence.contains(QStringLiteral("already")));
}

} // namespace ladlework::kitchen
