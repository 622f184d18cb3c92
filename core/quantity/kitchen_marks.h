#pragma once

#include "quantity/measure_units.h"

#include <optional>
#include <span>

/// The amounts that the measures of a kitchen can say: the marks on its spoons, cups, scales and
/// rulers. Common practice, no source.
namespace ladlework::quantity {

/// How the number of a mark is written.
enum class MarkStyle {
    Fraction,        ///< "1½"
    Decimal,         ///< "2.4", at most two decimals
    Thousands,       ///< "5,200"
    PoundsAndOunces, ///< "3 lb 2 oz"
};

/// Equally spaced marks of one unit: every multiple of step/steps from `first` to `last` units.
struct Marks {
    Unit unit;
    MarkStyle style;
    double step;
    double steps;
    double first;
    double last;
};

/// One mark: how many of which unit, and the size in the base unit (mL, g, cm).
struct Mark {
    Unit unit = Unit::Drop;
    MarkStyle style = MarkStyle::Decimal;
    double count = 0.0;
    double size = 0.0;
};

std::span<const Marks> volumeMarks(MeasureSystem system);
std::span<const Marks> massMarks(MeasureSystem system);
std::span<const Marks> lengthMarks(MeasureSystem system);

/// The mark nearest to an amount above zero in the base unit, the larger of two equally near; the
/// smallest mark for anything below it. A larger amount never gets a smaller mark.
Mark nearestMark(double amount, std::span<const Marks> scale, MeasureSystem system);

/// The next mark above an amount (`larger`) or below it; nothing when there is none.
std::optional<Mark> neighbourMark(double amount, std::span<const Marks> scale, MeasureSystem system,
                                  bool larger);

} // namespace ladlework::quantity
