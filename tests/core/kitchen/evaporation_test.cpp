#include "kitchen/evaporation.h"

#include "kitchen/boiling.h"
#include "kitchen_samples.h"

#include <array>
#include <cmath>
#include <utility>

namespace ladlework::kitchen {

using quantity::Duration;
using quantity::Length;
using quantity::Temperature;
using samples::catalogue;

namespace {
Vessel vessel(Vessel::Lid lid, Vessel::Place place) {
    Vessel made;
    made.diameter = Length::fromCentimetres(30);
    made.height = Length::fromCentimetres(25);
    made.lid = lid;
    made.place = place;
    return made;
}

Range lossOf(const Vessel& made, double hours = 1) {
    return evaporatedMl(made, Temperature::fromCelsius(93), Temperature::fromCelsius(20), Length(),
                        Duration::fromHours(hours), catalogue());
}
} // namespace

// Test values of an open-source heat-transfer library for McAdams' hot plate facing up, Pr x Gr:
// exact to the digits given.
TEST(EvaporationTest, PlateCorrelationGivesTheLibraryValues) {
    EXPECT_NEAR(plateTransferNumber(5.54 * 3.21e8, catalogue()), 181.7312, 5e-5);
    EXPECT_NEAR(plateTransferNumber(0.01 * 3.21e8, catalogue()), 22.8570, 5e-5);
}

// Open tank table "Heat loss from open water tanks", still air at 60 °F, Btu/ft2h through the
// latent heat: 10.7, 13.4, 16.3 kg/m2h at 190, 200, 210 °F; 4.2 and 6.8 at 150 and 170 °F. Such
// correlations scatter by 18 to 26 % (Shah 2002), hence 30 %.
TEST(EvaporationTest, AgreesWithTheOpenTankTable) {
    constexpr std::array rows{std::pair{150.0, 4.2}, std::pair{170.0, 6.8}, std::pair{190.0, 10.7},
                              std::pair{200.0, 13.4}, std::pair{210.0, 16.3}};
    for (double metres : {0.3, 0.6, 2.0})
        for (const auto& [fahrenheit, rate] : rows)
            EXPECT_NEAR(openSurfaceRate(Length::fromMetres(metres),
                                        Temperature::fromFahrenheit(fahrenheit),
                                        Temperature::fromFahrenheit(60), Length(), catalogue()),
                        rate, 0.30 * rate)
                << fahrenheit << " F, " << metres << " m";
}

// Each stated input is moved to its 10 % and 90 % bound alone and the logarithms add up as squares:
// the correlation by 30 % (Shah 2002), the simmer from 88 to 97 °C about 93, the humidity, the
// warmth over the stove. Reckoned here from the rate itself.
TEST(EvaporationTest, TheRangeComesFromWhatIsNotKnownOfEachInput) {
    const Vessel open = vessel(Vessel::Lid::Open, Vessel::Place::Stovetop);
    const auto rate = [&](double water, double room) {
        return openSurfaceRate(open.diameter, Temperature::fromCelsius(water),
                               Temperature::fromCelsius(room), Length(), catalogue());
    };
    const Figure& warmth = catalogue().figure(QStringLiteral("room-warmth"));
    const double best = rate(93, 20);
    const double cooler = std::log(best / rate(88, 20));
    const double hotter = std::log(rate(97, 20) / best);
    const double warmer = std::log(best / rate(93, 20 + warmth.high));
    const double colder = std::log(rate(93, 20 + warmth.low) / best);
    const double down =
        std::sqrt(std::pow(std::log(1 / 0.7), 2) + cooler * cooler + warmer * warmer);
    const double up = std::sqrt(std::pow(std::log(1.3), 2) + hotter * hotter + colder * colder);
    const Range loss = lossOf(open);
    // The humidity comes on top: the air of a kitchen holds little beside a simmering surface.
    EXPECT_GE(std::log(loss.best / loss.low), down);
    EXPECT_LE(std::log(loss.best / loss.low), down + 0.01);
    EXPECT_GE(std::log(loss.high / loss.best), up);
    EXPECT_LE(std::log(loss.high / loss.best), up + 0.01);
    EXPECT_GT(down, std::log(1 / 0.7)) << "wider than by the correlation alone";
    EXPECT_GT(up, std::log(1.3));
}

// A lid adds what is not known of it: 0.18 to 0.50 about 0.30 (resources/reference/figures.csv).
TEST(EvaporationTest, ALidAddsItsOwnSpread) {
    const Range open = lossOf(vessel(Vessel::Lid::Open, Vessel::Place::Stovetop));
    const Range ajar = lossOf(vessel(Vessel::Lid::Ajar, Vessel::Place::Stovetop));
    EXPECT_NEAR(std::log(ajar.best / ajar.low),
                std::hypot(std::log(open.best / open.low), std::log(0.30 / 0.18)), 1e-9);
    EXPECT_NEAR(std::log(ajar.high / ajar.best),
                std::hypot(std::log(open.high / open.best), std::log(0.50 / 0.30)), 1e-9);
}

// Water cannot simmer hotter than it boils: at 3,000 m the high bound of the heat falls away.
TEST(EvaporationTest, TheHeatIsCappedByTheBoilingPoint) {
    const Vessel open = vessel(Vessel::Lid::Open, Vessel::Place::Stovetop);
    const Length high = Length::fromMetres(3000);
    const Temperature boiling = boilingPoint(high);
    ASSERT_LT(boiling.toCelsius(), 93);
    const auto spreadAt = [&](Length altitude, Temperature simmering) {
        return physicalLoss(open, simmering, Temperature::fromCelsius(20), altitude,
                            Duration::fromHours(1), catalogue())
            .ofCooking;
    };
    EXPECT_LT(spreadAt(high, boiling).up, 0.06);
    EXPECT_GT(spreadAt(Length(), Temperature::fromCelsius(93)).up, 0.15);
}

TEST(EvaporationTest, WhatIsLearntStandsInPlaceOfFactorAndSpreadOfTheVessel) {
    Vessel pot = vessel(Vessel::Lid::Ajar, Vessel::Place::Stovetop);
    const double once = lossOf(pot).best;
    pot.evaporationFactor = 3;
    const auto learnt = [&](const Range& factor) {
        return evaporatedMl(pot, Temperature::fromCelsius(93), Temperature::fromCelsius(20),
                            Length(), Duration::fromHours(1), catalogue(), factor);
    };
    EXPECT_NEAR(learnt({1.4, 1.5, 1.6}).best, 1.5 * once, 1e-9);
    // Known for certain, only what differs from cooking to cooking is left.
    const Range sharp = learnt({1.5, 1.5, 1.5});
    const LogSpread cooking =
        physicalLoss(pot, Temperature::fromCelsius(93), Temperature::fromCelsius(20), Length(),
                     Duration::fromHours(1), catalogue())
            .ofCooking;
    EXPECT_NEAR(std::log(sharp.best / sharp.low), cooking.down, 1e-9);
    EXPECT_NEAR(std::log(sharp.high / sharp.best), cooking.up, 1e-9);
    EXPECT_LT(sharp.high - sharp.low, learnt({1.2, 1.5, 1.9}).high - learnt({1.2, 1.5, 1.9}).low);
}

TEST(EvaporationTest, GrowsWithTimeAndFactorInProportion) {
    Vessel pot = vessel(Vessel::Lid::Ajar, Vessel::Place::Stovetop);
    const double once = lossOf(pot).best;
    EXPECT_NEAR(lossOf(pot, 3).best, 3 * once, 1e-9);
    pot.evaporationFactor = 1.5;
    EXPECT_NEAR(lossOf(pot).best, 1.5 * once, 1e-9);
    EXPECT_EQ(lossOf(pot, 0).best, 0);
}

TEST(EvaporationTest, ALidKeepsWaterIn) {
    const double open = lossOf(vessel(Vessel::Lid::Open, Vessel::Place::Stovetop)).best;
    const double ajar = lossOf(vessel(Vessel::Lid::Ajar, Vessel::Place::Stovetop)).best;
    const double on = lossOf(vessel(Vessel::Lid::On, Vessel::Place::Stovetop)).best;
    EXPECT_GT(open, ajar);
    EXPECT_GT(ajar, on);
    EXPECT_GT(on, 0);
}

TEST(EvaporationTest, SlowAndPressureCookersAreClosedWhateverTheLid) {
    for (Vessel::Place place : {Vessel::Place::SlowCooker, Vessel::Place::PressureCooker}) {
        EXPECT_EQ(lossOf(vessel(Vessel::Lid::Open, place)).best,
                  lossOf(vessel(Vessel::Lid::On, place)).best);
        EXPECT_LT(lossOf(vessel(Vessel::Lid::Open, place)).best,
                  lossOf(vessel(Vessel::Lid::On, Vessel::Place::Stovetop)).best);
    }
}

// 2 kW over the latent heat of 2256.5 kJ/kg (IAPWS-IF97) is 3.19 kg an hour: a wide open pan at a
// full simmer cannot lose more.
TEST(EvaporationTest, TheBurnerSetsTheLimit) {
    Vessel pan = vessel(Vessel::Lid::Open, Vessel::Place::Stovetop);
    pan.diameter = Length::fromCentimetres(80);
    EXPECT_NEAR(lossOf(pan).best, 2000 * 3600 / 2256.5e3 / 0.9982 * 1000, 1e-6);
}

TEST(EvaporationTest, WaterAsColdAsTheRoomLosesNothingByThisModel) {
    EXPECT_EQ(openSurfaceRate(Length::fromCentimetres(30), Temperature::fromCelsius(5),
                              Temperature::fromCelsius(30), Length(), catalogue()),
              0);
}

} // namespace ladlework::kitchen
