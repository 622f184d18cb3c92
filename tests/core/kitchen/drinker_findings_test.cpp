#include "kitchen/pot_findings.h"

#include "kitchen_samples.h"

namespace ladlework::kitchen {

using samples::catalogue;
using samples::drinker;
using samples::findingOf;

namespace {
Brewed with(const Drinker& who, BrewInput input = samples::chickenPot()) {
    input.drinkers = {who};
    return brew(input, catalogue());
}
} // namespace

TEST(DrinkerFindingsTest, UnderSixMonthsIsAStop) {
    const Brewed brewed = with(drinker(QStringLiteral("Bo"), AgeBand::InfantUnderSixMonths, 5));
    const Finding* finding = findingOf(brewed, QStringLiteral("under-six-months"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Finding::Severity::Stop);
    EXPECT_EQ(finding->field, QStringLiteral("members[0]"));
    EXPECT_EQ(findingOf(brewed, QStringLiteral("may-not-drink")), nullptr);
}

TEST(DrinkerFindingsTest, ARecordedAllergyIsAStopAndADislikeIsNot) {
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 500);
    ann.mayNot = {QStringLiteral("chicken")};
    const Brewed avoided = with(ann);
    ASSERT_NE(findingOf(avoided, QStringLiteral("may-not-drink")), nullptr);
    EXPECT_EQ(findingOf(avoided, QStringLiteral("allergy-in-pot")), nullptr);
    ann.allergicTo = ann.mayNot;
    const Brewed allergic = with(ann);
    const Finding* finding = findingOf(allergic, QStringLiteral("allergy-in-pot"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Finding::Severity::Stop);
    EXPECT_EQ(findingOf(allergic, QStringLiteral("may-not-drink")), nullptr);
    EXPECT_FALSE(allergic.who.first().may);
}

// NASEM 2019, Table J-3: adequate intake of sodium at 7-12 months 370 mg a day.
TEST(DrinkerFindingsTest, AnInfantAsksForAnUnsaltedPot) {
    const Drinker bo = drinker(QStringLiteral("Bo"), AgeBand::InfantStartingSolids, 120);
    const Brewed salted = with(bo);
    const Finding* finding = findingOf(salted, QStringLiteral("salt-for-infant"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->limit, 370);
    EXPECT_NEAR(*finding->value, salted.sodiumMgPer100Ml.best * 1.2, 1e-9);
    BrewInput unsalted = samples::chickenPot();
    unsalted.pot.salt = quantity::Mass();
    EXPECT_EQ(findingOf(with(bo, unsalted), QStringLiteral("salt-for-infant")), nullptr);
    unsalted.pot.extras.append(samples::extra(QStringLiteral("mineral-salt"), 5));
    EXPECT_NE(findingOf(with(bo, unsalted), QStringLiteral("salt-for-infant")), nullptr);
}

TEST(DrinkerFindingsTest, SodiumIsHeldAgainstTheOwnLimitFirst) {
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
    EXPECT_EQ(findingOf(with(ann), QStringLiteral("sodium-above-limit")), nullptr);
    ann.sodiumLimitMg = 500;
    const Brewed brewed = with(ann);
    const Finding* finding = findingOf(brewed, QStringLiteral("sodium-above-limit"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->limit, 500);
    EXPECT_NEAR(*finding->value, brewed.sodiumMgPer100Ml.best * 10, 1e-9);
}

// NASEM 2019: chronic disease risk reduction intake of adults 2,300 mg a day.
TEST(DrinkerFindingsTest, SodiumIsHeldAgainstTheReferenceOfTheAge) {
    BrewInput salty = samples::chickenPot();
    salty.pot.salt = quantity::Mass::fromGrams(30);
    const Brewed brewed = with(drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000), salty);
    const Finding* finding = findingOf(brewed, QStringLiteral("sodium-above-reference"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->limit, 2300);
}

TEST(DrinkerFindingsTest, AnInfantDoesNotHideTheOthersSodium) {
    BrewInput salty = samples::chickenPot();
    salty.pot.salt = quantity::Mass::fromGrams(30);
    salty.drinkers = {drinker(QStringLiteral("Bo"), AgeBand::InfantStartingSolids, 120),
                      drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000)};
    const Brewed brewed = brew(salty, catalogue());
    EXPECT_NE(findingOf(brewed, QStringLiteral("salt-for-infant")), nullptr);
    EXPECT_NE(findingOf(brewed, QStringLiteral("sodium-above-reference")), nullptr);
}

TEST(DrinkerFindingsTest, SomeoneWhoMayNotIsNamed) {
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
    ann.mayNot = {QStringLiteral("poultry")};
    const Brewed brewed = with(ann);
    const Finding* finding = findingOf(brewed, QStringLiteral("may-not-drink"));
    ASSERT_NE(finding, nullptr);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("Ann")));
    EXPECT_FALSE(brewed.coverDays);
}

TEST(DrinkerFindingsTest, AWordThatCoversNothingIsSaid) {
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
    ann.mayNot = {QStringLiteral("chiken")};
    const Brewed brewed = with(ann);
    const Finding* finding = findingOf(brewed, QStringLiteral("unknown-subject"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Finding::Severity::Caution) << "nobody was kept from anything";
    EXPECT_TRUE(finding->text.contains(QStringLiteral("chiken")));
}

TEST(DrinkerFindingsTest, SmallBonesMatterOnlyToChildren) {
    EXPECT_EQ(findingOf(with(drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000)),
                        QStringLiteral("small-bones")),
              nullptr);
    EXPECT_NE(findingOf(with(drinker(QStringLiteral("Bo"), AgeBand::Child, 300)),
                        QStringLiteral("small-bones")),
              nullptr);
    EXPECT_EQ(
        findingOf(with(drinker(QStringLiteral("Bo"), AgeBand::Child, 300), samples::beefPot()),
                  QStringLiteral("small-bones")),
        nullptr);
}

TEST(DrinkerFindingsTest, MeatBeyondItsKeepingPointsToTheLowMeatPot) {
    BrewInput input = samples::chickenPot();
    input.meatPerDay = quantity::Mass::fromGrams(200);
    const Brewed brewed = brew(input, catalogue());
    const Finding* finding = findingOf(brewed, QStringLiteral("meat-left-too-long"));
    ASSERT_NE(finding, nullptr);
    EXPECT_NEAR(*finding->value, brewed.meatLeftG.best / 200, 1e-9);
    EXPECT_EQ(finding->limit, 3);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("low-meat")));
    input.meatPerDay = quantity::Mass::fromGrams(1000);
    EXPECT_EQ(findingOf(brew(input, catalogue()), QStringLiteral("meat-left-too-long")), nullptr);
}

} // namespace ladlework::kitchen
