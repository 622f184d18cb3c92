#include "quantity/measure_units.h"

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

struct NameCase {
    const char* names; ///< parted by |
    Measured measured;
    Unit unit;
};

TEST(MeasureUnitsTest, KnowsTheNamesThatPeopleType) {
    const NameCase cases[] = {
        {"drop|drops|DROPS", Measured::Liquid, Unit::Drop},
        {"t|t.|tsp|tsps|Tsp.|teaspoon|teaspoons|TEASPOON", Measured::Liquid, Unit::Teaspoon},
        {"T|tbsp|Tbsp.|tbs|tblsp|tablespoon|tablespoons", Measured::Liquid, Unit::Tablespoon},
        {"oz|ounce|ounces|fl oz|fl. oz.|floz|FL OZ|fluid ounce|fluid ounces", Measured::Liquid,
         Unit::FluidOunce},
        {"cup|cups|c|C|c.", Measured::Liquid, Unit::Cup},
        {"pint|pints|pt|pts", Measured::Liquid, Unit::Pint},
        {"quart|quarts|qt|qts|QT.", Measured::Liquid, Unit::Quart},
        {"gallon|gallons|gal|gals", Measured::Liquid, Unit::Gallon},
        {"ml|mL|ML|mls|millilitre|milliliters|cc", Measured::Liquid, Unit::Millilitre},
        {"cl|centilitres", Measured::Liquid, Unit::Centilitre},
        {"dl|deciliter", Measured::Liquid, Unit::Decilitre},
        {"l|L|litre|litres|liter|liters", Measured::Liquid, Unit::Litre},
        {"g|G|gram|grams|grammes", Measured::Weight, Unit::Gram},
        {"kg|KG|kgs|kilo|kilos|kilogram|kilograms", Measured::Weight, Unit::Kilogram},
        {"oz|OZ|ounce|ounces", Measured::Weight, Unit::Ounce},
        {"lb|lbs|LBS|pound|pounds", Measured::Weight, Unit::Pound},
        {"m|min|mins|minute|minutes", Measured::Time, Unit::Minute},
        {"h|hr|hrs|hour|hours|H", Measured::Time, Unit::Hour},
        {"d|day|days", Measured::Time, Unit::Day},
        {"mm|millimetres", Measured::Extent, Unit::Millimetre},
        {"cm|centimeter|centimetres", Measured::Extent, Unit::Centimetre},
        {"m|metre|meters", Measured::Extent, Unit::Metre},
        {"km|kilometres", Measured::Extent, Unit::Kilometre},
        {"in|in.|inch|inches|\"|\u2033", Measured::Extent, Unit::Inch},
        {"ft|foot|feet|'|\u2032", Measured::Extent, Unit::Foot},
        {"c|C|Celsius|centigrade", Measured::Heat, Unit::Celsius},
        {"f|F|Fahrenheit", Measured::Heat, Unit::Fahrenheit},
    };
    for (const NameCase& c : cases) {
        for (const QString& name : QString::fromUtf8(c.names).split(QLatin1Char('|'))) {
            SCOPED_TRACE(name.toStdString());
            EXPECT_EQ(unitNamed(name, c.measured), c.unit);
        }
    }
}

TEST(MeasureUnitsTest, KnowsNoOther) {
    const std::pair<const char*, Measured> cases[] = {
        {"", Measured::Liquid},   {"cupp", Measured::Liquid},  {"cupss", Measured::Liquid},
        {"ls", Measured::Liquid}, {"g", Measured::Liquid},     {"lb", Measured::Liquid},
        {"ml", Measured::Weight}, {"stone", Measured::Weight}, {"gs", Measured::Weight},
        {"gr", Measured::Weight}, {"cups", Measured::Weight},  {"s", Measured::Time},
        {"week", Measured::Time}, {"mile", Measured::Extent},  {"yd", Measured::Extent},
        {"k", Measured::Heat},    {"kelvin", Measured::Heat},
    };
    for (const auto& [name, measured] : cases)
        EXPECT_EQ(unitNamed(QString::fromUtf8(name), measured), std::nullopt) << name;
}

/// The metric spoons round as 21 CFR 101.9(b)(5)(viii) does; the rest by NIST Handbook 44.
TEST(MeasureUnitsTest, SizesUnits) {
    EXPECT_DOUBLE_EQ(sizeOf(Unit::Teaspoon, MeasureSystem::UsCustomary), 4.92892159375);
    EXPECT_DOUBLE_EQ(sizeOf(Unit::Teaspoon, MeasureSystem::Metric), 5.0);
    EXPECT_DOUBLE_EQ(sizeOf(Unit::Tablespoon, MeasureSystem::UsCustomary), 14.78676478125);
    EXPECT_DOUBLE_EQ(sizeOf(Unit::Tablespoon, MeasureSystem::Metric), 15.0);
    const std::pair<Unit, double> sizes[] = {
        {Unit::Drop, 0.05},
        {Unit::FluidOunce, 29.5735295625},
        {Unit::Cup, 236.5882365},
        {Unit::Pint, 473.176473},
        {Unit::Quart, 946.352946},
        {Unit::Gallon, 3785.411784},
        {Unit::Millilitre, 1},
        {Unit::Centilitre, 10},
        {Unit::Decilitre, 100},
        {Unit::Litre, 1000},
        {Unit::Gram, 1},
        {Unit::Kilogram, 1000},
        {Unit::Ounce, 28.349523125},
        {Unit::Pound, 453.59237},
        {Unit::Minute, 1},
        {Unit::Hour, 60},
        {Unit::Day, 1440},
        {Unit::Millimetre, 0.1},
        {Unit::Centimetre, 1},
        {Unit::Metre, 100},
        {Unit::Kilometre, 100000},
        {Unit::Inch, 2.54},
        {Unit::Foot, 30.48},
        {Unit::Celsius, 1},
        {Unit::Fahrenheit, 1},
    };
    for (const auto& [unit, size] : sizes)
        for (const MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::Metric})
            EXPECT_DOUBLE_EQ(sizeOf(unit, system), size) << unitWord(unit, 1).toStdString();
}

TEST(MeasureUnitsTest, ReadsTheWordsItPrints) {
    const std::pair<Measured, QList<Unit>> kinds[] = {
        {Measured::Liquid,
         {Unit::Drop, Unit::Teaspoon, Unit::Tablespoon, Unit::FluidOunce, Unit::Cup, Unit::Pint,
          Unit::Quart, Unit::Gallon, Unit::Millilitre, Unit::Centilitre, Unit::Decilitre,
          Unit::Litre}},
        {Measured::Weight, {Unit::Gram, Unit::Kilogram, Unit::Ounce, Unit::Pound}},
        {Measured::Time, {Unit::Minute, Unit::Hour, Unit::Day}},
        {Measured::Extent,
         {Unit::Millimetre, Unit::Centimetre, Unit::Metre, Unit::Kilometre, Unit::Inch,
          Unit::Foot}},
        {Measured::Heat, {Unit::Celsius, Unit::Fahrenheit}},
    };
    for (const auto& [measured, units] : kinds)
        for (const Unit unit : units)
            for (const int count : {0, 1, 2, 5})
                EXPECT_EQ(unitNamed(unitWord(unit, count), measured), unit)
                    << unitWord(unit, count).toStdString();
}

} // namespace
} // namespace ladlework::quantity
