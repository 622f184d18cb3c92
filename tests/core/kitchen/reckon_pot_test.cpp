#include "kitchen/reckon_pot.h"

#include "foundation/json_reader.h"
#include "kitchen_samples.h"

#include <QJsonArray>
#include <QSet>

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
/// The smallest input: every key that must be there, none of the others.
QByteArray smallest() {
    return R"({"altitude_m": 0, "room_c": 21,
        "vessel": {"diameter_cm": 28, "height_cm": 22, "lid": "ajar", "place": "stovetop",
                   "evaporation_factor": 1},
        "cuts": [{"cut": "chicken-leg", "mass_g": 1500, "raw": true}],
        "water_ml": 2000, "salt_g": 6, "extras": [{"item": "onion", "mass_g": 220}],
        "simmer_h": 2.5, "phase": "opening"})";
}

QJsonObject object(const QByteArray& json) {
    const Result<QJsonObject> read = parseJsonObject(json);
    if (!read)
        throw std::runtime_error(toLine(read.error()).toStdString());
    return *read;
}

QByteArray changed(const char* from, const QByteArray& to) {
    QByteArray json = smallest();
    if (!json.contains(from))
        throw std::runtime_error(from);
    return json.replace(from, to);
}

QByteArray with(const char* more) {
    return changed(R"("phase": "opening")", QByteArray(R"("phase": "opening", )") + more);
}

struct Bad {
    const char* place;
    QByteArray json;
};
} // namespace

TEST(ReckonPotTest, GivesExactlyTheKeysOfTheHelp) {
    const auto out = reckonPot(object(smallest()), catalogue());
    ASSERT_TRUE(out) << toLine(out.error()).toStdString();
    const QStringList keys = out->keys();
    const QStringList expected{QStringLiteral("additions"),
                               QStringLiteral("boiling_c"),
                               QStringLiteral("capacity_ml"),
                               QStringLiteral("cook_out_ml"),
                               QStringLiteral("cost"),
                               QStringLiteral("cover_days"),
                               QStringLiteral("evaporated_ml"),
                               QStringLiteral("fat_g"),
                               QStringLiteral("fill_ml"),
                               QStringLiteral("findings"),
                               QStringLiteral("gelatin_g_per_100ml"),
                               QStringLiteral("held_by_solids_ml"),
                               QStringLiteral("meat_days"),
                               QStringLiteral("meat_left_g"),
                               QStringLiteral("potassium_mg_per_100ml"),
                               QStringLiteral("protein_g_per_100ml"),
                               QStringLiteral("set"),
                               QStringLiteral("simmer_c"),
                               QStringLiteral("sodium_mg_per_100ml"),
                               QStringLiteral("stock_ml"),
                               QStringLiteral("water_ratio_ml_per_kg"),
                               QStringLiteral("who")};
    EXPECT_EQ(keys, expected);
}

TEST(ReckonPotTest, RangesAndPlainNumbersAreWhatTheySay) {
    const QJsonObject out = *reckonPot(object(smallest()), catalogue());
    for (const char* key : {"evaporated_ml", "held_by_solids_ml", "cook_out_ml", "stock_ml",
                            "meat_left_g", "fat_g", "protein_g_per_100ml", "gelatin_g_per_100ml",
                            "sodium_mg_per_100ml", "potassium_mg_per_100ml"}) {
        const QJsonObject range = out.value(QLatin1String(key)).toObject();
        EXPECT_EQ(range.keys(), QStringList({QStringLiteral("best"), QStringLiteral("high"),
                                             QStringLiteral("low")}))
            << key;
        EXPECT_LE(range.value(QStringLiteral("low")).toDouble(),
                  range.value(QStringLiteral("best")).toDouble());
        EXPECT_LE(range.value(QStringLiteral("best")).toDouble(),
                  range.value(QStringLiteral("high")).toDouble());
    }
    for (const char* key :
         {"boiling_c", "simmer_c", "water_ratio_ml_per_kg", "fill_ml", "capacity_ml"})
        EXPECT_TRUE(out.value(QLatin1String(key)).isDouble()) << key;
    for (const char* key : {"cost", "cover_days", "meat_days"})
        EXPECT_TRUE(out.value(QLatin1String(key)).isNull()) << key;
    EXPECT_TRUE(out.value(QStringLiteral("who")).toArray().isEmpty());
}

TEST(ReckonPotTest, OptionalPartsAreReckoned) {
    const QJsonObject out =
        *reckonPot(object(with(R"("members": [{"name": "Ann", "ml_per_day": 800},
                                   {"name": "Bo", "band": "child", "may_not": ["chicken"],
                                    "sodium_limit_mg": 900}],
                       "meat_g_per_day": 300, "prices": {"chicken-leg": 6, "salt": 1})")),
                   catalogue());
    EXPECT_TRUE(out.value(QStringLiteral("cost")).isDouble());
    EXPECT_TRUE(out.value(QStringLiteral("cover_days")).isObject());
    EXPECT_TRUE(out.value(QStringLiteral("meat_days")).isObject());
    const QJsonArray who = out.value(QStringLiteral("who")).toArray();
    ASSERT_EQ(who.size(), 2);
    EXPECT_TRUE(who[0].toObject().value(QStringLiteral("may")).toBool());
    EXPECT_FALSE(who[1].toObject().value(QStringLiteral("may")).toBool(true));
    const QJsonArray findings = out.value(QStringLiteral("findings")).toArray();
    ASSERT_FALSE(findings.isEmpty());
    EXPECT_EQ(
        findings[0].toObject().keys(),
        QStringList({QStringLiteral("code"), QStringLiteral("limit"), QStringLiteral("severity"),
                     QStringLiteral("source"), QStringLiteral("text"), QStringLiteral("unit"),
                     QStringLiteral("value")}));
}

// A capital or a blank too many must not let anything into a pot.
TEST(ReckonPotTest, WhatMayNotIsReadInAnyCase) {
    for (const char* subject : {"chicken", "Chicken", " Poultry ", "ONION"}) {
        const QByteArray members =
            QByteArray(R"("members": [{"name": "Ann", "may_not": [")") + subject + R"("]}])";
        const auto out = reckonPot(object(with(members.constData())), catalogue());
        ASSERT_TRUE(out);
        const QJsonObject who = out->value(QStringLiteral("who")).toArray().at(0).toObject();
        EXPECT_FALSE(who.value(QStringLiteral("may")).toBool(true)) << subject;
    }
}

TEST(ReckonPotTest, SaysWhatHoldsOfEveryPot) {
    const QJsonObject out = *reckonPot(object(smallest()), catalogue());
    QStringList codes;
    for (const QJsonValue finding : out.value(QStringLiteral("findings")).toArray())
        codes.append(finding.toObject().value(QStringLiteral("code")).toString());
    for (const char* code : {"raw-poultry", "no-home-canning", "local-rules-first"})
        EXPECT_TRUE(codes.contains(QLatin1String(code))) << code;
}

TEST(ReckonPotTest, TakesEveryCutAndExtraOfTheCatalogue) {
    for (const Cut& cut : catalogue().cuts()) {
        const auto out = reckonPot(object(changed("chicken-leg", cut.id.toUtf8())), catalogue());
        ASSERT_TRUE(out) << cut.id.toStdString();
        EXPECT_GT(out->value(QStringLiteral("stock_ml"))
                      .toObject()
                      .value(QStringLiteral("best"))
                      .toDouble(),
                  0)
            << cut.id.toStdString();
    }
    for (const Extra& extra : catalogue().extras())
        EXPECT_TRUE(reckonPot(object(changed("onion", extra.id.toUtf8())), catalogue()))
            << extra.id.toStdString();
}

TEST(ReckonPotTest, AdditionsEndWithThePot) {
    const QJsonObject out = *reckonPot(object(changed(R"([{"item": "onion", "mass_g": 220}])",
                                                      R"([{"item": "garlic", "mass_g": 9}])")),
                                       catalogue());
    const QJsonArray additions = out.value(QStringLiteral("additions")).toArray();
    ASSERT_EQ(additions.size(), 4);
    const QJsonObject last = additions.last().toObject();
    EXPECT_EQ(last.value(QStringLiteral("what")).toString(), QStringLiteral("garlic"));
    EXPECT_EQ(last.value(QStringLiteral("at_min")).toDouble(), 150);
}

TEST(ReckonPotTest, PhasesAreReadInAnyCase) {
    for (const char* phase : {R"("Opening")", R"("WIDENING")", R"("settled")"})
        EXPECT_TRUE(reckonPot(object(changed(R"("opening")", phase)), catalogue())) << phase;
}

TEST(ReckonPotTest, BadInputNamesTheJsonPath) {
    const std::vector<Bad> rows{
        {"colour", with(R"("colour": "red")")},
        {"vessel.colour", changed(R"("lid": "ajar")", R"("lid": "ajar", "colour": "red")")},
        {"cuts[0].colour", changed(R"("raw": true)", R"("raw": true, "colour": "red")")},
        {"water_ml", changed(R"("water_ml": 2000, )", "")},
        {"extras", changed(R"("extras": [{"item": "onion", "mass_g": 220}],)", "")},
        {"vessel.lid", changed(R"("lid": "ajar", )", "")},
        {"vessel.lid", changed(R"("lid": "ajar")", R"("lid": "half")")},
        {"vessel.place", changed(R"("stovetop")", R"("campfire")")},
        {"vessel.diameter_cm", changed(R"("diameter_cm": 28)", R"("diameter_cm": 4)")},
        {"vessel.evaporation_factor",
         changed(R"("evaporation_factor": 1)", R"("evaporation_factor": 6)")},
        {"vessel", changed(R"("vessel": {)", R"("vessel": 5, "unused": {)")},
        {"altitude_m", changed(R"("altitude_m": 0)", R"("altitude_m": "high")")},
        {"altitude_m", changed(R"("altitude_m": 0)", R"("altitude_m": null)")},
        {"cuts[0].mass_g", changed(R"("mass_g": 1500)", R"("mass_g": -1)")},
        {"cuts[0].mass_g", changed(R"("mass_g": 1500)", R"("mass_g": 0)")},
        {"cuts[0].mass_g", changed(R"("mass_g": 1500)", R"("mass_g": "1500")")},
        {"cuts[0].mass_g", changed(R"("mass_g": 1500, )", "")},
        {"cuts[0].cut", changed("chicken-leg", "dragon-leg")},
        {"cuts[0].raw", changed(R"("raw": true)", R"("raw": 1)")},
        {"cuts", changed(R"([{"cut": "chicken-leg", "mass_g": 1500, "raw": true}])", "[]")},
        {"cuts[0]", changed(R"({"cut": "chicken-leg", "mass_g": 1500, "raw": true})", "7")},
        {"extras[0].item", changed(R"("onion")", R"("gravel")")},
        {"extras[0].mass_g", changed(R"("mass_g": 220)", R"("mass_g": -220)")},
        {"salt_g", changed(R"("salt_g": 6)", R"("salt_g": -6)")},
        {"water_ml", changed(R"("water_ml": 2000)", R"("water_ml": 0)")},
        {"water_ml", changed(R"("water_ml": 2000)", R"("water_ml": 1e-9)")},
        {"salt_g", changed(R"("salt_g": 6)", R"("salt_g": 720)")},
        {"simmer_h", changed(R"("simmer_h": 2.5)", R"("simmer_h": 0)")},
        {"simmer_h", changed(R"("simmer_h": 2.5)", R"("simmer_h": 200)")},
        {"phase", changed(R"("opening")", R"("third")")},
        {"phase", changed(R"("opening")", "1")},
        {"members[0].name", with(R"("members": [{}])")},
        {"members[0].band", with(R"("members": [{"name": "Ann", "band": "giant"}])")},
        {"members[0].may_not[0]", with(R"("members": [{"name": "Ann", "may_not": [1]}])")},
        {"members[0].age", with(R"("members": [{"name": "Ann", "age": 40}])")},
        {"members[1].ml_per_day",
         with(R"("members": [{"name": "Ann"}, {"name": "Bo", "ml_per_day": -1}])")},
        {"members", with(R"("members": {"name": "Ann"})")},
        {"meat_g_per_day", with(R"("meat_g_per_day": 0)")},
        {"prices.dragon", with(R"("prices": {"dragon": 3})")},
        {"prices.onion", with(R"("prices": {"onion": -3})")},
    };
    for (const Bad& row : rows) {
        SCOPED_TRACE(row.json.toStdString());
        const auto out = reckonPot(object(row.json), catalogue());
        ASSERT_FALSE(out);
        EXPECT_EQ(out.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(out.error().place.toStdString(), row.place);
        EXPECT_FALSE(out.error().sentence.isEmpty());
    }
}

TEST(ReckonPotTest, NumbersThatAreNoNumbersAreRefused) {
    QJsonObject input = object(smallest());
    input.insert(QStringLiteral("salt_g"), std::numeric_limits<double>::quiet_NaN());
    const auto out = reckonPot(input, catalogue());
    ASSERT_FALSE(out);
    EXPECT_EQ(out.error().place, QStringLiteral("salt_g"));
}

TEST(ReckonPotTest, APotThatBoilsDryHasNoStrength) {
    QJsonObject input = object(smallest());
    input.insert(QStringLiteral("water_ml"), 100);
    input.insert(QStringLiteral("simmer_h"), 6);
    const auto out = reckonPot(input, catalogue());
    ASSERT_TRUE(out);
    for (const char* key : {"protein_g_per_100ml", "gelatin_g_per_100ml", "sodium_mg_per_100ml",
                            "potassium_mg_per_100ml", "set"})
        EXPECT_TRUE(out->value(QLatin1String(key)).isNull()) << key;
    EXPECT_TRUE(out->value(QStringLiteral("stock_ml")).isObject());
    bool stopped = false;
    for (const QJsonValue finding : out->value(QStringLiteral("findings")).toArray())
        stopped = stopped || (finding[QStringLiteral("code")] == QStringLiteral("boils-dry") &&
                              finding[QStringLiteral("severity")] == QStringLiteral("stop"));
    EXPECT_TRUE(stopped);
}

TEST(ReckonPotTest, ThePhaseDecidesOnBoneBroth) {
    const auto may = [](const char* phase) {
        QJsonObject input = object(with(R"("members": [{"name": "Ann"}])"));
        input.insert(QStringLiteral("phase"), QLatin1String(phase));
        input.insert(
            QStringLiteral("cuts"),
            QJsonArray{QJsonObject{{QStringLiteral("cut"), QStringLiteral("chicken-carcass")},
                                   {QStringLiteral("mass_g"), 1500},
                                   {QStringLiteral("raw"), true}}});
        return (*reckonPot(input, catalogue()))[QStringLiteral("who")][0][QStringLiteral("may")]
            .toBool();
    };
    EXPECT_FALSE(may("opening"));
    EXPECT_TRUE(may("settled"));
}

} // namespace ladlework::kitchen
