#include "kitchen/reckon_pot.h"

#include "foundation/json_reader.h"
#include "kitchen/brew.h"

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

/// The reader of an inner object, with the problem handed up when the inner one is done.
template <class Read>
void readInner(JsonReader& outer, const QJsonValue& value, const QString& path, const Read& read) {
    if (!value.isObject()) {
        outer.fail({Problem::Kind::BadInput,
                    Say::tr("This must be an object with its keys and values in braces."),
                    {},
                    path});
        return;
    }
    JsonReader inner(value.toObject(), path);
    read(inner);
    if (const Outcome done = inner.finish(); !done)
        outer.fail(done.error());
}

template <class Read>
void readEach(JsonReader& outer, const QString& key, const Read& read) {
    const QJsonArray values = outer.array(key);
    for (qsizetype index = 0; index < values.size(); ++index)
        readInner(outer, values.at(index), outer.pathOf(key, index), read);
}

double positive(JsonReader& reader, const QString& key, double most) {
    const double value = reader.number(key, 0, most);
    if (!reader.failed() && value <= 0)
        reader.fail(key, Say::tr("This must be more than zero."));
    return value;
}

Vessel readVessel(JsonReader& reader) {
    Vessel vessel;
    readInner(reader, reader.object(QStringLiteral("vessel")), QStringLiteral("vessel"),
              [&vessel](JsonReader& inner) {
                  vessel.name = Say::tr("vessel");
                  vessel.diameter = quantity::Length::fromCentimetres(
                      inner.number(QStringLiteral("diameter_cm"), 5, 80));
                  vessel.height = quantity::Length::fromCentimetres(
                      inner.number(QStringLiteral("height_cm"), 4, 80));
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
                  vessel.evaporationFactor =
                      inner.number(QStringLiteral("evaporation_factor"), 0.1, 5);
              });
    return vessel;
}

void readCuts(JsonReader& reader, const Catalogue& catalogue, Pot& pot) {
    const QString key = QStringLiteral("cuts");
    readEach(reader, key, [&](JsonReader& inner) {
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
    readEach(reader, QStringLiteral("extras"), [&](JsonReader& inner) {
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
    readEach(reader, key, [&input](JsonReader& inner) {
        Drinker drinker;
        drinker.name = inner.text(QStringLiteral("name"));
        drinker.mayNot = inner.optionalTexts(QStringLiteral("may_not"));
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
        input.drinkers.push_back(drinker);
    });
}

void readPrices(JsonReader& reader, const Catalogue& catalogue, BrewInput& input) {
    const QString key = QStringLiteral("prices");
    if (!reader.has(key))
        return;
    readInner(reader, reader.object(key), key, [&](JsonReader& inner) {
        const QStringList ids = reader.object(key).keys();
        for (const QString& id : ids) {
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
    pot.water =
        quantity::Volume::fromMillilitres(positive(reader, QStringLiteral("water_ml"), 100000));
    pot.salt = quantity::Mass::fromGrams(reader.number(QStringLiteral("salt_g"), 0, 2000));
    readExtras(reader, catalogue, pot);
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

QJsonArray toJson(const Findings& findings) {
    QJsonArray array;
    for (const Finding& finding : findings)
        array.append(QJsonObject{{QStringLiteral("severity"), severityId(finding.severity)},
                                 {QStringLiteral("code"), finding.code},
                                 {QStringLiteral("text"), finding.text},
                                 {QStringLiteral("value"), toJson(finding.value)},
                                 {QStringLiteral("limit"), toJson(finding.limit)},
                                 {QStringLiteral("unit"), finding.unit},
                                 {QStringLiteral("source"), finding.source}});
    return array;
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
        {QStringLiteral("protein_g_per_100ml"), toJson(brewed.proteinGPer100Ml)},
        {QStringLiteral("gelatin_g_per_100ml"), toJson(brewed.gelatinGPer100Ml)},
        {QStringLiteral("set"), setId(brewed.set)},
        {QStringLiteral("sodium_mg_per_100ml"), toJson(brewed.sodiumMgPer100Ml)},
        {QStringLiteral("potassium_mg_per_100ml"), toJson(brewed.potassiumMgPer100Ml)},
        {QStringLiteral("additions"), toJson(brewed.additions)},
        {QStringLiteral("fill_ml"), brewed.fill.toMillilitres()},
        {QStringLiteral("capacity_ml"), brewed.capacity.toMillilitres()},
        {QStringLiteral("cost"), toJson(brewed.cost)},
        {QStringLiteral("cover_days"), toJson(brewed.coverDays)},
        {QStringLiteral("who"), toJson(brewed.who)},
        {QStringLiteral("findings"), toJson(brewed.findings)},
    };
}
} // namespace

Result<QJsonObject> reckonPot(const QJsonObject& input, const Catalogue& catalogue) {
    const Result<BrewInput> read = readInput(input, catalogue);
    if (!read)
        return passOn(read);
    return toJson(brew(*read, catalogue));
}

} // namespace ladlework::kitchen
