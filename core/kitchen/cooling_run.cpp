#include "kitchen/cooling_run.h"

#include "kitchen/cooling_surfaces.h"
#include "kitchen/evaporation.h"
#include "kitchen/keeping_figures.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

// The stock is a grid in depth and radius (cooling_grid.h). While it is thin its own convection
// mixes it: the conductivity is raised by the Nusselt number of a liquid layer (McAdams) for the
// difference between its warmest and coldest place, so that the air, lid and wall outside limit the
// cooling. Once it gels only conduction is left, and core and surface part. What a cold container
// takes up, and the little that boils off, are left out: both would cool the stock a little faster.
//
// A tray is reckoned as the cylinder whose sides conduct as quickly (the first eigenvalue of the
// rectangle and of the circle, Carslaw and Jaeger 1959), with the wall enlarged so that wall over
// volume is the tray's.
namespace ladlework::kitchen {

namespace {
constexpr double gravity = 9.80665; // as in ICAO Doc 7488/3
constexpr double firstZeroOfJ0 = 2.404825557695773;
constexpr double secondsPerMinute = 60.0;
constexpr double litresPerCubicMetre = 1000.0;
constexpr double kilogramsPerCubicMetre = 1000.0; // of 1 g/mL
/// Convection in a hot liquid never quite stops; without it the first step would find none.
constexpr double leastSpreadK = 0.1;

StockSizes sizesOf(const Container& container, quantity::Length depth) {
    const double across = container.across.toMetres();
    const double rim = container.shape == Container::Shape::Tray
                           ? 2.0 * (across + container.width.toMetres())
                           : std::numbers::pi * across;
    return {container.floorSquareMetres(), rim, depth.toMetres()};
}

LiquidBody bodyOf(const Container& container, const StockSizes& sizes, double volumetricHeat) {
    double radius = container.across.toMetres() / 2.0;
    if (container.shape == Container::Shape::Tray) {
        const double toLength = std::numbers::pi / container.across.toMetres();
        const double toWidth = std::numbers::pi / container.width.toMetres();
        radius = firstZeroOfJ0 / std::hypot(toLength, toWidth);
    }
    return {radius, sizes.depth, sizes.rim / sizes.floor * radius / 2.0, volumetricHeat};
}

/// The coldest and the warmest that stock and surroundings get.
std::pair<double, double> bounds(const CoolingInput& input) {
    double coldest = input.start.toCelsius();
    double warmest = coldest;
    for (const CoolingStage& stage : input.stages) {
        coldest = std::min(coldest, stage.ambient.toCelsius());
        warmest = std::max(warmest, stage.ambient.toCelsius());
    }
    return {coldest, warmest};
}

class Run {
public:
    Run(const CoolingInput& input, const Liquid& liquid, const RunDetail& detail,
        const CoolingFigures& figures)
        : m_input(input), m_liquid(liquid), m_detail(detail), m_figures(figures),
          m_sizes(sizesOf(input.container, depthOf(input.volume, input.container))),
          m_body(bodyOf(input.container, m_sizes, liquid.volumetricHeat)),
          m_grid(m_body, detail.across, detail.down, input.start.toCelsius()),
          m_share(m_sizes.floor / (std::numbers::pi * m_body.radius * m_body.radius)) {
        const double length = std::min(m_body.radius, m_body.depth);
        const double diffusivity = liquid.conductivity / liquid.volumetricHeat;
        m_rayleighPerKelvin = gravity * figures.value(QStringLiteral("stock-expansion")) * length *
                              length * length /
                              (figures.value(QStringLiteral("stock-viscosity")) * diffusivity);
        m_conduction.still = liquid.conductivity;
        m_conduction.moving = liquid.conductivity;
        m_conduction.setsAtC = figures.value(QStringLiteral("gelling-temperature"));
        m_conduction.spanK = figures.value(QStringLiteral("gelling-span"));
    }

    CoolingRun go(quantity::Duration giveUp) {
        const double startC = m_grid.meanC();
        note();
        const double most = giveUp.toMinutes() * secondsPerMinute;
        const auto [coldest, warmest] = bounds(m_input);
        for (std::size_t index = 0; index < m_input.stages.size(); ++index) {
            const CoolingStage& stage = m_input.stages[index];
            const bool isLast = index + 1 == m_input.stages.size();
            const double end =
                isLast ? most
                       : std::min(most, m_seconds + stage.time.toMinutes() * secondsPerMinute);
            m_run.stageStarts.push_back(point());
            const FaceLosses faces =
                lossesOf(m_input.container, m_sizes, stage, coldest, warmest, m_figures);
            while (m_seconds < end && !isDone())
                advance(end, faces, stage.stirred);
            if (isDone() || m_seconds >= most)
                break;
        }
        m_run.heatGoneJ = m_share * (startC - m_grid.meanC()) * m_grid.heatCapacity();
        return std::move(m_run);
    }

private:
    [[nodiscard]] bool isDone() const {
        if (m_run.toEnd)
            return true;
        if (!m_detail.onlyWhilePassing || !m_passedFrom)
            return false;
        const quantity::Duration so = since(*m_passedFrom, m_seconds);
        return so > m_rule.endWithin || (so > m_rule.middleWithin && !m_run.toMiddle) ||
               (m_run.toMiddle && *m_run.toMiddle > m_rule.middleWithin);
    }

    [[nodiscard]] CoolingPoint point() const {
        return {quantity::Duration::fromMinutes(m_seconds / secondsPerMinute),
                quantity::Temperature::fromCelsius(m_grid.warmestC()),
                quantity::Temperature::fromCelsius(m_grid.topC())};
    }

    void advance(double end, const FaceLosses& faces, bool isStirred) {
        const double before = m_grid.watts(faces);
        // A hair before the end of a stage is the end.
        constexpr double hair = 1e-6;
        const double stepped =
            m_grid.step(end - m_seconds, m_detail.errorK, faces, conduction(isStirred));
        m_seconds = end - m_seconds - stepped < hair ? end : m_seconds + stepped;
        m_run.heatLostJ += m_share * stepped * (before + m_grid.watts(faces)) / 2.0;
        note();
    }

    Conduction conduction(bool isStirred) const {
        Conduction now = m_conduction;
        if (isStirred) {
            now.still = now.moving = m_figures.value(QStringLiteral("stirred-conductivity"));
        } else if (m_liquid.mixesItself) {
            const double spread = std::max(leastSpreadK, m_grid.warmestC() - m_grid.coldestC());
            const double rayleigh = m_rayleighPerKelvin * spread;
            now.moving *= std::max(1.0, plateTransferNumber(rayleigh, m_figures.catalogue()));
        }
        return now;
    }

    /// Takes the point into the curve and looks whether a mark of the rule was passed.
    void note() {
        m_run.curve.push_back(point());
        const double fromSeconds = passed(m_rule.fromC, m_passedFrom);
        const double middleSeconds = passed(m_rule.middleC, m_passedMiddle);
        const double endSeconds = passed(m_rule.endC, m_passedEnd);
        if (m_passedMiddle && !m_run.toMiddle)
            m_run.toMiddle = since(fromSeconds, middleSeconds);
        if (m_passedEnd && !m_run.toEnd)
            m_run.toEnd = since(fromSeconds, endSeconds);
    }

    static quantity::Duration since(double from, double to) {
        return quantity::Duration::fromMinutes((to - from) / secondsPerMinute);
    }

    /// When the warmest place fell to this temperature, in seconds; kept once it did.
    double passed(double celsius, std::optional<double>& when) const {
        const std::vector<CoolingPoint>& curve = m_run.curve;
        const CoolingPoint& now = curve.back();
        if (!when && now.core.toCelsius() <= celsius) {
            double seconds = m_seconds;
            if (curve.size() > 1) {
                const CoolingPoint& last = curve[curve.size() - 2];
                const double fallen = (last.core.toCelsius() - celsius) /
                                      (last.core.toCelsius() - now.core.toCelsius());
                const double start = last.at.toMinutes() * secondsPerMinute;
                seconds = start + fallen * (m_seconds - start);
            }
            when = seconds;
        }
        return when.value_or(0.0);
    }

    const CoolingInput& m_input;
    const Liquid& m_liquid;
    const RunDetail& m_detail;
    const CoolingFigures& m_figures;
    const TwoStageRule m_rule = TwoStageRule::shipped();
    StockSizes m_sizes;
    LiquidBody m_body;
    CoolingGrid m_grid;
    Conduction m_conduction;
    double m_share; ///< floor of the container over that of the grid
    double m_rayleighPerKelvin = 0;
    double m_seconds = 0;
    std::optional<double> m_passedFrom, m_passedMiddle, m_passedEnd;
    CoolingRun m_run;
};
} // namespace

TwoStageRule TwoStageRule::shipped() {
    const KeepingFigures& figures = KeepingFigures::shipped();
    const auto celsius = [&figures](const char* id) {
        return figures.temperature(QString::fromLatin1(id)).toCelsius();
    };
    const auto hours = [&figures](const char* id) {
        return quantity::Duration::fromHours(figures.count(QString::fromLatin1(id)));
    };
    return {celsius("cool-from"), celsius("cool-middle"), celsius("cool-end"),
            hours("cool-middle-within"), hours("cool-end-within")};
}

bool passes(const CoolingRun& run, const TwoStageRule& rule) {
    return run.toMiddle && *run.toMiddle <= rule.middleWithin && run.toEnd &&
           *run.toEnd <= rule.endWithin;
}

Liquid Liquid::stock(const CoolingFigures& figures) {
    const double density = figures.value(QStringLiteral("water-density")) * kilogramsPerCubicMetre;
    return {figures.value(QStringLiteral("stock-conductivity")),
            figures.value(QStringLiteral("stock-heat-capacity")) * density, true};
}

quantity::Length depthOf(quantity::Volume volume, const Container& container) {
    return quantity::Length::fromMetres(volume.toLitres() / litresPerCubicMetre /
                                        container.floorSquareMetres());
}

CoolingRun runCooling(const CoolingInput& input, const Liquid& liquid, const RunDetail& detail,
                      quantity::Duration giveUp, const CoolingFigures& figures) {
    if (input.stages.empty() || !(input.volume > quantity::Volume()))
        throw std::logic_error("nothing to cool, or nowhere");
    return Run(input, liquid, detail, figures).go(giveUp);
}

} // namespace ladlework::kitchen
