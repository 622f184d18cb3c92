#include "quantity/measure_units.h"

#include <QStringList>
#include <array>

namespace ladlework::quantity {

namespace {

constexpr double minutesPerDay = 24 * units::minutesPerHour;

/// A unit and the names people type for it, in lower case, without dots and spaces, parted by
/// blanks. A plain plural -s is understood without being listed.
struct UnitNames {
    Unit unit;
    Measured measured;
    const char* names;
};

constexpr std::array unitNames{
    UnitNames{Unit::Drop, Measured::Liquid, "drop"},
    UnitNames{Unit::Teaspoon, Measured::Liquid, "tsp teaspoon"},
    UnitNames{Unit::Tablespoon, Measured::Liquid, "tbsp tbs tblsp tablespoon"},
    UnitNames{Unit::FluidOunce, Measured::Liquid, "floz fluidounce flounce fluidoz oz ounce"},
    UnitNames{Unit::Cup, Measured::Liquid, "cup c"},
    UnitNames{Unit::Pint, Measured::Liquid, "pint pt"},
    UnitNames{Unit::Quart, Measured::Liquid, "quart qt"},
    UnitNames{Unit::Gallon, Measured::Liquid, "gallon gal"},
    UnitNames{Unit::Millilitre, Measured::Liquid, "ml millilitre milliliter cc"},
    UnitNames{Unit::Centilitre, Measured::Liquid, "cl centilitre centiliter"},
    UnitNames{Unit::Decilitre, Measured::Liquid, "dl decilitre deciliter"},
    UnitNames{Unit::Litre, Measured::Liquid, "l litre liter"},
    UnitNames{Unit::Gram, Measured::Weight, "g gram gramme gm"},
    UnitNames{Unit::Kilogram, Measured::Weight, "kg kilo kilogram kilogramme"},
    UnitNames{Unit::Ounce, Measured::Weight, "oz ounce"},
    UnitNames{Unit::Pound, Measured::Weight, "lb pound"},
    UnitNames{Unit::Minute, Measured::Time, "min minute m"},
    UnitNames{Unit::Hour, Measured::Time, "h hr hour"},
    UnitNames{Unit::Day, Measured::Time, "d day"},
    UnitNames{Unit::Millimetre, Measured::Extent, "mm millimetre millimeter"},
    UnitNames{Unit::Centimetre, Measured::Extent, "cm centimetre centimeter"},
    UnitNames{Unit::Metre, Measured::Extent, "m metre meter"},
    UnitNames{Unit::Kilometre, Measured::Extent, "km kilometre kilometer"},
    UnitNames{Unit::Inch, Measured::Extent, "in inch inches \" \u2033 \u201d"},
    UnitNames{Unit::Foot, Measured::Extent, "ft foot feet ' \u2032 \u2019"},
    UnitNames{Unit::Celsius, Measured::Heat, "c celsius centigrade"},
    UnitNames{Unit::Fahrenheit, Measured::Heat, "f fahrenheit"},
};

QString withoutDotsAndSpaces(QString name) {
    return name.remove(QLatin1Char('.')).remove(QLatin1Char(' '));
}

QString normalised(const QString& name) {
    return withoutDotsAndSpaces(name).toLower();
}

bool isNameOf(const UnitNames& entry, const QString& name) {
    const QStringList names = QString::fromUtf8(entry.names).split(QLatin1Char(' '));
    if (names.contains(name))
        return true;
    // The plural of a one-letter symbol ("ls") is nothing that anybody means.
    if (name.size() > 2 && name.endsWith(QLatin1Char('s')) && names.contains(name.chopped(1)))
        return true;
    return name == normalised(unitWord(entry.unit, 1)) ||
           name == normalised(unitWord(entry.unit, 2));
}

} // namespace

std::optional<Unit> unitNamed(const QString& name, Measured measured) {
    const QString plain = withoutDotsAndSpaces(name);
    if (measured == Measured::Liquid && plain == QLatin1String("T"))
        return Unit::Tablespoon;
    if (measured == Measured::Liquid && plain == QLatin1String("t"))
        return Unit::Teaspoon;
    const QString wanted = plain.toLower();
    for (const UnitNames& entry : unitNames)
        if (entry.measured == measured && isNameOf(entry, wanted))
            return entry.unit;
    return std::nullopt;
}

double sizeOf(Unit unit, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    switch (unit) {
    case Unit::Drop:
        return units::millilitresPerDrop;
    case Unit::Teaspoon:
        return metric ? units::millilitresPerMetricTeaspoon : units::millilitresPerTeaspoon;
    case Unit::Tablespoon:
        return metric ? units::millilitresPerMetricTablespoon : units::millilitresPerTablespoon;
    case Unit::FluidOunce:
        return units::millilitresPerFluidOunce;
    case Unit::Cup:
        return units::millilitresPerCup;
    case Unit::Pint:
        return units::millilitresPerPint;
    case Unit::Quart:
        return units::millilitresPerQuart;
    case Unit::Gallon:
        return units::millilitresPerGallon;
    case Unit::Centilitre:
        return units::millilitresPerLitre / 100;
    case Unit::Decilitre:
        return units::millilitresPerLitre / 10;
    case Unit::Litre:
        return units::millilitresPerLitre;
    case Unit::Kilogram:
        return units::gramsPerKilogram;
    case Unit::Ounce:
        return units::gramsPerOunce;
    case Unit::Pound:
        return units::gramsPerPound;
    case Unit::Hour:
        return units::minutesPerHour;
    case Unit::Day:
        return minutesPerDay;
    case Unit::Millimetre:
        return units::centimetresPerMetre / 1000;
    case Unit::Metre:
        return units::centimetresPerMetre;
    case Unit::Kilometre:
        return units::centimetresPerMetre * 1000;
    case Unit::Inch:
        return units::centimetresPerInch;
    case Unit::Foot:
        return units::centimetresPerFoot;
    case Unit::Millilitre:
    case Unit::Gram:
    case Unit::Minute:
    case Unit::Centimetre:
    case Unit::Celsius:
    case Unit::Fahrenheit:
        break;
    }
    return 1.0;
}

QString unitWord(Unit unit, int count) {
    switch (unit) {
    case Unit::Drop:
        return count == 1 ? MeasureText::tr("drop") : MeasureText::tr("drops", nullptr, count);
    case Unit::Teaspoon:
        return MeasureText::tr("tsp", nullptr, count);
    case Unit::Tablespoon:
        return MeasureText::tr("tbsp", nullptr, count);
    case Unit::FluidOunce:
        return MeasureText::tr("fl oz");
    case Unit::Cup:
        return count == 1 ? MeasureText::tr("cup") : MeasureText::tr("cups", nullptr, count);
    case Unit::Pint:
        return count == 1 ? MeasureText::tr("pint") : MeasureText::tr("pints", nullptr, count);
    case Unit::Quart:
        return count == 1 ? MeasureText::tr("quart") : MeasureText::tr("quarts", nullptr, count);
    case Unit::Gallon:
        return count == 1 ? MeasureText::tr("gallon") : MeasureText::tr("gallons", nullptr, count);
    case Unit::Millilitre:
        return MeasureText::tr("mL");
    case Unit::Centilitre:
        return MeasureText::tr("cL");
    case Unit::Decilitre:
        return MeasureText::tr("dL");
    case Unit::Litre:
        return MeasureText::tr("L");
    case Unit::Gram:
        return MeasureText::tr("g");
    case Unit::Kilogram:
        return MeasureText::tr("kg");
    case Unit::Ounce:
        return MeasureText::tr("oz");
    case Unit::Pound:
        return MeasureText::tr("lb");
    case Unit::Minute:
        return MeasureText::tr("min");
    case Unit::Hour:
        return MeasureText::tr("h");
    case Unit::Day:
        return count == 1 ? MeasureText::tr("day") : MeasureText::tr("days", nullptr, count);
    case Unit::Millimetre:
        return MeasureText::tr("mm");
    case Unit::Centimetre:
        return MeasureText::tr("cm");
    case Unit::Metre:
        return MeasureText::tr("m");
    case Unit::Kilometre:
        return MeasureText::tr("km");
    case Unit::Inch:
        return MeasureText::tr("in");
    case Unit::Foot:
        return MeasureText::tr("ft");
    case Unit::Celsius:
        return MeasureText::tr("°C");
    case Unit::Fahrenheit:
        return MeasureText::tr("°F");
    }
    return {};
}

} // namespace ladlework::quantity
