#include "kitchen/cooling_surfaces.h"

#include "kitchen/evaporation.h"

#include <gtest/gtest.h>

namespace ladlework::kitchen {

namespace {
const CoolingFigures& figures() {
    return CoolingFigures::shipped();
}

quantity::Temperature celsius(double number) {
    return quantity::Temperature::fromCelsius(number);
}

/// A glass dish, 10 cm of stock in it.
Container dish() {
    Container container;
    container.name = QStringLiteral("dish");
    container.shape = Container::Shape::Tray;
    container.across = quantity::Length::fromCentimetres(40);
    container.width = quantity::Length::fromCentimetres(40);
    container.height = quantity::Length::fromCentimetres(10);
    container.material = Container::Material::Glass;
    return container;
}

FaceLosses losses(const Container& container, CoolingStage::Place place, double ambientC,
                  bool isStirred = false) {
    return lossesOf(container, {0.16, 1.6, 0.10}, {place, celsius(ambientC), {}, isStirred}, 0, 95,
                    figures());
}

using Place = CoolingStage::Place;
} // namespace

// The values of the published library that codes the correlation (ht, conv_free_immersed): Pr 0.69
// and Gr 2.63e9 give Nu 147.16185223770603.
TEST(CoolingSurfacesTest, UprightSurfaceAsThePublishedLibrary) {
    EXPECT_NEAR(uprightTransferNumber(0.69 * 2.63e9, 0.69, figures()), 147.16185223770603, 1e-9);
}

// ISO 6946:2017, table 7: still air and radiation at an indoor surface let through 7.7 W/(m2 K)
// sideways, all materials that radiate well, for the small differences of buildings. Free
// convection of a wall of 10 cm is a little livelier than that of a room's wall, and the standard
// itself rounds: 25 %.
TEST(CoolingSurfacesTest, WallLosesWhatTheBuildingStandardSays) {
    const FaceLosses faces = losses(dish(), Place::Counter, 20);
    EXPECT_NEAR(faces.side.at(25) / 5.0, 7.7, 0.25 * 7.7);
}

// The open top: evaporation.h's rate times the latent heat at 60 °C (IAPWS-IF97: 2357.7 kJ/kg) is
// most of what is lost there; the rest is 8 to 14 W/(m2 K) of air and radiation (ISO 6946 has 10
// upwards for small differences, and 40 K are more).
TEST(CoolingSurfacesTest, OpenTopLosesByEvaporationMostly) {
    const FaceLosses faces = losses(dish(), Place::Counter, 20);
    const double kilograms = openSurfaceRate(quantity::Length::fromCentimetres(40), celsius(60),
                                             celsius(20), {}, figures().catalogue());
    const double evaporation = kilograms / 3600 * 2357.7e3;
    const double dry = (faces.top.at(60) - evaporation) / 40.0;
    EXPECT_GT(dry, 8);
    EXPECT_LT(dry, 14);
    EXPECT_GT(evaporation, faces.top.at(60) / 2);
}

TEST(CoolingSurfacesTest, EveryLawRisesAndCrossesNothingNearTheAir) {
    for (const bool covered : {false, true})
        for (const Place place : {Place::Counter, Place::Refrigerator}) {
            Container container = dish();
            container.covered = covered;
            const FaceLosses faces = losses(container, place, 20);
            for (const SurfaceLoss* loss : {&faces.top, &faces.side, &faces.floor})
                for (double stockC = 0; stockC < 95; stockC += 1)
                    EXPECT_GE(loss->at(stockC + 1), loss->at(stockC)) << stockC;
            EXPECT_NEAR(faces.side.at(20), 0, 1e-9);
            EXPECT_NEAR(faces.floor.at(20), 0, 1e-9);
            // In the dry air of a room a wet surface stays a little colder than the air.
            EXPECT_GE(faces.top.at(20), -1e-9);
            EXPECT_EQ(faces.top.at(20) > 1.0, !covered && place == Place::Counter);
        }
}

TEST(CoolingSurfacesTest, LidPlasticAndStillAirHoldTheHeat) {
    Container container = dish();
    const FaceLosses open = losses(container, Place::Refrigerator, 3);
    container.covered = true;
    const FaceLosses covered = losses(container, Place::Refrigerator, 3);
    container.material = Container::Material::Plastic;
    const FaceLosses plastic = losses(container, Place::Refrigerator, 3);
    const FaceLosses still = losses(container, Place::Counter, 3);
    for (const double stockC : {10.0, 40.0, 80.0}) {
        EXPECT_LT(covered.top.at(stockC), open.top.at(stockC));
        EXPECT_LT(plastic.side.at(stockC), covered.side.at(stockC));
        EXPECT_LT(still.side.at(stockC), plastic.side.at(stockC));
    }
}

// In an ice bath the water takes heat by Newton's law through the wall, and stirring helps; the
// wall of plastic is then what holds it back.
TEST(CoolingSurfacesTest, IceBathIsWaterAndWall) {
    Container container = dish();
    container.material = Container::Material::Steel;
    const double still = losses(container, Place::IceBath, 0).side.at(50) / 50;
    const double stirred = losses(container, Place::IceBath, 0, true).side.at(50) / 50;
    container.material = Container::Material::Plastic;
    const double plastic = losses(container, Place::IceBath, 0, true).side.at(50) / 50;
    EXPECT_LT(still, figures().value(QStringLiteral("ice-bath-still")));
    EXPECT_GT(stirred, 1.5 * still);
    EXPECT_LT(plastic, stirred / 2);
}

} // namespace ladlework::kitchen
