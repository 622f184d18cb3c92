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
        reckon("week", "{}").refused({QStringLiteral("the computations are pot, cooling")}));
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
