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

const QByteArray ladder = R"({"band": "adult", "start_ml": 5, "target_ml": [946, 1420],
  "log": [{"day": "2026-11-01", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false},
          {"day": "2026-11-02", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false},
          {"day": "2026-11-03", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false}],
  "decisions": [], "today": "2026-11-05"})";

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
        {"ladder", with(ladder, "\"drunk_ml\": 5, \"worst", "\"drunk_ml\": -5, \"worst"),
         "log[0].drunk_ml"},
        {"ladder", with(ladder, "2026-11-02", "2026-02-30"), "log[1].day"},
        {"ladder", with(ladder, "\"today\": \"2026-11-05\"", "\"todai\": 1"), "today"},
        {"ladder", with(ladder, "[946, 1420]", "[1420, 946]"), "target_ml"},
    };
    for (const Case& one : cases)
        EXPECT_TRUE(reckon(one.what, one.json)
                        .refused({QStringLiteral("in.json"), QString::fromLatin1(one.place)}))
            << one.place;
}

TEST_F(ReckonCommandTest, NamesTheComputationsThereAre) {
    for (const char* what : {"cooling", "patterns", "week"})
        EXPECT_TRUE(
            reckon(what, "{}").refused({QStringLiteral("the computations are pot and ladder")}))
            << what;
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
