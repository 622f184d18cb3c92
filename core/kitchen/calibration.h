#pragma once

#include "kitchen/batch.h"
#include "kitchen/brew.h"

#include <vector>

namespace ladlework::kitchen {

/// One measured batch as evidence on a vessel's evaporation.
struct MeasuredLoss {
    BatchId batch;
    QDate day;
    Range factor; ///< measured loss over the physical estimate, with what is not known of the rest
    double weight = 1; ///< 0-1: how much it counts; an odd batch counts little
};

/// What is known of how fast a vessel loses water, as a factor on the physical estimate.
struct Calibration {
    Range prior;                      ///< from the physics alone
    std::vector<MeasuredLoss> points; ///< by day
    Range posterior;                  ///< equal to the prior while there are no points
};

/// What the measured batches of a vessel say. `inputs` holds, for each batch with a yield, the pot
/// as it was cooked in that vessel. Normal-normal update of the logarithm of the factor; batches
/// far from the rest are weighed down. Formula and source in the .cpp. Batches without a yield, or
/// whose pot boils dry, are left out.
struct MeasuredBatch {
    Batch batch;
    BrewInput input; ///< without a learnt factor
};
Calibration calibrate(const Vessel& vessel, const std::vector<MeasuredBatch>& batches,
                      const Catalogue& catalogue);

} // namespace ladlework::kitchen
