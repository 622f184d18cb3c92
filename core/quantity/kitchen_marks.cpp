#include "quantity/kitchen_marks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace ladlework::quantity {

namespace {

constexpr double noEnd = 1.0e12;

// Thirds stand beside the quarters as far as sets of measuring cups go twice over. Cups go up to
// six, the most that is drunk in a day; a pot's water is counted in quarts.
constexpr std::array usVolume{
    Marks{Unit::Drop, MarkStyle::Fraction, 1, 1, 1, 12},
    Marks{Unit::Teaspoon, MarkStyle::Fraction, 1, 8, 0.125, 0.25},
    Marks{Unit::Teaspoon, MarkStyle::Fraction, 1, 4, 0.25, 1},
    Marks{Unit::Teaspoon, MarkStyle::Fraction, 1, 2, 1, 2.5},
    Marks{Unit::Tablespoon, MarkStyle::Fraction, 1, 2, 1, 3.5},
    Marks{Unit::Cup, MarkStyle::Fraction, 1, 4, 0.25, 6},
    Marks{Unit::Cup, MarkStyle::Fraction, 1, 3, 1.0 / 3, 2},
    Marks{Unit::Quart, MarkStyle::Fraction, 1, 4, 1.75, 10},
    Marks{Unit::Quart, MarkStyle::Fraction, 1, 2, 10, 20},
    Marks{Unit::Quart, MarkStyle::Fraction, 1, 1, 20, noEnd},
};

constexpr std::array metricVolume{
    Marks{Unit::Drop, MarkStyle::Decimal, 1, 1, 1, 19},
    Marks{Unit::Millilitre, MarkStyle::Decimal, 1, 2, 1, 10},
    Marks{Unit::Millilitre, MarkStyle::Decimal, 1, 1, 10, 30},
    Marks{Unit::Millilitre, MarkStyle::Decimal, 5, 1, 30, 100},
    Marks{Unit::Millilitre, MarkStyle::Decimal, 10, 1, 100, 500},
    Marks{Unit::Millilitre, MarkStyle::Decimal, 25, 1, 500, 975},
    Marks{Unit::Litre, MarkStyle::Decimal, 1, 20, 1, 5},
    Marks{Unit::Litre, MarkStyle::Decimal, 1, 10, 5, 20},
    Marks{Unit::Litre, MarkStyle::Decimal, 1, 2, 20, noEnd},
};

// Below a quarter ounce a kitchen scale is read in grams, in any country.
constexpr std::array usMass{
    Marks{Unit::Gram, MarkStyle::Decimal, 1, 10, 0.1, 1},
    Marks{Unit::Gram, MarkStyle::Decimal, 1, 2, 1, 7},
    Marks{Unit::Ounce, MarkStyle::Fraction, 1, 4, 0.25, 15.75},
    Marks{Unit::Pound, MarkStyle::PoundsAndOunces, 1, 16, 1, 100},
    Marks{Unit::Pound, MarkStyle::PoundsAndOunces, 5, 1, 100, noEnd},
};

constexpr std::array metricMass{
    Marks{Unit::Gram, MarkStyle::Decimal, 1, 10, 0.1, 1},
    Marks{Unit::Gram, MarkStyle::Decimal, 1, 2, 1, 10},
    Marks{Unit::Gram, MarkStyle::Decimal, 1, 1, 10, 999},
    Marks{Unit::Kilogram, MarkStyle::Decimal, 1, 100, 1, 10},
    Marks{Unit::Kilogram, MarkStyle::Decimal, 1, 10, 10, 100},
    Marks{Unit::Kilogram, MarkStyle::Decimal, 1, 1, 100, noEnd},
};

// Pots and trays in inches or centimetres; from 10 m up it is the height of a place.
constexpr std::array usLength{
    Marks{Unit::Inch, MarkStyle::Fraction, 1, 8, 0.125, 1},
    Marks{Unit::Inch, MarkStyle::Fraction, 1, 4, 1, 12},
    Marks{Unit::Inch, MarkStyle::Fraction, 1, 2, 12, 393.5},
    Marks{Unit::Foot, MarkStyle::Thousands, 1, 1, 33, noEnd},
};

constexpr std::array metricLength{
    Marks{Unit::Centimetre, MarkStyle::Decimal, 1, 10, 0.1, 10},
    Marks{Unit::Centimetre, MarkStyle::Decimal, 1, 2, 10, 999.5},
    Marks{Unit::Metre, MarkStyle::Thousands, 1, 1, 10, noEnd},
};

} // namespace

std::span<const Marks> volumeMarks(MeasureSystem system) {
    if (system == MeasureSystem::Metric)
        return metricVolume;
    return usVolume;
}

std::span<const Marks> massMarks(MeasureSystem system) {
    if (system == MeasureSystem::Metric)
        return metricMass;
    return usMass;
}

std::span<const Marks> lengthMarks(MeasureSystem system) {
    if (system == MeasureSystem::Metric)
        return metricLength;
    return usLength;
}

Mark nearestMark(double amount, std::span<const Marks> scale, MeasureSystem system) {
    Mark nearest;
    double nearestDistance = std::numeric_limits<double>::infinity();
    for (const Marks& marks : scale) {
        const double unitSize = sizeOf(marks.unit, system);
        const double perUnit = marks.steps / marks.step;
        const double place =
            std::clamp(std::round(amount / unitSize * perUnit), std::round(marks.first * perUnit),
                       std::round(marks.last * perUnit));
        const double count = place * marks.step / marks.steps;
        const double size = count * unitSize;
        const double distance = std::abs(size - amount);
        // The scales go upwards, so that the later of two equally near is the larger.
        if (distance < nearestDistance || (distance == nearestDistance && size > nearest.size)) {
            nearest = {marks.unit, marks.style, count, size};
            nearestDistance = distance;
        }
    }
    return nearest;
}

std::optional<Mark> neighbourMark(double amount, std::span<const Marks> scale, MeasureSystem system,
                                  bool larger) {
    // An amount within the rounding of a division stands on its mark.
    constexpr double rounding = 1e-9;
    std::optional<Mark> best;
    for (const Marks& marks : scale) {
        const double unitSize = sizeOf(marks.unit, system);
        const double perUnit = marks.steps / marks.step;
        const double exact = amount / unitSize * perUnit;
        const double first = std::round(marks.first * perUnit);
        const double last = std::round(marks.last * perUnit);
        const double place = larger ? std::max(std::floor(exact * (1 + rounding)) + 1, first)
                                    : std::min(std::ceil(exact * (1 - rounding)) - 1, last);
        if (place < first || place > last)
            continue;
        const double count = place * marks.step / marks.steps;
        const double size = count * unitSize;
        if (!best || (larger ? size < best->size : size > best->size))
            best = Mark{marks.unit, marks.style, count, size};
    }
    return best;
}

} // namespace ladlework::quantity
