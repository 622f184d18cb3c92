#include "foundation/json_reader.h"
#include "intake/reckon_patterns.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

QString text(const char* words) {
    return QString::fromLatin1(words);
}

struct BadCase {
    const char* name;
    const char* key;
    const char* value; ///< null: the key is left out
    const char* place;
};

class ReckonPatternsBadInputTest : public ::testing::TestWithParam<BadCase> {};

TEST_P(ReckonPatternsBadInputTest, namesThePlace) {
    const BadCase& c = GetParam();
    QJsonObject input =
        *parseJsonObject(R"({"days": [], "window_days": 1, "reaction_at_least": 3})");
    input.remove(text(c.key));
    if (c.value != nullptr)
        input.insert(text(c.key),
                     parseJsonObject("{\"v\":" + QByteArray(c.value) + "}")->value(text("v")));
    const Result<QJsonObject> out = reckonPatterns(input);
    ASSERT_FALSE(out.has_value());
    EXPECT_EQ(out.error().kind, Problem::Kind::BadInput);
    EXPECT_EQ(out.error().place.toStdString(), c.place);
}

#define DAY(exposures, worst)                                                                      \
    "[{\"day\":\"2024-02-29\",\"exposures\":" exposures ",\"worst_reaction\":" worst "}]"

INSTANTIATE_TEST_SUITE_P(
    Inputs, ReckonPatternsBadInputTest,
    ::testing::Values(
        BadCase{"unknownKey", "colour", "1", "colour"}, BadCase{"noDays", "days", nullptr, "days"},
        BadCase{"daysOfWrongType", "days", "{}", "days"},
        BadCase{"dayOfWrongType", "days", "[3]", "days[0]"},
        BadCase{"noSuchDay", "days",
                "[{\"day\":\"2023-02-29\",\"exposures\":[],\"worst_reaction\":0}]", "days[0].day"},
        BadCase{"dayWithUnknownKey", "days",
                "[{\"day\":\"2024-02-29\",\"exposures\":[],\"worst_reaction\":0,\"mood\":1}]",
                "days[0].mood"},
        BadCase{"dayWithoutReaction", "days", "[{\"day\":\"2024-02-29\",\"exposures\":[]}]",
                "days[0].worst_reaction"},
        BadCase{"exposuresOfWrongType", "days", DAY("\"beef\"", "0"), "days[0].exposures"},
        BadCase{"blankExposure", "days", DAY("[\"beef\",\" \"]", "0"), "days[0].exposures[1]"},
        BadCase{"numberForExposure", "days", DAY("[5]", "0"), "days[0].exposures[0]"},
        BadCase{"reactionTooStrong", "days", DAY("[]", "11"), "days[0].worst_reaction"},
        BadCase{"reactionNotWhole", "days", DAY("[]", "2.5"), "days[0].worst_reaction"},
        BadCase{"negativeReaction", "days", DAY("[]", "-1"), "days[0].worst_reaction"},
        BadCase{"noWindow", "window_days", nullptr, "window_days"},
        BadCase{"negativeWindow", "window_days", "-1", "window_days"},
        BadCase{"windowOfWrongType", "window_days", "\"1\"", "window_days"},
        BadCase{"noThreshold", "reaction_at_least", nullptr, "reaction_at_least"},
        BadCase{"thresholdTooHigh", "reaction_at_least", "11", "reaction_at_least"},
        BadCase{"thresholdNull", "reaction_at_least", "null", "reaction_at_least"}),
    [](const auto& named) { return std::string(named.param.name); });

} // namespace
} // namespace ladlework::intake
