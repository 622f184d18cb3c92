#include "foundation/json_reader.h"
#include "intake/reckon_ladder.h"

#include <QJsonArray>

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

struct BadCase {
    const char* name;
    const char* key;
    const char* value;
    const char* place;
};

class ReckonLadderBadInputTest : public ::testing::TestWithParam<BadCase> {};

TEST_P(ReckonLadderBadInputTest, namesThePlace) {
    const BadCase& c = GetParam();
    const Result<QJsonObject> out = reckonLadder(with(c.key, json(c.value)));
    ASSERT_FALSE(out.has_value());
    EXPECT_EQ(out.error().kind, Problem::Kind::BadInput);
    EXPECT_EQ(out.error().place.toStdString(), c.place);
    EXPECT_FALSE(out.error().sentence.isEmpty());
}

#define ENTRY(fields) "[{\"day\":\"2024-03-01\"," fields "}]"

INSTANTIATE_TEST_SUITE_P(
    Inputs, ReckonLadderBadInputTest,
    ::testing::Values(
        BadCase{"unknownKey", "colour", "1", "colour"},
        BadCase{"unknownBand", "band", "\"grown-up\"", "band"},
        BadCase{"bandOfWrongType", "band", "3", "band"},
        BadCase{"noStart", "start_ml", "0", "start_ml"},
        BadCase{"startUnderADrop", "start_ml", "1e-9", "start_ml"},
        BadCase{"startAboveTheTarget", "start_ml", "946.4", "start_ml"},
        BadCase{"negativeStart", "start_ml", "-5", "start_ml"},
        BadCase{"startAsText", "start_ml", "\"5\"", "start_ml"},
        BadCase{"targetNoList", "target_ml", "946", "target_ml"},
        BadCase{"targetOfOne", "target_ml", "[946]", "target_ml"},
        BadCase{"targetOfThree", "target_ml", "[1, 2, 3]", "target_ml"},
        BadCase{"targetTurnedRound", "target_ml", "[946, 900]", "target_ml[1]"},
        BadCase{"targetNegative", "target_ml", "[-1, 900]", "target_ml[0]"},
        BadCase{"targetTooMuch", "target_ml", "[900, 4001]", "target_ml[1]"},
        BadCase{"targetText", "target_ml", "[900, \"x\"]", "target_ml[1]"},
        BadCase{"rungsEmpty", "rungs_ml", "[]", "rungs_ml"},
        BadCase{"rungsFall", "rungs_ml", "[5, 10, 7]", "rungs_ml[2]"},
        BadCase{"rungZero", "rungs_ml", "[0, 10]", "rungs_ml[0]"},
        BadCase{"rungNull", "rungs_ml", "[5, null]", "rungs_ml[1]"},
        BadCase{"rulesNoObject", "rules", "[]", "rules"},
        BadCase{"unknownRule", "rules", R"({"days": 3})", "rules.days"},
        BadCase{"ruleOutOfRange", "rules", R"({"days_to_advance": 0})", "rules.days_to_advance"},
        BadCase{"ruleNegative", "rules", R"({"hold_days": -1})", "rules.hold_days"},
        BadCase{"ruleFraction", "rules", R"({"hold_days": 1.5})", "rules.hold_days"},
        BadCase{"shareZero", "rules", R"({"good_share": 0})", "rules.good_share"},
        BadCase{"strengthsOutOfOrder", "rules", R"({"mild_to": 6})", "rules.moderate_to"},
        BadCase{"logNoList", "log", "{}", "log"},
        BadCase{"logItemNoObject", "log", "[3]", "log[0]"},
        BadCase{"logDayMissing", "log", R"([{"drunk_ml":1,"worst_reaction":0,"red_flag":false}])",
                "log[0].day"},
        BadCase{"logDayNone", "log",
                R"([{"day":"2023-02-29","drunk_ml":1,"worst_reaction":0,"red_flag":false}])",
                "log[0].day"},
        BadCase{"logDayAfterToday", "log",
                R"([{"day":"2024-03-05","drunk_ml":1,"worst_reaction":0,"red_flag":false}])",
                "log[0].day"},
        BadCase{"logDayLongAgo", "log",
                R"([{"day":"1924-03-05","drunk_ml":1,"worst_reaction":0,"red_flag":false}])",
                "log[0].day"},
        BadCase{"drunkMissing", "log", ENTRY(R"("worst_reaction":0,"red_flag":false)"),
                "log[0].drunk_ml"},
        BadCase{"drunkNegative", "log",
                ENTRY(R"("drunk_ml":-1,"worst_reaction":0,"red_flag":false)"), "log[0].drunk_ml"},
        BadCase{"reactionMissing", "log", ENTRY(R"("drunk_ml":1,"red_flag":false)"),
                "log[0].worst_reaction"},
        BadCase{"reactionEleven", "log",
                ENTRY(R"("drunk_ml":1,"worst_reaction":11,"red_flag":false)"),
                "log[0].worst_reaction"},
        BadCase{"flagMissing", "log", ENTRY(R"("drunk_ml":1,"worst_reaction":1)"),
                "log[0].red_flag"},
        BadCase{"flagNumber", "log", ENTRY(R"("drunk_ml":1,"worst_reaction":1,"red_flag":1)"),
                "log[0].red_flag"},
        BadCase{"unknownLogKey", "log",
                ENTRY(R"("drunk_ml":1,"worst_reaction":1,"red_flag":false,"note":"x")"),
                "log[0].note"},
        BadCase{"decisionWithoutReason", "decisions", ENTRY(R"("resume_at_rung":0,"reason":" ")"),
                "decisions[0].reason"},
        BadCase{"decisionBeyondTheLadder", "decisions",
                ENTRY(R"("resume_at_rung":99,"reason":"x")"), "decisions[0].resume_at_rung"},
        BadCase{"decisionNegative", "decisions", ENTRY(R"("resume_at_rung":-1,"reason":"x")"),
                "decisions[0].resume_at_rung"},
        BadCase{"todayNoDay", "today", "\"tomorrow\"", "today"}),
    [](const auto& named) { return std::string(named.param.name); });

} // namespace
} // namespace ladlework::intake
