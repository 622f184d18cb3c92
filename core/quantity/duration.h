#pragma once

#include "quantity/quantity.h"
#include "quantity/units.h"

namespace ladlework::quantity {

class DurationDimension;
/// A length of time. Kept in minutes.
using Duration = Quantity<DurationDimension>;

class DurationDimension {
public:
    static constexpr Duration fromMinutes(double minutes);
    static constexpr Duration fromHours(double hours);
    [[nodiscard]] constexpr double toMinutes() const;
    [[nodiscard]] constexpr double toHours() const;
};

constexpr Duration DurationDimension::fromMinutes(double minutes) {
    return Duration(minutes);
}
constexpr Duration DurationDimension::fromHours(double hours) {
    return Duration(hours * units::minutesPerHour);
}
constexpr double DurationDimension::toMinutes() const {
    return static_cast<const Duration*>(this)->m_base;
}
constexpr double DurationDimension::toHours() const {
    return static_cast<const Duration*>(this)->m_base / units::minutesPerHour;
}

} // namespace ladlework::quantity
