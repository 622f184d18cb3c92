#include "kitchen/robust_update.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ladlework::kitchen {

namespace {
constexpr double freedom = 4;

std::vector<Normal> times(size_t count, Normal measured) {
    return std::vector<Normal>(count, measured);
}
} // namespace

// Gelman et al., Bayesian Data Analysis (3rd ed. 2013), exercise 2.8 with its published solution:
// students' weights of known deviation 20 and mean 150, prior mean 180 and deviation 40. For 10
// students the 95 % interval is 150.7 +- 1.96 x 6.25, for 100 it is 150.07 +- 1.96 x 1.997. To the
// digits printed, the last of which the solution cuts off.
TEST(RobustUpdateTest, AgreesWithAWorkedExampleOfTheNormalUpdate) {
    const Normal prior{180, 40};
    const Normal ten = robustlyUpdated(prior, times(10, {150, 20}), freedom).posterior;
    EXPECT_NEAR(ten.mean, 150.7, 0.05);
    EXPECT_NEAR(ten.deviation, 6.25, 0.005);
    const Normal hundred = robustlyUpdated(prior, times(100, {150, 20}), freedom).posterior;
    EXPECT_NEAR(hundred.mean, 150.07, 0.005);
    EXPECT_NEAR(hundred.deviation, 1.997, 0.001);
}

// The same section's closed form in small whole numbers: precisions 1 and 3 add to 4, the mean
// divides the way from 0 to 8 as 3 to 1.
TEST(RobustUpdateTest, PrecisionsAddUp) {
    const Normal posterior = updated({0, 1}, times(1, {8, 1 / std::sqrt(3.0)}), {1.0});
    EXPECT_NEAR(posterior.mean, 6, 1e-12);
    EXPECT_NEAR(posterior.deviation, 0.5, 1e-12);
    const Normal halved = updated({0, 1}, times(2, {8, 1 / std::sqrt(3.0)}), {0.5, 0.5});
    EXPECT_NEAR(halved.mean, 6, 1e-12);
    EXPECT_NEAR(halved.deviation, 0.5, 1e-12);
}

TEST(RobustUpdateTest, NothingMeasuredLeavesThePrior) {
    const RobustUpdate update = robustlyUpdated({3, 2}, {}, freedom);
    EXPECT_EQ(update.posterior.mean, 3);
    EXPECT_EQ(update.posterior.deviation, 2);
    EXPECT_TRUE(update.weights.empty());
}

TEST(RobustUpdateTest, MeasurementsThatAgreeCountInFull) {
    const std::vector<Normal> measured{{1.0, 0.3}, {1.2, 0.3}, {0.9, 0.3}};
    const RobustUpdate update = robustlyUpdated({1, 0.5}, measured, freedom);
    for (double weight : update.weights)
        EXPECT_EQ(weight, 1);
    EXPECT_NEAR(update.posterior.mean, updated({1, 0.5}, measured, {1, 1, 1}).mean, 1e-12);
}

// The weight of the t distribution at the place where the mean comes to rest.
TEST(RobustUpdateTest, AnOddOneCountsByTheWeightOfTheTDistribution) {
    std::vector<Normal> measured = times(5, {1, 0.2});
    measured.push_back({3, 0.2});
    const RobustUpdate update = robustlyUpdated({1, 0.5}, measured, freedom);
    const double away = (3 - update.posterior.mean) / 0.2;
    EXPECT_NEAR(update.weights.back(), (freedom + 1) / (freedom + away * away), 1e-9);
    EXPECT_LT(update.weights.back(), 0.06);
    // Weighed in full it would have moved the mean by 2/6 of the distance and a little less for the
    // prior; now by less than a tenth of that.
    EXPECT_LT(update.posterior.mean, 1 + 2.0 / 6 / 10);
}

// One that nothing stands beside may be the odd one, however well it was measured: it moves the
// mean half the way at most, and takes away no more of the spread than a second prior would.
TEST(RobustUpdateTest, ALoneMeasurementGoesHalfTheWayAtMost) {
    const RobustUpdate update = robustlyUpdated({0, 0.5}, {{1, 0.01}}, freedom);
    EXPECT_GT(update.posterior.mean, 0);
    EXPECT_LE(update.posterior.mean, 0.5 + 1e-9);
    EXPECT_GE(update.posterior.deviation, 0.5 / std::sqrt(2.0) - 1e-9);
    // A second one beside it that agrees lets both count.
    const RobustUpdate two = robustlyUpdated({0, 0.5}, {{1, 0.2}, {1, 0.2}}, freedom);
    EXPECT_GT(two.posterior.mean, 0.6);
}

TEST(RobustUpdateTest, TheFartherOffAnOddOneTheLessItMoves) {
    double last = 1;
    for (double place : {3.0, 5.0, 10.0, 100.0}) {
        std::vector<Normal> measured = times(5, {1, 0.2});
        measured.push_back({place, 0.2});
        const double moved = robustlyUpdated({1, 0.5}, measured, freedom).posterior.mean - 1;
        EXPECT_GE(moved, 0);
        EXPECT_LT(moved, last);
        last = moved;
    }
}

TEST(RobustUpdateTest, TheOrderDoesNotMatter) {
    std::vector<Normal> measured{{0.8, 0.2}, {1.1, 0.3}, {2.5, 0.2}, {1.0, 0.1}};
    const Normal first = robustlyUpdated({1, 0.5}, measured, freedom).posterior;
    std::ranges::reverse(measured);
    const Normal second = robustlyUpdated({1, 0.5}, measured, freedom).posterior;
    EXPECT_NEAR(first.mean, second.mean, 1e-9);
    EXPECT_NEAR(first.deviation, second.deviation, 1e-9);
}

} // namespace ladlework::kitchen
