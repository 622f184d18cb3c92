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

double plateNumber(double rayleigh, const EvaporationFigures& figures) {
    if (rayleigh <= figures.plateTurbulentFrom)
        return figures.plateLaminar * std::sqrt(std::sqrt(rayleigh));
    return figures.plateTurbulent * std::cbrt(rayleigh);
}

/// The water's surface and the air of the room above it.
struct Surface {
    quantity::Length diameter;
    double waterKelvin = 0;
    double roomKelvin = 0;
    double humidity = 0; ///< of the room's air, relative, 0-1
    double pressurePa = 0;
};

/// kg/m²h: what openSurfaceRate() gives.
double rateOf(const Surface& surface, const EvaporationFigures& figures) {
    const auto saturated = [](double kelvin) {
        return saturationPressurePa(quantity::Temperature::fromKelvin(kelvin));
    };
    const double surfacePa = std::min(saturated(surface.waterKelvin), surface.pressurePa);
    const double roomPa = surface.humidity * saturated(surface.roomKelvin);
    const double surfaceDensity = moistDensity(surface.waterKelvin, surfacePa, surface.pressurePa);
    const double roomDensity = moistDensity(surface.roomKelvin, roomPa, surface.pressurePa);
    if (surfaceDensity >= roomDensity || surfacePa <= roomPa)
        return 0.0;

    const double film = (surface.waterKelvin + surface.roomKelvin) / 2.0;
    const double diffusivity = figures.vapourDiffusivity *
                               std::pow(film / freezingKelvin, figures.vapourDiffusivityExponent) *
                               atmospherePa / surface.pressurePa;
    const double viscosity =
        figures.airSutherland * film * std::sqrt(film) / (film + figures.airSutherlandTemperature);
    const double length = surface.diameter.toMetres() / 4.0; // area over perimeter of a disc
    const double rayleigh = gravity * (roomDensity - surfaceDensity) * length * length * length /
                            (viscosity * diffusivity);
    const double transfer = plateNumber(rayleigh, figures) * diffusivity / length;
    return transfer *
           (vapourDensity(surface.waterKelvin, surfacePa) -
            vapourDensity(surface.roomKelvin, roomPa)) *
           secondsPerHour;
}

LogSpread spreadOf(const Range& range) {
    return {std::log(range.best / range.low), std::log(range.high / range.best)};
}

/// What the heat under the pot and the air of the room do to the rate, each moved alone. Where both
/// bounds move it the same way the larger counts.
LogSpread spreadOfCooking(const Surface& best, double rate, quantity::Temperature boiling,
                          const EvaporationFigures& figures) {
    LogSpread spread;
    const auto move = [&](double Surface::*what, double low, double high) {
        LogSpread moved;
        for (double value : {low, high}) {
            Surface surface = best;
            surface.*what = value;
            const double other = rateOf(surface, figures);
            if (rate <= 0.0 || other <= 0.0)
                continue;
            moved.down = std::max(moved.down, std::log(rate / other));
            moved.up = std::max(moved.up, std::log(other / rate));
        }
        spread = spread.with(moved);
    };
    const Range& heat = figures.simmerTemperature;
    move(&Surface::waterKelvin, std::min(heat.low + freezingKelvin, best.waterKelvin),
         std::max(std::min(heat.high + freezingKelvin, boiling.toKelvin()), best.waterKelvin));
    move(&Surface::roomKelvin, best.roomKelvin + figures.roomWarmth.low,
         best.roomKelvin + figures.roomWarmth.high);
    move(&Surface::humidity, figures.airHumidity.low, figures.airHumidity.high);
    return spread;
}

/// The share of the open pot's loss that goes through lid and place.
struct Share {
    double best = 1;
    LogSpread spread;

    void take(const Range& range) {
        best *= range.best;
        spread = spread.with(spreadOf(range));
    }
};

Share shareOf(const Vessel& vessel, const EvaporationFigures& figures) {
    Share share;
    switch (vessel.place) {
    case Vessel::Place::Oven:
        share.take(figures.oven);
        [[fallthrough]];
    case Vessel::Place::Stovetop:
        share.take(figures.lids.at(static_cast<size_t>(vessel.lid)));
        break;
    case Vessel::Place::SlowCooker:
        share.take(figures.slowCooker);
        break;
    case Vessel::Place::PressureCooker:
        share.take(figures.pressureCooker);
        break;
    }
    return share;
}
} // namespace

double plateTransferNumber(double rayleigh, const Catalogue& catalogue) {
    return plateNumber(rayleigh, catalogue.brewFigures().evaporation);
}

double openSurfaceRate(quantity::Length diameter, quantity::Temperature water,
                       quantity::Temperature room, quantity::Length altitude,
                       const Catalogue& catalogue) {
    const EvaporationFigures& figures = catalogue.brewFigures().evaporation;
    return rateOf({diameter, water.toKelvin(), room.toKelvin(), figures.airHumidity.best,
                   standardPressurePa(altitude)},
                  figures);
}

LogSpread LogSpread::with(const LogSpread& other) const {
    return {std::sqrt(down * down + other.down * other.down),
            std::sqrt(up * up + other.up * other.up)};
}

double LogSpread::deviation() const {
    return (down + up) / 2.0 / ninetyPercent;
}

PhysicalLoss physicalLoss(const Vessel& vessel, quantity::Temperature simmering,
                          quantity::Temperature room, quantity::Length altitude,
                          quantity::Duration time, const Catalogue& catalogue) {
    const EvaporationFigures& figures = catalogue.brewFigures().evaporation;
    const Surface surface{vessel.diameter, simmering.toKelvin(), room.toKelvin(),
                          figures.airHumidity.best, standardPressurePa(altitude)};
    const double rate = rateOf(surface, figures);
    const Share share = shareOf(vessel, figures);
    const double kilograms =
        rate * area(vessel.diameter) * time.toHours() * figures.openSpread.best * share.best;
    // No pot can lose more than the burner's heat turns into steam.
    const double mostKilograms = figures.burnerNetPower * time.toHours() * secondsPerHour /
                                 (figures.waterLatentHeat * joulesPerKilojoule);
    const double perKilogram = quantity::units::millilitresPerLitre / figures.waterDensity;
    return {kilograms * perKilogram, mostKilograms * perKilogram,
            spreadOf(figures.openSpread).with(share.spread),
            spreadOfCooking(surface, rate, boilingPoint(altitude), figures)};
}

LogSpread lidAndPlaceSpread(const Vessel& vessel, const Catalogue& catalogue) {
    return shareOf(vessel, catalogue.brewFigures().evaporation).spread;
}

LogSpread vesselSpread(const Vessel& vessel, const Catalogue& catalogue) {
    return spreadOf(catalogue.brewFigures().evaporation.openSpread)
        .with(lidAndPlaceSpread(vessel, catalogue));
}

Range evaporatedMl(const Vessel& vessel, quantity::Temperature simmering,
                   quantity::Temperature room, quantity::Length altitude, quantity::Duration time,
                   const Catalogue& catalogue, const std::optional<Range>& learntFactor) {
    const PhysicalLoss physical = physicalLoss(vessel, simmering, room, altitude, time, catalogue);
    const double factor = learntFactor ? learntFactor->best : vessel.evaporationFactor;
    const LogSpread spread =
        physical.ofCooking.with(learntFactor ? spreadOf(*learntFactor) : physical.ofVessel);
    const auto lost = [&physical](double millilitres) {
        return std::min(millilitres, physical.mostMl);
    };
    const double best = physical.ml * factor;
    return {lost(best * std::exp(-spread.down)), lost(best), lost(best * std::exp(spread.up))};
}

} // namespace ladlework::kitchen
