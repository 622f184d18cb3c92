#include "intake/ladder.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <random>

namespace ladlework::intake {
namespace {

using quantity::MeasureSystem;
using quantity::Volume;

QList<Volume> designed(Volume start, Volume target, MeasureSystem system) {
    const Result<QList<Volume>> rungs = designRungs(start, target, system);
    return rungs ? *rungs : QList<Volume>();
}

/// Every measure a kitchen of the system has, as the trade's text lists them: drops; 1/4, 1/2, 1
/// teaspoon; 1/2, 1, 2 tablespoons; quarter cups (metric: 1 mL, the spoons,
/// 60 mL, multiples of 100 mL).
bool kitchenHas(Volume volume, MeasureSystem system) {
    const double ml = volume.toMillilitres();
    const auto isMultiple = [ml](double unit, double most) {
        const double count = ml / unit;
        return ml <= most * 1.000001 && std::abs(count - std::round(count)) < 1e-6 * count;
    };
    const auto isOneOf = [ml](std::initializer_list<double> amounts) {
        return std::ranges::any_of(amounts, [ml](double a) { return std::abs(ml - a) < 1e-6 * a; });
    };
    if (isMultiple(0.05, 1.2)) // drops
        return true;
    if (system == MeasureSystem::Metric)
        return isOneOf({1, 2.5, 5, 7.5, 15, 30, 60}) || isMultiple(100, 4000);
    // NIST Handbook 44, Appendix C: teaspoon, tablespoon and cup in millilitres.
    return isOneOf({4.92892159375 / 4, 4.92892159375 / 2, 4.92892159375, 14.78676478125 / 2,
                    14.78676478125, 14.78676478125 * 2}) ||
           isMultiple(236.5882365 / 4, 4000);
}

void expectGoodLadder(const QList<Volume>& rungs, Volume start, Volume target,
                      MeasureSystem system) {
    ASSERT_FALSE(rungs.isEmpty());
    ASSERT_EQ(rungs.last(), target);
    ASSERT_EQ(rungs.first(), std::min(start, target));
    const double teaspoon = system == MeasureSystem::Metric ? 5.0 : 4.92892159375;
    for (qsizetype i = 1; i < rungs.size(); ++i) {
        const double before = rungs[i - 1].toMillilitres();
        const double rung = rungs[i].toMillilitres();
        ASSERT_GT(rung, before);
        if (before >= teaspoon) {
            ASSERT_LE(rung, before * 2.5 * (1 + 1e-9)) << before;
            ASSERT_LE(rung, before + 236.5882365 * (1 + 1e-9)) << before;
        }
        if (i + 1 < rungs.size()) {
            ASSERT_TRUE(kitchenHas(rungs[i], system)) << rung;
            // What is printed is what the rung is; above 6 cups the printer turns to half quarts.
            if (system == MeasureSystem::Metric || rungs[i] <= Volume::fromCups(6)) {
                ASSERT_NEAR(quantity::roundToKitchen(rungs[i], system).toMillilitres(), rung,
                            1e-9 * rung);
            }
        }
    }
    Ladder ladder;
    ladder.rungs = rungs;
    ASSERT_TRUE(check(ladder).has_value());
}

TEST(RungDesignTest, holdsItsPromisesForManyStartsAndTargetsInBothSystems) {
    std::mt19937 engine(31);
    const auto share = [&engine] {
        return static_cast<double>(engine() % 1'000'001) / 1e6;
    };
    for (int i = 0; i < 20'000; ++i) {
        // From a tenth of a drop to 4 L, evenly over the decades.
        const Volume start = Volume::fromMillilitres(0.005 * std::pow(800'000, share()));
        const Volume target = Volume::fromMillilitres(0.005 * std::pow(800'000, share()));
        const MeasureSystem system =
            i % 2 == 0 ? MeasureSystem::UsCustomary : MeasureSystem::Metric;
        ASSERT_NO_FATAL_FAILURE(
            expectGoodLadder(designed(start, target, system), start, target, system))
            << "from " << start.toMillilitres() << " mL to " << target.toMillilitres() << " mL";
    }
}

TEST(RungDesignTest, holdsItsPromisesForTheUsualStartsAndTargets) {
    // Common practice: from a few drops, a teaspoon, a tablespoon or half a cup; targets of 1, 2,
    // 3, 4 and 6 cups.
    for (MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::Metric})
        for (Volume start :
             {Volume::fromDrops(1), Volume::fromDrops(3), Volume::fromTeaspoons(0.25),
              Volume::fromTeaspoons(1), Volume::fromMillilitres(5), Volume::fromTablespoons(1),
              Volume::fromMillilitres(15), Volume::fromCups(0.5), Volume::fromCups(1)})
            for (double cups : {1.0, 2.0, 3.0, 4.0, 6.0})
                expectGoodLadder(designed(start, Volume::fromCups(cups), system), start,
                                 Volume::fromCups(cups), system);
}

TEST(RungDesignTest, doublesAtTheBottomAndAddsEquallyAtTheTop) {
    const QList<Volume> rungs =
        designed(Volume::fromTeaspoons(1), Volume::fromCups(4), MeasureSystem::UsCustomary);
    const QList<Volume> expected{
        Volume::fromTeaspoons(1),   Volume::fromTablespoons(0.5), Volume::fromTablespoons(1),
        Volume::fromTablespoons(2), Volume::fromCups(0.25),       Volume::fromCups(0.5),
        Volume::fromCups(1),        Volume::fromCups(1.5),        Volume::fromCups(2),
        Volume::fromCups(2.5),      Volume::fromCups(3),          Volume::fromCups(3.5),
        Volume::fromCups(4)};
    ASSERT_EQ(rungs.size(), expected.size());
    for (qsizetype i = 0; i < rungs.size(); ++i)
        EXPECT_NEAR(rungs[i].toMillilitres(), expected[i].toMillilitres(), 1e-9) << i;
}

TEST(RungDesignTest, stepsDropsByAboutTheSameRatio) {
    const QList<Volume> rungs =
        designed(Volume::fromDrops(1), Volume::fromTeaspoons(1), MeasureSystem::Metric);
    for (qsizetype i = 1; i < rungs.size(); ++i) {
        EXPECT_GE(rungs[i] / rungs[i - 1], 1.4);
        EXPECT_LE(rungs[i] / rungs[i - 1], 2.5);
    }
}

TEST(RungDesignTest, leavesOutAMeasureThatCrowdsTheStartOrTheTarget) {
    const QList<Volume> rungs =
        designed(Volume::fromCups(0.95), Volume::fromCups(2.05), MeasureSystem::UsCustomary);
    ASSERT_EQ(rungs.size(), 3);
    EXPECT_NEAR(rungs[1].toCups(), 1.5, 1e-9);
}

TEST(RungDesignTest, startAtOrAboveTheTargetGivesTheTargetAlone) {
    const Volume cup = Volume::fromCups(1);
    for (Volume start : {cup, cup * 2}) {
        const QList<Volume> rungs = designed(start, cup, MeasureSystem::UsCustomary);
        ASSERT_EQ(rungs.size(), 1);
        EXPECT_EQ(rungs[0], cup);
    }
}

TEST(RungDesignTest, refusesAmountsThatAreNone) {
    const Volume fine = Volume::fromMillilitres(100);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (double bad : {0.0, -1.0, 4000.5, nan}) {
        const Volume wrong = Volume::fromMillilitres(bad);
        const Result<QList<Volume>> start = designRungs(wrong, fine, MeasureSystem::Metric);
        ASSERT_FALSE(start.has_value());
        EXPECT_EQ(start.error().place.toStdString(), "start");
        const Result<QList<Volume>> target = designRungs(fine, wrong, MeasureSystem::Metric);
        ASSERT_FALSE(target.has_value());
        EXPECT_EQ(target.error().place.toStdString(), "target");
    }
}

} // namespace
} // namespace ladlework::intake
