#include "exchange/family_text.h"
#include "kitchen/catalogue.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::exchange {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("PracticeText", sentence);
}

void readVessels(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("vessels"), [&](TextReader& entry) {
        kitchen::Vessel vessel;
        vessel.id = VesselId{family.vessels.add(entry)};
        vessel.name = entry.text(QStringLiteral("name"));
        vessel.diameter = entry.length(QStringLiteral("diameter"));
        vessel.height = entry.length(QStringLiteral("height"));
        vessel.lid =
            entry.word(QStringLiteral("lid"), kitchen::lidFromId, QStringLiteral("open, ajar, on"));
        vessel.place = entry.word(QStringLiteral("place"), kitchen::placeFromId,
                                  QStringLiteral("stovetop, oven, slow-cooker, pressure-cooker"));
        vessel.evaporationFactor =
            entry.optionalNumber(QStringLiteral("evaporation_factor"), 0.1, 5.0).value_or(1.0);
        entry.accept(kitchen::check(vessel));
        family.records.vessels.append(vessel);
    });
}

void readContainers(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("containers"), [&](TextReader& entry) {
        kitchen::Container container;
        container.id = ContainerId{family.containers.add(entry)};
        container.name = entry.text(QStringLiteral("name"));
        container.shape = entry.word(QStringLiteral("shape"), kitchen::containerShapeFromId,
                                     QStringLiteral("cylinder, tray"));
        container.across = entry.length(QStringLiteral("across"));
        container.width = entry.lengthOr(QStringLiteral("width"), container.width);
        container.height = entry.length(QStringLiteral("height"));
        container.material =
            entry.word(QStringLiteral("material"), kitchen::containerMaterialFromId,
                       QStringLiteral("steel, glass, plastic"));
        container.covered = entry.flagOr(QStringLiteral("covered"), false);
        entry.accept(kitchen::check(container));
        family.records.containers.append(container);
    });
}

void readCuts(TextReader& reader, kitchen::Pot& pot) {
    reader.each(QStringLiteral("cuts"), [&](TextReader& entry) {
        kitchen::CutInPot cut;
        cut.cut = entry.text(QStringLiteral("cut"));
        cut.mass = entry.mass(QStringLiteral("mass"));
        cut.raw = entry.flagOr(QStringLiteral("raw"), true);
        if (!entry.failed() && !entry.reading().catalogue.cut(cut.cut))
            entry.fail(QStringLiteral("cut"),
                       say("\"%1\" is no cut of the catalogue; mend its spelling.").arg(cut.cut));
        if (!cut.raw && pot.brew == kitchen::Pot::Brew::MeatStock)
            entry.fail(QStringLiteral("raw"),
                       say("Bones that are cooked already make no meat stock; use raw ones, or "
                           "make the brew \"bone-broth\"."));
        pot.cuts.append(cut);
    });
}

void readExtras(TextReader& reader, kitchen::Pot& pot) {
    reader.each(QStringLiteral("extras"), [&](TextReader& entry) {
        kitchen::ExtraInPot extra;
        extra.item = entry.text(QStringLiteral("item"));
        const kitchen::Extra* known = entry.reading().catalogue.extra(extra.item);
        if (!entry.failed() && known == nullptr)
            entry.fail(QStringLiteral("item"),
                       say("\"%1\" is not in the catalogue; mend its spelling.").arg(extra.item));
        const QString pieces = QStringLiteral("pieces");
        if (entry.has(pieces) && known != nullptr)
            extra.mass = known->piece * entry.number(pieces, 0.01, 1000.0);
        else
            extra.mass = entry.mass(QStringLiteral("mass"));
        pot.extras.append(extra);
    });
}

std::optional<kitchen::Pot::Brew> brewFromId(QStringView id) {
    if (id == QStringLiteral("meat-stock"))
        return kitchen::Pot::Brew::MeatStock;
    if (id == QStringLiteral("bone-broth"))
        return kitchen::Pot::Brew::BoneBroth;
    return std::nullopt;
}

kitchen::Lot readLot(TextReader& reader, const kitchen::Batch& batch, Keys& keys) {
    kitchen::Lot lot;
    lot.id = LotId{keys.add(reader)};
    lot.batch = batch.id;
    lot.container = reader.text(QStringLiteral("container"));
    lot.volume = reader.volume(QStringLiteral("volume"));
    lot.place = reader.word(QStringLiteral("place"), kitchen::lotPlaceFromId,
                            QStringLiteral("fridge, freezer"));
    const QDate stored = reader.shiftedDayOrNone(QStringLiteral("stored"));
    lot.stored = stored.isValid() ? stored : batch.day;
    lot.useBy = reader.shiftedDay(QStringLiteral("use_by"));
    lot.goneOn = reader.shiftedDayOrNone(QStringLiteral("gone_on"));
    if (reader.reading().leavesOut(lot.goneOn))
        lot.goneOn = QDate();
    if (!reader.failed() && lot.stored < batch.day)
        reader.fail(QStringLiteral("stored"), say("A lot cannot be stored before it was cooked."));
    if (lot.goneOn > reader.reading().today)
        reader.fail(QStringLiteral("gone_on"), say("A lot cannot be gone on a day to come."));
    reader.accept(kitchen::check(lot));
    return lot;
}

/// As the pot asks for, but for what the batch says itself.
kitchen::AsCooked readAsCooked(TextReader& reader, PotId potId, const FamilyText& family) {
    const casebook::FamilyRecords& records = family.records;
    const auto pot = std::ranges::find(records.pots, potId, &kitchen::Pot::id);
    VesselId vesselId = pot == records.pots.end() ? VesselId{} : pot->vessel;
    if (reader.has(QStringLiteral("vessel")))
        vesselId = VesselId{family.vessels.find(reader, QStringLiteral("vessel"))};
    const auto vessel = std::ranges::find(records.vessels, vesselId, &kitchen::Vessel::id);
    kitchen::AsCooked cooked =
        kitchen::asPlanned(pot == records.pots.end() ? kitchen::Pot() : *pot,
                           vessel == records.vessels.end() ? nullptr : &*vessel);
    cooked.water = reader.volumeOr(QStringLiteral("water"), cooked.water);
    if (reader.has(QStringLiteral("simmer")))
        cooked.simmer = reader.duration(QStringLiteral("simmer"));
    if (reader.has(QStringLiteral("lid")))
        cooked.lid = reader.word(QStringLiteral("lid"), kitchen::lidFromId,
                                 QStringLiteral("open, ajar, on"));
    return cooked;
}

/// What is wrong with a batch, at the keys of its text: "water" for "cooked.water".
Outcome checkBatch(const kitchen::Batch& batch, QDate today) {
    const Outcome checked = kitchen::check(batch, today);
    if (checked)
        return checked;
    Problem found = checked.error();
    found.place = found.place.section(QLatin1Char('.'), -1);
    return tl::unexpected<Problem>(std::move(found));
}

void readBatches(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("batches"), [&](TextReader& entry) {
        kitchen::Batch batch;
        batch.id = BatchId{family.records.batches.size() + 1};
        batch.pot = PotId{family.pots.find(entry, QStringLiteral("pot"))};
        batch.day = entry.shiftedDay(QStringLiteral("day"));
        batch.cooked = readAsCooked(entry, batch.pot, family);
        if (entry.has(QStringLiteral("yield")))
            batch.yield = entry.volume(QStringLiteral("yield"));
        batch.note = entry.textOr(QStringLiteral("note"), {});
        const bool leftOut = entry.reading().leavesOut(batch.day);
        if (!leftOut)
            entry.accept(checkBatch(batch, entry.reading().today));
        entry.each(QStringLiteral("lots"), [&](TextReader& inner) {
            const kitchen::Lot lot = readLot(inner, batch, family.lots);
            if (!leftOut && !inner.reading().leavesOut(lot.stored))
                family.records.lots.append(lot);
        });
        if (!leftOut)
            family.records.batches.append(batch);
    });
}

} // namespace

QList<kitchen::Pot> readPots(TextReader& reader, Keys& keys, const FamilyText* own) {
    QList<kitchen::Pot> pots;
    reader.each(QStringLiteral("pots"), [&](TextReader& entry) {
        kitchen::Pot pot;
        pot.id = PotId{keys.add(entry)};
        pot.name = entry.text(QStringLiteral("name"));
        if (entry.has(QStringLiteral("brew")))
            pot.brew = entry.word(QStringLiteral("brew"), brewFromId,
                                  QStringLiteral("meat-stock, bone-broth"));
        if (own != nullptr && entry.has(QStringLiteral("vessel")))
            pot.vessel = VesselId{own->vessels.find(entry, QStringLiteral("vessel"))};
        if (own != nullptr && entry.has(QStringLiteral("cool_in")))
            pot.coolIn = ContainerId{own->containers.find(entry, QStringLiteral("cool_in"))};
        if (entry.has(QStringLiteral("cooling_way")))
            pot.coolingWay = entry.word(QStringLiteral("cooling_way"), kitchen::coolingWayFromId,
                                        QStringLiteral("refrigerator, ice-bath, counter"));
        pot.water = entry.volume(QStringLiteral("water"));
        pot.salt = entry.massOr(QStringLiteral("salt"), quantity::Mass());
        pot.simmer = entry.duration(QStringLiteral("simmer"));
        readCuts(entry, pot);
        readExtras(entry, pot);
        pot.note = entry.textOr(QStringLiteral("note"), {});
        entry.accept(kitchen::check(pot, entry.reading().catalogue));
        pots.append(pot);
    });
    return pots;
}

void readKitchen(TextReader& reader, FamilyText& family) {
    readVessels(reader, family);
    readContainers(reader, family);
    QList<kitchen::Pot> own = readPots(reader, family.pots, &family);
    for (kitchen::Pot& pot : own)
        pot.family = FamilyId{1}; // provisional: the one family of this file
    family.records.pots += own;
    readBatches(reader, family);
}

} // namespace ladlework::exchange
