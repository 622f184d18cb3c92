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

/// Millilitres (at 20 °C) lost from the open surface of a vessel in a time at a simmer, with the
/// stated uncertainty. Source and formula in the .cpp.
Range evaporatedMl(const Vessel& vessel, quantity::Temperature simmering,
                   quantity::Temperature room, quantity::Length altitude, quantity::Duration time,
                   const Catalogue& catalogue);

} // namespace ladlework::kitchen
