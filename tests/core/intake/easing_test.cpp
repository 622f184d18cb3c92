#include "intake/easing.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using quantity::Volume;

const QDate start(2024, 2, 20); // a week that runs over the leap day

Ladder ladderOf() {
    Ladder ladder;
    for (double ml : {50.0, 100.0, 200.0, 400.0})
        ladder.rungs.append(Volume::fromMillilitres(ml));
    return ladder;
}

Target targetOf(double easeToMl) {
    Target target;
    target.low = Volume::fromMillilitres(400);
    target.high = Volume::fromMillilitres(600);
    target.easeOffFrom = start;
    target.easeEveryDays = 7;
    target.easeTo = Volume::fromMillilitres(easeToMl);
    return target;
}

double askedMl(const Target& target, int offset) {
    const std::optional<Volume> amount = easedAmount(target, ladderOf(), start.addDays(offset));
    return amount ? amount->toMillilitres() : -1;
}

TEST(EasingTest, goesDownARungEverySoManyDaysToNothing) {
    const Target target = targetOf(0);
    EXPECT_EQ(askedMl(target, -1), -1);
    EXPECT_EQ(askedMl(target, 0), 200);
    EXPECT_EQ(askedMl(target, 6), 200);
    EXPECT_EQ(askedMl(target, 7), 100);
    EXPECT_EQ(askedMl(target, 14), 50);
    EXPECT_EQ(askedMl(target, 20), 50);
    EXPECT_EQ(askedMl(target, 21), 0);
    EXPECT_EQ(askedMl(target, 4000), 0);
    EXPECT_EQ(easingEnds(target, ladderOf()), start.addDays(21));
    EXPECT_EQ(start.addDays(21), QDate(2024, 3, 12));
}

TEST(EasingTest, keepsTheLowestRungThatIsAtLeastWhatStays) {
    EXPECT_EQ(askedMl(targetOf(60), 300), 100);
    EXPECT_EQ(easingEnds(targetOf(60), ladderOf()), start.addDays(7));
    EXPECT_EQ(askedMl(targetOf(50), 300), 50);
    EXPECT_EQ(easingEnds(targetOf(50), ladderOf()), start.addDays(14));
    // Nothing to ease: the last rung is the lowest that is enough.
    EXPECT_EQ(askedMl(targetOf(400), 0), 400);
    EXPECT_EQ(askedMl(targetOf(400), 300), 400);
    EXPECT_EQ(easingEnds(targetOf(400), ladderOf()), start);
    EXPECT_EQ(askedMl(targetOf(500), 300), 400) << "a ladder that ends below the target";
}

TEST(EasingTest, neverGoesUpAndEndsWhereItSays) {
    for (double easeTo : {0.0, 1.0, 75.0, 150.0, 400.0}) {
        const Target target = targetOf(easeTo);
        double before = 400;
        for (int offset = 0; offset < 60; ++offset) {
            const double asked = askedMl(target, offset);
            ASSERT_LE(asked, before);
            ASSERT_GE(asked, easeTo);
            const QDate day = start.addDays(offset);
            if (day > easingEnds(target, ladderOf())) {
                ASSERT_EQ(asked, before) << easeTo << " on day " << offset;
            }
            before = asked;
        }
    }
}

TEST(EasingTest, hasNothingWithoutAPlan) {
    Target target = targetOf(0);
    EXPECT_FALSE(easedAmount(target, Ladder(), start).has_value());
    EXPECT_FALSE(easingEnds(target, Ladder()).isValid());
    EXPECT_FALSE(easedAmount(target, ladderOf(), QDate()).has_value());
    target.easeOffFrom = QDate();
    EXPECT_FALSE(easedAmount(target, ladderOf(), start).has_value());
    EXPECT_FALSE(easingEnds(target, ladderOf()).isValid());
}

} // namespace
} // namespace ladlework::intake
