#include "foundation/json_reader.h"
#include "intake/reckon_ladder.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

const char* const usualInput = R"({
    "band": "adult", "start_ml": 5, "target_ml": [946.352946, 1419.529419],
    "log": [
        {"day": "2024-03-03", "drunk_ml": 5, "worst_reaction": 1, "red_flag": false},
        {"day": "2024-03-01", "drunk_ml": 5, "worst_reaction": 0, "red_flag": false},
        {"day": "2024-03-02", "drunk_ml": 3, "worst_reaction": null, "red_flag": false},
        {"day": "2024-03-02", "drunk_ml": 2, "worst_reaction": 0, "red_flag": false}],
    "decisions": [], "today": "2024-03-04"})";

QJsonObject usual() {
    return *parseJsonObject(QByteArray(usualInput));
}

QJsonObject with(const char* key, const QJsonValue& value) {
    QJsonObject input = usual();
    input.insert(QLatin1String(key), value);
    return input;
}

QJsonValue json(const char* text) {
    return parseJsonObject("{\"v\":" + QByteArray(text) + "}")->value(QStringLiteral("v"));
}

TEST(ReckonLadderTest, tellsTheWholeClimb) {
    const Result<QJsonObject> out = reckonLadder(usual());
    ASSERT_TRUE(out.has_value()) << qPrintable(toLine(out.error()));
    const QJsonArray rungs = (*out)[QStringLiteral("rungs_ml")].toArray();
    EXPECT_EQ(rungs.first().toDouble(), 5);
    EXPECT_EQ(rungs.last().toDouble(), 946.352946);
    const QJsonArray days = (*out)[QStringLiteral("days")].toArray();
    ASSERT_EQ(days.size(), 4);
    EXPECT_EQ(days[0].toObject(),
              json(R"({"day":"2024-03-01","rung":0,"asked_ml":5,"decision":"stay","rule":8})")
                  .toObject());
    EXPECT_EQ(days[2][QStringLiteral("decision")].toString().toStdString(), "advance");
    EXPECT_EQ(days[3][QStringLiteral("decision")].toString().toStdString(), "gap");
    EXPECT_EQ(days[3][QStringLiteral("asked_ml")], rungs[1]);
    EXPECT_EQ((*out)[QStringLiteral("state")].toString().toStdString(), "climbing");
    EXPECT_EQ((*out)[QStringLiteral("rung")].toInt(), 1);
    EXPECT_EQ((*out)[QStringLiteral("good_days")].toInt(), 0);
    EXPECT_EQ((*out)[QStringLiteral("days_at_target")].toInt(-1), 0);
    EXPECT_TRUE((*out)[QStringLiteral("findings")].toArray().isEmpty());
    const QJsonObject date = (*out)[QStringLiteral("target_date")].toObject();
    for (const char* key : {"p10", "median", "p90"})
        EXPECT_TRUE(QDate::fromString(date[QLatin1String(key)].toString(), Qt::ISODate).isValid());
    EXPECT_EQ(out->size(), 8);
}

TEST(ReckonLadderTest, usesTheRungsAndTheRulesGiven) {
    QJsonObject input = with("rungs_ml", json("[5, 7.125]"));
    input.insert(QStringLiteral("rules"), json(R"({"days_to_advance": 2, "good_share": 1})"));
    const Result<QJsonObject> out = reckonLadder(input);
    ASSERT_TRUE(out.has_value());
    EXPECT_EQ((*out)[QStringLiteral("rungs_ml")], json("[5, 7.125]"));
    EXPECT_EQ(
        (*out)[QStringLiteral("days")][1][QStringLiteral("decision")].toString().toStdString(),
        "advance");
    EXPECT_EQ((*out)[QStringLiteral("state")].toString().toStdString(), "at-target");
    EXPECT_EQ(
        (*out)[QStringLiteral("target_date")][QStringLiteral("median")].toString().toStdString(),
        "2024-03-03");
}

TEST(ReckonLadderTest, stopsUnderSixMonthsWithoutALadder) {
    const Result<QJsonObject> out = reckonLadder(with("band", json("\"infant-under-6-months\"")));
    ASSERT_TRUE(out.has_value());
    EXPECT_TRUE((*out)[QStringLiteral("rungs_ml")].toArray().isEmpty());
    EXPECT_TRUE((*out)[QStringLiteral("days")].toArray().isEmpty());
    EXPECT_TRUE((*out)[QStringLiteral("target_date")].isNull());
    const QJsonValue finding = (*out)[QStringLiteral("findings")][0];
    EXPECT_EQ(finding[QStringLiteral("severity")].toString().toStdString(), "stop");
    EXPECT_EQ(finding[QStringLiteral("code")].toString().toStdString(), "no-ladder-under-6-months");
    EXPECT_EQ(finding.toObject().size(), 7);
}

TEST(ReckonLadderTest, hasNoTargetDateWhileStopped) {
    const Result<QJsonObject> out = reckonLadder(with(
        "log", json(R"([{"day":"2024-03-01","drunk_ml":0,"worst_reaction":0,"red_flag":true}])")));
    ASSERT_TRUE(out.has_value());
    EXPECT_EQ((*out)[QStringLiteral("state")].toString().toStdString(), "stopped");
    EXPECT_TRUE((*out)[QStringLiteral("target_date")].isNull());
}

TEST(ReckonLadderTest, hasNoDaysWithoutALog) {
    const Result<QJsonObject> out = reckonLadder(with("log", QJsonArray()));
    ASSERT_TRUE(out.has_value());
    EXPECT_TRUE((*out)[QStringLiteral("days")].toArray().isEmpty());
    EXPECT_EQ((*out)[QStringLiteral("rung")].toInt(-1), 0);
}

TEST(ReckonLadderTest, cautionsAboveTheTarget) {
    const Result<QJsonObject> high = reckonLadder(with("band", json("\"child\"")));
    EXPECT_EQ(
        (*high)[QStringLiteral("findings")][0][QStringLiteral("code")].toString().toStdString(),
        "target-above-usual");
    const Result<QJsonObject> rungs = reckonLadder(with("rungs_ml", json("[5, 1500]")));
    EXPECT_EQ(
        (*rungs)[QStringLiteral("findings")][0][QStringLiteral("code")].toString().toStdString(),
        "rungs-above-target");
}

TEST(ReckonLadderTest, asksForEveryKeyThatIsNotOptional) {
    for (const char* key : {"band", "start_ml", "target_ml", "log", "decisions", "today"}) {
        QJsonObject input = usual();
        input.remove(QLatin1String(key));
        const Result<QJsonObject> out = reckonLadder(input);
        ASSERT_FALSE(out.has_value()) << key;
        EXPECT_EQ(out.error().place.toStdString(), key);
    }
}

TEST(ReckonLadderTest, startsWithADropAtLeastAndAtTheTargetAtMost) {
    for (const double start : {0.05, 946.352946 - 1e-8, 946.352946}) {
        const Result<QJsonObject> out = reckonLadder(with("start_ml", start));
        ASSERT_TRUE(out.has_value()) << start;
        const QJsonArray rungs = (*out)[QStringLiteral("rungs_ml")].toArray();
        EXPECT_NEAR(rungs.first().toDouble(), start, 1e-6);
        for (qsizetype rung = 1; rung < rungs.size(); ++rung)
            EXPECT_GT(rungs[rung].toDouble(), rungs[rung - 1].toDouble());
    }
}

TEST(ReckonLadderTest, takesAStartAboveTheTargetWithGivenRungs) {
    QJsonObject input = with("start_ml", 1000);
    input.insert(QStringLiteral("rungs_ml"), json("[5, 10]"));
    EXPECT_TRUE(reckonLadder(input).has_value());
}

} // namespace
} // namespace ladlework::intake
