#include "kitchen/evaporation.h"

#include "kitchen/boiling.h"

#include <algorithm>
#include <cmath>
#include <numbers>

// Free convection of moist air over a warm disc (McAdams), carried over to the vapour by the
// Chilton-Colburn analogy: the Sherwood number takes the place of the Nusselt number and the
// Rayleigh number is built with the vapour's diffusivity. The air rises because it is warm and
// because vapour is lighter than air, so the buoyancy is the difference of the moist densities.
// Properties are taken at the film temperature. The driving force is linear: the logarithmic
// (Stefan) form runs away near boiling, where the open tank table shows no such thing.
namespace ladlework::kitchen {

namespace {
// Fundamental constants: CODATA 2018 and IUPAC 2021 atomic weights; gravity as in ICAO 7488/3.
constexpr double gasConstant = 8.314462618;
constexpr double waterKilogramPerMole = 0.018015;
constexpr double dryAirKilogramPerMole = 0.028965;
constexpr double gravity = 9.80665;
constexpr double freezingKelvin = 273.15;
constexpr double atmospherePa = 101325.0;
constexpr double secondsPerHour = 3600.0;
constexpr double joulesPerKilojoule = 1000.0;

double moistDensity(double kelvin, double vapourPa, double totalPa) {
    return (vapourPa * waterKilogramPerMole + (totalPa - vapourPa) * dryAirKilogramPerMole) /
           (gasConstant * kelvin);
}

double vapourDensity(double kelvin, double vapourPa) {
    return vapourPa * waterKilogramPerMole / (gasConstant * kelvin);
}

double area(quantity::Length diameter) {
    return std::numbers::pi / 4.0 * diameter.toMetres() * diameter.toMetres();
}

/// The share of the open pot's loss that goes through lid and place.
std::vector<const Figure*> sharesOf(const Vessel& vessel, const Catalogue& catalogue) {
    const Figure* lid = &catalogue.figure(QStringLiteral("lid-") + lidId(vessel.lid));
    switch (vessel.place) {
    case Vessel::Place::Stovetop:
        return {lid};
    case Vessel::Place::Oven:
        return {lid, &catalogue.figure(QStringLiteral("place-oven"))};
    case Vessel::Place::SlowCooker:
        return {&catalogue.figure(QStringLiteral("place-slow-cooker"))};
    case Vessel::Place::PressureCooker:
        return {&catalogue.figure(QStringLiteral("place-pressure-cooker"))};
    }
    return {};
}
} // namespace

double plateTransferNumber(double rayleigh, const Catalogue& catalogue) {
    if (rayleigh <= catalogue.figure(QStringLiteral("plate-turbulent-from")).value)
        return catalogue.figure(QStringLiteral("plate-laminar")).value * std::pow(rayleigh, 0.25);
    return catalogue.figure(QStringLiteral("plate-turbulent")).value * std::cbrt(rayleigh);
}

double openSurfaceRate(quantity::Length diameter, quantity::Temperature water,
                       quantity::Temperature room, quantity::Length altitude,
                       const Catalogue& catalogue) {
    const auto figure = [&catalogue](const QString& id) {
        return catalogue.figure(id).value;
    };
    const double pressure = standardPressurePa(altitude);
    const double surfacePa = std::min(saturationPressurePa(water), pressure);
    const double roomPa = figure(QStringLiteral("air-humidity")) * saturationPressurePa(room);
    const double surfaceDensity = moistDensity(water.toKelvin(), surfacePa, pressure);
    const double roomDensity = moistDensity(room.toKelvin(), roomPa, pressure);
    if (surfaceDensity >= roomDensity || surfacePa <= roomPa)
        return 0.0;

    const double film = (water.toKelvin() + room.toKelvin()) / 2.0;
    const double diffusivity =
        figure(QStringLiteral("vapour-diffusivity")) *
        std::pow(film / freezingKelvin, figure(QStringLiteral("vapour-diffusivity-exponent"))) *
        atmospherePa / pressure;
    const double viscosity = figure(QStringLiteral("air-sutherland")) * film * std::sqrt(film) /
                             (film + figure(QStringLiteral("air-sutherland-temperature")));
    const double length = diameter.toMetres() / 4.0; // area over perimeter of a disc
    const double rayleigh = gravity * (roomDensity - surfaceDensity) * length * length * length /
                            (viscosity * diffusivity);
    const double transfer = plateTransferNumber(rayleigh, catalogue) * diffusivity / length;
    return transfer *
           (vapourDensity(water.toKelvin(), surfacePa) - vapourDensity(room.toKelvin(), roomPa)) *
           secondsPerHour;
}

Range evaporatedMl(const Vessel& vessel, quantity::Temperature simmering,
                   quantity::Temperature room, quantity::Length altitude, quantity::Duration time,
                   const Catalogue& catalogue) {
    double kilogramsPerHour =
        openSurfaceRate(vessel.diameter, simmering, room, altitude, catalogue) *
        area(vessel.diameter) * vessel.evaporationFactor;
    // Deviations that multiply add up as the squares of their logarithms.
    double downSquares = 0.0;
    double upSquares = 0.0;
    const auto multiply = [&](const Figure& share) {
        kilogramsPerHour *= share.value;
        downSquares += std::pow(std::log(share.value / share.low), 2.0);
        upSquares += std::pow(std::log(share.high / share.value), 2.0);
    };
    multiply(catalogue.figure(QStringLiteral("evaporation-open-spread")));
    for (const Figure* share : sharesOf(vessel, catalogue))
        multiply(*share);

    // No pot can lose more than the burner's heat turns into steam.
    const double burnerLimit =
        catalogue.figure(QStringLiteral("burner-net-power")).value * secondsPerHour /
        (catalogue.figure(QStringLiteral("water-latent-heat")).value * joulesPerKilojoule);
    const double perKilogram = quantity::units::millilitresPerLitre /
                               catalogue.figure(QStringLiteral("water-density")).value;
    const auto lost = [&](double rate) {
        return std::min(rate, burnerLimit) * time.toHours() * perKilogram;
    };
    return {lost(kilogramsPerHour * std::exp(-std::sqrt(downSquares))), lost(kilogramsPerHour),
            lost(kilogramsPerHour * std::exp(std::sqrt(upSquares)))};
}

} // namespace ladlework::kitchen
