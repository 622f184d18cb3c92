#include "quantity/measure.h"

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

constexpr MeasureSystem us = MeasureSystem::UsCustomary;
constexpr MeasureSystem metric = MeasureSystem::Metric;

// Exact sizes by NIST Handbook 44, Appendix C.
constexpr double cup = 236.5882365;
constexpr double tablespoon = 14.78676478125;
constexpr double teaspoon = 4.92892159375;
constexpr double fluidOunce = 29.5735295625;
constexpr double quart = 946.352946;
constexpr double pound = 453.59237;
constexpr double ounce = 28.349523125;

struct SoundCase {
    const char* text;
    MeasureSystem system;
    double base; ///< in mL, g, min, °C or cm
};

/// The largest relative difference that two ways of adding in double precision can make.
constexpr double rounding = 1e-12;

TEST(MeasureParserTest, ReadsVolumes) {
    const SoundCase cases[] = {
        {"1 1/2 cups", us, 1.5 * cup},
        {"1\u00bd cups", us, 1.5 * cup},
        {"1-1/2 Cup", us, 1.5 * cup},
        {"1.5cups", us, 1.5 * cup},
        {"1,5 C", us, 1.5 * cup},
        {"3/4", us, 0.75 * cup},
        {"2", us, 2 * cup},
        {"0", us, 0},
        {"0 cups", us, 0},
        {"350 ml", us, 350},
        {"1 tbsp", us, tablespoon},
        {"1 T", us, tablespoon},
        {"1 t", us, teaspoon},
        {"1 TSP", us, teaspoon},
        {"2 qt", us, 2 * quart},
        {"5 drops", us, 0.25},
        {"8 oz", us, 8 * fluidOunce},
        {"8 fl oz", us, cup},
        {"1 pint", us, 2 * cup},
        {"1 gallon", us, 16 * cup},
        {"1 cup 2 tbsp", us, cup + 2 * tablespoon},
        {"1 cup and 2 tbsp 1 tsp", us, cup + 2 * tablespoon + teaspoon},
        {"2 quarts, 1 cup", us, 2 * quart + cup},
        {"200 L", us, 200000},
        {"350", metric, 350},
        {"350 mL", metric, 350},
        {"2.4 L", metric, 2400},
        {"2,4 l", metric, 2400},
        {"1 L 250 ml", metric, 1250},
        {"3 dl", metric, 300},
        {"5 cl", metric, 50},
        {"1 tsp", metric, 5},
        {"1 tbsp", metric, 15},
        {"1 T", metric, 15},
        {"1 t", metric, 5},
        {"1 cup", metric, cup},
        {"1 cup 2 tbsp", metric, cup + 30},
        {"0,250 l", metric, 250},
        {"1 cc", metric, 1},
    };
    for (const SoundCase& c : cases) {
        SCOPED_TRACE(c.text);
        const Result<Volume> volume = parseVolume(QString::fromUtf8(c.text), c.system);
        ASSERT_TRUE(volume.has_value()) << volume.error().sentence.toStdString();
        EXPECT_NEAR(volume->toMillilitres(), c.base, c.base * rounding);
    }
}

TEST(MeasureParserTest, ReadsMasses) {
    const SoundCase cases[] = {
        {"3 lb 2 oz", us, 3 * pound + 2 * ounce},
        {"3lb2oz", us, 3 * pound + 2 * ounce},
        {"3 pounds and 2\u00bd ounces", us, 3 * pound + 2.5 * ounce},
        {"2 lbs", us, 2 * pound},
        {"2", us, 2 * pound},
        {"2 1/4", us, 2.25 * pound},
        {"6 OZ", us, 6 * ounce},
        {"350 g", us, 350},
        {"1.5 kg", us, 1500},
        {"0", metric, 0},
        {"350", metric, 350},
        {"1,45 kg", metric, 1450},
        {"1 kg 200 g", metric, 1200},
        {"1 lb", metric, pound},
        {"200 kg", metric, 200000},
        {"440 lb", us, 440 * pound},
    };
    for (const SoundCase& c : cases) {
        SCOPED_TRACE(c.text);
        const Result<Mass> mass = parseMass(QString::fromUtf8(c.text), c.system);
        ASSERT_TRUE(mass.has_value()) << mass.error().sentence.toStdString();
        EXPECT_NEAR(mass->toGrams(), c.base, c.base * rounding);
    }
}

TEST(MeasureParserTest, ReadsDurations) {
    const std::pair<const char*, double> cases[] = {
        {"3 h", 180},          {"3", 180},
        {"2 h 30", 150},       {"2h30m", 150},
        {"2 h 30 min", 150},   {"2:30", 150},
        {"0:05", 5},           {"12:00 h", 720},
        {"168:00", 10080},     {"90 min", 90},
        {"1\u00bd hours", 90}, {"1,5 h", 90},
        {"1 hr, 15 mins", 75}, {"0", 0},
        {"0 min", 0},          {"1 day", 1440},
        {"7 days", 10080},     {"1 day 2 h", 1560},
        {"168 h", 10080},      {"90 minutes", 90},
        {" 2:30 ", 150},
    };
    for (const auto& [text, minutes] : cases) {
        SCOPED_TRACE(text);
        const Result<Duration> duration = parseDuration(QString::fromUtf8(text));
        ASSERT_TRUE(duration.has_value()) << duration.error().sentence.toStdString();
        EXPECT_NEAR(duration->toMinutes(), minutes, minutes * rounding);
    }
}

TEST(MeasureParserTest, ReadsTemperatures) {
    const SoundCase cases[] = {
        {"165 F", us, 665.0 / 9},
        {"165", us, 665.0 / 9},
        {"165\u00b0F", us, 665.0 / 9},
        {"165 \u00b0 f", us, 665.0 / 9},
        {"165 degrees Fahrenheit", us, 665.0 / 9},
        {"165 deg F", us, 665.0 / 9},
        {"212\u00b0", us, 100},
        {"74 \u00b0C", us, 74},
        {"74 C", us, 74},
        {"74 \u00baC", us, 74},
        {"74 celsius", us, 74},
        {"0 F", us, -160.0 / 9},
        {"-4 F", us, -20},
        {"-5", metric, -5},
        {"\u22125 \u00b0C", metric, -5},
        {"74,5", metric, 74.5},
        {"98\u00bd", metric, 98.5},
        {"32 F", metric, 0},
        {"-60 C", metric, -60},
        {"300 C", metric, 300},
    };
    for (const SoundCase& c : cases) {
        SCOPED_TRACE(c.text);
        const Result<Temperature> read = parseTemperature(QString::fromUtf8(c.text), c.system);
        ASSERT_TRUE(read.has_value()) << read.error().sentence.toStdString();
        EXPECT_NEAR(read->toCelsius(), c.base, 1e-10);
    }
}

TEST(MeasureParserTest, ReadsLengths) {
    const SoundCase cases[] = {
        {"11 in", us, 27.94},        {"11", us, 27.94},          {"11 1/2\"", us, 29.21},
        {"5 ft 2 in", us, 157.48},   {"5'2\"", us, 157.48},      {"5\u20322\u2033", us, 157.48},
        {"28 cm", us, 28},           {"5,200 ft", us, 158496},   {"5200 ft", us, 158496},
        {"1 ft", metric, 30.48},     {"28", metric, 28},         {"28,5", metric, 28.5},
        {"285 mm", metric, 28.5},    {"1 m 5 cm", metric, 105},  {"1600 m", metric, 160000},
        {"1,600 m", metric, 160000}, {"1.6 km", metric, 160000}, {"0", metric, 0},
        {"10 km", metric, 1e6},
    };
    for (const SoundCase& c : cases) {
        SCOPED_TRACE(c.text);
        const Result<Length> length = parseLength(QString::fromUtf8(c.text), c.system);
        ASSERT_TRUE(length.has_value()) << length.error().sentence.toStdString();
        EXPECT_NEAR(length->toCentimetres(), c.base, c.base * rounding);
    }
}

TEST(MeasureParserTest, ReadsABareAltitudeInFeetOrMetres) {
    const SoundCase cases[] = {
        {"5200", us, 158496},        {"5,200", us, 158496}, {"5,280 feet", us, 160934.4},
        {"1600 m", us, 160000},      {"0", us, 0},          {"1600", metric, 160000},
        {"5200 ft", metric, 158496},
    };
    for (const SoundCase& c : cases) {
        SCOPED_TRACE(c.text);
        const Result<Length> altitude = parseAltitude(QString::fromUtf8(c.text), c.system);
        ASSERT_TRUE(altitude.has_value()) << altitude.error().sentence.toStdString();
        EXPECT_NEAR(altitude->toCentimetres(), c.base, c.base * rounding);
    }
}

/// Every refusal is BadInput, quotes the text, and says what would be understood.
template <class Value>
void expectRefused(const Result<Value>& result, const char* text, const char* example) {
    SCOPED_TRACE(text);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().kind, Problem::Kind::BadInput);
    const QString quoted = QLatin1Char('"') + QString::fromUtf8(text).simplified();
    EXPECT_TRUE(
        result.error().sentence.contains(quoted.first(std::min<qsizetype>(20, quoted.size()))))
        << result.error().sentence.toStdString();
    EXPECT_TRUE(result.error().sentence.contains(QString::fromUtf8(example)))
        << result.error().sentence.toStdString();
}

TEST(MeasureParserTest, ABareNumberKeepsTheUnitThatWasShown) {
    struct ShownCase {
        const char* text;
        const char* shown;
        MeasureSystem system;
        double base;
    };
    const ShownCase volumes[] = {
        {"3", "2\u00be quarts", us, 3 * quart}, {"3", "", us, 3 * cup},
        {"3 cups", "2 quarts", us, 3 * cup},    {"1/2", "2 tbsp", us, tablespoon / 2},
        {"2.5", "1.4 L", metric, 2500},         {"250", "350 mL", metric, 250},
        {"4", "no amount at all", us, 4 * cup}, {"4", "\u2014", us, 4 * cup},
    };
    for (const ShownCase& c : volumes) {
        SCOPED_TRACE(c.text);
        const Result<Volume> volume =
            parseVolume(QString::fromUtf8(c.text), c.system, QString::fromUtf8(c.shown));
        ASSERT_TRUE(volume);
        EXPECT_NEAR(volume->toMillilitres(), c.base, c.base * rounding);
    }
    EXPECT_NEAR(parseMass(u"4"_qs, us, u"3 lb 2 oz"_qs)->toGrams(), 4 * pound, 1e-9);
    EXPECT_NEAR(parseMass(u"4"_qs, us, u"6 oz"_qs)->toGrams(), 4 * ounce, 1e-9);
    EXPECT_NEAR(parseMass(u"1.5"_qs, metric, u"2.4 kg"_qs)->toGrams(), 1500, 1e-9);
    EXPECT_NEAR(parseLength(u"11"_qs, metric, u"28 cm"_qs)->toCentimetres(), 11, 1e-9);
    EXPECT_NEAR(parseAltitude(u"5600"_qs, us, u"5,200 ft"_qs)->toFeet(), 5600, 1e-9);
    EXPECT_NEAR(parseTemperature(u"20"_qs, us, u"70 \u00b0C"_qs)->toCelsius(), 20, 1e-9);
    EXPECT_NEAR(parseTemperature(u"68"_qs, us, u"70 \u00b0F"_qs)->toCelsius(), 20, 1e-9);
}

TEST(MeasureParserTest, ABareTimeKeepsTheUnitThatWasShown) {
    EXPECT_EQ(parseDuration(u"90"_qs, u"45 min"_qs)->toMinutes(), 90);
    EXPECT_EQ(parseDuration(u"3"_qs, u"2 h 30 min"_qs)->toMinutes(), 180);
    EXPECT_EQ(parseDuration(u"24"_qs, u"3 h"_qs)->toMinutes(), 24 * 60);
    EXPECT_EQ(parseDuration(u"90 min"_qs, u"3 h"_qs)->toMinutes(), 90);
    EXPECT_EQ(parseDuration(u"1:30"_qs, u"3 h"_qs)->toMinutes(), 90);
    EXPECT_EQ(parseDuration(u"48 h"_qs, u"3 h"_qs)->toMinutes(), 48 * 60);
    for (const QString& text : {u"90"_qs, u"25"_qs, u"24.5"_qs}) {
        const Result<Duration> refused = parseDuration(text, u"2 h 30 min"_qs);
        ASSERT_FALSE(refused) << text.toStdString();
        EXPECT_TRUE(refused.error().sentence.contains(text + u" min"_qs));
    }
}

TEST(MeasureParserTest, RefusesWhatIsNoVolume) {
    for (const char* text : {"",
                             "   ",
                             "-1 cup",
                             "\u22121",
                             "cup",
                             "one cup",
                             "1 cupp",
                             "1 lb",
                             "1 g",
                             "1 cup water",
                             "1 1/0 cups",
                             "1/0",
                             "1 3/2 cups",
                             "1 1 cups",
                             "1-2 cups",
                             "1.2.3 ml",
                             "1 tbsp 1 cup",
                             "1 cup 1 cup",
                             "1 cup 2",
                             "1,500 ml",
                             "1/2/3 cup",
                             "1e3 ml",
                             "nan",
                             "inf ml",
                             "0x10 ml",
                             "201 L",
                             "200.001 L",
                             "53 gallons",
                             "99999999999999999999 ml",
                             "1 cup!",
                             "<b>1</b>"}) {
        expectRefused(parseVolume(QString::fromUtf8(text), us), text, "\"1 1/2 cups\"");
        expectRefused(parseVolume(QString::fromUtf8(text), metric), text, "\"350 mL\"");
    }
    expectRefused(parseVolume(QStringLiteral("900"), us), "900", "200 L");
    const QByteArray endless(100000, '9');
    expectRefused(parseVolume(QString::fromLatin1(endless), us), endless.constData(),
                  "\"1 1/2 cups\"");
}

TEST(MeasureParserTest, RefusesWhatIsNoMass) {
    for (const char* text : {"", "-1 lb", "lb", "1 cup", "2 oz 3 lb", "3 lb 2", "1 lb 1 lb",
                             "1,250 kg", "201 kg", "442 lb", "1 stone", "3 lb -2 oz", "1.5.2 kg"}) {
        expectRefused(parseMass(QString::fromUtf8(text), us), text, "\"3 lb 2 oz\"");
        expectRefused(parseMass(QString::fromUtf8(text), metric), text, "\"1.5 kg\"");
    }
}

TEST(MeasureParserTest, RefusesWhatIsNoDuration) {
    for (const char* text : {"", "-1 h", "-2:30", "2:60", "2:5", "2:300", ":30", "2:", "1:30:00",
                             "30 min 2 h", "2 min 30", "2 h 30 15", "169 h", "168:01", "8 days",
                             "noon", "2 weeks", "1,000 min", "2.5:30"})
        expectRefused(parseDuration(QString::fromUtf8(text)), text, "\"2 h 30 min\"");
}

TEST(MeasureParserTest, RefusesWhatIsNoTemperature) {
    for (const char* text : {"", "-", "--5", "hot", "F", "74 K", "74 degrees hot", "1 C 2 F",
                             "165 F 3", "-61 C", "301 C", "573 F", "-77 F", "1e2 C", "1,000 F"}) {
        expectRefused(parseTemperature(QString::fromUtf8(text), us), text, "\"165 °F\"");
        expectRefused(parseTemperature(QString::fromUtf8(text), metric), text, "\"74 °C\"");
    }
}

TEST(MeasureParserTest, RefusesWhatIsNoLength) {
    for (const char* text : {"", "-1 in", "2 in 5 ft", "5 ft 2", "1 mile", "11 lb", "10.001 km",
                             "32,809 ft", "1,60,0 m", "wide"}) {
        expectRefused(parseLength(QString::fromUtf8(text), us), text, "\"5200 ft\"");
        expectRefused(parseAltitude(QString::fromUtf8(text), metric), text, "\"1600 m\"");
    }
}

TEST(MeasureParserTest, SaysWhatIsWrong) {
    const std::pair<QString, QString> cases[] = {
        {QString(), QStringLiteral("\"\" says no amount; write a weight such as \"350 g\", "
                                   "\"1.5 kg\" or \"3 lb\".")},
        {QStringLiteral("-2 g"), QStringLiteral("\"-2 g\" is below zero; write a weight such as "
                                                "\"350 g\", \"1.5 kg\" or \"3 lb\".")},
        {QStringLiteral("2 stone"),
         QStringLiteral("\"stone\" in \"2 stone\" is no unit known here; write a weight such as "
                        "\"350 g\", \"1.5 kg\" or \"3 lb\".")},
        {QStringLiteral("300 kg"),
         QStringLiteral("\"300 kg\" is more than a kitchen has (200 kg at most); write a weight "
                        "such as \"350 g\", \"1.5 kg\" or \"3 lb\".")},
        {QStringLiteral("1,250 kg"),
         QStringLiteral("The comma in \"1,250 kg\" could mean thousands or a decimal; leave it out "
                        "or write a point, as in a weight such as \"350 g\", \"1.5 kg\" or \"3 "
                        "lb\".")},
        {QStringLiteral("2 g 1 kg"),
         QStringLiteral("\"2 g 1 kg\" does not go from the larger unit to the smaller; write a "
                        "weight such as \"350 g\", \"1.5 kg\" or \"3 lb\".")},
    };
    for (const auto& [text, sentence] : cases)
        EXPECT_EQ(parseMass(text, metric).error().sentence, sentence);
}

TEST(MeasureParserTest, QuotesALongTextShortened) {
    const QString text(500, QLatin1Char('x'));
    const QString sentence = parseVolume(text, us).error().sentence;
    EXPECT_TRUE(sentence.contains(QString(60, QLatin1Char('x')) + QChar(0x2026)));
    EXPECT_LT(sentence.size(), 200);
}

} // namespace
} // namespace ladlework::quantity
