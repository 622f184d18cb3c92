#pragma once

#include "quantity/quantity.h"
#include "quantity/units.h"

namespace ladlework::quantity {

class VolumeDimension;
/// A volume of liquid. Kept in millilitres.
using Volume = Quantity<VolumeDimension>;

class VolumeDimension {
public:
    static constexpr Volume fromMillilitres(double millilitres);
    static constexpr Volume fromLitres(double litres);
    static constexpr Volume fromDrops(double drops);
    static constexpr Volume fromTeaspoons(double teaspoons);
    static constexpr Volume fromTablespoons(double tablespoons);
    static constexpr Volume fromFluidOunces(double fluidOunces);
    static constexpr Volume fromCups(double cups);
    static constexpr Volume fromPints(double pints);
    static constexpr Volume fromQuarts(double quarts);
    static constexpr Volume fromGallons(double gallons);
    [[nodiscard]] constexpr double toMillilitres() const;
    [[nodiscard]] constexpr double toLitres() const;
    [[nodiscard]] constexpr double toDrops() const;
    [[nodiscard]] constexpr double toTeaspoons() const;
    [[nodiscard]] constexpr double toTablespoons() const;
    [[nodiscard]] constexpr double toFluidOunces() const;
    [[nodiscard]] constexpr double toCups() const;
    [[nodiscard]] constexpr double toPints() const;
    [[nodiscard]] constexpr double toQuarts() const;
    [[nodiscard]] constexpr double toGallons() const;
};

constexpr Volume VolumeDimension::fromMillilitres(double millilitres) {
    return Volume(millilitres);
}
constexpr Volume VolumeDimension::fromLitres(double litres) {
    return Volume(litres * units::millilitresPerLitre);
}
constexpr Volume VolumeDimension::fromDrops(double drops) {
    return Volume(drops * units::millilitresPerDrop);
}
constexpr Volume VolumeDimension::fromTeaspoons(double teaspoons) {
    return Volume(teaspoons * units::millilitresPerTeaspoon);
}
constexpr Volume VolumeDimension::fromTablespoons(double tablespoons) {
    return Volume(tablespoons * units::millilitresPerTablespoon);
}
constexpr Volume VolumeDimension::fromFluidOunces(double fluidOunces) {
    return Volume(fluidOunces * units::millilitresPerFluidOunce);
}
constexpr Volume VolumeDimension::fromCups(double cups) {
    return Volume(cups * units::millilitresPerCup);
}
constexpr Volume VolumeDimension::fromPints(double pints) {
    return Volume(pints * units::millilitresPerPint);
}
constexpr Volume VolumeDimension::fromQuarts(double quarts) {
    return Volume(quarts * units::millilitresPerQuart);
}
constexpr Volume VolumeDimension::fromGallons(double gallons) {
    return Volume(gallons * units::millilitresPerGallon);
}
constexpr double VolumeDimension::toMillilitres() const {
    return static_cast<const Volume*>(this)->m_base;
}
constexpr double VolumeDimension::toLitres() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerLitre;
}
constexpr double VolumeDimension::toDrops() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerDrop;
}
constexpr double VolumeDimension::toTeaspoons() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerTeaspoon;
}
constexpr double VolumeDimension::toTablespoons() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerTablespoon;
}
constexpr double VolumeDimension::toFluidOunces() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerFluidOunce;
}
constexpr double VolumeDimension::toCups() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerCup;
}
constexpr double VolumeDimension::toPints() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerPint;
}
constexpr double VolumeDimension::toQuarts() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerQuart;
}
constexpr double VolumeDimension::toGallons() const {
    return static_cast<const Volume*>(this)->m_base / units::millilitresPerGallon;
}

} // namespace ladlework::quantity
