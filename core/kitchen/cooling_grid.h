#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace ladlework::kitchen {

/// How much heat a square metre of a surface gives off at a temperature of the liquid behind it:
/// a line through supporting points, so that any law of cooling can be stepped quickly.
class SurfaceLoss {
public:
    /// Newton's law: a constant coefficient in W/(m2 K) towards an ambient temperature in °C.
    static SurfaceLoss newton(double coefficient, double ambientC);
    /// A surface that gives off nothing.
    static SurfaceLoss none() { return newton(0.0, 0.0); }
    /// Any law in W/m2 of °C, looked up every `stepK` from `fromC` to at least `toC`; the line goes
    /// on straight outside. The law must rise with the temperature.
    static SurfaceLoss lookedUp(double fromC, double toC, double stepK,
                                const std::function<double(double)>& wattsPerSquareMetre);

    /// W/m2, positive when the liquid loses heat.
    [[nodiscard]] double at(double celsius) const {
        const std::size_t part = partOf(celsius);
        return m_watts[part] +
               slopeOf(part) * (celsius - m_fromC - m_stepK * static_cast<double>(part));
    }
    /// W/(m2 K).
    [[nodiscard]] double slope(double celsius) const { return slopeOf(partOf(celsius)); }
    /// The same with its heat multiplied.
    [[nodiscard]] SurfaceLoss times(double factor) const;

private:
    SurfaceLoss(double fromC, double stepK, std::vector<double> watts)
        : m_fromC(fromC), m_stepK(stepK), m_watts(std::move(watts)) {}
    [[nodiscard]] std::size_t partOf(double celsius) const {
        const double place = (celsius - m_fromC) / m_stepK;
        const std::size_t last = m_watts.size() - 2;
        if (!(place > 0.0))
            return 0;
        return place >= static_cast<double>(last) ? last : static_cast<std::size_t>(place);
    }
    [[nodiscard]] double slopeOf(std::size_t part) const {
        return (m_watts[part + 1] - m_watts[part]) / m_stepK;
    }

    double m_fromC;
    double m_stepK;
    std::vector<double> m_watts; ///< at least two
};

/// The faces of a body of liquid.
struct FaceLosses {
    SurfaceLoss top = SurfaceLoss::none();
    SurfaceLoss side = SurfaceLoss::none();
    SurfaceLoss floor = SurfaceLoss::none();
};

/// How well the liquid passes heat on, W/(m K): `moving` while it is thin, `still` once it has set,
/// and in between on a logarithmic scale.
struct Conduction {
    double still = 0.6;
    double moving = 0.6;
    double setsAtC = 0.0;
    double spanK = 1.0;

    [[nodiscard]] double at(double celsius) const;
};

/// An upright cylinder of liquid.
struct LiquidBody {
    double radius = 0;         ///< m
    double depth = 0;          ///< m
    double wallFactor = 1;     ///< wall area over that of the cylinder
    double volumetricHeat = 0; ///< J/(m3 K)
};

/// Transient heat conduction in an upright cylinder of liquid, in depth and radius, by finite
/// volumes around nodes that lie on axis and surfaces too, so that surface temperatures are the
/// nodes' own. In time the two-stage Rosenbrock method of second order (Verwer and others, SIAM J.
/// Sci. Comput. 20, 1999: ROS2), which damps the stiff parts and keeps the heat balance, with steps
/// chosen by its embedded error estimate.
class CoolingGrid {
public:
    /// `across` and `down` are the numbers of intervals; at least 1 each.
    CoolingGrid(const LiquidBody& body, int across, int down, double startC);

    /// Steps once, at most `mostSeconds` far and as long as the error per step stays below
    /// `errorK`; returns how far in seconds. Faces and conduction hold for the step.
    double step(double mostSeconds, double errorK, const FaceLosses& faces,
                const Conduction& conduction);

    [[nodiscard]] double warmestC() const;
    [[nodiscard]] double coldestC() const;
    [[nodiscard]] double topC() const;  ///< mean of the top surface
    [[nodiscard]] double meanC() const; ///< by volume
    /// Watts that leave through all faces now.
    [[nodiscard]] double watts(const FaceLosses& faces) const;
    /// J/K of the whole body.
    [[nodiscard]] double heatCapacity() const;

private:
    using Field = std::vector<double>;

    [[nodiscard]] std::size_t nodeOf(int row, int column) const;
    void setConductances(const Conduction& conduction);
    /// W into each node at these temperatures.
    void heatInto(const Field& temperature, const FaceLosses& faces, Field& watts) const;
    /// Factorises capacity - share x (conduction and slopes of the faces).
    void factorise(double share, const FaceLosses& faces);
    void solve(Field& values) const;
    double tryStep(double seconds, const FaceLosses& faces);

    int m_rows;          ///< nodes in depth, the top first
    int m_columns;       ///< nodes in radius, the axis first
    std::size_t m_band;  ///< nodes in a row
    Field m_temperature; ///< °C
    Field m_capacity;    ///< J/K
    Field m_topArea;     ///< m2 of each column
    Field m_wallArea;    ///< m2 of each row
    Field m_sideways;    ///< shape of the path to the next column, m
    Field m_downwards;   ///< shape of the path to the next row, m
    Field m_toRight;     ///< W/K
    Field m_toBelow;     ///< W/K
    Field m_factor;      ///< lower triangle, `band + 1` a node
    Field m_first, m_second, m_other;
    double m_nextSeconds = 1.0;
};

} // namespace ladlework::kitchen
