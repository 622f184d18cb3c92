#include "quantity/measure.h"

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

constexpr MeasureSystem systems[] = {MeasureSystem::UsCustomary, MeasureSystem::Metric};

/// Goes through the amounts from `least` to `most`, by even steps and by even ratios, so that
/// drops and cauldrons are both met densely.
template <class Check>
void sweep(double least, double most, const Check& check) {
    constexpr int steps = 2000;
    for (int i = 0; i <= steps; ++i)
        check(least + (most - least) * i / steps);
    const double smallest = most * 1e-9;
    for (double amount = smallest; amount <= most; amount *= 1.005)
        check(amount);
    check(most);
}

template <class Value, class Print, class Parse>
void expectSameText(const Value& value, const Print& print, const Parse& parse) {
    const QString printed = print(value);
    const Result<Value> read = parse(printed);
    ASSERT_TRUE(read.has_value()) << read.error().sentence.toStdString();
    ASSERT_EQ(print(*read).toStdString(), printed.toStdString());
}

TEST(MeasureRoundTripTest, Volumes) {
    for (const MeasureSystem system : systems)
        sweep(0, 200000, [system](double millilitres) {
            expectSameText(
                Volume::fromMillilitres(millilitres),
                [system](Volume v) { return printVolume(v, system); },
                [system](const QString& t) { return parseVolume(t, system); });
        });
}

TEST(MeasureRoundTripTest, VolumesAreReadAsRoundedToTheKitchen) {
    for (const MeasureSystem system : systems)
        sweep(0, 200000, [system](double millilitres) {
            const Volume volume = Volume::fromMillilitres(millilitres);
            const Volume rounded = roundToKitchen(volume, system);
            const Result<Volume> read = parseVolume(printVolume(volume, system), system);
            ASSERT_TRUE(read.has_value());
            ASSERT_NEAR(read->toMillilitres(), rounded.toMillilitres(),
                        1e-12 * rounded.toMillilitres());
            ASSERT_EQ(printVolume(rounded, system), printVolume(volume, system));
        });
}

TEST(MeasureRoundTripTest, RoundingIsMonotoneAndSettles) {
    for (const MeasureSystem system : systems) {
        double last = 0.0;
        for (double millilitres = 1e-4; millilitres < 200000; millilitres *= 1.0005) {
            const Volume rounded = roundToKitchen(Volume::fromMillilitres(millilitres), system);
            ASSERT_GE(rounded.toMillilitres(), last);
            ASSERT_EQ(roundToKitchen(rounded, system), rounded);
            last = rounded.toMillilitres();
        }
    }
}

TEST(MeasureRoundTripTest, Masses) {
    for (const MeasureSystem system : systems)
        sweep(0, 200000, [system](double grams) {
            expectSameText(
                Mass::fromGrams(grams), [system](Mass m) { return printMass(m, system); },
                [system](const QString& t) { return parseMass(t, system); });
        });
}

TEST(MeasureRoundTripTest, Durations) {
    sweep(0, 7 * 24 * 60, [](double minutes) {
        expectSameText(Duration::fromMinutes(minutes), printDuration,
                       [](const QString& t) { return parseDuration(t); });
    });
}

TEST(MeasureRoundTripTest, Temperatures) {
    for (const MeasureSystem system : systems)
        for (double celsius = -60; celsius <= 300; celsius += 0.05)
            expectSameText(
                Temperature::fromCelsius(std::min(celsius, 300.0)),
                [system](Temperature t) { return printTemperature(t, system); },
                [system](const QString& t) { return parseTemperature(t, system); });
}

TEST(MeasureRoundTripTest, LengthsAndAltitudes) {
    for (const MeasureSystem system : systems)
        sweep(0, 1e6, [system](double centimetres) {
            const Length length = Length::fromCentimetres(centimetres);
            expectSameText(
                length, [system](Length l) { return printLength(l, system); },
                [system](const QString& t) { return parseLength(t, system); });
            expectSameText(
                length, [system](Length l) { return printAltitude(l, system); },
                [system](const QString& t) { return parseAltitude(t, system); });
        });
}

} // namespace
} // namespace ladlework::quantity
