#pragma once

#include "kitchen/brew.h"
#include "kitchen/pot.h"
#include "quantity/duration.h"
#include "quantity/length.h"
#include "quantity/temperature.h"

namespace ladlework::kitchen {

/// The mean Sherwood (or Nusselt) number of free convection over a warm plate facing up, on the
/// length area/perimeter, for a Rayleigh number from 1e4 on. Source: McAdams, Heat Transmission,
/// 3rd ed. 1954.
double plateTransferNumber(double rayleigh, const Catalogue& catalogue);

/// Kilograms of water that leave a square metre of open, still water in an hour, the bath being
/// warmer than the room. Formula in the .cpp.
double openSurfaceRate(quantity::Length diameter, quantity::Temperature water,
                       quantity::Temperature room, quantity::Length altitude,
                       const Catalogue& catalogue);

/// How far a loss may lie from its best estimate: the logarithms of best over low and of high over
/// best (10 % and 90 %). Deviations that multiply add up as the squares of their logarithms.
struct LogSpread {
    double down = 0;
    double up = 0;

    [[nodiscard]] LogSpread with(const LogSpread& other) const;
    /// One standard deviation, of a normal distribution with these bounds on average.
    [[nodiscard]] double deviation() const;
};

/// The physical estimate of a loss taken apart: what the vessel keeps from cooking to cooking
/// (correlation, lid, place) and what differs each time (heat under the pot, air of the room).
struct PhysicalLoss {
    double ml = 0;     ///< best estimate at an evaporation factor of 1, whatever the burner gives
    double mostMl = 0; ///< what the burner's heat turns into steam at most
    LogSpread ofVessel;
    LogSpread ofCooking;
};
PhysicalLoss physicalLoss(const Vessel& vessel, quantity::Temperature simmering,
                          quantity::Temperature room, quantity::Length altitude,
                          quantity::Duration time, const Catalogue& catalogue);

/// How far the shares that lid and place let through are uncertain, without the correlation.
LogSpread lidAndPlaceSpread(const Vessel& vessel, const Catalogue& catalogue);
/// The same with the correlation: all that a vessel keeps from cooking to cooking.
LogSpread vesselSpread(const Vessel& vessel, const Catalogue& catalogue);

/// Millilitres (at 20 °C) lost from a vessel in a time at a simmer. Each uncertain input is moved
/// to its 10 % and 90 % bound: heat under the pot (capped by the boiling point), warmth and
/// humidity of the room, correlation, lid, place. A factor learnt from measured batches stands in
/// place of the vessel's own and of the spread of correlation, lid and place.
Range evaporatedMl(const Vessel& vessel, quantity::Temperature simmering,
                   quantity::Temperature room, quantity::Length altitude, quantity::Duration time,
                   const Catalogue& catalogue,
                   const std::optional<Range>& learntFactor = std::nullopt);

} // namespace ladlework::kitchen
