#include "ui/pot/pot_levels.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Length;
using quantity::Volume;

namespace {

/// A vessel of 100 cm2 (diameter 11.284 cm) and 20 cm, so that 100 mL stand 1 cm high.
PotLevels levels(double bonesMl, double coveredMl) {
    kitchen::Vessel vessel;
    vessel.diameter = Length::fromCentimetres(11.283791671);
    vessel.height = Length::fromCentimetres(20);
    kitchen::Brewed brewed;
    brewed.bonesVolume = Volume::fromMillilitres(bonesMl);
    brewed.covered = Volume::fromMillilitres(coveredMl);
    return {vessel, brewed};
}

struct LevelCase {
    double bonesMl;
    double coveredMl;
    double waterMl;
    double surfaceCm;
};

// By hand: up to the top of the bones the water fills the room between them.
const LevelCase cases[] = {
    {0, 0, 500, 5},      {300, 200, 0, 0}, {300, 200, 100, 2.5}, {300, 200, 200, 5},
    {300, 200, 700, 10}, {300, 0, 500, 8}, {300, 200, 5000, 20}, // over the brim
};

} // namespace

TEST(PotLevelsTest, SurfaceByHand) {
    for (const LevelCase& expected : cases) {
        SCOPED_TRACE(expected.waterMl);
        const PotLevels pot = levels(expected.bonesMl, expected.coveredMl);
        EXPECT_NEAR(pot.surface(Volume::fromMillilitres(expected.waterMl)).toCentimetres(),
                    expected.surfaceCm, 1e-6);
    }
}

TEST(PotLevelsTest, BonesStandAsTheyPack) {
    EXPECT_NEAR(levels(300, 200).bones().toCentimetres(), 5, 1e-6);
    EXPECT_NEAR(levels(3000, 200).bones().toCentimetres(), 20, 1e-6);
}

TEST(PotLevelsTest, WaterIsTheInverseOfSurfaceBelowTheBrim) {
    for (const auto& [bones, covered] :
         {std::pair(0.0, 0.0), std::pair(300.0, 200.0), std::pair(900.0, 450.0)}) {
        const PotLevels pot = levels(bones, covered);
        for (double ml = 10; bones + ml <= 1990; ml += 37) {
            const Volume water = Volume::fromMillilitres(ml);
            EXPECT_NEAR(pot.water(pot.surface(water)).toMillilitres(), ml, 1e-6)
                << bones << " mL of bones, " << ml << " mL of water";
        }
    }
}

TEST(PotLevelsTest, SurfaceNeverFallsWhenWaterIsAdded) {
    const PotLevels pot = levels(900, 450);
    Length before;
    for (double ml = 0; ml < 3000; ml += 10) {
        const Length now = pot.surface(Volume::fromMillilitres(ml));
        EXPECT_GE(now, before);
        before = now;
    }
}

} // namespace ladlework::ui
