#include "kitchen/cooling_surfaces.h"

#include "kitchen/boiling.h"
#include "kitchen/evaporation.h"

#include <algorithm>
#include <cmath>

// Free convection of air as in the handbooks: McAdams for level surfaces on the length area over
// perimeter, Churchill and Chu for upright ones on their height, with dry air at the film
// temperature. What a fan or the working of a refrigerator moves is added as the cubes of the
// coefficients (Churchill's rule for mixed convection). Grey surfaces radiate to surroundings of
// the air's temperature. An open top evaporates as a simmering pot does (evaporation.h). Below a
// lid, vapour carries heat to it like the air between them, by the Chilton-Colburn analogy.
namespace ladlework::kitchen {

namespace {
// Constants: CODATA 2018; gravity and the gas constant of air as in ICAO Doc 7488/3.
constexpr double stefanBoltzmann = 5.670374419e-8;
constexpr double gravity = 9.80665;
constexpr double airGasConstant = 287.05287;
constexpr double vapourGasConstant = 461.526; // IAPWS-IF97
constexpr double seaLevelPa = 101325.0;
constexpr double secondsPerHour = 3600.0;
constexpr double joulesPerKilojoule = 1000.0;
constexpr double metresPerMillimetre = 0.001;
constexpr double boilingC = 100.0;

constexpr double lookUpStepK = 2.0;
constexpr int roundsOfWall = 8; // the film changes slowly with the wall's temperature

double kelvin(double celsius) {
    return quantity::Temperature::fromCelsius(celsius).toKelvin();
}

/// Free and forced transfer in one.
double together(double still, double moved) {
    return std::cbrt(still * still * still + moved * moved * moved);
}

/// kg/m3 of saturated vapour.
double vapourDensity(double celsius) {
    return saturationPressurePa(quantity::Temperature::fromCelsius(celsius)) /
           (vapourGasConstant * kelvin(celsius));
}

enum class Facing { Up, Sideways, Down };

/// A surface in the air: how it lies, how large it is and how well it radiates.
struct Surface {
    Facing facing = Facing::Up;
    double length = 0; ///< m, of the correlation
    double emissivity = 0;
    double movedAir = 0; ///< W/(m2 K) of air that moves anyway
    double share = 1;    ///< of the coefficient that is felt
};

class Surroundings {
public:
    Surroundings(double ambientC, const CoolingFigures& figures)
        : m_figures(figures), m_ambientC(ambientC),
          m_sutherland(figures.value(QStringLiteral("air-sutherland"))),
          m_sutherlandKelvin(figures.value(QStringLiteral("air-sutherland-temperature"))),
          m_heatCapacity(figures.value(QStringLiteral("air-heat-capacity"))),
          m_prandtl(figures.value(QStringLiteral("air-prandtl"))),
          m_plateDown(figures.value(QStringLiteral("plate-down"))) {}

    /// W/(m2 K) of a surface of this temperature by convection and radiation.
    [[nodiscard]] double coefficient(const Surface& surface, double surfaceC) const {
        const double still = freeConvection(surface, surfaceC);
        const double convection = together(still, surface.movedAir);
        return surface.share * (convection + radiation(surface.emissivity, surfaceC, m_ambientC));
    }

    /// W/(m2 K) of grey radiation between two temperatures.
    static double radiation(double emissivity, double oneC, double otherC) {
        const double one = kelvin(oneC);
        const double other = kelvin(otherC);
        return emissivity * stefanBoltzmann * (one * one + other * other) * (one + other);
    }

    [[nodiscard]] double ambientC() const { return m_ambientC; }
    /// J/(m3 K) of air of this temperature.
    [[nodiscard]] double heatOfAir(double celsius) const {
        return seaLevelPa / (airGasConstant * kelvin(celsius)) * m_heatCapacity;
    }

private:
    [[nodiscard]] double freeConvection(const Surface& surface, double surfaceC) const {
        const double film = (kelvin(surfaceC) + kelvin(m_ambientC)) / 2.0;
        const double viscosity =
            m_sutherland * film * std::sqrt(film) / (film + m_sutherlandKelvin);
        const double conductivity = viscosity * m_heatCapacity / m_prandtl;
        const double kinematic = viscosity * airGasConstant * film / seaLevelPa;
        const double length = surface.length;
        const double rayleigh = gravity * std::abs(surfaceC - m_ambientC) / film * length * length *
                                length / (kinematic * kinematic) * m_prandtl;
        return transferNumber(surface.facing, rayleigh, surfaceC > m_ambientC) * conductivity /
               length;
    }

    [[nodiscard]] double transferNumber(Facing facing, double rayleigh, bool isWarm) const {
        if (facing == Facing::Sideways)
            return uprightTransferNumber(rayleigh, m_prandtl, m_figures);
        // A cold plate facing up holds its air as a warm one facing down does, and the reverse.
        return (facing == Facing::Up) == isWarm
                   ? plateTransferNumber(rayleigh, m_figures.catalogue())
                   : m_plateDown * std::sqrt(std::sqrt(rayleigh));
    }

    const CoolingFigures& m_figures;
    double m_ambientC;
    double m_sutherland;
    double m_sutherlandKelvin;
    double m_heatCapacity;
    double m_prandtl;
    double m_plateDown;
};

/// Builds the laws of one stage.
class Stage {
public:
    Stage(const Container& container, const StockSizes& sizes, const CoolingStage& stage,
          const CoolingFigures& figures)
        : m_container(container), m_sizes(sizes), m_stage(stage), m_figures(figures),
          m_air(airC(), figures) {}

    [[nodiscard]] FaceLosses losses(double coldestC, double hottestC) const {
        const auto lookUp = [&](const auto& law) {
            return SurfaceLoss::lookedUp(coldestC, hottestC, lookUpStepK, law);
        };
        FaceLosses faces;
        faces.top = m_container.covered
                        ? lookUp([this](double stockC) { return throughLid(stockC); })
                        : lookUp([this](double stockC) { return openTop(stockC); });
        if (m_stage.place == CoolingStage::Place::IceBath) {
            const double water = value(m_stage.stirred ? "ice-bath-stirred" : "ice-bath-still");
            faces.side = SurfaceLoss::newton(1.0 / (1.0 / water + wallResistance()),
                                             m_stage.ambient.toCelsius());
            faces.floor = faces.side;
            return faces;
        }
        const double level = m_sizes.floor / m_sizes.rim;
        const Surface wall{Facing::Sideways, m_sizes.depth, wallEmissivity(), movedAir(), 1.0};
        const Surface floor{Facing::Down, level, wallEmissivity(), movedAir(),
                            value("shelf-share")};
        faces.side = lookUp([&](double stockC) { return throughWall(wall, stockC); });
        faces.floor = lookUp([&](double stockC) { return throughWall(floor, stockC); });
        return faces;
    }

private:
    [[nodiscard]] double value(const char* id) const {
        return m_figures.value(QString::fromLatin1(id));
    }
    [[nodiscard]] double ofMaterial(const char* property) const {
        return m_figures.value(containerMaterialId(m_container.material) +
                               QString::fromLatin1(property));
    }
    [[nodiscard]] double wallEmissivity() const { return ofMaterial("-emissivity"); }
    [[nodiscard]] double wallResistance() const {
        return ofMaterial("-thickness") * metresPerMillimetre / ofMaterial("-conductivity");
    }
    /// Over an ice bath stands the air of the room.
    [[nodiscard]] double airC() const {
        return m_stage.place == CoolingStage::Place::IceBath ? value("room-temperature")
                                                             : m_stage.ambient.toCelsius();
    }
    [[nodiscard]] double movedAir() const {
        return m_stage.place == CoolingStage::Place::Refrigerator ? value("refrigerator-air") : 0.0;
    }
    /// A hot open dish wets the air of a closed cabinet.
    [[nodiscard]] double humidity() const {
        return value(m_stage.place == CoolingStage::Place::Refrigerator ? "refrigerator-humidity"
                                                                        : "air-humidity");
    }
    [[nodiscard]] Surface top(double emissivity) const {
        return {Facing::Up, m_sizes.floor / m_sizes.rim, emissivity, movedAir(), 1.0};
    }

    /// The outer temperature settles where what comes through the inside goes off outside.
    template <class Inside>
    [[nodiscard]] double inSeries(const Surface& surface, double stockC,
                                  const Inside& inside) const {
        double outerC = stockC;
        double outer = 0.0;
        double inner = 0.0;
        for (int round = 0; round < roundsOfWall; ++round) {
            outer = m_air.coefficient(surface, outerC);
            inner = inside(outerC);
            outerC = (inner * stockC + outer * m_air.ambientC()) / (inner + outer);
        }
        return outer * (outerC - m_air.ambientC());
    }

    [[nodiscard]] double throughWall(const Surface& surface, double stockC) const {
        const double conductance = 1.0 / wallResistance();
        return inSeries(surface, stockC, [conductance](double) { return conductance; });
    }

    [[nodiscard]] double throughLid(double stockC) const {
        const double lidEmissivity = wallEmissivity();
        const double stockEmissivity = value("stock-emissivity");
        // Two parallel grey plates.
        const double both = 1.0 / (1.0 / stockEmissivity + 1.0 / lidEmissivity - 1.0);
        const double air = value("lid-gap-air") * (1.0 + vapourShare(stockC));
        return inSeries(top(lidEmissivity), stockC, [&](double lidC) {
            return air + Surroundings::radiation(both, stockC, lidC);
        });
    }

    [[nodiscard]] double openTop(double stockC) const {
        const double ambientC = m_air.ambientC();
        const double dry =
            m_air.coefficient(top(value("stock-emissivity")), stockC) * (stockC - ambientC);
        // kg/m3 of vapour at the surface more than in the air.
        const double wetter = vapourDensity(stockC) - humidity() * vapourDensity(ambientC);
        if (wetter <= 0.0)
            return dry;
        // The disc with the same area over perimeter.
        const auto disc = quantity::Length::fromMetres(4.0 * m_sizes.floor / m_sizes.rim);
        const double kilogramsPerHour = openSurfaceRate(
            disc, quantity::Temperature::fromCelsius(stockC),
            quantity::Temperature::fromCelsius(ambientC), {}, m_figures.catalogue());
        const double still =
            kilogramsPerHour / secondsPerHour /
            (vapourDensity(stockC) - value("air-humidity") * vapourDensity(ambientC));
        // Air that moves takes vapour along as it does heat.
        const double moved = movedAir() / m_air.heatOfAir(stockC);
        return dry + together(still, moved) * wetter * latentHeat(stockC);
    }

    /// J/kg, on the line between the published values at 0 and 100 °C.
    [[nodiscard]] double latentHeat(double celsius) const {
        const double cold = value("latent-heat-at-freezing");
        const double hot = value("water-latent-heat");
        return joulesPerKilojoule * (cold + (hot - cold) * celsius / boilingC);
    }

    /// Heat that vapour carries through the air under a lid over what the air carries itself.
    [[nodiscard]] double vapourShare(double stockC) const {
        constexpr double apartK = 0.5;
        const double rise =
            (vapourDensity(stockC + apartK) - vapourDensity(stockC - apartK)) / (2.0 * apartK);
        return rise * latentHeat(stockC) / m_air.heatOfAir(stockC);
    }

    const Container& m_container;
    const StockSizes& m_sizes;
    const CoolingStage& m_stage;
    const CoolingFigures& m_figures;
    Surroundings m_air;
};
} // namespace

double uprightTransferNumber(double rayleigh, double prandtl, const CoolingFigures& figures) {
    const double still = figures.value(QStringLiteral("vertical-still"));
    const double moving = figures.value(QStringLiteral("vertical-moving"));
    const double limit = figures.value(QStringLiteral("vertical-prandtl"));
    const double shape = std::pow(1.0 + std::pow(limit / prandtl, 9.0 / 16.0), 8.0 / 27.0);
    const double root = still + moving * std::pow(rayleigh, 1.0 / 6.0) / shape;
    return root * root;
}

FaceLosses lossesOf(const Container& container, const StockSizes& sizes, const CoolingStage& stage,
                    double coldestC, double hottestC, const CoolingFigures& figures) {
    return Stage(container, sizes, stage, figures).losses(coldestC, hottestC);
}

} // namespace ladlework::kitchen
