#include "quantity/measure.h"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

constexpr MeasureSystem us = MeasureSystem::UsCustomary;
constexpr MeasureSystem metric = MeasureSystem::Metric;

// The marks are common practice; what is checked is that the printed text names an amount that
// lies as near as the comment of measure.h says.

TEST(MeasurePrinterTest, PrintsUsVolumes) {
    const std::pair<Volume, const char*> cases[] = {
        {Volume(), "0 cups"},
        {Volume::fromDrops(0.01), "1 drop"},
        {Volume::fromDrops(1), "1 drop"},
        {Volume::fromDrops(3.2), "3 drops"},
        {Volume::fromDrops(12), "12 drops"},
        {Volume::fromTeaspoons(0.125), "⅛ tsp"},
        {Volume::fromTeaspoons(0.25), "¼ tsp"},
        {Volume::fromTeaspoons(0.5), "½ tsp"},
        {Volume::fromTeaspoons(0.75), "¾ tsp"},
        {Volume::fromTeaspoons(1), "1 tsp"},
        {Volume::fromTeaspoons(1.5), "1½ tsp"},
        {Volume::fromTeaspoons(3), "1 tbsp"},
        {Volume::fromTablespoons(1.5), "1½ tbsp"},
        {Volume::fromTablespoons(2), "2 tbsp"},
        {Volume::fromTablespoons(3.5), "3½ tbsp"},
        {Volume::fromTablespoons(4), "¼ cup"},
        {Volume::fromCups(1.0 / 3), "⅓ cup"},
        {Volume::fromCups(0.5), "½ cup"},
        {Volume::fromCups(2.0 / 3), "⅔ cup"},
        {Volume::fromCups(0.75), "¾ cup"},
        {Volume::fromCups(1), "1 cup"},
        {Volume::fromMillilitres(240), "1 cup"},
        {Volume::fromCups(4.0 / 3), "1⅓ cups"},
        {Volume::fromCups(1.5), "1½ cups"},
        {Volume::fromCups(2.3), "2¼ cups"},
        {Volume::fromCups(4), "4 cups"},
        {Volume::fromCups(6), "6 cups"},
        {Volume::fromCups(7), "1¾ quarts"},
        {Volume::fromQuarts(2), "2 quarts"},
        {Volume::fromQuarts(3.5), "3½ quarts"},
        {Volume::fromQuarts(9.75), "9¾ quarts"},
        {Volume::fromQuarts(10.3), "10½ quarts"},
        {Volume::fromQuarts(20.6), "21 quarts"},
        {Volume::fromLitres(200), "211 quarts"},
        {Volume::fromLitres(10000), "10567 quarts"},
        {Volume::fromCups(-1.5), "-1½ cups"},
    };
    for (const auto& [volume, text] : cases)
        EXPECT_EQ(printVolume(volume, us).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsMetricVolumes) {
    const std::pair<double, const char*> cases[] = {
        {0, "0 mL"},       {0.001, "1 drop"}, {0.16, "3 drops"}, {0.95, "19 drops"},
        {1, "1 mL"},       {2.4, "2.5 mL"},   {5, "5 mL"},       {14.8, "15 mL"},
        {15, "15 mL"},     {29.57, "30 mL"},  {62, "60 mL"},     {236.588, "240 mL"},
        {350, "350 mL"},   {946, "950 mL"},   {986, "975 mL"},   {990, "1 L"},
        {1000, "1 L"},     {1449, "1.45 L"},  {2400, "2.4 L"},   {7480, "7.5 L"},
        {20300, "20.5 L"}, {200000, "200 L"}, {-350, "-350 mL"},
    };
    for (const auto& [millilitres, text] : cases)
        EXPECT_EQ(printVolume(Volume::fromMillilitres(millilitres), metric).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsUsMasses) {
    const std::pair<Mass, const char*> cases[] = {
        {Mass(), "0 oz"},
        {Mass::fromGrams(0.001), "0.1 g"},
        {Mass::fromGrams(0.34), "0.3 g"},
        {Mass::fromGrams(6), "6 g"},
        {Mass::fromOunces(0.25), "¼ oz"},
        {Mass::fromOunces(6), "6 oz"},
        {Mass::fromOunces(6.3), "6¼ oz"},
        {Mass::fromOunces(15.75), "15¾ oz"},
        {Mass::fromOunces(15.95), "1 lb"},
        {Mass::fromPounds(1), "1 lb"},
        {Mass::fromPounds(3.125), "3 lb 2 oz"},
        {Mass::fromPounds(3) + Mass::fromOunces(15.6), "4 lb"},
        {Mass::fromPounds(99.99), "100 lb"},
        {Mass::fromPounds(103), "105 lb"},
        {Mass::fromKilograms(200), "440 lb"},
        {Mass::fromOunces(-6), "-6 oz"},
    };
    for (const auto& [mass, text] : cases)
        EXPECT_EQ(printMass(mass, us).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsMetricMasses) {
    const std::pair<double, const char*> cases[] = {
        {0, "0 g"},         {0.01, "0.1 g"},   {0.34, "0.3 g"},   {2.4, "2.5 g"},
        {342, "342 g"},     {350.3, "350 g"},  {999.4, "999 g"},  {999.6, "1 kg"},
        {1000, "1 kg"},     {1450, "1.45 kg"}, {1434, "1.43 kg"}, {12340, "12.3 kg"},
        {200000, "200 kg"}, {-350, "-350 g"},
    };
    for (const auto& [grams, text] : cases)
        EXPECT_EQ(printMass(Mass::fromGrams(grams), metric).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsDurations) {
    const std::pair<double, const char*> cases[] = {
        {0, "0 min"},         {0.01, "1 min"}, {0.6, "1 min"}, {45, "45 min"},
        {59.4, "59 min"},     {59.6, "1 h"},   {60, "1 h"},    {61, "1 h 1 min"},
        {150, "2 h 30 min"},  {180, "3 h"},    {1440, "24 h"}, {10080, "168 h"},
        {-90, "-1 h 30 min"},
    };
    for (const auto& [minutes, text] : cases)
        EXPECT_EQ(printDuration(Duration::fromMinutes(minutes)).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsTemperatures) {
    const std::pair<double, const char*> fahrenheit[] = {
        {165, "165 °F"}, {164.6, "165 °F"}, {0, "0 °F"}, {-0.3, "0 °F"}, {-4, "-4 °F"}};
    for (const auto& [degrees, text] : fahrenheit)
        EXPECT_EQ(printTemperature(Temperature::fromFahrenheit(degrees), us).toStdString(), text);
    const std::pair<double, const char*> celsius[] = {
        {74, "74 °C"}, {73.9, "74 °C"}, {0, "0 °C"}, {-0.3, "0 °C"}, {-18, "-18 °C"}};
    for (const auto& [degrees, text] : celsius)
        EXPECT_EQ(printTemperature(Temperature::fromCelsius(degrees), metric).toStdString(), text);
    EXPECT_EQ(printTemperature(Temperature::fromFahrenheit(165), metric), QStringLiteral("74 °C"));
}

TEST(MeasurePrinterTest, PrintsLengths) {
    const std::pair<double, const char*> inches[] = {
        {0, "0 in"},   {0.01, "⅛ in"},   {0.4, "⅜ in"},    {0.85, "⅞ in"},     {2.2, "2¼ in"},
        {11, "11 in"}, {11.5, "11½ in"}, {14.6, "14½ in"}, {62400, "5,200 ft"}};
    for (const auto& [length, text] : inches)
        EXPECT_EQ(printLength(Length::fromInches(length), us).toStdString(), text);
    const std::pair<double, const char*> centimetres[] = {
        {0, "0 cm"},       {0.001, "0.1 cm"},   {5.04, "5 cm"},    {9.96, "10 cm"}, {28, "28 cm"},
        {28.4, "28.5 cm"}, {160000, "1,600 m"}, {1e6, "10,000 m"}, {1040, "10 m"}};
    for (const auto& [length, text] : centimetres)
        EXPECT_EQ(printLength(Length::fromCentimetres(length), metric).toStdString(), text);
}

TEST(MeasurePrinterTest, PrintsAltitudes) {
    const std::pair<double, const char*> cases[] = {
        {0, "0 m"}, {3.2, "3 m"}, {1609.344, "1,609 m"}, {-30, "-30 m"}, {-0.2, "0 m"}};
    for (const auto& [metres, text] : cases)
        EXPECT_EQ(printAltitude(Length::fromMetres(metres), metric).toStdString(), text);
    EXPECT_EQ(printAltitude(Length::fromMetres(1609.344), us), QStringLiteral("5,280 ft"));
    EXPECT_EQ(printAltitude(Length::fromFeet(12), us), QStringLiteral("12 ft"));
}

TEST(MeasurePrinterTest, PrintsADashForWhatIsNoNumber) {
    const QString dash(QChar(0x2014));
    for (const double odd : {std::numeric_limits<double>::quiet_NaN(),
                             std::numeric_limits<double>::infinity(), -1e300}) {
        EXPECT_EQ(printVolume(Volume::fromMillilitres(odd), us), dash);
        EXPECT_EQ(printMass(Mass::fromGrams(odd), metric), dash);
        EXPECT_EQ(printDuration(Duration::fromMinutes(odd)), dash);
        EXPECT_EQ(printTemperature(Temperature::fromCelsius(odd), us), dash);
        EXPECT_EQ(printLength(Length::fromCentimetres(odd), us), dash);
        EXPECT_EQ(printAltitude(Length::fromCentimetres(odd), metric), dash);
    }
}

struct VolumeRange {
    double low;
    double best;
    double high;
    const char* text;
};

TEST(MeasurePrinterTest, PrintsAVolumeRangeInOneUnit) {
    constexpr double cup = 236.5882365;
    const VolumeRange american[] = {
        {4.25 * cup, 7 * cup, 8 * cup, "1¾ quarts (1 to 2)"},
        {3 * cup, 5 * cup, 9 * cup, "5 cups (3 to 9)"},
        {0.5 * cup, 1.5 * cup, 7.5 * cup, "1½ cups (½ to 7½)"},
        {30 * cup, 36 * cup, 44 * cup, "9 quarts (7½ to 11)"},
        {0, 4 * cup, 5 * cup, "4 cups (0 to 5)"},
        {4 * cup, 4 * cup, 4 * cup, "4 cups"},
        {3.99 * cup, 4 * cup, 4.01 * cup, "4 cups"},
        {0, 0, 0, "0 cups"},
        {0, 0, 2 * cup, "0 cups (0 to 2)"},
    };
    for (const VolumeRange& row : american)
        EXPECT_EQ(printVolumeRange(Volume::fromMillilitres(row.low),
                                   Volume::fromMillilitres(row.best),
                                   Volume::fromMillilitres(row.high), us)
                      .toStdString(),
                  row.text);
    const VolumeRange metricRows[] = {
        {820, 950, 1210, "950 mL (825 to 1200)"},
        {940, 1450, 2030, "1.45 L (0.95 to 2.05)"},
        {4000, 4600, 5230, "4.6 L (4 to 5.2)"},
        {12, 25, 41, "25 mL (12 to 40)"},
    };
    for (const VolumeRange& row : metricRows)
        EXPECT_EQ(printVolumeRange(Volume::fromMillilitres(row.low),
                                   Volume::fromMillilitres(row.best),
                                   Volume::fromMillilitres(row.high), metric)
                      .toStdString(),
                  row.text);
}

TEST(MeasurePrinterTest, PrintsAVolumeInTheUnitOfAnother) {
    const auto cups = [](double count) {
        return Volume::fromCups(count);
    };
    EXPECT_EQ(printVolumeLike(cups(4), cups(16), us), QStringLiteral("1 quart"));
    EXPECT_EQ(printVolumeLike(cups(16), cups(2), us), QStringLiteral("16 cups"));
    EXPECT_EQ(printVolumeLike(Volume::fromLitres(0.9), Volume::fromLitres(4), metric),
              QStringLiteral("0.9 L"));
    EXPECT_EQ(printVolumeLike(cups(4), Volume(), us), printVolume(cups(4), us));
}

TEST(MeasurePrinterTest, PrintsAMassRangeInOneUnit) {
    const auto printed = [](double low, double best, double high, MeasureSystem system) {
        return printMassRange(Mass::fromGrams(low), Mass::fromGrams(best), Mass::fromGrams(high),
                              system)
            .toStdString();
    };
    EXPECT_EQ(printed(400, 992.2, 1134, us), "2 lb 3 oz (14 oz to 2 lb 8 oz)");
    EXPECT_EQ(printed(170, 283.5, 600, us), "10 oz (6 to 21¼)");
    EXPECT_EQ(printed(300, 350, 402, metric), "350 g (300 to 402)");
    EXPECT_EQ(printed(880, 1100, 1320, metric), "1.1 kg (0.88 to 1.32)");
    EXPECT_EQ(printed(0, std::nan(""), 1, metric), QString(QChar(0x2014)).toStdString());
}

TEST(MeasurePrinterTest, RoundsMassesToWhatItPrints) {
    EXPECT_EQ(roundToKitchen(Mass(), us), Mass());
    EXPECT_EQ(roundToKitchen(Mass::fromGrams(0.01), us), Mass::fromGrams(0.1));
    EXPECT_EQ(roundToKitchen(Mass::fromPounds(3) + Mass::fromOunces(2.4), us),
              Mass::fromPounds(3.125));
    EXPECT_EQ(roundToKitchen(Mass::fromGrams(1434), metric), Mass::fromGrams(1430));
    EXPECT_EQ(roundToKitchen(Mass::fromGrams(-342.4), metric), Mass::fromGrams(-342));
}

TEST(MeasurePrinterTest, RoundsToWhatItPrints) {
    EXPECT_EQ(roundToKitchen(Volume(), us), Volume());
    EXPECT_EQ(roundToKitchen(Volume::fromMillilitres(240), us), Volume::fromCups(1));
    EXPECT_EQ(roundToKitchen(Volume::fromMillilitres(-240), us), Volume::fromCups(-1));
    EXPECT_EQ(roundToKitchen(Volume::fromCups(1), metric), Volume::fromMillilitres(240));
    EXPECT_EQ(roundToKitchen(Volume::fromMillilitres(0.001), us), Volume::fromDrops(1));
    // Midway between the marks 30 and 35 mL.
    EXPECT_EQ(roundToKitchen(Volume::fromMillilitres(25), metric), Volume::fromMillilitres(25));
    EXPECT_EQ(roundToKitchen(Volume::fromMillilitres(32.5), metric), Volume::fromMillilitres(35));
    EXPECT_TRUE(
        std::isnan(roundToKitchen(Volume::fromMillilitres(std::nan("")), us).toMillilitres()));
}

} // namespace
} // namespace ladlework::quantity
