#include "casebook/learnt_vessels.h"

#include <algorithm>

namespace ladlework::casebook {

namespace {
constexpr std::size_t mostBatches = 30;

/// The pot as it was cooked, alone: nobody drinks it and nothing is paid here.
kitchen::BrewInput asCooked(const kitchen::Batch& batch, const kitchen::Pot& pot,
                            const kitchen::Vessel& vessel, quantity::Length altitude) {
    kitchen::BrewInput input;
    input.pot = pot;
    input.pot.vessel = vessel.id;
    input.pot.water = batch.cooked.water;
    input.pot.simmer = batch.cooked.simmer;
    input.vessel = vessel;
    input.vessel.lid = batch.cooked.lid;
    input.altitude = altitude;
    return input;
}

std::vector<kitchen::MeasuredBatch> measuredIn(const kitchen::Vessel& vessel,
                                               const FamilyRecords& records,
                                               const kitchen::Catalogue& catalogue) {
    std::vector<kitchen::MeasuredBatch> measured;
    for (const kitchen::Batch& batch : records.batches) {
        if (!batch.yield || batch.cooked.vessel != vessel.id)
            continue;
        const auto pot = std::ranges::find(records.pots, batch.pot, &kitchen::Pot::id);
        if (pot == records.pots.end())
            continue;
        kitchen::BrewInput input = asCooked(batch, *pot, vessel, records.family.altitude);
        if (kitchen::check(input.pot, catalogue))
            measured.push_back({batch, std::move(input)});
    }
    std::ranges::stable_sort(measured, {}, [](const kitchen::MeasuredBatch& one) {
        return std::pair(one.batch.day, one.batch.id.value);
    });
    if (measured.size() > mostBatches)
        measured.erase(measured.begin(), measured.end() - mostBatches);
    return measured;
}
} // namespace

QHash<VesselId, kitchen::Calibration> learnVessels(const FamilyRecords& records,
                                                   const kitchen::Catalogue& catalogue) {
    QHash<VesselId, kitchen::Calibration> learnt;
    for (const kitchen::Vessel& vessel : records.vessels) {
        const std::vector<kitchen::MeasuredBatch> measured = measuredIn(vessel, records, catalogue);
        if (measured.empty())
            continue;
        kitchen::Calibration calibration = kitchen::calibrate(vessel, measured, catalogue);
        if (!calibration.points.empty())
            learnt.insert(vessel.id, calibration);
    }
    return learnt;
}

} // namespace ladlework::casebook
