#include "kitchen/boiling.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace ladlework::kitchen {

using quantity::Length;
using quantity::Temperature;

// IAPWS R7-97(2012), Table 35: computer-program verification values, exact to the digits given.
TEST(BoilingTest, SaturationPressureGivesTheVerificationValue) {
    EXPECT_NEAR(saturationPressurePa(Temperature::fromKelvin(300)), 0.353658941e4, 1e-5);
}

// IAPWS R7-97(2012), Table 36, exact to the digits given.
TEST(BoilingTest, SaturationTemperatureGivesTheVerificationValues) {
    EXPECT_NEAR(saturationTemperature(0.1e6).toKelvin(), 0.372755919e3, 1e-6);
    EXPECT_NEAR(saturationTemperature(1e6).toKelvin(), 0.453035632e3, 1e-6);
    EXPECT_NEAR(saturationTemperature(10e6).toKelvin(), 0.584149488e3, 1e-6);
}

TEST(BoilingTest, PressureAndTemperatureAreInverse) {
    for (double celsius = 5; celsius < 100; celsius += 5) {
        const double pressure = saturationPressurePa(Temperature::fromCelsius(celsius));
        EXPECT_NEAR(saturationTemperature(pressure).toCelsius(), celsius, 1e-6);
    }
}

// ICAO Doc 7488/3 (1993), table rows at geometric heights; half of the last digit printed.
TEST(BoilingTest, StandardPressureGivesTheTableRows) {
    EXPECT_NEAR(standardPressurePa(Length::fromMetres(0)), 1.01325e5, 0.5);
    EXPECT_NEAR(standardPressurePa(Length::fromMetres(1000)), 8.98763e4, 0.05);
    EXPECT_NEAR(standardPressurePa(Length::fromMetres(2000)), 7.95014e4, 0.05);
}

TEST(BoilingTest, AltitudeOutsideTheRangeIsClamped) {
    EXPECT_EQ(standardPressurePa(Length::fromMetres(9000)),
              standardPressurePa(Length::fromMetres(6000)));
    EXPECT_EQ(standardPressurePa(Length::fromMetres(-900)),
              standardPressurePa(Length::fromMetres(-500)));
}

struct AltitudeRow {
    double feet;
    double fahrenheit;
};

// An altitude table after NOAA and NASA figures. It is rounded to 0.1 °F and set to 212.0 °F at sea
// level where IAPWS-IF97 gives 211.95, hence 0.18 °F (0.1 °C). Its rows of 12,000 and 14,000 ft
// (189.8 and 185.9 °F) run 0.2 and 0.4 °F below both standards and are left out.
constexpr std::array table{AltitudeRow{0, 212},      AltitudeRow{500, 211.1},
                           AltitudeRow{1000, 210.2}, AltitudeRow{2000, 208.4},
                           AltitudeRow{5000, 203},   AltitudeRow{6000, 201.1},
                           AltitudeRow{8000, 197.4}, AltitudeRow{10000, 193.6}};

TEST(BoilingTest, AgreesWithAPublishedAltitudeTable) {
    for (const AltitudeRow& row : table)
        EXPECT_NEAR(boilingPoint(Length::fromFeet(row.feet)).toFahrenheit(), row.fahrenheit, 0.18)
            << row.feet << " ft";
}

TEST(BoilingTest, FallsWithAltitude) {
    double last = 200;
    for (double metres = -500; metres <= 6000; metres += 100) {
        const double now = boilingPoint(Length::fromMetres(metres)).toCelsius();
        EXPECT_LT(now, last);
        last = now;
    }
}

} // namespace ladlework::kitchen
