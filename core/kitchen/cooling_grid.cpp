#include "kitchen/cooling_grid.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace ladlework::kitchen {

namespace {
/// ROS2 with this figure damps what is stiff at once (L-stable).
constexpr double gamma = 1.0 - std::numbers::sqrt2 / 2.0;

// The usual bounds of a step that is fitted to its error estimate.
constexpr double safety = 0.85;
constexpr double leastChange = 0.2;
constexpr double mostChange = 4.0;
constexpr double shortestSeconds = 1e-3;
} // namespace

SurfaceLoss SurfaceLoss::newton(double coefficient, double ambientC) {
    return {ambientC, 1.0, {0.0, coefficient}};
}

SurfaceLoss SurfaceLoss::lookedUp(double fromC, double toC, double stepK,
                                  const std::function<double(double)>& wattsPerSquareMetre) {
    const int parts = std::max(1, static_cast<int>(std::ceil((toC - fromC) / stepK)));
    std::vector<double> watts;
    watts.reserve(static_cast<std::size_t>(parts) + 1);
    for (int part = 0; part <= parts; ++part)
        watts.push_back(wattsPerSquareMetre(fromC + stepK * part));
    return {fromC, stepK, std::move(watts)};
}

SurfaceLoss SurfaceLoss::times(double factor) const {
    SurfaceLoss scaled = *this;
    for (double& watts : scaled.m_watts)
        watts *= factor;
    return scaled;
}

double Conduction::at(double celsius) const {
    const double thin = std::clamp((celsius - setsAtC) / spanK, 0.0, 1.0);
    if (thin <= 0.0)
        return still;
    if (thin >= 1.0)
        return moving;
    return still * std::pow(moving / still, thin);
}

CoolingGrid::CoolingGrid(const LiquidBody& body, int across, int down, double startC)
    : m_rows(down + 1), m_columns(across + 1), m_band(static_cast<std::size_t>(m_columns)) {
    const auto nodes = static_cast<std::size_t>(m_rows) * m_band;
    m_temperature.assign(nodes, startC);
    m_capacity.resize(nodes);
    m_toRight.assign(nodes, 0.0);
    m_toBelow.assign(nodes, 0.0);
    m_sideways.assign(nodes, 0.0);
    m_downwards.assign(nodes, 0.0);
    m_factor.resize(nodes * (m_band + 1));
    m_first.resize(nodes);
    m_second.resize(nodes);
    m_other.resize(nodes);
    m_topArea.resize(m_band);
    m_wallArea.resize(static_cast<std::size_t>(m_rows));

    const double width = body.radius / across;
    const double height = body.depth / down;
    const auto edge = [&](int column) { // outer edge of the volume around a node
        return std::min(body.radius, width * (column + 0.5));
    };
    for (int column = 0; column < m_columns; ++column) {
        const double inner = column == 0 ? 0.0 : edge(column - 1);
        const double outer = edge(column);
        m_topArea[static_cast<std::size_t>(column)] =
            std::numbers::pi * (outer * outer - inner * inner);
    }
    for (int row = 0; row < m_rows; ++row) {
        const double thickness = row == 0 || row == down ? height / 2.0 : height;
        m_wallArea[static_cast<std::size_t>(row)] =
            2.0 * std::numbers::pi * body.radius * thickness * body.wallFactor;
        for (int column = 0; column < m_columns; ++column) {
            const std::size_t node = nodeOf(row, column);
            const double area = m_topArea[static_cast<std::size_t>(column)];
            m_capacity[node] = body.volumetricHeat * area * thickness;
            if (column < across)
                m_sideways[node] = 2.0 * std::numbers::pi * edge(column) * thickness / width;
            if (row < down)
                m_downwards[node] = area / height;
        }
    }
}

std::size_t CoolingGrid::nodeOf(int row, int column) const {
    return static_cast<std::size_t>(row) * m_band + static_cast<std::size_t>(column);
}

void CoolingGrid::setConductances(const Conduction& conduction) {
    // The liquid between two nodes passes on what both halves in a row let through.
    const auto between = [](double one, double other) {
        return 2.0 * one * other / (one + other);
    };
    std::ranges::transform(m_temperature, m_other.begin(),
                           [&](double celsius) { return conduction.at(celsius); });
    const std::size_t nodes = m_temperature.size();
    for (std::size_t node = 0; node + 1 < nodes; ++node)
        m_toRight[node] = m_sideways[node] * between(m_other[node], m_other[node + 1]);
    for (std::size_t node = 0; node + m_band < nodes; ++node)
        m_toBelow[node] = m_downwards[node] * between(m_other[node], m_other[node + m_band]);
}

void CoolingGrid::heatInto(const Field& temperature, const FaceLosses& faces, Field& watts) const {
    std::ranges::fill(watts, 0.0);
    const std::size_t nodes = temperature.size();
    for (std::size_t node = 0; node < nodes; ++node) {
        if (node + 1 < nodes) {
            const double right = m_toRight[node] * (temperature[node] - temperature[node + 1]);
            watts[node] -= right;
            watts[node + 1] += right;
        }
        if (node + m_band < nodes) {
            const double down = m_toBelow[node] * (temperature[node] - temperature[node + m_band]);
            watts[node] -= down;
            watts[node + m_band] += down;
        }
    }
    const std::size_t bottom = nodes - m_band;
    for (std::size_t column = 0; column < m_band; ++column) {
        watts[column] -= m_topArea[column] * faces.top.at(temperature[column]);
        watts[bottom + column] -= m_topArea[column] * faces.floor.at(temperature[bottom + column]);
    }
    for (std::size_t row = 0; row < m_wallArea.size(); ++row) {
        const std::size_t node = row * m_band + m_band - 1;
        watts[node] -= m_wallArea[row] * faces.side.at(temperature[node]);
    }
}

void CoolingGrid::factorise(double share, const FaceLosses& faces) {
    const std::size_t nodes = m_temperature.size();
    const std::size_t stride = m_band + 1;
    const auto diagonal = [&](std::size_t node) -> double& {
        return m_factor[node * stride + m_band];
    };
    std::ranges::fill(m_factor, 0.0);
    for (std::size_t node = 0; node < nodes; ++node)
        diagonal(node) += m_capacity[node];
    for (std::size_t node = 0; node + 1 < nodes; ++node) {
        const double right = share * m_toRight[node];
        diagonal(node) += right;
        diagonal(node + 1) += right;
        m_factor[(node + 1) * stride + m_band - 1] -= right;
    }
    for (std::size_t node = 0; node + m_band < nodes; ++node) {
        const double down = share * m_toBelow[node];
        diagonal(node) += down;
        diagonal(node + m_band) += down;
        m_factor[(node + m_band) * stride] -= down;
    }
    const std::size_t bottom = nodes - m_band;
    for (std::size_t column = 0; column < m_band; ++column) {
        diagonal(column) += share * m_topArea[column] * faces.top.slope(m_temperature[column]);
        diagonal(bottom + column) +=
            share * m_topArea[column] * faces.floor.slope(m_temperature[bottom + column]);
    }
    for (std::size_t row = 0; row < m_wallArea.size(); ++row) {
        const std::size_t node = row * m_band + m_band - 1;
        diagonal(node) += share * m_wallArea[row] * faces.side.slope(m_temperature[node]);
    }

    // Cholesky factorisation within the band.
    for (std::size_t node = 0; node < nodes; ++node) {
        double* own = &m_factor[node * stride];
        const std::size_t first = node > m_band ? node - m_band : 0;
        for (std::size_t before = first; before < node; ++before) {
            const double* other = &m_factor[before * stride];
            double sum = own[before + m_band - node];
            const std::size_t start = std::max(first, before > m_band ? before - m_band : 0);
            for (std::size_t inner = start; inner < before; ++inner)
                sum -= own[inner + m_band - node] * other[inner + m_band - before];
            own[before + m_band - node] = sum * other[m_band];
        }
        double rest = own[m_band];
        for (std::size_t before = first; before < node; ++before)
            rest -= own[before + m_band - node] * own[before + m_band - node];
        own[m_band] = 1.0 / std::sqrt(rest); // only ever divided by
    }
}

void CoolingGrid::solve(Field& values) const {
    const std::size_t nodes = values.size();
    const std::size_t stride = m_band + 1;
    for (std::size_t node = 0; node < nodes; ++node) {
        const double* own = &m_factor[node * stride];
        double sum = values[node];
        for (std::size_t before = node > m_band ? node - m_band : 0; before < node; ++before)
            sum -= own[before + m_band - node] * values[before];
        values[node] = sum * own[m_band];
    }
    for (std::size_t node = nodes; node-- > 0;) {
        const double* own = &m_factor[node * stride];
        values[node] *= own[m_band];
        for (std::size_t before = node > m_band ? node - m_band : 0; before < node; ++before)
            values[before] -= own[before + m_band - node] * values[node];
    }
}

/// Leaves the two stages in m_first and m_second (K/s) and returns the error estimate in K.
double CoolingGrid::tryStep(double seconds, const FaceLosses& faces) {
    factorise(gamma * seconds, faces);
    heatInto(m_temperature, faces, m_first);
    solve(m_first);
    const std::size_t nodes = m_temperature.size();
    for (std::size_t node = 0; node < nodes; ++node)
        m_other[node] = m_temperature[node] + seconds * m_first[node];
    heatInto(m_other, faces, m_second);
    for (std::size_t node = 0; node < nodes; ++node)
        m_second[node] -= 2.0 * m_capacity[node] * m_first[node];
    solve(m_second);
    double error = 0.0;
    for (std::size_t node = 0; node < nodes; ++node)
        error = std::max(error, std::abs(0.5 * seconds * (m_first[node] + m_second[node])));
    return error;
}

double CoolingGrid::step(double mostSeconds, double errorK, const FaceLosses& faces,
                         const Conduction& conduction) {
    setConductances(conduction);
    double seconds = std::min(mostSeconds, m_nextSeconds);
    for (;;) {
        const double error = tryStep(seconds, faces);
        // The error of a step grows with the square of its length.
        const double change = std::clamp(safety * std::sqrt(errorK / std::max(error, 1e-12)),
                                         leastChange, mostChange);
        if (error <= errorK || seconds <= shortestSeconds) {
            for (std::size_t node = 0; node < m_temperature.size(); ++node)
                m_temperature[node] += seconds * (1.5 * m_first[node] + 0.5 * m_second[node]);
            // A step cut short by the end of a stage says nothing about the next.
            m_nextSeconds = std::max(m_nextSeconds * leastChange, seconds * change);
            return seconds;
        }
        seconds = std::max(shortestSeconds, seconds * std::min(change, safety));
        m_nextSeconds = seconds;
    }
}

double CoolingGrid::warmestC() const {
    return *std::ranges::max_element(m_temperature);
}

double CoolingGrid::coldestC() const {
    return *std::ranges::min_element(m_temperature);
}

double CoolingGrid::topC() const {
    double sum = 0.0;
    for (std::size_t column = 0; column < m_band; ++column)
        sum += m_topArea[column] * m_temperature[column];
    return sum / std::accumulate(m_topArea.begin(), m_topArea.end(), 0.0);
}

double CoolingGrid::meanC() const {
    return std::inner_product(m_capacity.begin(), m_capacity.end(), m_temperature.begin(), 0.0) /
           heatCapacity();
}

double CoolingGrid::watts(const FaceLosses& faces) const {
    // What the faces take is what all nodes together lose: inside nothing gets lost.
    double sum = 0.0;
    const std::size_t bottom = m_temperature.size() - m_band;
    for (std::size_t column = 0; column < m_band; ++column)
        sum += m_topArea[column] * (faces.top.at(m_temperature[column]) +
                                    faces.floor.at(m_temperature[bottom + column]));
    for (std::size_t row = 0; row < m_wallArea.size(); ++row)
        sum += m_wallArea[row] * faces.side.at(m_temperature[row * m_band + m_band - 1]);
    return sum;
}

double CoolingGrid::heatCapacity() const {
    return std::accumulate(m_capacity.begin(), m_capacity.end(), 0.0);
}

} // namespace ladlework::kitchen
