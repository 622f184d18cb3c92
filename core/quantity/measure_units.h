#pragma once

#include "quantity/measure.h"

#include <QCoreApplication>
#include <optional>

/// The units that measure.h reads and prints: their names and sizes. For the parser and the
/// printer, so that what one writes the other reads, also in another language.
namespace ladlework::quantity {

enum class Unit {
    Drop,
    Teaspoon,
    Tablespoon,
    FluidOunce,
    Cup,
    Pint,
    Quart,
    Gallon,
    Millilitre,
    Centilitre,
    Decilitre,
    Litre,
    Gram,
    Kilogram,
    Ounce,
    Pound,
    Minute,
    Hour,
    Day,
    Millimetre,
    Centimetre,
    Metre,
    Kilometre,
    Inch,
    Foot,
    Celsius,
    Fahrenheit,
};

/// What is measured. The same name can mean different units: "oz" of liquid or of meat.
enum class Measured { Liquid, Weight, Time, Extent, Heat };

/// The unit with this name, in any case, singular or plural, dots and spaces left out of account;
/// "T" and "t" alone are the tablespoon and the teaspoon. Nothing for a name not known there.
std::optional<Unit> unitNamed(const QString& name, Measured measured);

/// The size of a unit in the base unit of its quantity (mL, g, min, cm). Spoons are 5 and 15 mL in
/// Metric. A scale has no size: 1 for Celsius and Fahrenheit.
double sizeOf(Unit unit, MeasureSystem system);

/// The translated word a unit is printed with after so many: "cup" or "cups", "tsp", "mL".
/// unitNamed knows that of one and of two.
QString unitWord(Unit unit, int count);

/// The translation context of everything that measure.h says.
struct MeasureText {
    Q_DECLARE_TR_FUNCTIONS(Measure)
};

} // namespace ladlework::quantity
