#pragma once

#include "kitchen/cooling.h"
#include "kitchen/cooling_figures.h"
#include "kitchen/cooling_grid.h"

namespace ladlework::kitchen {

/// Nusselt number of free convection along an upright surface on its height, for any Rayleigh
/// number. Source: Churchill and Chu, Int. J. Heat Mass Transfer 18:1323, 1975.
double uprightTransferNumber(double rayleigh, double prandtl, const CoolingFigures& figures);

/// The sizes of a body of stock in a container, in metres and square metres.
struct StockSizes {
    double floor = 0; ///< area, and that of the top
    double rim = 0;   ///< length around the top
    double depth = 0;
};

/// The heat that a body of stock gives off in a stage, by free convection of air (with what the air
/// of a refrigerator moves), radiation, evaporation from an open top or through a lid, and the
/// wall; in an ice bath by the water's coefficient. The law is looked up between `coldestC` and
/// `hottestC` of the stock.
FaceLosses lossesOf(const Container& container, const StockSizes& sizes, const CoolingStage& stage,
                    double coldestC, double hottestC, const CoolingFigures& figures);

} // namespace ladlework::kitchen
