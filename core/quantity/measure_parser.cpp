#include "quantity/amount_scanner.h"
#include "quantity/measure.h"
#include "quantity/measure_units.h"

#include <QRegularExpression>
#include <limits>

namespace ladlework::quantity {

namespace {

constexpr double mostMillilitres = 200.0 * units::millilitresPerLitre;
constexpr double mostGrams = 200.0 * units::gramsPerKilogram;
constexpr double mostMinutes = 7 * 24 * units::minutesPerHour;
constexpr double mostCentimetres = 10000.0 * units::centimetresPerMetre;
constexpr Temperature coldest = Temperature::fromCelsius(-60.0);
constexpr Temperature hottest = Temperature::fromCelsius(300.0);

/// What a parser accepts, and the words for it when it must refuse.
struct Reading {
    Measured measured;
    MeasureSystem system;
    Unit bareUnit;       ///< of a number without a unit
    double most;         ///< in the base unit
    QString mostInWords; ///< "200 L"
    QString wanted;      ///< what would be understood: "a volume such as ..."
    CommaBeforeThree comma = CommaBeforeThree::Refused;
};

/// The text as it is quoted in a sentence: not longer than a line.
QString quotedText(const QString& text) {
    constexpr qsizetype longest = 60;
    const QString shown = text.simplified();
    return shown.size() <= longest ? shown : QString(shown.first(longest) + QChar(0x2026));
}

tl::unexpected<Problem> refuse(const QString& sentence) {
    return problem(Problem::Kind::BadInput, sentence);
}

tl::unexpected<Problem> notUnderstood(const QString& text, const Reading& reading) {
    return refuse(MeasureText::tr("\"%1\" is not understood; write %2.")
                      .arg(quotedText(text), reading.wanted));
}

tl::unexpected<Problem> refuse(AmountFault fault, const QString& text, const Reading& reading) {
    switch (fault) {
    case AmountFault::Blank:
        return refuse(MeasureText::tr("\"\" says no amount; write %1.").arg(reading.wanted));
    case AmountFault::Negative:
        return refuse(MeasureText::tr("\"%1\" is below zero; write %2.")
                          .arg(quotedText(text), reading.wanted));
    case AmountFault::EitherComma:
        return refuse(MeasureText::tr("The comma in \"%1\" could mean thousands or a decimal; "
                                      "leave it out or write a point, as in %2.")
                          .arg(quotedText(text), reading.wanted));
    case AmountFault::NotANumber:
        break;
    }
    return notUnderstood(text, reading);
}

/// The unit of a part. A bare number takes the usual unit; behind hours it is minutes.
std::optional<Unit> unitOf(const AmountPart& part, std::optional<Unit> before,
                           const Reading& reading) {
    if (!part.unit.isEmpty())
        return unitNamed(part.unit, reading.measured);
    if (!before)
        return reading.bareUnit;
    return before == Unit::Hour ? std::optional(Unit::Minute) : std::nullopt;
}

/// The amount in the base unit.
Result<double> read(const QString& text, const Reading& reading) {
    const tl::expected<QList<AmountPart>, AmountFault> parts = scanAmount(text, reading.comma);
    if (!parts)
        return refuse(parts.error(), text, reading);
    double sum = 0.0;
    double sizeBefore = std::numeric_limits<double>::infinity();
    std::optional<Unit> before;
    for (const AmountPart& part : *parts) {
        const std::optional<Unit> unit = unitOf(part, before, reading);
        if (!unit)
            return part.unit.isEmpty()
                       ? notUnderstood(text, reading)
                       : refuse(MeasureText::tr("\"%1\" in \"%2\" is no unit known here; write %3.")
                                    .arg(quotedText(part.unit), quotedText(text), reading.wanted));
        const double size = sizeOf(*unit, reading.system);
        if (size >= sizeBefore)
            return refuse(MeasureText::tr("\"%1\" does not go from the larger unit to the "
                                          "smaller; write %2.")
                              .arg(quotedText(text), reading.wanted));
        sum += part.number * size;
        sizeBefore = size;
        before = unit;
    }
    if (sum > reading.most)
        return refuse(MeasureText::tr("\"%1\" is more than a kitchen has (%2 at most); write %3.")
                          .arg(quotedText(text), reading.mostInWords, reading.wanted));
    return sum;
}

/// The unit that a shown amount begins with; nothing when it has none that is known.
std::optional<Unit> unitShown(const QString& shown, Measured measured) {
    const tl::expected<QList<AmountPart>, AmountFault> parts =
        scanAmount(shown, CommaBeforeThree::Thousands);
    if (!parts || parts->first().unit.isEmpty())
        return std::nullopt;
    return unitNamed(parts->first().unit, measured);
}

/// The same reading for a field that shows an amount.
Reading over(const QString& shown, Reading reading) {
    reading.bareUnit = unitShown(shown, reading.measured).value_or(reading.bareUnit);
    return reading;
}

/// Does the text say a number and no unit?
bool isBareNumberOver(const QString& text, double most) {
    const tl::expected<QList<AmountPart>, AmountFault> parts =
        scanAmount(text, CommaBeforeThree::Refused);
    return parts && parts->size() == 1 && parts->first().unit.isEmpty() &&
           parts->first().number > most;
}

/// "2:30" as minutes; nothing for any other text.
std::optional<double> readClockTime(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("^([0-9]{1,3}):([0-5][0-9])(?: ?h)?$"),
                                            QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = pattern.match(text.simplified());
    if (!match.hasMatch())
        return std::nullopt;
    return match.captured(1).toInt() * units::minutesPerHour + match.captured(2).toInt();
}

/// The unit of a temperature from its text with the degree signs and words taken away.
std::optional<Unit> scaleNamed(QString unit, Unit bareUnit) {
    static const QRegularExpression degree(
        QStringLiteral("^(?:[\u00b0\u00ba]|degrees?|deg\\.?)\\s*"),
        QRegularExpression::CaseInsensitiveOption);
    unit.remove(degree);
    return unit.isEmpty() ? std::optional(bareUnit) : unitNamed(unit, Measured::Heat);
}

/// The scale of a temperature that is shown, as it is printed: "70 °F".
std::optional<Unit> scaleShown(const QString& shown) {
    for (const Unit scale : {Unit::Celsius, Unit::Fahrenheit})
        if (shown.endsWith(unitWord(scale, 2)))
            return scale;
    return std::nullopt;
}

Reading lengthReading(MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return {Measured::Extent,
            system,
            metric ? Unit::Centimetre : Unit::Inch,
            mostCentimetres,
            MeasureText::tr("10 km"),
            metric ? MeasureText::tr("a length such as \"28 cm\", \"11 in\" or \"1600 m\"")
                   : MeasureText::tr("a length such as \"11 1/2 in\", \"28 cm\" or \"5200 ft\""),
            CommaBeforeThree::Thousands};
}

Result<Length> readLength(const QString& text, const Reading& reading) {
    return read(text, reading).map([](double centimetres) {
        return Length::fromCentimetres(centimetres);
    });
}

} // namespace

Result<Volume> parseVolume(const QString& text, MeasureSystem system, const QString& shown) {
    const bool metric = system == MeasureSystem::Metric;
    const Reading reading{
        Measured::Liquid,
        system,
        metric ? Unit::Millilitre : Unit::Cup,
        mostMillilitres,
        MeasureText::tr("200 L"),
        metric ? MeasureText::tr("a volume such as \"350 mL\", \"1.5 L\" or \"2 tbsp\"")
               : MeasureText::tr("a volume such as \"1 1/2 cups\", \"2 tbsp\" or \"350 mL\"")};
    return read(text, over(shown, reading)).map([](double millilitres) {
        return Volume::fromMillilitres(millilitres);
    });
}

Result<Mass> parseMass(const QString& text, MeasureSystem system, const QString& shown) {
    const bool metric = system == MeasureSystem::Metric;
    const Reading reading{
        Measured::Weight,
        system,
        metric ? Unit::Gram : Unit::Pound,
        mostGrams,
        MeasureText::tr("200 kg"),
        metric ? MeasureText::tr("a weight such as \"350 g\", \"1.5 kg\" or \"3 lb\"")
               : MeasureText::tr("a weight such as \"3 lb 2 oz\", \"6 oz\" or \"350 g\"")};
    return read(text, over(shown, reading)).map([](double grams) {
        return Mass::fromGrams(grams);
    });
}

Result<Duration> parseDuration(const QString& text, const QString& shown) {
    constexpr double mostBareHours = 24;
    const Reading usual{
        Measured::Time,
        MeasureSystem::Metric,
        Unit::Hour,
        mostMinutes,
        MeasureText::tr("7 days"),
        MeasureText::tr("a time such as \"3 h\", \"2 h 30 min\", \"2:30\" or \"90 min\"")};
    if (const std::optional<double> minutes = readClockTime(text);
        minutes && *minutes <= mostMinutes)
        return Duration::fromMinutes(*minutes);
    const Reading reading = over(shown, usual);
    if (!shown.isEmpty() && reading.bareUnit == Unit::Hour && isBareNumberOver(text, mostBareHours))
        return refuse(MeasureText::tr("\"%1\" could be minutes or hours; write \"%1 min\" or "
                                      "\"%1 h\".")
                          .arg(text.trimmed()));
    return read(text, reading).map([](double minutes) { return Duration::fromMinutes(minutes); });
}

Result<Temperature> parseTemperature(const QString& text, MeasureSystem system,
                                     const QString& shown) {
    const bool metric = system == MeasureSystem::Metric;
    const Reading usual{Measured::Heat,
                        system,
                        metric ? Unit::Celsius : Unit::Fahrenheit,
                        hottest.toCelsius(),
                        {},
                        metric ? MeasureText::tr("a temperature such as \"74 °C\" or \"165 °F\"")
                               : MeasureText::tr("a temperature such as \"165 °F\" or \"74 °C\"")};
    Reading reading = usual;
    reading.bareUnit = scaleShown(shown).value_or(usual.bareUnit);
    QString plain = text.trimmed();
    const bool below = plain.startsWith(QLatin1Char('-')) || plain.startsWith(QChar(0x2212));
    if (below)
        plain = plain.sliced(1).trimmed();
    const tl::expected<QList<AmountPart>, AmountFault> parts = scanAmount(plain, reading.comma);
    if (!parts && parts.error() != AmountFault::Negative && !(below && plain.isEmpty()))
        return refuse(parts.error(), text, reading);
    if (!parts || parts->size() != 1)
        return notUnderstood(text, reading);
    const std::optional<Unit> scale = scaleNamed(parts->first().unit, reading.bareUnit);
    if (!scale)
        return notUnderstood(text, reading);
    const double degrees = below ? -parts->first().number : parts->first().number;
    const Temperature temperature = scale == Unit::Celsius ? Temperature::fromCelsius(degrees)
                                                           : Temperature::fromFahrenheit(degrees);
    if (temperature < coldest || temperature > hottest)
        return refuse(MeasureText::tr("\"%1\" is outside -60 °C to 300 °C (-76 °F to 572 °F); "
                                      "write %2.")
                          .arg(quotedText(text), reading.wanted));
    return temperature;
}

Result<Length> parseLength(const QString& text, MeasureSystem system, const QString& shown) {
    return readLength(text, over(shown, lengthReading(system)));
}

Result<Length> parseAltitude(const QString& text, MeasureSystem system, const QString& shown) {
    Reading reading = lengthReading(system);
    const bool metric = system == MeasureSystem::Metric;
    reading.bareUnit = metric ? Unit::Metre : Unit::Foot;
    reading.wanted = metric ? MeasureText::tr("a height above the sea such as \"1600 m\"")
                            : MeasureText::tr("a height above the sea such as \"5200 ft\"");
    return readLength(text, over(shown, reading));
}

} // namespace ladlework::quantity
