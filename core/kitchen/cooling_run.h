#pragma once

#include "kitchen/cooling.h"
#include "kitchen/cooling_figures.h"
#include "kitchen/cooling_grid.h"

namespace ladlework::kitchen {

/// The two-stage rule of resources/reference/keeping.csv.
struct TwoStageRule {
    double fromC = 0;
    double middleC = 0;
    double endC = 0;
    quantity::Duration middleWithin;
    quantity::Duration endWithin;

    static TwoStageRule shipped();
};

/// What is cooled. Stock is thin and mixes itself until it gels; what is thick only conducts.
struct Liquid {
    double conductivity = 0;   ///< W/(m K), at rest
    double volumetricHeat = 0; ///< J/(m3 K)
    bool mixesItself = true;

    static Liquid stock(const CoolingFigures& figures);
};

/// How finely a run is reckoned.
struct RunDetail {
    int across = 6;      ///< intervals from the axis to the wall
    int down = 8;        ///< intervals from the top to the floor
    double errorK = 0.1; ///< of one step, by its embedded estimate of first order
    /// Stop as soon as the two-stage rule is missed.
    bool onlyWhilePassing = false;
};

/// A run of the model over the stages of a cooling.
struct CoolingRun {
    std::optional<quantity::Duration> toMiddle;
    std::optional<quantity::Duration> toEnd;
    std::vector<CoolingPoint> curve;       ///< every step
    std::vector<CoolingPoint> stageStarts; ///< of the stages that were reached
    double heatLostJ = 0;                  ///< through the faces, summed up over time
    double heatGoneJ = 0;                  ///< from what the liquid holds, first to last
};

/// Runs until the warmest place has reached the end of the rule, or up to `giveUp`.
CoolingRun runCooling(const CoolingInput& input, const Liquid& liquid, const RunDetail& detail,
                      quantity::Duration giveUp, const CoolingFigures& figures);

/// Did both stages take no longer than the rule allows?
bool passes(const CoolingRun& run, const TwoStageRule& rule);

/// The depth of the stock in its container.
quantity::Length depthOf(quantity::Volume volume, const Container& container);

} // namespace ladlework::kitchen
