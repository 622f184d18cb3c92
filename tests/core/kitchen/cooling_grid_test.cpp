#include "kitchen/cooling_grid.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace ladlework::kitchen {

namespace {
/// A solid with the properties of a textbook example.
struct Solid {
    double conductivity = 0;   ///< W/(m K)
    double volumetricHeat = 0; ///< J/(m3 K)
};

/// Water-like: a diffusivity of 1.43e-7 m2/s.
constexpr Solid gel{0.6, 4.2e6};

CoolingGrid after(double seconds, CoolingGrid grid, const FaceLosses& faces, const Solid& solid) {
    const Conduction conduction{solid.conductivity, solid.conductivity, 0.0, 1.0};
    double at = 0.0;
    while (at < seconds - 1e-9)
        at += grid.step(seconds - at, 0.01, faces, conduction);
    return grid;
}

/// The share of the first difference that is left at the warmest place.
double left(const CoolingGrid& grid, double startC, double ambientC) {
    return (grid.warmestC() - ambientC) / (startC - ambientC);
}

/// One-term solutions hold from a Fourier number of 0.2 on; first root and amplitude as printed in
/// Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, Table 5.1, and in
/// Cengel, Heat and Mass Transfer, Table 4-2.
struct OneTerm {
    double biot;
    double root;
    double amplitude;

    [[nodiscard]] double at(double fourier) const {
        return amplitude * std::exp(-root * root * fourier);
    }
};
constexpr OneTerm walls[]{{0.1, 0.3111, 1.0161}, {1.0, 0.8603, 1.1191}, {10.0, 1.4289, 1.2620}};
constexpr OneTerm cylinders[]{
    {0.1, 0.4417, 1.0246}, {0.5, 0.9408, 1.1143}, {1.0, 1.2558, 1.2071}, {10.0, 2.1795, 1.5677}};
constexpr double fouriers[]{0.3, 0.6, 1.2};

/// Of the temperature difference left: the books print four digits; the rest is the grid.
constexpr double onePercent = 0.01;
constexpr double startC = 95.0;
constexpr double ambientC = 3.0;
} // namespace

// Plane wall of half-thickness L, cooled from both sides.
TEST(CoolingGridTest, SlabCoolsAsTheOneTermSolution) {
    constexpr double half = 0.04;
    for (const OneTerm& wall : walls)
        for (const double fourier : fouriers) {
            const double coefficient = wall.biot * gel.conductivity / half;
            FaceLosses faces;
            faces.top = faces.floor = SurfaceLoss::newton(coefficient, ambientC);
            const double seconds = fourier * half * half * gel.volumetricHeat / gel.conductivity;
            const CoolingGrid grid = after(
                seconds, {{0.2, 2 * half, 1.0, gel.volumetricHeat}, 1, 20, startC}, faces, gel);
            EXPECT_NEAR(left(grid, startC, ambientC), wall.at(fourier),
                        onePercent * wall.at(fourier))
                << "Bi " << wall.biot << " Fo " << fourier;
        }
}

// Long cylinder of radius R, cooled from its side.
TEST(CoolingGridTest, CylinderCoolsAsTheOneTermSolution) {
    constexpr double radius = 0.05;
    for (const OneTerm& cylinder : cylinders)
        for (const double fourier : fouriers) {
            const double coefficient = cylinder.biot * gel.conductivity / radius;
            FaceLosses faces;
            faces.side = SurfaceLoss::newton(coefficient, ambientC);
            const double seconds =
                fourier * radius * radius * gel.volumetricHeat / gel.conductivity;
            const CoolingGrid grid =
                after(seconds, {{radius, 0.2, 1.0, gel.volumetricHeat}, 16, 1, startC}, faces, gel);
            EXPECT_NEAR(left(grid, startC, ambientC), cylinder.at(fourier),
                        onePercent * cylinder.at(fourier))
                << "Bi " << cylinder.biot << " Fo " << fourier;
        }
}

// A short cylinder cools as the product of both (the same books, multidimensional effects).
TEST(CoolingGridTest, ShortCylinderCoolsAsTheProduct) {
    constexpr double radius = 0.05;
    FaceLosses faces;
    faces.top = faces.floor = faces.side =
        SurfaceLoss::newton(gel.conductivity / radius, ambientC); // Bi 1 for both
    const double seconds = 0.6 * radius * radius * gel.volumetricHeat / gel.conductivity;
    const CoolingGrid grid =
        after(seconds, {{radius, 2 * radius, 1.0, gel.volumetricHeat}, 16, 20, startC}, faces, gel);
    const double product = walls[1].at(0.6) * cylinders[2].at(0.6);
    EXPECT_NEAR(left(grid, startC, ambientC), product, onePercent * product);
}

// The grid that stock is cooled with (6 by 8) is good for the same one per cent of the time it
// takes: 1 % of the exponent.
TEST(CoolingGridTest, TheUsualGridIsFineEnough) {
    constexpr double radius = 0.10;
    FaceLosses faces;
    faces.top = faces.floor = faces.side = SurfaceLoss::newton(gel.conductivity / radius, ambientC);
    const double seconds = 1.2 * radius * radius * gel.volumetricHeat / gel.conductivity;
    const CoolingGrid grid =
        after(seconds, {{radius, 2 * radius, 1.0, gel.volumetricHeat}, 6, 8, startC}, faces, gel);
    const double product = walls[1].at(1.2) * cylinders[2].at(1.2);
    EXPECT_NEAR(std::log(left(grid, startC, ambientC)), std::log(product),
                onePercent * std::abs(std::log(product)));
}

// Incropera and others, 6th ed. 2007, Example 5.5: a steel wall of 40 mm, insulated on one side, at
// -20 °C, meets oil of 60 °C with 500 W/(m2 K); k 63.9, density 7832, c 434. After 8 min the
// insulated side is at 42.9 °C and the other at 45.2 °C. The book rounds the root 0.5317 to 0.531,
// which is 0.2 °C.
TEST(CoolingGridTest, PipelineWallOfTheTextbook) {
    const Solid steel{63.9, 7832.0 * 434.0};
    FaceLosses faces;
    faces.top = SurfaceLoss::newton(500.0, 60.0);
    const CoolingGrid grid =
        after(8 * 60.0, {{0.5, 0.040, 1.0, steel.volumetricHeat}, 1, 20, -20.0}, faces, steel);
    EXPECT_NEAR(grid.coldestC(), 42.9, 0.2);
    EXPECT_NEAR(grid.topC(), 45.2, 0.2);
}

// Lumped cooling: exp(-h A t / (rho c V)) for a body that conducts very well (the books, section on
// the lumped capacitance method). The wall factor stands for more wall than the cylinder has.
TEST(CoolingGridTest, WellMixedBodyCoolsAsLumped) {
    constexpr double radius = 0.10;
    constexpr double depth = 0.15;
    constexpr double coefficient = 8.0;
    constexpr double wallFactor = 1.3;
    const Solid mixed{1e5, 4.2e6};
    FaceLosses faces;
    faces.top = faces.side = SurfaceLoss::newton(coefficient, ambientC);
    const double area = std::numbers::pi * (radius * radius + 2 * radius * depth * wallFactor);
    const double capacity = mixed.volumetricHeat * std::numbers::pi * radius * radius * depth;
    for (const double hours : {1.0, 6.0, 24.0}) {
        const CoolingGrid grid =
            after(hours * 3600, {{radius, depth, wallFactor, mixed.volumetricHeat}, 6, 10, startC},
                  faces, mixed);
        const double expected = std::exp(-coefficient * area * hours * 3600 / capacity);
        EXPECT_NEAR(left(grid, startC, ambientC), expected, onePercent * expected) << hours;
        EXPECT_NEAR(grid.heatCapacity(), capacity, 1e-9 * capacity);
    }
}

// Lumped cooling by free convection, h = C (T - T_air)^n: the difference falls as
// (1 + n h_i A t / (rho c V))^(-1/n). Bejan and Kraus, Heat Transfer Handbook, 2003, eq. 3.286.
TEST(CoolingGridTest, FreeConvectionCoolsAsTheHandbookSays) {
    constexpr double power = 0.25;
    constexpr double depth = 0.05;
    constexpr double scale = 1.8; // W/(m2 K^1.25)
    const Solid mixed{1e5, 4.2e6};
    FaceLosses faces;
    faces.top = SurfaceLoss::lookedUp(ambientC, startC, 1.0, [](double celsius) {
        return scale * std::pow(celsius - ambientC, 1.0 + power);
    });
    const double first = scale * std::pow(startC - ambientC, power);
    for (const double hours : {2.0, 8.0, 20.0}) {
        const CoolingGrid grid = after(
            hours * 3600, {{0.2, depth, 1.0, mixed.volumetricHeat}, 1, 4, startC}, faces, mixed);
        const double expected = std::pow(
            1.0 + power * first * hours * 3600 / (mixed.volumetricHeat * depth), -1.0 / power);
        EXPECT_NEAR(left(grid, startC, ambientC), expected, onePercent * expected) << hours;
    }
}

// Roberts and others, Food Prot. Trends 33:27, 2013 (chili and sauce), Olds and others, Food Nutr.
// Sci. 4:735, 2013: of uncovered steel pans of 2 and 3 inches only 2 inches in a walk-in freezer
// met both limits of the Food Code. The air's temperature and speed are not told: -23 °C and 25
// W/(m2 K) from both faces stand for a freezer with fans. The food is thick and only conducts.
TEST(CoolingGridTest, TwoInchesInAFreezerPassAndThreeDoNot) {
    FaceLosses faces;
    faces.top = faces.floor = SurfaceLoss::newton(25.0, -23.0);
    const auto hoursTo = [&faces](double inches, double celsius) {
        CoolingGrid grid({0.14, inches * 0.0254, 1.0, gel.volumetricHeat}, 1, 20, 57.2);
        const Conduction conduction{gel.conductivity, gel.conductivity, 0.0, 1.0};
        double seconds = 0.0;
        while (grid.warmestC() > celsius)
            seconds += grid.step(60.0, 0.05, faces, conduction);
        return seconds / 3600;
    };
    EXPECT_LT(hoursTo(2, 21.1), 2.0);
    EXPECT_LT(hoursTo(2, 5.0), 6.0);
    EXPECT_GT(hoursTo(3, 21.1), 2.0);
}

TEST(CoolingGridTest, NothingGetsLostWithoutAWayOut) {
    FaceLosses faces;
    const CoolingGrid grid =
        after(3600, {{0.1, 0.1, 1.0, gel.volumetricHeat}, 6, 10, startC}, faces, gel);
    EXPECT_DOUBLE_EQ(grid.meanC(), startC);
    EXPECT_DOUBLE_EQ(grid.watts(faces), 0.0);
}

TEST(CoolingGridTest, LooksUpALawAndGoesOnStraightOutside) {
    const SurfaceLoss loss =
        SurfaceLoss::lookedUp(10, 20, 5, [](double celsius) { return celsius * celsius; });
    EXPECT_DOUBLE_EQ(loss.at(10), 100);
    EXPECT_DOUBLE_EQ(loss.at(15), 225);
    EXPECT_DOUBLE_EQ(loss.at(12.5), 162.5); // on the line between
    EXPECT_DOUBLE_EQ(loss.at(30), 400 + 10 * 35);
    EXPECT_DOUBLE_EQ(loss.at(0), 100 - 10 * 25);
    EXPECT_DOUBLE_EQ(loss.slope(17), 35);
    EXPECT_DOUBLE_EQ(loss.times(2).at(15), 450);
    EXPECT_DOUBLE_EQ(SurfaceLoss::newton(8, 20).at(50), 240);
}

TEST(CoolingGridTest, LiquidSetsOnALogarithmicScale) {
    const Conduction conduction{0.6, 60.0, 15.0, 5.0};
    EXPECT_DOUBLE_EQ(conduction.at(14), 0.6);
    EXPECT_DOUBLE_EQ(conduction.at(15), 0.6);
    EXPECT_NEAR(conduction.at(17.5), 6.0, 1e-12);
    EXPECT_DOUBLE_EQ(conduction.at(20), 60.0);
    EXPECT_DOUBLE_EQ(conduction.at(95), 60.0);
}

} // namespace ladlework::kitchen
