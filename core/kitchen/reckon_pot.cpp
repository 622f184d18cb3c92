#include "kitchen/reckon_pot.h"

#include "foundation/finding_json.h"
#include "foundation/json_reader.h"
#include "kitchen/brew.h"
#include "kitchen/pot_notes.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <algorithm>

namespace ladlework::kitchen {

namespace {
/// The translation context of the sentences below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(ReckonPot)
};

// Bounds against slips of the pen; check() of pot and vessel holds the same.
constexpr double lowestMetres = -500;
constexpr double highestMetres = 6000;
constexpr double coldestRoomC = 0;
constexpr double hottestRoomC = 50;
constexpr double mostSodiumMg = 10000;
constexpr double mostDrunkMl = 20000;
constexpr double mostMeatG = 100000;
constexpr double mostPrice = 1e6;

double positive(JsonReader& reader, const QString& key, double most) {
    const double value = reader.number(key, 0, most);
    if (!reader.failed() && value <= 0)
        reader.fail(key, Say::tr("This must be more than zero."));
    return value;
}

Vessel readVessel(JsonReader& reader) {
    Vessel vessel;
    reader.readObject(QStringLiteral("vessel"), [&vessel](JsonReader& inner) {
        vessel.name = Say::tr("vessel");
        vessel.diameter =
            quantity::Length::fromCentimetres(inner.number(QStringLiteral("diameter_cm"), 5, 80));
        vessel.height =
            quantity::Length::fromCentimetres(inner.number(QStringLiteral("height_cm"), 4, 80));
        const auto lid = lidFromId(inner.text(QStringLiteral("lid")));
        if (!lid)
            inner.fail(QStringLiteral("lid"), Say::tr("This must be open, ajar or on."));
        const auto place = placeFromId(inner.text(QStringLiteral("place")));
        if (!place)
            inner.fail(QStringLiteral("place"),
                       Say::tr("This must be stovetop, oven, slow-cooker or "
                               "pressure-cooker."));
        vessel.lid = lid.value_or(Vessel::Lid::Ajar);
        vessel.place = place.value_or(Vessel::Place::Stovetop);
        vessel.evaporationFactor = inner.number(QStringLiteral("evaporation_factor"), 0.1, 5);
    });
    return vessel;
}

void readCuts(JsonReader& reader, const Catalogue& catalogue, Pot& pot) {
    const QString key = QStringLiteral("cuts");
    reader.readEach(key, [&](JsonReader& inner) {
        CutInPot cut;
        cut.cut = inner.text(QStringLiteral("cut"));
        if (!inner.failed() && catalogue.cut(cut.cut) == nullptr)
            inner.fail(
                QStringLiteral("cut"),
                Say::tr("The catalogue has no cut \"%1\"; choose one that it has.").arg(cut.cut));
        cut.mass = quantity::Mass::fromGrams(positive(inner, QStringLiteral("mass_g"), 50000));
        cut.raw = inner.flag(QStringLiteral("raw"));
        pot.cuts.append(cut);
    });
    if (!reader.failed() && pot.cuts.isEmpty())
        reader.fail(key, Say::tr("The pot has no bones; add at least one cut."));
    const bool allBare = std::ranges::all_of(pot.cuts, [&catalogue](const CutInPot& cut) {
        const Cut* known = catalogue.cut(cut.cut);
        return known != nullptr && known->bareBone;
    });
    pot.brew = allBare ? Pot::Brew::BoneBroth : Pot::Brew::MeatStock;
}

void readExtras(JsonReader& reader, const Catalogue& catalogue, Pot& pot) {
    reader.readEach(QStringLiteral("extras"), [&](JsonReader& inner) {
        ExtraInPot extra;
        extra.item = inner.text(QStringLiteral("item"));
        if (!inner.failed() && catalogue.extra(extra.item) == nullptr)
            inner.fail(QStringLiteral("item"),
                       Say::tr("The catalogue has no ingredient \"%1\"; choose one that it has.")
                           .arg(extra.item));
        extra.mass = quantity::Mass::fromGrams(positive(inner, QStringLiteral("mass_g"), 20000));
        pot.extras.append(extra);
    });
}

PhaseRules readPhase(JsonReader& reader) {
    const QString key = QStringLiteral("phase");
    const QString name = reader.text(key);
    const Result<std::vector<ShippedPhase>> phases = shippedPhases();
    if (!phases) {
        reader.fail(phases.error());
        return {};
    }
    QStringList known;
    for (const ShippedPhase& phase : *phases) {
        if (phase.id.compare(name, Qt::CaseInsensitive) == 0)
            return phase.rules;
        known.append(phase.id);
    }
    reader.fail(key, Say::tr("This must be one of: %1.").arg(known.join(QStringLiteral(", "))));
    return {};
}

void readMembers(JsonReader& reader, BrewInput& input) {
    const QString key = QStringLiteral("members");
    if (!reader.has(key))
        return;
    reader.readEach(key, [&input](JsonReader& inner) {
        Drinker drinker;
        drinker.name = inner.text(QStringLiteral("name"));
        // A capital or a blank too many must not let anything into a pot.
        for (const QString& subject : inner.optionalTexts(QStringLiteral("may_not")))
            drinker.mayNot.append(subject.trimmed().toLower());
        drinker.sodiumLimitMg =
            inner.optionalNumber(QStringLiteral("sodium_limit_mg"), 0, mostSodiumMg);
        if (const auto band = inner.optionalText(QStringLiteral("band"))) {
            drinker.band = ageBandFromId(*band);
            if (!drinker.band)
                inner.fail(QStringLiteral("band"),
                           Say::tr("This must be infant-under-6-months, infant-starting-solids, "
                                   "child or adult."));
        }
        drinker.perDay = quantity::Volume::fromMillilitres(
            inner.optionalNumber(QStringLiteral("ml_per_day"), 0, mostDrunkMl).value_or(0));
        // The pot's phase is that of everyone at the table.
        drinker.boneBroth = input.phase.boneBroth;
        input.drinkers.push_back(drinker);
    });
}

void readPrices(JsonReader& reader, const Catalogue& catalogue, BrewInput& input) {
    const QString key = QStringLiteral("prices");
    if (!reader.has(key))
        return;
    reader.readObject(key, [&](JsonReader& inner) {
        for (const QString& id : inner.keys()) {
            input.prices.insert(id, inner.number(id, 0, mostPrice));
            if (!inner.failed() && id != QStringLiteral("salt") && catalogue.cut(id) == nullptr &&
                catalogue.extra(id) == nullptr)
                inner.fail(id, Say::tr("The catalogue has nothing called \"%1\".").arg(id));
        }
    });
}

Result<BrewInput> readInput(const QJsonObject& object, const Catalogue& catalogue) {
    JsonReader reader(object, {});
    BrewInput input;
    Pot& pot = input.pot;
    pot.name = Say::tr("pot");
    input.altitude = quantity::Length::fromMetres(
        reader.number(QStringLiteral("altitude_m"), lowestMetres, highestMetres));
    input.room = quantity::Temperature::fromCelsius(
        reader.number(QStringLiteral("room_c"), coldestRoomC, hottestRoomC));
    input.vessel = readVessel(reader);
    readCuts(reader, catalogue, pot);
    pot.water = quantity::Volume::fromMillilitres(
        reader.number(QStringLiteral("water_ml"),
                      catalogue.figure(QStringLiteral("pot-water-least")).value, 100000));
    pot.salt = quantity::Mass::fromGrams(reader.number(QStringLiteral("salt_g"), 0, 2000));
    readExtras(reader, catalogue, pot);
    if (const Outcome dissolves = checkSalt(pot, catalogue); !reader.failed() && !dissolves)
        reader.fail(QStringLiteral("salt_g"), dissolves.error().sentence);
    pot.simmer = quantity::Duration::fromHours(positive(reader, QStringLiteral("simmer_h"), 168));
    input.phase = readPhase(reader);
    readMembers(reader, input);
    if (reader.has(QStringLiteral("meat_g_per_day")))
        input.meatPerDay = quantity::Mass::fromGrams(
            positive(reader, QStringLiteral("meat_g_per_day"), mostMeatG));
    readPrices(reader, catalogue, input);
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    return input;
}

QJsonObject toJson(const Range& range) {
    return {{QStringLiteral("low"), range.low},
            {QStringLiteral("best"), range.best},
            {QStringLiteral("high"), range.high}};
}

QJsonValue toJson(const std::optional<Range>& range) {
    return range ? QJsonValue(toJson(*range)) : QJsonValue();
}

QJsonValue toJson(const std::optional<double>& number) {
    return number ? QJsonValue(*number) : QJsonValue();
}

QJsonArray toJson(const QList<Addition>& additions) {
    QJsonArray array;
    for (const Addition& addition : additions) {
        const QString what = addition.what == Addition::What::Water  ? QStringLiteral("water")
                             : addition.what == Addition::What::Salt ? QStringLiteral("salt")
                                                                     : addition.id;
        array.append(QJsonObject{{QStringLiteral("what"), what},
                                 {QStringLiteral("at_min"), addition.at.toMinutes()}});
    }
    return array;
}

QJsonArray toJson(const QList<WhoMay>& who) {
    QJsonArray array;
    for (const WhoMay& one : who)
        array.append(QJsonObject{{QStringLiteral("name"), one.name},
                                 {QStringLiteral("may"), one.may},
                                 {QStringLiteral("why"), one.why}});
    return array;
}

/// What is dissolved in the stock: of a pot that boils dry there is none.
QJsonValue strengthJson(const Brewed& brewed, const Range& per100Ml) {
    return brewed.boilsDry ? QJsonValue() : QJsonValue(toJson(per100Ml));
}

QJsonObject toJson(const Brewed& brewed) {
    return {
        {QStringLiteral("water_ratio_ml_per_kg"), brewed.waterRatioMlPerKg.best},
        {QStringLiteral("boiling_c"), brewed.boiling.toCelsius()},
        {QStringLiteral("simmer_c"), brewed.simmering.toCelsius()},
        {QStringLiteral("evaporated_ml"), toJson(brewed.evaporatedMl)},
        {QStringLiteral("held_by_solids_ml"), toJson(brewed.heldBySolidsMl)},
        {QStringLiteral("cook_out_ml"), toJson(brewed.cookOutMl)},
        {QStringLiteral("stock_ml"), toJson(brewed.stockMl)},
        {QStringLiteral("meat_left_g"), toJson(brewed.meatLeftG)},
        {QStringLiteral("meat_days"), toJson(brewed.meatDays)},
        {QStringLiteral("fat_g"), toJson(brewed.fatG)},
        {QStringLiteral("protein_g_per_100ml"), strengthJson(brewed, brewed.proteinGPer100Ml)},
        {QStringLiteral("gelatin_g_per_100ml"), strengthJson(brewed, brewed.gelatinGPer100Ml)},
        {QStringLiteral("set"), brewed.boilsDry ? QJsonValue() : QJsonValue(setId(brewed.set))},
        {QStringLiteral("sodium_mg_per_100ml"), strengthJson(brewed, brewed.sodiumMgPer100Ml)},
        {QStringLiteral("potassium_mg_per_100ml"),
         strengthJson(brewed, brewed.potassiumMgPer100Ml)},
        {QStringLiteral("additions"), toJson(brewed.additions)},
        {QStringLiteral("fill_ml"), brewed.fill.toMillilitres()},
        {QStringLiteral("capacity_ml"), brewed.capacity.toMillilitres()},
        {QStringLiteral("cost"), toJson(brewed.cost)},
        {QStringLiteral("cover_days"), toJson(brewed.coverDays)},
        {QStringLiteral("who"), toJson(brewed.who)},
        {QStringLiteral("findings"), findingsJson(brewed.findings)},
    };
}
} // namespace

Result<QJsonObject> reckonPot(const QJsonObject& input, const Catalogue& catalogue) {
    const Result<BrewInput> read = readInput(input, catalogue);
    if (!read)
        return passOn(read);
    Brewed brewed = brew(*read, catalogue);
    brewed.findings.append(standingNotes(read->pot, catalogue));
    return toJson(brewed);
}

} // namespace ladlework::kitchen
