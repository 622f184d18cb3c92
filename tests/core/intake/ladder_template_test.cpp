#include "intake/ladder.h"
#include "intake/ladder_template.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using quantity::Volume;

QList<Volume> millilitres(const QList<double>& amounts) {
    QList<Volume> volumes;
    for (double amount : amounts)
        volumes.append(Volume::fromMillilitres(amount));
    return volumes;
}

LadderTemplate templateOf(const QList<double>& amounts) {
    LadderTemplate made;
    made.name = QStringLiteral("Gentle start");
    made.rungs = millilitres(amounts);
    return made;
}

TEST(LadderTemplateTest, needsANameAndTheRungsOfALadder) {
    LadderTemplate good = templateOf({5, 10, 20});
    EXPECT_TRUE(check(good).has_value());
    good.name = QStringLiteral(" ");
    EXPECT_EQ(check(good).error().place, QStringLiteral("name"));
    EXPECT_EQ(check(templateOf({})).error().place, QStringLiteral("rungs"));
    EXPECT_EQ(check(templateOf({5, 5})).error().place, QStringLiteral("rungs[1]"));
    EXPECT_EQ(check(templateOf({0, 5})).error().place, QStringLiteral("rungs[0]"));
    EXPECT_EQ(check(templateOf({5, 4001})).error().place, QStringLiteral("rungs[1]"));
}

TEST(LadderTemplateTest, goesUpToTheTargetOfTheMember) {
    const LadderTemplate gentle = templateOf({5, 10, 20, 240});
    EXPECT_EQ(rungsUpTo(gentle, Volume::fromMillilitres(100)), millilitres({5, 10, 20, 100}));
    EXPECT_EQ(rungsUpTo(gentle, Volume::fromMillilitres(900)), millilitres({5, 10, 20, 240, 900}));
    EXPECT_EQ(rungsUpTo(gentle, Volume::fromMillilitres(240)), millilitres({5, 10, 20, 240}));
    EXPECT_EQ(rungsUpTo(gentle, Volume::fromMillilitres(3)), millilitres({3}));
    // A cup by another route is the same rung, not one more.
    const Volume cup = Volume::fromFluidOunces(8);
    LadderTemplate cups = templateOf({5});
    cups.rungs.append(Volume::fromCups(1) * (1 - 1e-13));
    EXPECT_EQ(rungsUpTo(cups, cup).size(), 2);
}

TEST(LadderTemplateTest, itsRungsAlwaysMakeALadder) {
    for (double target : {0.05, 5.0, 19.999, 20.0, 4000.0}) {
        Ladder ladder;
        ladder.rungs = rungsUpTo(templateOf({0.05, 5, 20, 100}), Volume::fromMillilitres(target));
        EXPECT_TRUE(check(ladder).has_value()) << target;
        EXPECT_EQ(ladder.rungs.last(), Volume::fromMillilitres(target));
    }
}

} // namespace
} // namespace ladlework::intake
