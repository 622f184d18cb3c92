#include "exchange/family_text.h"
#include "kitchen/catalogue.h"

#include <QCoreApplication>

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

void readBatches(TextReader& reader, FamilyText& family) {
    reader.each(QStringLiteral("batches"), [&](TextReader& entry) {
        kitchen::Batch batch;
        batch.id = BatchId{family.records.batches.size() + 1};
        batch.pot = PotId{family.pots.find(entry, QStringLiteral("pot"))};
        batch.day = entry.shiftedDay(QStringLiteral("day"));
        if (entry.has(QStringLiteral("yield")))
            batch.yield = entry.volume(QStringLiteral("yield"));
        batch.note = entry.textOr(QStringLiteral("note"), {});
        const bool leftOut = entry.reading().leavesOut(batch.day);
        if (!leftOut)
            entry.accept(kitchen::check(batch, entry.reading().today));
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

QList<kitchen::Pot> readPots(TextReader& reader, Keys& keys, const Keys* vessels) {
    QList<kitchen::Pot> pots;
    reader.each(QStringLiteral("pots"), [&](TextReader& entry) {
        kitchen::Pot pot;
        pot.id = PotId{keys.add(entry)};
        pot.name = entry.text(QStringLiteral("name"));
        if (entry.has(QStringLiteral("brew")))
            pot.brew = entry.word(QStringLiteral("brew"), brewFromId,
                                  QStringLiteral("meat-stock, bone-broth"));
        if (vessels != nullptr && entry.has(QStringLiteral("vessel")))
            pot.vessel = VesselId{vessels->find(entry, QStringLiteral("vessel"))};
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
    QList<kitchen::Pot> own = readPots(reader, family.pots, &family.vessels);
    for (kitchen::Pot& pot : own)
        pot.family = FamilyId{1}; // provisional: the one family of this file
    family.records.pots += own;
    readBatches(reader, family);
}

} // namespace ladlework::exchange
