#include "kitchen_samples.h"

namespace ladlework::kitchen {

using samples::catalogue;

TEST(LowMeatTest, ReplacesMeatyCutsBySameMassOfTheSameAnimal) {
    BrewInput input = samples::chickenPot();
    input.pot.cuts = {samples::cut(QStringLiteral("chicken-leg"), 1500),
                      samples::cut(QStringLiteral("chicken-foot"), 200),
                      samples::cut(QStringLiteral("beef-shank"), 800)};
    const auto variant = lowMeatVariant(input.pot, catalogue());
    ASSERT_TRUE(variant);
    QHash<QString, double> before;
    QHash<QString, double> after;
    for (const CutInPot& cut : input.pot.cuts)
        before[catalogue().cut(cut.cut)->animal] += cut.mass.toGrams();
    for (const CutInPot& cut : variant->cuts) {
        EXPECT_TRUE(catalogue().cut(cut.cut)->lowMeat) << cut.cut.toStdString();
        after[catalogue().cut(cut.cut)->animal] += cut.mass.toGrams();
    }
    EXPECT_EQ(before, after);
    EXPECT_EQ(variant->water, input.pot.water);
    EXPECT_TRUE(check(*variant, catalogue()));
}

TEST(LowMeatTest, LeavesLessMeat) {
    BrewInput input = samples::chickenPot();
    const double meaty = brew(input, catalogue()).meatLeftG.best;
    input.pot = *lowMeatVariant(input.pot, catalogue());
    const Brewed brewed = brew(input, catalogue());
    EXPECT_LT(brewed.meatLeftG.best, meaty);
    EXPECT_TRUE(brewed.lowMeat);
}

TEST(LowMeatTest, IsNothingForALowMeatPot) {
    BrewInput input = samples::fishPot();
    EXPECT_FALSE(lowMeatVariant(input.pot, catalogue()));
    input.pot.cuts = {samples::cut(QStringLiteral("beef-knuckle"), 500),
                      samples::cut(QStringLiteral("beef-marrow-bone"), 500)};
    EXPECT_FALSE(lowMeatVariant(input.pot, catalogue()));
}

TEST(LowMeatTest, IsNothingWhenAnAnimalHasNoSuchCut) {
    BrewInput input = samples::chickenPot();
    input.pot.cuts.append(samples::cut(QStringLiteral("rabbit-whole"), 900));
    EXPECT_FALSE(lowMeatVariant(input.pot, catalogue()));
}

} // namespace ladlework::kitchen
