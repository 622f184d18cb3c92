#pragma once

#include "quantity/quantity.h"
#include "quantity/units.h"

namespace ladlework::quantity {

class LengthDimension;
/// A length or a height. Kept in centimetres.
using Length = Quantity<LengthDimension>;

class LengthDimension {
public:
    static constexpr Length fromCentimetres(double centimetres);
    static constexpr Length fromMetres(double metres);
    static constexpr Length fromInches(double inches);
    static constexpr Length fromFeet(double feet);
    [[nodiscard]] constexpr double toCentimetres() const;
    [[nodiscard]] constexpr double toMetres() const;
    [[nodiscard]] constexpr double toInches() const;
    [[nodiscard]] constexpr double toFeet() const;
};

constexpr Length LengthDimension::fromCentimetres(double centimetres) {
    return Length(centimetres);
}
constexpr Length LengthDimension::fromMetres(double metres) {
    return Length(metres * units::centimetresPerMetre);
}
constexpr Length LengthDimension::fromInches(double inches) {
    return Length(inches * units::centimetresPerInch);
}
constexpr Length LengthDimension::fromFeet(double feet) {
    return Length(feet * units::centimetresPerFoot);
}
constexpr double LengthDimension::toCentimetres() const {
    return static_cast<const Length*>(this)->m_base;
}
constexpr double LengthDimension::toMetres() const {
    return static_cast<const Length*>(this)->m_base / units::centimetresPerMetre;
}
constexpr double LengthDimension::toInches() const {
    return static_cast<const Length*>(this)->m_base / units::centimetresPerInch;
}
constexpr double LengthDimension::toFeet() const {
    return static_cast<const Length*>(this)->m_base / units::centimetresPerFoot;
}

} // namespace ladlework::quantity
