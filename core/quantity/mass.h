#pragma once

#include "quantity/quantity.h"
#include "quantity/units.h"

namespace ladlework::quantity {

class MassDimension;
/// A mass. Kept in grams.
using Mass = Quantity<MassDimension>;

class MassDimension {
public:
    static constexpr Mass fromGrams(double grams);
    static constexpr Mass fromKilograms(double kilograms);
    static constexpr Mass fromOunces(double ounces);
    static constexpr Mass fromPounds(double pounds);
    [[nodiscard]] constexpr double toGrams() const;
    [[nodiscard]] constexpr double toKilograms() const;
    [[nodiscard]] constexpr double toOunces() const;
    [[nodiscard]] constexpr double toPounds() const;
};

constexpr Mass MassDimension::fromGrams(double grams) {
    return Mass(grams);
}
constexpr Mass MassDimension::fromKilograms(double kilograms) {
    return Mass(kilograms * units::gramsPerKilogram);
}
constexpr Mass MassDimension::fromOunces(double ounces) {
    return Mass(ounces * units::gramsPerOunce);
}
constexpr Mass MassDimension::fromPounds(double pounds) {
    return Mass(pounds * units::gramsPerPound);
}
constexpr double MassDimension::toGrams() const {
    return static_cast<const Mass*>(this)->m_base;
}
constexpr double MassDimension::toKilograms() const {
    return static_cast<const Mass*>(this)->m_base / units::gramsPerKilogram;
}
constexpr double MassDimension::toOunces() const {
    return static_cast<const Mass*>(this)->m_base / units::gramsPerOunce;
}
constexpr double MassDimension::toPounds() const {
    return static_cast<const Mass*>(this)->m_base / units::gramsPerPound;
}

} // namespace ladlework::quantity
