#include "kitchen/boiling.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ladlework::kitchen {

namespace {
// ICAO Doc 7488/3 (1993), constants of the standard atmosphere.
constexpr double seaLevelPressurePa = 101325.0;
constexpr double seaLevelKelvin = 288.15;
constexpr double lapseKelvinPerMetre = 0.0065;
constexpr double gravity = 9.80665;
constexpr double airGasConstant = 287.05287;
constexpr double earthRadiusMetres = 6356766.0;
constexpr double lowestMetres = -500.0;
constexpr double highestMetres = 6000.0;

// IAPWS R7-97(2012), Table 34: the coefficients n1 to n10 of the saturation line.
constexpr std::array<double, 11> n{0.0,
                                   0.11670521452767e4,
                                   -0.72421316703206e6,
                                   -0.17073846940092e2,
                                   0.12020824702470e5,
                                   -0.32325550322333e7,
                                   0.14915108613530e2,
                                   -0.48232657361591e4,
                                   0.40511340542057e6,
                                   -0.23855557567849,
                                   0.65017534844798e3};
constexpr double pascalPerMegapascal = 1e6;
} // namespace

double standardPressurePa(quantity::Length altitude) {
    const double metres = std::clamp(altitude.toMetres(), lowestMetres, highestMetres);
    const double geopotential = earthRadiusMetres * metres / (earthRadiusMetres + metres);
    const double exponent = gravity / (airGasConstant * lapseKelvinPerMetre);
    return seaLevelPressurePa *
           std::pow(1.0 - lapseKelvinPerMetre * geopotential / seaLevelKelvin, exponent);
}

quantity::Temperature boilingPoint(quantity::Length altitude) {
    return saturationTemperature(standardPressurePa(altitude));
}

quantity::Temperature saturationTemperature(double pascals) {
    const double beta = std::pow(pascals / pascalPerMegapascal, 0.25);
    const double e = beta * beta + n[3] * beta + n[6];
    const double f = n[1] * beta * beta + n[4] * beta + n[7];
    const double g = n[2] * beta * beta + n[5] * beta + n[8];
    const double d = 2.0 * g / (-f - std::sqrt(f * f - 4.0 * e * g));
    const double sum = n[10] + d;
    return quantity::Temperature::fromKelvin(
        (sum - std::sqrt(sum * sum - 4.0 * (n[9] + n[10] * d))) / 2.0);
}

double saturationPressurePa(quantity::Temperature temperature) {
    const double kelvin = temperature.toKelvin();
    const double theta = kelvin + n[9] / (kelvin - n[10]);
    const double a = theta * theta + n[1] * theta + n[2];
    const double b = n[3] * theta * theta + n[4] * theta + n[5];
    const double c = n[6] * theta * theta + n[7] * theta + n[8];
    return pascalPerMegapascal * std::pow(2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c)), 4.0);
}

} // namespace ladlework::kitchen
