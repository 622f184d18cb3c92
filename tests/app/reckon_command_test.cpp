#include "app/program.h"

#include <QFile>
#include <QJsonArray>

namespace ladlework::app {
namespace {

const QByteArray pot = R"({"altitude_m": 100, "room_c": 21,
  "vessel": {"diameter_cm": 26, "height_cm": 18, "lid": "on", "place": "stovetop",
             "evaporation_factor": 1},
  "cuts": [{"cut": "chicken-leg", "mass_g": 1400, "raw": true},
           {"cut": "chicken-foot", "mass_g": 200, "raw": true}],
  "water_ml": 2800, "salt_g": 6, "extras": [{"item": "onion", "mass_g": 220}],
  "simmer_h": 2.5, "phase": "Opening",
  "members": [{"name": "Ana", "may_not": ["beef"], "sodium_limit_mg": 1500, "band": "adult",
               "ml_per_day": 900}],
  "meat_g_per_day": 400})";

const QByteArray cooling = R"({"volume_ml": 6000,
  "container": {"shape": "tray", "length_cm": 30, "width_cm": 24, "fill_depth_cm": 5,
                "covered": false, "material": "steel"},
  "start_c": 95,
  "stages": [{"place": "counter", "ambient_c": 21, "minutes": 60, "stirred": false},
             {"place": "refrigerator", "ambient_c": 3, "minutes": 0, "stirred": false}]})";

const QByteArray ladder = R"({"band": "adult", "start_ml": 5, "target_ml": [946, 1420],
  "log": [{"day": "2026-11-01", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false},
          {"day": "2026-11-02", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false},
          {"day": "2026-11-03", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false}],
  "decisions": [], "today": "2026-11-05"})";

const QByteArray patterns = R"({"days": [
  {"day": "2026-11-01", "exposures": ["beef", "celery"], "worst_reaction": 4},
  {"day": "2026-11-02", "exposures": [], "worst_reaction": null},
  {"day": "2026-11-03", "exposures": ["celery"], "worst_reaction": 0}],
  "window_days": 1, "reaction_at_least": 3})";

constexpr char week[] = R"({"start": "2026-11-23", "days": 4,
  "members": [{"name": "Ana", "ml_per_day": [1000, 1000, 1000, 1000], "may_drink": ["chicken"]}],
  "pots": [{"id": "legs", "animal": "chicken", "stock_ml": 2000, "meat_g": 400,
            "hands_on_min": 50, "total_min": 240, "cost": 12.5}],
  "slots": [{"day": 0, "minutes": 300, "pots": 1}, {"day": 2, "minutes": 300, "pots": 1}],
  "fridge_days": 2, "fridge_ml": 6000, "freezer_ml": 0, "meat_g_per_day": 400, "lots": [],
  "spill": 0})";

class ReckonCommandTest : public ProgramTest {
protected:
    Ran reckon(const char* what, const QByteArray& json) {
        write(QStringLiteral("in.json"), json);
        return run(
            {QStringLiteral("reckon"), QString::fromLatin1(what), QStringLiteral("in.json")});
    }
    static QByteArray with(QByteArray json, const char* from, const char* to) {
        EXPECT_TRUE(json.contains(from)) << from;
        return json.replace(from, to);
    }
};

TEST_F(ReckonCommandTest, PotHasEveryKey) {
    const Ran ran = reckon("pot", pot);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_TRUE(ran.complaint.isEmpty());
    const QJsonObject json = ran.json();
    for (const char* key : {"water_ratio_ml_per_kg",
                            "boiling_c",
                            "simmer_c",
                            "evaporated_ml",
                            "held_by_solids_ml",
                            "cook_out_ml",
                            "stock_ml",
                            "meat_left_g",
                            "meat_days",
                            "fat_g",
                            "protein_g_per_100ml",
                            "gelatin_g_per_100ml",
                            "set",
                            "sodium_mg_per_100ml",
                            "potassium_mg_per_100ml",
                            "additions",
                            "fill_ml",
                            "capacity_ml",
                            "cost",
                            "cover_days",
                            "who",
                            "findings"})
        EXPECT_TRUE(json.contains(QLatin1String(key))) << key;
    for (const char* key : {"stock_ml", "evaporated_ml", "sodium_mg_per_100ml"}) {
        const QJsonObject range = json.value(QLatin1String(key)).toObject();
        EXPECT_LE(range.value(QStringLiteral("low")).toDouble(),
                  range.value(QStringLiteral("best")).toDouble());
        EXPECT_LE(range.value(QStringLiteral("best")).toDouble(),
                  range.value(QStringLiteral("high")).toDouble());
        EXPECT_GT(range.value(QStringLiteral("high")).toDouble(), 0.0) << key;
    }
}

TEST_F(ReckonCommandTest, CoolingHasEveryKey) {
    const Ran ran = reckon("cooling", cooling);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_TRUE(ran.complaint.isEmpty());
    const QJsonObject json = ran.json();
    for (const char* key :
         {"min_57c_to_21c", "min_57c_to_5c", "passes", "curve", "fewest_containers", "findings"})
        EXPECT_TRUE(json.contains(QLatin1String(key))) << key;
    const QJsonArray curve = json.value(QStringLiteral("curve")).toArray();
    ASSERT_GT(curve.size(), 10);
    for (const QJsonValue& point : curve)
        ASSERT_EQ(point.toArray().size(), 3) << "minutes, core, surface";
    const QJsonObject fewest = json.value(QStringLiteral("fewest_containers")).toObject();
    EXPECT_GE(fewest.value(QStringLiteral("count")).toInt(), 2) << "6 L at 3.6 L each";
    EXPECT_GT(fewest.value(QStringLiteral("depth_cm")).toDouble(), 0);
    for (const char* key : {"severity", "code", "text", "value", "limit", "unit", "source"})
        EXPECT_TRUE(json.value(QStringLiteral("findings"))
                        .toArray()
                        .first()
                        .toObject()
                        .contains(QLatin1String(key)))
            << key;
    const QJsonObject warm =
        reckon("cooling", with(cooling, "\"ambient_c\": 3", "\"ambient_c\": 12")).json();
    EXPECT_TRUE(warm.value(QStringLiteral("min_57c_to_5c")).isNull());
    EXPECT_TRUE(warm.value(QStringLiteral("fewest_containers")).isNull());
}

TEST_F(ReckonCommandTest, LadderHasEveryKeyAndEveryDay) {
    const Ran ran = reckon("ladder", ladder);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonObject json = ran.json();
    for (const char* key : {"rungs_ml", "days", "state", "rung", "good_days", "days_at_target",
                            "target_date", "findings"})
        EXPECT_TRUE(json.contains(QLatin1String(key))) << key;
    const QJsonArray days = json.value(QStringLiteral("days")).toArray();
    ASSERT_EQ(days.size(), 5) << "one for each calendar day";
    for (const char* key : {"day", "rung", "asked_ml", "decision", "rule"})
        EXPECT_TRUE(days[0].toObject().contains(QLatin1String(key))) << key;
    EXPECT_EQ(days[2].toObject().value(QStringLiteral("decision")).toString(),
              QStringLiteral("advance"));
    EXPECT_EQ(days[4].toObject().value(QStringLiteral("decision")).toString(),
              QStringLiteral("gap"));
}

TEST_F(ReckonCommandTest, PatternsHasEveryKeyOfEverySubject) {
    const Ran ran = reckon("patterns", patterns);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonObject json = ran.json();
    EXPECT_TRUE(json.value(QStringLiteral("findings")).isArray());
    const QJsonArray subjects = json.value(QStringLiteral("subjects")).toArray();
    ASSERT_EQ(subjects.size(), 2);
    for (const QJsonValue& subject : subjects)
        for (const char* key : {"subject", "exposed_reacted", "exposed_fine", "other_reacted",
                                "other_fine", "risk_ratio", "risk_ratio_95", "p", "q", "enough"})
            EXPECT_TRUE(subject.toObject().contains(QLatin1String(key))) << key;
}

// One person, 1,000 mL a day for four days, nothing spilt; a pot of 2,000 mL keeps two days beyond
// its own: two cookings are the least, 50 minutes each, and two days lie between two days of
// cooking.
TEST_F(ReckonCommandTest, WeekHasEveryKeyAndIsProven) {
    const Ran ran = reckon("week", week);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonObject json = ran.json();
    for (const char* key : {"status", "gap", "objective", "cook", "serve", "freeze", "thaw",
                            "eat_meat", "store", "in_the_way", "findings"})
        EXPECT_TRUE(json.contains(QLatin1String(key))) << key;
    EXPECT_EQ(json.value(u"status").toString(), QStringLiteral("optimal"));
    EXPECT_EQ(json.value(u"gap").toDouble(), 0);
    const QJsonObject objective = json.value(u"objective").toObject();
    EXPECT_EQ(objective.value(u"short_ml").toDouble(), 0);
    EXPECT_EQ(objective.value(u"spoilt_ml").toDouble(), 0);
    EXPECT_EQ(objective.value(u"cookings").toInt(), 2);
    EXPECT_EQ(objective.value(u"hands_on_min").toDouble(), 100);
    EXPECT_EQ(objective.value(u"cost").toDouble(), 25);
    EXPECT_EQ(json.value(u"cook").toArray().size(), 2);
    EXPECT_EQ(json.value(u"store").toArray().size(), 4);
    double served = 0;
    for (const QJsonValue& serving : json.value(u"serve").toArray()) {
        EXPECT_EQ(serving[u"member"].toString(), QStringLiteral("Ana"));
        served += serving[u"ml"].toDouble();
    }
    EXPECT_NEAR(served, 4000, 1e-3);
    EXPECT_TRUE(json.value(u"in_the_way").toArray().isEmpty());
}

TEST_F(ReckonCommandTest, WeekSaysWhatIsInTheWay) {
    const QByteArray oneSlot = with(week, R"({"day": 2, "minutes": 300, "pots": 1})", "");
    const Ran ran = reckon("week", with(oneSlot, R"("pots": 1}, ])", R"("pots": 1}])"));
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonObject json = ran.json();
    EXPECT_EQ(json[u"objective"][u"short_ml"].toDouble(), 2000);
    ASSERT_FALSE(json.value(u"in_the_way").toArray().isEmpty());
    // The first is what was solved to be enough: one more cooking, on day 1, 2 or 3 at the latest.
    const QString helps = json[u"in_the_way"][0][u"would_help"].toString();
    EXPECT_TRUE(helps.contains(QStringLiteral("would be enough"))) << helps.toStdString();
    EXPECT_TRUE(json.value(u"findings").toArray().size() >= 2);
}

TEST_F(ReckonCommandTest, WeekThatNoRoomHoldsIsInfeasible) {
    const Ran ran = reckon(
        "week",
        with(
            week, R"("lots": [])",
            R"("lots": [{"animal": "chicken", "ml": 90000, "place": "fridge", "use_by_day": 3}])"));
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_EQ(ran.json().value(u"status").toString(), QStringLiteral("infeasible"));
    EXPECT_TRUE(ran.json().value(u"objective").isNull());
    EXPECT_FALSE(ran.json().value(u"in_the_way").toArray().isEmpty());
}

TEST_F(ReckonCommandTest, WeekNamesThePlaceOfWhatIsWrong) {
    const struct {
        const char* from;
        const char* to;
        const char* place;
    } wrong[] = {
        {R"("days": 4)", R"("days": 0)", "days"},
        {R"("days": 4)", R"("days": 29)", "days"},
        {R"("spill": 0)", R"("spill": -0.1)", "spill"},
        {R"("spill": 0)", R"("spill": 0, "spil": 1)", "spil"},
        {R"("fridge_days": 2)", R"("fridge_days": "2")", "fridge_days"},
        {R"("ml_per_day": [1000, 1000, 1000, 1000])", R"("ml_per_day": [1000])",
         "members[0].ml_per_day"},
        {R"("ml_per_day": [1000, 1000, 1000, 1000])", R"("ml_per_day": [1000, -1, 1000, 1000])",
         "members[0].ml_per_day[1]"},
        {R"("may_drink": ["chicken"])", R"("may_drink": [3])", "members[0].may_drink[0]"},
        {R"("stock_ml": 2000)", R"("stock_ml": -2000)", "pots[0].stock_ml"},
        {R"("day": 2)", R"("day": 4)", "slots[1].day"},
        {R"("lots": [])",
         R"("lots": [{"animal": "a", "ml": 1, "place": "shelf", "use_by_day": 1}])",
         "lots[0].place"},
        {R"("freezer_ml": 0, )", "", "freezer_ml"},
    };
    for (const auto& each : wrong)
        EXPECT_TRUE(reckon("week", with(week, each.from, each.to))
                        .refused({QString::fromLatin1(each.place), QStringLiteral("in.json")}))
            << each.to;
}

TEST_F(ReckonCommandTest, NamesFileAndPathOfWhatIsWrong) {
    struct Case {
        const char* what;
        QByteArray json;
        const char* place;
    };
    const QList<Case> cases{
        {"pot", with(pot, "\"mass_g\": 1400", "\"mass_g\": -1"), "cuts[0].mass_g"},
        {"pot", with(pot, "\"mass_g\": 1400", "\"mass_g\": \"much\""), "cuts[0].mass_g"},
        {"pot", with(pot, "\"chicken-foot\"", "\"chicken-wheel\""), "cuts[1].cut"},
        {"pot", with(pot, "\"altitude_m\": 100, ", ""), "altitude_m"},
        {"pot", with(pot, "\"altitude_m\"", "\"altitude_ft\": 1, \"altitude_m\""), "altitude_ft"},
        {"pot", with(pot, "\"lid\": \"on\"", "\"lid\": \"off\""), "vessel.lid"},
        {"pot", with(pot, "2800", "NaN"), "offset"},
        {"pot", with(pot, "2800", "1e999"), "offset"},
        {"pot", "[]", "in.json"},
        {"pot", "", "in.json"},
        {"cooling", with(cooling, "6000", "-6000"), "volume_ml"},
        {"cooling", with(cooling, "\"width_cm\": 24, ", ""), "container.width_cm"},
        {"cooling", with(cooling, "\"width_cm\"", "\"diameter_cm\": 9, \"width_cm\""),
         "container.diameter_cm"},
        {"cooling", with(cooling, "\"steel\"", "\"tin\""), "container.material"},
        {"cooling", with(cooling, "\"counter\"", "\"cellar\""), "stages[0].place"},
        {"cooling", with(cooling, "95", "NaN"), "offset"},
        {"ladder", with(ladder, "\"drunk_ml\": 5, \"worst", "\"drunk_ml\": -5, \"worst"),
         "log[0].drunk_ml"},
        {"ladder", with(ladder, "2026-11-02", "2026-02-30"), "log[1].day"},
        {"ladder", with(ladder, "\"today\": \"2026-11-05\"", "\"todai\": 1"), "today"},
        {"ladder", with(ladder, "[946, 1420]", "[1420, 946]"), "target_ml"},
        {"patterns", with(patterns, "\"worst_reaction\": 4", "\"worst_reaction\": 11"),
         "days[0].worst_reaction"},
        {"patterns", with(patterns, "[\"celery\"]", "[7]"), "days[2].exposures[0]"},
        {"patterns", with(patterns, "\"window_days\": 1", "\"window_days\": 1.5"), "window_days"},
        {"patterns", with(patterns, ", \"reaction_at_least\": 3", ""), "reaction_at_least"},
        {"patterns", with(patterns, "\"window_days\"", "\"window\": 1, \"window_days\""), "window"},
    };
    for (const Case& one : cases)
        EXPECT_TRUE(reckon(one.what, one.json)
                        .refused({QStringLiteral("in.json"), QString::fromLatin1(one.place)}))
            << one.place;
}

TEST_F(ReckonCommandTest, NamesTheComputationsThereAre) {
    EXPECT_TRUE(
        reckon("soup", "{}").refused({QStringLiteral("the computations are pot, cooling")}));
    EXPECT_TRUE(reckon("soup", "{}").refused({QStringLiteral("soup")}));
    EXPECT_TRUE(run({QStringLiteral("reckon"), QStringLiteral("pot"), QStringLiteral("gone.json")})
                    .refused({QStringLiteral("gone.json")}));
}

TEST_F(ReckonCommandTest, TellsAFileThatBreaksOffWhileItIsRead) {
    // proc(5): nothing is mapped at address 0, so that reading this file's beginning fails.
    const QString broken = QStringLiteral("/proc/self/mem");
    if (!QFile::exists(broken))
        GTEST_SKIP() << "no such file on this system";
    const Ran ran = run({QStringLiteral("reckon"), QStringLiteral("pot"), broken});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.complaint.contains("cannot be read")) << ran.complaint.constData();
}

} // namespace
} // namespace ladlework::app
