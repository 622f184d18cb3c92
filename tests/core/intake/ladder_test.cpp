#include "intake/ladder.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::intake {
namespace {

using quantity::Volume;

struct RuleCase {
    const char* name;
    std::function<void(LadderRules&)> change;
    const char* field; ///< empty: in range
};

class LadderTest : public ::testing::TestWithParam<RuleCase> {};

TEST_P(LadderTest, namesTheRuleOutOfRange) {
    LadderRules rules;
    GetParam().change(rules);
    const Outcome outcome = check(rules);
    const std::string field = GetParam().field;
    EXPECT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(outcome.error().sentence.endsWith(QLatin1Char('.')));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Rules, LadderTest,
    ::testing::Values(
        RuleCase{"defaults", [](LadderRules&) {}, ""},
        RuleCase{"wholeShare", [](LadderRules& r) { r.goodShare = 1; }, ""},
        RuleCase{"noShare", [](LadderRules& r) { r.goodShare = 0; }, "goodShare"},
        RuleCase{"tooMuchShare", [](LadderRules& r) { r.goodShare = 1.01; }, "goodShare"},
        RuleCase{"shareNotANumber",
                 [](LadderRules& r) { r.goodShare = std::numeric_limits<double>::quiet_NaN(); },
                 "goodShare"},
        RuleCase{"equalStrengths", [](LadderRules& r) { r.mildTo = r.moderateTo = r.strongTo = 4; },
                 ""},
        RuleCase{"extremeStrengths", [](LadderRules& r) { r.mildTo = 0, r.strongTo = 10; }, ""},
        RuleCase{"negativeStrength", [](LadderRules& r) { r.mildTo = -1; }, "mildTo"},
        RuleCase{"moderateBelowMild", [](LadderRules& r) { r.moderateTo = 1; }, "moderateTo"},
        RuleCase{"strongBelowModerate", [](LadderRules& r) { r.strongTo = 4; }, "strongTo"},
        RuleCase{"strengthEleven", [](LadderRules& r) { r.strongTo = 11; }, "strongTo"},
        RuleCase{"noDaysToAdvance", [](LadderRules& r) { r.daysToAdvance = 0; }, "daysToAdvance"},
        RuleCase{"yearToAdvance", [](LadderRules& r) { r.daysToAdvance = 365; }, ""},
        RuleCase{"overAYearToAdvance", [](LadderRules& r) { r.daysToAdvance = 366; },
                 "daysToAdvance"},
        RuleCase{"noHold", [](LadderRules& r) { r.holdDays = 0; }, ""},
        RuleCase{"negativeHold", [](LadderRules& r) { r.holdDays = -1; }, "holdDays"},
        RuleCase{"noWindow", [](LadderRules& r) { r.moderateWindowDays = 0; }, ""},
        RuleCase{"negativeWindow", [](LadderRules& r) { r.moderateWindowDays = -1; },
                 "moderateWindowDays"},
        RuleCase{"neverStale", [](LadderRules& r) { r.staleDays = 0; }, "staleDays"},
        RuleCase{"noRungsBack", [](LadderRules& r) { r.rungsBack = 0; }, "rungsBack"},
        RuleCase{"manyRungsBack", [](LadderRules& r) { r.rungsBack = 21; }, "rungsBack"},
        RuleCase{"noDaysAtTarget", [](LadderRules& r) { r.holdTargetDays = 0; }, "holdTargetDays"},
        RuleCase{"twoYearsAtTarget", [](LadderRules& r) { r.holdTargetDays = 730; }, ""}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(LadderTest, namesTheRungAtFault) {
    const auto placeOf = [](const QList<double>& ml) {
        Ladder ladder;
        for (double amount : ml)
            ladder.rungs.append(Volume::fromMillilitres(amount));
        const Outcome outcome = check(ladder);
        return outcome ? std::string() : outcome.error().place.toStdString();
    };
    EXPECT_EQ(placeOf({}), "rungs");
    EXPECT_EQ(placeOf({5}), "");
    EXPECT_EQ(placeOf({0.05, 5, 4000}), "");
    EXPECT_EQ(placeOf({0}), "rungs[0]");
    EXPECT_EQ(placeOf({5, -1}), "rungs[1]");
    EXPECT_EQ(placeOf({5, 5}), "rungs[1]");
    EXPECT_EQ(placeOf({5, 10, 7}), "rungs[2]");
    EXPECT_EQ(placeOf({5, 4001}), "rungs[1]");
    EXPECT_EQ(placeOf({std::numeric_limits<double>::quiet_NaN()}), "rungs[0]");
    Ladder ladder;
    ladder.rungs = {Volume::fromMillilitres(5)};
    ladder.rules.rungsBack = 0;
    EXPECT_EQ(check(ladder).error().place.toStdString(), "rungsBack");
}

} // namespace
} // namespace ladlework::intake
