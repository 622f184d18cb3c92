#pragma once

#include <compare>

namespace ladlework::quantity {

/// A number with a unit that the compiler knows: kept in the SI-based unit of its Dimension
/// (g, mL, °C, minutes, cm), entered and read only through named conversions, so that grams
/// cannot be handed over as millilitres. No range is imposed: a difference may be negative.
template <class Dimension>
class Quantity : public Dimension {
public:
    constexpr Quantity() = default;

    friend constexpr auto operator<=>(const Quantity& a, const Quantity& b) {
        return a.m_base <=> b.m_base;
    }
    friend constexpr bool operator==(const Quantity& a, const Quantity& b) {
        return a.m_base == b.m_base;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) {
        return Quantity(a.m_base + b.m_base);
    }
    friend constexpr Quantity operator-(Quantity a, Quantity b) {
        return Quantity(a.m_base - b.m_base);
    }
    friend constexpr Quantity operator*(Quantity a, double factor) {
        return Quantity(a.m_base * factor);
    }
    friend constexpr Quantity operator*(double factor, Quantity a) { return a * factor; }
    friend constexpr Quantity operator/(Quantity a, double divisor) {
        return Quantity(a.m_base / divisor);
    }
    /// The plain ratio of two like quantities.
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_base / b.m_base; }
    constexpr Quantity& operator+=(Quantity other) { return *this = *this + other; }
    constexpr Quantity& operator-=(Quantity other) { return *this = *this - other; }

protected:
    friend Dimension;
    explicit constexpr Quantity(double base) : m_base(base) {}
    double m_base = 0.0;
};

} // namespace ladlework::quantity
