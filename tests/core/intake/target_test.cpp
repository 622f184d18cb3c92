#include "intake/target.h"

#include <gtest/gtest.h>
#include <limits>

namespace ladlework::intake {
namespace {

using quantity::Volume;

Target targetOf(double lowCups, double highCups) {
    Target target;
    target.low = Volume::fromCups(lowCups);
    target.high = Volume::fromCups(highCups);
    return target;
}

std::string placeOf(const Target& target) {
    const Outcome outcome = check(target);
    return outcome ? std::string() : outcome.error().place.toStdString();
}

TEST(TargetTest, checksItsRanges) {
    EXPECT_EQ(placeOf(targetOf(4, 6)), "");
    EXPECT_EQ(placeOf(targetOf(1, 1)), "");
    EXPECT_EQ(placeOf(targetOf(0, 1)), "low");
    EXPECT_EQ(placeOf(targetOf(-1, 1)), "low");
    EXPECT_EQ(placeOf(targetOf(std::numeric_limits<double>::quiet_NaN(), 1)), "low");
    EXPECT_EQ(placeOf(targetOf(2, 1)), "high");
    EXPECT_EQ(placeOf(targetOf(2, 17)), "high");
    EXPECT_EQ(placeOf(targetOf(2, std::numeric_limits<double>::quiet_NaN())), "high");
    Target target = targetOf(4, 6);
    target.holdDays = 0;
    EXPECT_EQ(placeOf(target), "holdDays");
    target.holdDays = 731;
    EXPECT_EQ(placeOf(target), "holdDays");
    target.holdDays = 730;
    target.from = QDate(2024, 1, 10);
    target.easeOffFrom = QDate(2024, 1, 9);
    EXPECT_EQ(placeOf(target), "easeOffFrom");
    target.easeOffFrom = QDate(2024, 4, 9);
    EXPECT_EQ(placeOf(target), "");
    target.easeEveryDays = 0;
    EXPECT_EQ(placeOf(target), "easeEveryDays");
    target.easeEveryDays = 91;
    EXPECT_EQ(placeOf(target), "easeEveryDays");
    target.easeEveryDays = 90;
    target.easeTo = target.low;
    EXPECT_EQ(placeOf(target), "");
    target.easeTo = Volume::fromCups(4.01);
    EXPECT_EQ(placeOf(target), "easeTo");
    target.easeTo = Volume::fromMillilitres(-1);
    EXPECT_EQ(placeOf(target), "easeTo");
    target.easeTo = Volume::fromMillilitres(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(placeOf(target), "easeTo");
}

TEST(TargetTest, knowsTheUsualTargets) {
    // Common practice, no source: adult 4-6 US cups, child 2-3, infant starting solids 1.
    EXPECT_NEAR(usualTarget(AgeBand::Adult)->low.toCups(), 4, 1e-9);
    EXPECT_NEAR(usualTarget(AgeBand::Adult)->high.toCups(), 6, 1e-9);
    EXPECT_NEAR(usualTarget(AgeBand::Child)->low.toCups(), 2, 1e-9);
    EXPECT_NEAR(usualTarget(AgeBand::Child)->high.toCups(), 3, 1e-9);
    EXPECT_NEAR(usualTarget(AgeBand::InfantStartingSolids)->low.toCups(), 1, 1e-9);
    EXPECT_NEAR(usualTarget(AgeBand::InfantStartingSolids)->high.toCups(), 1, 1e-9);
    EXPECT_FALSE(usualTarget(AgeBand::InfantUnderSixMonths).has_value());
    for (AgeBand band : {AgeBand::Adult, AgeBand::Child, AgeBand::InfantStartingSolids})
        EXPECT_TRUE(check(*usualTarget(band)).has_value());
}

TEST(TargetTest, stopsUnderSixMonths) {
    const Findings findings = reviewTarget(targetOf(0.01, 0.01), AgeBand::InfantUnderSixMonths);
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings[0].severity, Finding::Severity::Stop);
    EXPECT_EQ(findings[0].code.toStdString(), "no-ladder-under-6-months");
    EXPECT_FALSE(findings[0].source.isEmpty());
}

TEST(TargetTest, cautionsAboveTheUsualHighEndOnly) {
    EXPECT_TRUE(reviewTarget(targetOf(4, 6), AgeBand::Adult).isEmpty());
    EXPECT_TRUE(reviewTarget(targetOf(1, 2), AgeBand::Adult).isEmpty());
    // 6 cups written in whole millilitres.
    Target rounded = targetOf(4, 6);
    rounded.high = Volume::fromMillilitres(1420);
    EXPECT_TRUE(reviewTarget(rounded, AgeBand::Adult).isEmpty());
    const Findings findings = reviewTarget(targetOf(4, 6), AgeBand::Child);
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings[0].severity, Finding::Severity::Caution);
    EXPECT_EQ(findings[0].code.toStdString(), "target-above-usual");
    EXPECT_NEAR(*findings[0].limit, 3 * 236.5882365, 1e-6);
    EXPECT_TRUE(findings[0].source.contains(QStringLiteral("common practice")));
}

} // namespace
} // namespace ladlework::intake
