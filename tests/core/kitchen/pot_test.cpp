#include "kitchen/pot.h"

#include "kitchen_samples.h"

#include <functional>
#include <limits>

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

struct Fault {
    const char* place;
    std::function<void(Pot&)> make;
};

struct VesselFault {
    const char* place;
    std::function<void(Vessel&)> make;
};
} // namespace

// A cylinder of 20 cm by 10 cm: pi x 10 x 10 x 10 = 3141.59 mL.
TEST(PotTest, CapacityIsThatOfTheCylinder) {
    Vessel vessel;
    vessel.diameter = quantity::Length::fromCentimetres(20);
    vessel.height = quantity::Length::fromCentimetres(10);
    EXPECT_NEAR(vessel.capacity().toMillilitres(), 3141.592653589793, 1e-9);
}

TEST(PotTest, AcceptsAnOrdinaryPot) {
    EXPECT_TRUE(check(samples::chickenPot().pot, catalogue()));
    Pot unsalted = samples::chickenPot().pot;
    unsalted.salt = quantity::Mass();
    unsalted.extras.clear();
    EXPECT_TRUE(check(unsalted, catalogue()));
}

TEST(PotTest, NamesTheFieldAtFault) {
    const std::vector<Fault> faults{
        {"name",
         [](Pot& pot) {
             pot.name = QStringLiteral("  ");
         }},
        {"cuts",
         [](Pot& pot) {
             pot.cuts.clear();
         }},
        {"cuts[1].cut",
         [](Pot& pot) {
             pot.cuts[1].cut = QStringLiteral("dragon-tail");
         }},
        {"cuts[1].mass",
         [](Pot& pot) {
             pot.cuts[1].mass = quantity::Mass();
         }},
        {"cuts[0].mass",
         [](Pot& pot) {
             pot.cuts[0].mass = quantity::Mass::fromGrams(-1);
         }},
        {"cuts[0].mass",
         [](Pot& pot) {
             pot.cuts[0].mass = quantity::Mass::fromGrams(notANumber);
         }},
        {"cuts[0].mass",
         [](Pot& pot) {
             pot.cuts[0].mass = quantity::Mass::fromKilograms(50.1);
         }},
        {"water",
         [](Pot& pot) {
             pot.water = quantity::Volume();
         }},
        {"water",
         [](Pot& pot) {
             pot.water = quantity::Volume::fromMillilitres(99.9);
         }},
        // 35.9 g of salt dissolve in 100 g of water at 20 °C: CRC Handbook.
        {"salt",
         [](Pot& pot) {
             pot.water = quantity::Volume::fromMillilitres(1000);
             pot.salt = quantity::Mass::fromGrams(360);
         }},
        {"salt",
         [](Pot& pot) {
             pot.water = quantity::Volume::fromMillilitres(1000);
             pot.salt = quantity::Mass::fromGrams(180);
             pot.extras.append(samples::extra(QStringLiteral("table-salt"), 180));
         }},
        {"water",
         [](Pot& pot) {
             pot.water = quantity::Volume::fromLitres(100.1);
         }},
        {"salt",
         [](Pot& pot) {
             pot.salt = quantity::Mass::fromGrams(-0.1);
         }},
        {"salt",
         [](Pot& pot) {
             pot.salt = quantity::Mass::fromKilograms(2.1);
         }},
        {"simmer",
         [](Pot& pot) {
             pot.simmer = quantity::Duration();
         }},
        {"simmer",
         [](Pot& pot) {
             pot.simmer = quantity::Duration::fromHours(169);
         }},
        {"extras[0].item",
         [](Pot& pot) {
             pot.extras[0].item = QStringLiteral("gravel");
         }},
        {"extras[0].mass",
         [](Pot& pot) {
             pot.extras[0].mass = quantity::Mass();
         }},
        {"extras[0].mass",
         [](Pot& pot) {
             pot.extras[0].mass = quantity::Mass::fromKilograms(21);
         }},
    };
    for (const Fault& fault : faults) {
        Pot pot = samples::chickenPot().pot;
        fault.make(pot);
        const Outcome outcome = check(pot, catalogue());
        ASSERT_FALSE(outcome) << fault.place;
        EXPECT_EQ(outcome.error().place.toStdString(), fault.place);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_FALSE(outcome.error().sentence.isEmpty());
    }
}

TEST(PotTest, AnUnknownCutIsNamed) {
    Pot pot = samples::chickenPot().pot;
    pot.cuts[0].cut = QStringLiteral("dragon-tail");
    EXPECT_TRUE(check(pot, catalogue()).error().sentence.contains(QStringLiteral("dragon-tail")));
}

TEST(PotTest, ChecksVessels) {
    const Vessel good = samples::chickenPot().vessel;
    EXPECT_TRUE(check(good));
    const std::vector<VesselFault> faults{
        {"name",
         [](Vessel& vessel) {
             vessel.name.clear();
         }},
        {"diameter",
         [](Vessel& vessel) {
             vessel.diameter = quantity::Length::fromCentimetres(4.9);
         }},
        {"diameter",
         [](Vessel& vessel) {
             vessel.diameter = quantity::Length::fromCentimetres(81);
         }},
        {"diameter",
         [](Vessel& vessel) {
             vessel.diameter = quantity::Length::fromCentimetres(notANumber);
         }},
        {"height",
         [](Vessel& vessel) {
             vessel.height = quantity::Length::fromCentimetres(3.9);
         }},
        {"height",
         [](Vessel& vessel) {
             vessel.height = quantity::Length::fromCentimetres(81);
         }},
        {"evaporationFactor",
         [](Vessel& vessel) {
             vessel.evaporationFactor = 0.09;
         }},
        {"evaporationFactor",
         [](Vessel& vessel) {
             vessel.evaporationFactor = 5.1;
         }},
    };
    for (const VesselFault& fault : faults) {
        Vessel vessel = good;
        fault.make(vessel);
        const Outcome outcome = check(vessel);
        ASSERT_FALSE(outcome) << fault.place;
        EXPECT_EQ(outcome.error().place.toStdString(), fault.place);
    }
}

TEST(PotTest, LidsAndPlacesHaveWords) {
    for (Vessel::Lid lid : {Vessel::Lid::Open, Vessel::Lid::Ajar, Vessel::Lid::On})
        EXPECT_EQ(lidFromId(lidId(lid)), lid);
    for (Vessel::Place place : {Vessel::Place::Stovetop, Vessel::Place::Oven,
                                Vessel::Place::SlowCooker, Vessel::Place::PressureCooker})
        EXPECT_EQ(placeFromId(placeId(place)), place);
    EXPECT_EQ(placeId(Vessel::Place::PressureCooker), QStringLiteral("pressure-cooker"));
    EXPECT_FALSE(lidFromId(u"half"));
    EXPECT_FALSE(placeFromId(u"campfire"));
}

TEST(PotTest, SaltThatJustDissolvesAndTheLeastWaterAreTaken) {
    Pot pot = samples::chickenPot().pot;
    pot.water = quantity::Volume::fromMillilitres(1000);
    pot.salt = quantity::Mass::fromGrams(357); // 998.2 g of water
    EXPECT_TRUE(check(pot, catalogue()));
    pot.salt = quantity::Mass();
    pot.water = quantity::Volume::fromMillilitres(100);
    EXPECT_TRUE(check(pot, catalogue()));
}

} // namespace ladlework::kitchen
