#pragma once

/// Exact sizes of the units that kitchens use, in the base units of quantity.h.
/// Source: NIST Handbook 44 (2023), Appendix C; NIST SP 811 (2008), Appendix B. All exact.
namespace ladlework::quantity::units {

inline constexpr double millilitresPerGallon = 3785.411784;
inline constexpr double millilitresPerQuart = millilitresPerGallon / 4;
inline constexpr double millilitresPerPint = millilitresPerGallon / 8;
inline constexpr double millilitresPerCup = millilitresPerGallon / 16;
inline constexpr double millilitresPerFluidOunce = millilitresPerGallon / 128;
inline constexpr double millilitresPerTablespoon = millilitresPerGallon / 256;
inline constexpr double millilitresPerTeaspoon = millilitresPerGallon / 768;
inline constexpr double millilitresPerLitre = 1000.0;

/// One drop, by the old pharmacists' convention of 20 drops to the millilitre (common practice).
inline constexpr double millilitresPerDrop = 0.05;

/// The metric kitchen spoons: 5 mL and 15 mL (21 CFR 101.9(b)(5)(viii) rounds to the same).
inline constexpr double millilitresPerMetricTeaspoon = 5.0;
inline constexpr double millilitresPerMetricTablespoon = 15.0;

inline constexpr double gramsPerPound = 453.59237;
inline constexpr double gramsPerOunce = gramsPerPound / 16;
inline constexpr double gramsPerKilogram = 1000.0;

inline constexpr double centimetresPerInch = 2.54;
inline constexpr double centimetresPerFoot = 12 * centimetresPerInch;
inline constexpr double centimetresPerMetre = 100.0;

inline constexpr double minutesPerHour = 60.0;

} // namespace ladlework::quantity::units
