#pragma once

#include <compare>

namespace ladlework::quantity {

/// A temperature on the Celsius or Fahrenheit scale (a point, not a difference: it has no + or *).
/// Fahrenheit by NIST SP 811 (2008), Appendix B: t/°C = (t/°F - 32)/1.8, exact.
class Temperature {
public:
    constexpr Temperature() = default;

    static constexpr Temperature fromCelsius(double celsius) { return Temperature(celsius); }
    static constexpr Temperature fromFahrenheit(double fahrenheit) {
        return Temperature((fahrenheit - 32.0) / 1.8);
    }
    static constexpr Temperature fromKelvin(double kelvin) { return Temperature(kelvin - 273.15); }
    [[nodiscard]] constexpr double toCelsius() const { return m_celsius; }
    [[nodiscard]] constexpr double toFahrenheit() const { return m_celsius * 1.8 + 32.0; }
    [[nodiscard]] constexpr double toKelvin() const { return m_celsius + 273.15; }

    // clang-tidy 14 takes the zero inside a defaulted comparison for a null pointer.
    // NOLINTNEXTLINE(modernize-use-nullptr)
    friend constexpr auto operator<=>(const Temperature&, const Temperature&) = default;

private:
    explicit constexpr Temperature(double celsius) : m_celsius(celsius) {}
    double m_celsius = 0.0;
};

} // namespace ladlework::quantity
