#include "kitchen/evaporation.h"

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

TEST(EvaporationTest, AnOpenPotStatesThirtyPercent) {
    const Range loss = lossOf(vessel(Vessel::Lid::Open, Vessel::Place::Stovetop));
    EXPECT_NEAR(loss.low / loss.best, 0.7, 1e-9);
    EXPECT_NEAR(loss.high / loss.best, 1.3, 1e-9);
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
