#include "foundation/language_scope.h"
#include "quantity/kitchen_marks.h"
#include "quantity/measure.h"
#include "quantity/measure_units.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace ladlework::quantity {

namespace {

struct VulgarFraction {
    double value = 0.0;
    QChar character;
};

constexpr std::array vulgarFractions{
    VulgarFraction{1.0 / 8, QChar(0x215b)}, VulgarFraction{1.0 / 4, QChar(0x00bc)},
    VulgarFraction{1.0 / 3, QChar(0x2153)}, VulgarFraction{3.0 / 8, QChar(0x215c)},
    VulgarFraction{1.0 / 2, QChar(0x00bd)}, VulgarFraction{5.0 / 8, QChar(0x215d)},
    VulgarFraction{2.0 / 3, QChar(0x2154)}, VulgarFraction{3.0 / 4, QChar(0x00be)},
    VulgarFraction{7.0 / 8, QChar(0x215e)},
};

QString wholeNumber(double number) {
    return QString::number(number, 'f', 0);
}

/// "1½": a whole number and the vulgar fraction of the rest; a mark has no other rest.
QString withFraction(double number) {
    constexpr double allowance = 1.0e-6; // of rounding; the fractions lie 0.04 apart
    const double whole = std::floor(number + allowance);
    const double rest = number - whole;
    for (const VulgarFraction& fraction : vulgarFractions)
        if (std::abs(rest - fraction.value) < allowance)
            return whole > 0.0 ? QString(wholeNumber(whole) + fraction.character)
                               : QString(fraction.character);
    return wholeNumber(whole);
}

/// "2.4": at most two decimals, no zeros at the end.
QString withDecimals(double number) {
    QString text = QString::number(number, 'f', 2);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(QLatin1Char('.')))
        text.chop(1);
    // The program's own fields keep the point; a page has its language's mark.
    if (const LanguageScope* page = LanguageScope::current())
        text.replace(QLatin1Char('.'), page->locale().decimalPoint());
    return text;
}

QString withThousands(double number) {
    return QLocale(QLocale::English, QLocale::UnitedStates).toString(number, 'f', 0);
}

/// The number that decides about the form of the word: up to one whole it is "cup", above "cups".
int countOf(double amount) {
    return amount > 1.0 ? static_cast<int>(std::ceil(amount)) : 1;
}

QString withUnit(const QString& number, Unit unit, int count) {
    return number + QLatin1Char(' ') + unitWord(unit, count);
}

QString poundsAndOunces(double pounds) {
    constexpr double ouncesPerPound = units::gramsPerPound / units::gramsPerOunce;
    const double whole = std::floor(pounds);
    const double ounces = std::round((pounds - whole) * ouncesPerPound);
    if (whole == 0.0)
        return withUnit(wholeNumber(ounces), Unit::Ounce, countOf(ounces));
    const QString text = withUnit(wholeNumber(whole), Unit::Pound, countOf(whole));
    if (ounces == 0.0)
        return text;
    return text + QLatin1Char(' ') + withUnit(wholeNumber(ounces), Unit::Ounce, countOf(ounces));
}

/// The number of a mark without its unit; pounds and ounces cannot be told apart without.
QString numberText(const Mark& mark) {
    switch (mark.style) {
    case MarkStyle::Fraction:
        return withFraction(mark.count);
    case MarkStyle::Decimal:
        return withDecimals(mark.count);
    case MarkStyle::Thousands:
        return withThousands(mark.count);
    case MarkStyle::PoundsAndOunces:
        return poundsAndOunces(mark.count);
    }
    return {};
}

QString markText(const Mark& mark) {
    if (mark.style == MarkStyle::PoundsAndOunces)
        return poundsAndOunces(mark.count);
    return withUnit(numberText(mark), mark.unit, countOf(mark.count));
}

/// What is printed for an amount that is no number, or too large to be one of a kitchen.
QString noAmount() {
    return QString(QChar(0x2014));
}

bool isPrintable(double amount) {
    constexpr double beyondAnyKitchen = 1.0e9;
    return std::abs(amount) < beyondAnyKitchen;
}

/// The nearest mark in words; zero of `unitOfZero`; a difference below zero with a minus sign.
QString printAmount(double amount, std::span<const Marks> scale, MeasureSystem system,
                    Unit unitOfZero) {
    if (!isPrintable(amount))
        return noAmount();
    if (amount == 0.0)
        return withUnit(wholeNumber(0.0), unitOfZero, 0);
    const QString text = markText(nearestMark(std::abs(amount), scale, system));
    return amount < 0.0 ? QString(QLatin1Char('-') + text) : text;
}

/// The marks of one unit alone, going on below and above where other units would take over.
std::vector<Marks> marksIn(Unit unit, std::span<const Marks> scale) {
    std::vector<Marks> marks;
    for (const Marks& one : scale)
        if (one.unit == unit)
            marks.push_back(one);
    Marks& lowest = *std::ranges::min_element(marks, {}, &Marks::first);
    lowest.first = lowest.step / lowest.steps;
    constexpr double noEnd = 1.0e12;
    std::ranges::max_element(marks, {}, &Marks::last)->last = noEnd;
    return marks;
}

QString printRange(double low, double best, double high, std::span<const Marks> scale,
                   MeasureSystem system, Unit unitOfZero) {
    if (!isPrintable(low) || !isPrintable(best) || !isPrintable(high))
        return noAmount();
    const QString text = printAmount(best, scale, system, unitOfZero);
    const Unit unit = nearestMark(best > 0.0 ? best : high, scale, system).unit;
    const std::vector<Marks> marks = marksIn(unit, scale);
    const auto number = [&](double amount) {
        return amount <= 0.0 ? wholeNumber(0.0) : numberText(nearestMark(amount, marks, system));
    };
    if (number(low) == number(best) && number(high) == number(best))
        return text;
    return MeasureText::tr("%1 (%2 to %3)").arg(text, number(low), number(high));
}

/// The size of the nearest mark; zero and what cannot be printed stay as they are.
double roundedToMark(double amount, std::span<const Marks> scale, MeasureSystem system) {
    if (amount == 0.0 || !isPrintable(amount))
        return amount;
    return std::copysign(nearestMark(std::abs(amount), scale, system).size, amount);
}

} // namespace

QString printVolume(Volume volume, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return printAmount(volume.toMillilitres(), volumeMarks(system), system,
                       metric ? Unit::Millilitre : Unit::Cup);
}

QString printMass(Mass mass, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return printAmount(mass.toGrams(), massMarks(system), system,
                       metric ? Unit::Gram : Unit::Ounce);
}

QString printDuration(Duration duration) {
    if (!isPrintable(duration.toMinutes()))
        return noAmount();
    const double length = std::abs(duration.toMinutes());
    const double minutes = length > 0.0 ? std::max(1.0, std::round(length)) : 0.0;
    const double hours = std::floor(minutes / units::minutesPerHour);
    const double rest = minutes - hours * units::minutesPerHour;
    QString text;
    if (hours > 0.0)
        text = withUnit(wholeNumber(hours), Unit::Hour, countOf(hours));
    if (hours > 0.0 && rest > 0.0)
        text += QLatin1Char(' ');
    if (hours == 0.0 || rest > 0.0)
        text += withUnit(wholeNumber(rest), Unit::Minute, countOf(rest));
    return duration.toMinutes() < 0.0 ? QString(QLatin1Char('-') + text) : text;
}

QString printTemperature(Temperature temperature, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    const double degrees = metric ? temperature.toCelsius() : temperature.toFahrenheit();
    if (!isPrintable(degrees))
        return noAmount();
    // Adding zero turns a rounded "-0" into "0".
    return withUnit(wholeNumber(std::round(degrees) + 0.0),
                    metric ? Unit::Celsius : Unit::Fahrenheit, 0);
}

QString printLength(Length length, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return printAmount(length.toCentimetres(), lengthMarks(system), system,
                       metric ? Unit::Centimetre : Unit::Inch);
}

QString printAltitude(Length altitude, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    const double count = metric ? altitude.toMetres() : altitude.toFeet();
    if (!isPrintable(count))
        return noAmount();
    return withUnit(withThousands(std::round(count) + 0.0), metric ? Unit::Metre : Unit::Foot, 0);
}

QString printVolumeRange(Volume low, Volume best, Volume high, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return printRange(low.toMillilitres(), best.toMillilitres(), high.toMillilitres(),
                      volumeMarks(system), system, metric ? Unit::Millilitre : Unit::Cup);
}

QString printVolumeLike(Volume volume, Volume other, MeasureSystem system) {
    const auto scale = volumeMarks(system);
    if (!(volume > Volume()) || !(other > Volume()) || !isPrintable(volume.toMillilitres()) ||
        !isPrintable(other.toMillilitres()))
        return printVolume(volume, system);
    const Unit unit = nearestMark(other.toMillilitres(), scale, system).unit;
    return markText(nearestMark(volume.toMillilitres(), marksIn(unit, scale), system));
}

QString printMassRange(Mass low, Mass best, Mass high, MeasureSystem system) {
    const bool metric = system == MeasureSystem::Metric;
    return printRange(low.toGrams(), best.toGrams(), high.toGrams(), massMarks(system), system,
                      metric ? Unit::Gram : Unit::Ounce);
}

Volume roundToKitchen(Volume volume, MeasureSystem system) {
    return Volume::fromMillilitres(
        roundedToMark(volume.toMillilitres(), volumeMarks(system), system));
}

Mass roundToKitchen(Mass mass, MeasureSystem system) {
    return Mass::fromGrams(roundedToMark(mass.toGrams(), massMarks(system), system));
}

} // namespace ladlework::quantity
