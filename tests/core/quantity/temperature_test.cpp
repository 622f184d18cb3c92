#include "quantity/temperature.h"

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

/// The fixed points of the two scales, and pairs that USDA FSIS and the FDA Food Code print
/// rounded to the whole degree.
TEST(TemperatureTest, AgreesWithThePublishedPairs) {
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(32).toCelsius(), 0.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(212).toCelsius(), 100.0);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(-40).toCelsius(), -40.0);
    EXPECT_NEAR(Temperature::fromFahrenheit(165).toCelsius(), 74, 0.5);
    EXPECT_NEAR(Temperature::fromFahrenheit(135).toCelsius(), 57, 0.5);
    EXPECT_NEAR(Temperature::fromFahrenheit(70).toCelsius(), 21, 0.5);
    EXPECT_NEAR(Temperature::fromFahrenheit(41).toCelsius(), 5, 0.5);
    EXPECT_DOUBLE_EQ(Temperature::fromCelsius(0).toKelvin(), 273.15);
    EXPECT_DOUBLE_EQ(Temperature::fromKelvin(373.15).toCelsius(), 100.0);
}

TEST(TemperatureTest, ReadsBackAndCompares) {
    for (double degrees = -80; degrees <= 600; degrees += 0.25)
        ASSERT_NEAR(Temperature::fromFahrenheit(degrees).toFahrenheit(), degrees, 1e-10);
    EXPECT_LT(Temperature::fromFahrenheit(40), Temperature::fromCelsius(5));
    EXPECT_EQ(Temperature(), Temperature::fromCelsius(0));
}

} // namespace
} // namespace ladlework::quantity
