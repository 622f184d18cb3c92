#include "kitchen/pot_findings.h"

#include "kitchen_samples.h"

#include <numbers>

#include <functional>

namespace ladlework::kitchen {

using quantity::Duration;
using quantity::Volume;
using samples::catalogue;
using samples::cut;
using samples::extra;
using samples::findingOf;

namespace {
struct Case {
    const char* code;
    const char* field;
    Finding::Severity severity;
    std::function<void(BrewInput&)> make;
};

const std::vector<Case>& cases() {
    static const std::vector<Case> all{
        {"bones-already-cooked", "cuts[1]", Finding::Severity::Stop,
         [](BrewInput& in) {
             in.pot.cuts[1].raw = false;
         }},
        {"marrow-alone", "cuts", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.cuts = {cut(QStringLiteral("beef-marrow-bone"), 2000)};
             in.pot.simmer = Duration::fromHours(5);
         }},
        {"no-jointed-cut", "cuts", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.phase.boneBroth = true;
             in.pot.cuts = {cut(QStringLiteral("beef-bare-bone"), 2000)};
             in.pot.simmer = Duration::fromHours(14);
         }},
        {"bare-bones-in-phase", "cuts[0]", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.cuts = {cut(QStringLiteral("chicken-carcass"), 2000)};
             in.pot.simmer = Duration::fromHours(14);
         }},
        {"bare-bones-in-phase", "brew", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.brew = Pot::Brew::BoneBroth;
         }},
        {"ground-pepper-in-phase", "extras[1]", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.extras.append(extra(QStringLiteral("ground-pepper"), 1));
         }},
        {"simmer-outside-window", "simmer", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.simmer = Duration::fromHours(4);
         }},
        {"simmer-outside-window", "simmer", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.simmer = Duration::fromHours(1);
         }},
        {"no-common-order", "simmer", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.cuts.append(cut(QStringLiteral("beef-shank"), 300));
         }},
        {"water-above-most", "water", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.water = Volume::fromLitres(5);
         }},
        {"water-below-least", "water", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.water = Volume::fromMillilitres(1030);
         }},
        {"bones-not-covered", "water", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.pot.water = Volume::fromMillilitres(900);
         }},
        {"boils-away", "water", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.vessel.lid = Vessel::Lid::Open;
         }},
        {"vessel-too-small", "vessel", Finding::Severity::Caution,
         [](BrewInput& in) {
             in.vessel.height = quantity::Length::fromCentimetres(12);
         }},
        {"few-onions", "extras", Finding::Severity::Note,
         [](BrewInput& in) {
             in.pot.extras.clear();
         }},
        {"boiling-capped", "altitude", Finding::Severity::Note,
         [](BrewInput& in) {
             in.altitude = quantity::Length::fromMetres(2500);
         }},
        {"fish-keep-cold", "cuts[0]", Finding::Severity::Note,
         [](BrewInput& in) {
             in = samples::fishPot();
         }},
        {"price-missing", "prices", Finding::Severity::Note,
         [](BrewInput& in) {
             in.prices.insert(QStringLiteral("chicken-leg"), 5.0);
         }},
    };
    return all;
}
} // namespace

TEST(PotFindingsTest, AGoodPotHasNothingToSay) {
    for (const BrewInput& input : {samples::chickenPot(), samples::beefPot()})
        for (const Finding& finding : brew(input, catalogue()).findings)
            ADD_FAILURE() << finding.text.toStdString();
}

TEST(PotFindingsTest, EachFaultIsFoundOnceWithFieldTextAndSource) {
    for (const Case& one : cases()) {
        SCOPED_TRACE(one.code);
        BrewInput input = samples::chickenPot();
        one.make(input);
        ASSERT_TRUE(check(input.pot, catalogue()));
        const Brewed brewed = brew(input, catalogue());
        const QString code = QLatin1String(one.code);
        EXPECT_EQ(std::ranges::count(brewed.findings, code, &Finding::code), 1);
        const Finding* finding = findingOf(brewed, code);
        ASSERT_NE(finding, nullptr);
        EXPECT_EQ(finding->field.toStdString(), one.field);
        EXPECT_EQ(finding->severity, one.severity);
        EXPECT_FALSE(finding->text.contains(QLatin1Char('%') + QString::number(1)));
        EXPECT_TRUE(finding->code == QStringLiteral("price-missing") || !finding->source.isEmpty());
    }
}

// The sentence says what time would do, and that time does: every cut then ends inside its window.
TEST(PotFindingsTest, TheTimeNamedForAMixedPotWouldDo) {
    BrewInput input = samples::beefPot();
    input.pot.cuts.append(cut(QStringLiteral("chicken-wing"), 500));
    input.pot.cuts.append(cut(QStringLiteral("fish-head"), 500));
    input.pot.simmer = Duration::fromHours(2);
    const Brewed brewed = brew(input, catalogue());
    const Finding* finding = findingOf(brewed, QStringLiteral("no-common-order"));
    ASSERT_NE(finding, nullptr);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("4 to 6 h would do")))
        << finding->text.toStdString();
    EXPECT_EQ(*finding->limit, 4);
    for (double hours : {4.0, 6.0}) {
        input.pot.simmer = Duration::fromHours(hours);
        const Brewed mended = brew(input, catalogue());
        EXPECT_EQ(findingOf(mended, QStringLiteral("no-common-order")), nullptr);
        EXPECT_EQ(findingOf(mended, QStringLiteral("simmer-outside-window")), nullptr);
    }
}

// Common practice, no source: a quart to the pound (2086 mL/kg) is still fine, a cup (522) too.
TEST(PotFindingsTest, TheEdgesOfTheWaterBandAreInside) {
    BrewInput input = samples::chickenPot();
    input.pot.water = Volume::fromQuarts(1) * (2000 / 453.59237);
    EXPECT_EQ(findingOf(brew(input, catalogue()), QStringLiteral("water-above-most")), nullptr);
    input.pot.water = Volume::fromCups(1) * (2000 / 453.59237);
    EXPECT_EQ(findingOf(brew(input, catalogue()), QStringLiteral("water-below-least")), nullptr);
}

TEST(PotFindingsTest, DilutionSaysHowMuchMoreToDrink) {
    BrewInput input = samples::chickenPot();
    input.pot.water = Volume::fromMillilitres(2 * 2086.35 * 2);
    const Brewed brewed = brew(input, catalogue());
    const Finding* finding = findingOf(brewed, QStringLiteral("water-above-most"));
    ASSERT_NE(finding, nullptr);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("100 %")));
    EXPECT_NEAR(*finding->value, 2 * 2086.35, 1e-6);
    EXPECT_NEAR(*finding->limit, 2086.35, 1e-6);
}

TEST(PotFindingsTest, TheSizeNamedWouldDo) {
    BrewInput input = samples::chickenPot();
    input.vessel.height = quantity::Length::fromCentimetres(10);
    const Brewed brewed = brew(input, catalogue());
    const Finding* finding = findingOf(brewed, QStringLiteral("vessel-too-small"));
    ASSERT_NE(finding, nullptr);
    EXPECT_GT(*finding->value, *finding->limit);
    input.vessel.height = heightNeeded(brewed.fill, input.vessel, catalogue());
    EXPECT_EQ(findingOf(brew(input, catalogue()), QStringLiteral("vessel-too-small")), nullptr);
}

// Common practice, no source: 5 cm or a tenth of the height, whichever is more.
TEST(PotFindingsTest, HeadspaceIsTheLargerOfBothRules) {
    Vessel vessel;
    vessel.diameter = quantity::Length::fromCentimetres(20);
    const double area = 314.1592653589793;
    EXPECT_NEAR(
        heightNeeded(Volume::fromMillilitres(area * 20), vessel, catalogue()).toCentimetres(), 25,
        1e-9);
    EXPECT_NEAR(
        heightNeeded(Volume::fromMillilitres(area * 63), vessel, catalogue()).toCentimetres(), 70,
        1e-9);
}

TEST(PotFindingsTest, TheFillAllowedNeedsJustThatHeight) {
    for (double height : {5.0, 10.0, 49.0, 51.0, 80.0}) {
        Vessel vessel = samples::chickenPot().vessel;
        vessel.height = quantity::Length::fromCentimetres(height);
        const Volume allowed = fillAllowed(vessel, catalogue());
        EXPECT_NEAR(heightNeeded(allowed, vessel, catalogue()).toCentimetres(), height, 1e-9);
    }
}

// From memory, no source read: a pressure cooker is filled to two thirds at most. Its lid also
// holds off the boiling point of the place.
TEST(PotFindingsTest, APressureCookerIsFilledToTwoThirdsAtMost) {
    BrewInput input = samples::chickenPot();
    input.vessel.place = Vessel::Place::PressureCooker;
    input.pot.water = Volume::fromLitres(8); // so high that a third is more than 5 cm
    input.altitude = quantity::Length::fromMetres(3000);
    const double area = std::numbers::pi * 14 * 14;
    const double fill = brew(input, catalogue()).fill.toMillilitres();
    for (const auto& [share, fits] : {std::pair{0.66, true}, std::pair{0.67, false}}) {
        input.vessel.height = quantity::Length::fromCentimetres(fill / area / share);
        const Brewed brewed = brew(input, catalogue());
        EXPECT_EQ(findingOf(brewed, QStringLiteral("vessel-too-small")) == nullptr, fits) << share;
        EXPECT_EQ(findingOf(brewed, QStringLiteral("boiling-capped")), nullptr);
        EXPECT_GT(brewed.simmering, brewed.boiling);
    }
}

TEST(PotFindingsTest, NobodyIsToldToAddOnionsTheyMayNotHave) {
    BrewInput input = samples::chickenPot();
    input.pot.extras.clear();
    Drinker ann = samples::drinker(QStringLiteral("Ann"), AgeBand::Adult, 500);
    ann.mayNot = {QStringLiteral("onion")};
    input.drinkers = {ann};
    EXPECT_EQ(findingOf(brew(input, catalogue()), QStringLiteral("few-onions")), nullptr);
}

TEST(PotFindingsTest, MarrowBesideKnucklesIsFine) {
    BrewInput input = samples::beefPot();
    input.pot.cuts.append(cut(QStringLiteral("beef-marrow-bone"), 300));
    const Brewed brewed = brew(input, catalogue());
    EXPECT_EQ(findingOf(brewed, QStringLiteral("marrow-alone")), nullptr);
    EXPECT_EQ(findingOf(brewed, QStringLiteral("no-jointed-cut")), nullptr);
}

TEST(PotFindingsTest, BareBonesDoNotCountInTheWaterRule) {
    BrewInput input = samples::chickenPot();
    const quantity::Mass meaty = meatyMass(input.pot, catalogue());
    input.pot.cuts.append(cut(QStringLiteral("chicken-carcass"), 700));
    EXPECT_EQ(meatyMass(input.pot, catalogue()), meaty);
    input.pot.cuts = {cut(QStringLiteral("chicken-carcass"), 700)};
    EXPECT_EQ(meatyMass(input.pot, catalogue()).toGrams(), 700);
}

TEST(PotFindingsTest, APotThatBoilsDryIsStopped) {
    BrewInput input = samples::chickenPot();
    input.pot.water = quantity::Volume::fromMillilitres(100);
    input.pot.simmer = Duration::fromHours(6);
    input.vessel.lid = Vessel::Lid::Open;
    const Brewed dry = brew(input, catalogue());
    EXPECT_TRUE(dry.boilsDry);
    const Finding* finding = findingOf(dry, QStringLiteral("boils-dry"));
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->severity, Finding::Severity::Stop);
    EXPECT_NEAR(*finding->value, dry.wouldEvaporateMl, 1e-9);
    EXPECT_NEAR(*finding->limit, dry.evaporatedMl.best, 1e-6);
    EXPECT_GT(*finding->value, *finding->limit);
    EXPECT_FALSE(finding->source.isEmpty());
    EXPECT_EQ(findingOf(dry, QStringLiteral("boils-away")), nullptr);
    EXPECT_EQ(findingOf(brew(samples::chickenPot(), catalogue()), QStringLiteral("boils-dry")),
              nullptr);
}

TEST(PotFindingsTest, ACupWithMoreThanADayOfSodiumIsTooSalty) {
    BrewInput input = samples::chickenPot();
    input.pot.salt = quantity::Mass::fromGrams(80);
    const Brewed salty = brew(input, catalogue());
    const Finding* finding = findingOf(salty, QStringLiteral("too-salty"));
    ASSERT_NE(finding, nullptr);
    EXPECT_NEAR(*finding->value, salty.sodiumMgPer100Ml.best * 2.365882365, 1e-3);
    EXPECT_EQ(finding->limit, 2300); // NASEM 2019, 14 years and over
}

// FDA and USDA FSIS: 40 °F or below; in degrees Celsius rounded down, to be safe.
TEST(PotFindingsTest, FishIsKeptAtFortyDegreesFahrenheit) {
    const Brewed fish = brew(samples::fishPot(), catalogue());
    const Finding* finding = findingOf(fish, QStringLiteral("fish-keep-cold"));
    ASSERT_NE(finding, nullptr);
    EXPECT_TRUE(finding->text.contains(QStringLiteral("40 °F (4 °C)")));
}

} // namespace ladlework::kitchen
