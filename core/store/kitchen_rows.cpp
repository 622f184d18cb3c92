#include "store/kitchen_rows.h"

#include "store/statement.h"
#include "store/words.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

using quantity::Duration;
using quantity::Length;
using quantity::Mass;
using quantity::Volume;

Fields fieldsOf(const kitchen::Vessel& vessel) {
    return {{"family_id"_L1, vessel.family},
            {"name"_L1, vessel.name.simplified()},
            {"diameter_cm"_L1, vessel.diameter.toCentimetres()},
            {"height_cm"_L1, vessel.height.toCentimetres()},
            {"lid"_L1, kitchen::lidId(vessel.lid)},
            {"place"_L1, kitchen::placeId(vessel.place)},
            {"evaporation_factor"_L1, vessel.evaporationFactor}};
}

kitchen::Vessel readVessel(const Statement& row) {
    kitchen::Vessel vessel;
    vessel.id = row.id<VesselId>("id"_L1);
    vessel.family = row.id<FamilyId>("family_id"_L1);
    vessel.name = row.text("name"_L1);
    vessel.diameter = Length::fromCentimetres(row.real("diameter_cm"_L1));
    vessel.height = Length::fromCentimetres(row.real("height_cm"_L1));
    vessel.lid = row.word("lid"_L1, kitchen::lidFromId);
    vessel.place = row.word("place"_L1, kitchen::placeFromId);
    vessel.evaporationFactor = row.real("evaporation_factor"_L1);
    return vessel;
}

Fields fieldsOf(const kitchen::Container& container) {
    return {{"family_id"_L1, container.family},
            {"name"_L1, container.name.simplified()},
            {"shape"_L1, kitchen::containerShapeId(container.shape)},
            {"across_cm"_L1, container.across.toCentimetres()},
            {"width_cm"_L1, container.width.toCentimetres()},
            {"height_cm"_L1, container.height.toCentimetres()},
            {"material"_L1, kitchen::containerMaterialId(container.material)},
            {"covered"_L1, container.covered}};
}

kitchen::Container readContainer(const Statement& row) {
    kitchen::Container container;
    container.id = row.id<ContainerId>("id"_L1);
    container.family = row.id<FamilyId>("family_id"_L1);
    container.name = row.text("name"_L1);
    container.shape = row.word("shape"_L1, kitchen::containerShapeFromId);
    container.across = Length::fromCentimetres(row.real("across_cm"_L1));
    container.width = Length::fromCentimetres(row.real("width_cm"_L1));
    container.height = Length::fromCentimetres(row.real("height_cm"_L1));
    container.material = row.word("material"_L1, kitchen::containerMaterialFromId);
    container.covered = row.flag("covered"_L1);
    return container;
}

Fields fieldsOf(const kitchen::Pot& pot) {
    return {{"family_id"_L1, pot.family},
            {"name"_L1, pot.name.simplified()},
            {"brew"_L1, brewWord(pot.brew)},
            {"vessel_id"_L1, pot.vessel},
            {"water_ml"_L1, pot.water.toMillilitres()},
            {"salt_g"_L1, pot.salt.toGrams()},
            {"simmer_min"_L1, pot.simmer.toMinutes()},
            {"cool_in"_L1, pot.coolIn},
            {"cooling_way"_L1, kitchen::coolingWayId(pot.coolingWay)},
            {"note"_L1, pot.note}};
}

kitchen::Pot readPot(const Statement& row) {
    kitchen::Pot pot;
    pot.id = row.id<PotId>("id"_L1);
    pot.family = row.id<FamilyId>("family_id"_L1);
    pot.name = row.text("name"_L1);
    pot.brew = row.word("brew"_L1, brewFromWord);
    pot.vessel = row.id<VesselId>("vessel_id"_L1);
    pot.water = Volume::fromMillilitres(row.real("water_ml"_L1));
    pot.salt = Mass::fromGrams(row.real("salt_g"_L1));
    pot.simmer = Duration::fromMinutes(row.real("simmer_min"_L1));
    pot.coolIn = row.id<ContainerId>("cool_in"_L1);
    pot.coolingWay = row.word("cooling_way"_L1, kitchen::coolingWayFromId);
    pot.note = row.text("note"_L1);
    return pot;
}

kitchen::CutInPot readCut(const Statement& row) {
    return {row.text("cut"_L1), Mass::fromGrams(row.real("mass_g"_L1)), row.flag("raw"_L1)};
}

kitchen::ExtraInPot readExtra(const Statement& row) {
    return {row.text("item"_L1), Mass::fromGrams(row.real("mass_g"_L1))};
}

Fields fieldsOf(const kitchen::Batch& batch) {
    std::optional<double> yieldMl;
    if (batch.yield)
        yieldMl = batch.yield->toMillilitres();
    return {{"family_id"_L1, batch.family},
            {"pot_id"_L1, batch.pot},
            {"day"_L1, batch.day},
            {"vessel_id"_L1, batch.cooked.vessel},
            {"lid"_L1, kitchen::lidId(batch.cooked.lid)},
            {"water_ml"_L1, batch.cooked.water.toMillilitres()},
            {"simmer_min"_L1, batch.cooked.simmer.toMinutes()},
            {"yield_ml"_L1, yieldMl},
            {"note"_L1, batch.note}};
}

kitchen::Batch readBatch(const Statement& row) {
    kitchen::Batch batch;
    batch.id = row.id<BatchId>("id"_L1);
    batch.family = row.id<FamilyId>("family_id"_L1);
    batch.pot = row.id<PotId>("pot_id"_L1);
    batch.day = row.day("day"_L1);
    batch.cooked.vessel = row.id<VesselId>("vessel_id"_L1);
    batch.cooked.lid = row.word("lid"_L1, kitchen::lidFromId);
    batch.cooked.water = Volume::fromMillilitres(row.real("water_ml"_L1));
    batch.cooked.simmer = Duration::fromMinutes(row.real("simmer_min"_L1));
    if (const std::optional<double> yieldMl = row.optionalReal("yield_ml"_L1))
        batch.yield = Volume::fromMillilitres(*yieldMl);
    batch.note = row.text("note"_L1);
    return batch;
}

Fields fieldsOf(const kitchen::Lot& lot) {
    return {{"batch_id"_L1, lot.batch},
            {"container"_L1, lot.container},
            {"volume_ml"_L1, lot.volume.toMillilitres()},
            {"place"_L1, kitchen::lotPlaceId(lot.place)},
            {"stored_day"_L1, lot.stored},
            {"use_by_day"_L1, lot.useBy},
            {"gone_day"_L1, lot.goneOn}};
}

kitchen::Lot readLot(const Statement& row) {
    kitchen::Lot lot;
    lot.id = row.id<LotId>("id"_L1);
    lot.batch = row.id<BatchId>("batch_id"_L1);
    lot.container = row.text("container"_L1);
    lot.volume = Volume::fromMillilitres(row.real("volume_ml"_L1));
    lot.place = row.word("place"_L1, kitchen::lotPlaceFromId);
    lot.stored = row.day("stored_day"_L1);
    lot.useBy = row.day("use_by_day"_L1);
    lot.goneOn = row.day("gone_day"_L1);
    return lot;
}

} // namespace ladlework::store
