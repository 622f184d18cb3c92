#include "intake/ladder.h"
#include "intake/ladder_template.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using quantity::MeasureSystem;
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
    const auto upTo = [&gentle](double target) {
        return rungsUpTo(gentle, Volume::fromMillilitres(target), MeasureSystem::Metric);
    };
    EXPECT_EQ(upTo(50), millilitres({5, 10, 20, 50})) << "2.5 times is no leap";
    EXPECT_EQ(upTo(3), millilitres({3}));
    // A cup by another route is the same rung, not one more.
    const Volume cup = Volume::fromFluidOunces(8);
    LadderTemplate cups = templateOf({5});
    cups.rungs.append(Volume::fromCups(1) * (1 - 1e-13));
    EXPECT_EQ(rungsUpTo(cups, cup, MeasureSystem::UsCustomary).last(), cup);
    EXPECT_LT(rungsUpTo(cups, cup, MeasureSystem::UsCustomary).rbegin()[1], cup * 0.9);
}

// The measures of a metric kitchen: 30, 60, 100 mL and 100 mL more each.
TEST(LadderTemplateTest, aLeapToTheTargetIsFilled) {
    const LadderTemplate gentle = templateOf({5, 10, 20, 240});
    const auto upTo = [&gentle](double target) {
        return rungsUpTo(gentle, Volume::fromMillilitres(target), MeasureSystem::Metric);
    };
    EXPECT_EQ(upTo(100), millilitres({5, 10, 20, 30, 60, 100}));
    EXPECT_EQ(upTo(240 + 230), millilitres({5, 10, 20, 240, 470})) << "a cup more is no leap";
    for (double target : {52.0, 100.0, 239.0, 500.0, 900.0, 2000.0}) {
        const QList<Volume> rungs = upTo(target);
        EXPECT_EQ(rungs.last(), Volume::fromMillilitres(target));
        for (qsizetype i = 1; i < rungs.size(); ++i) {
            // The step from 20 to 240 mL is the practice's own.
            const bool own = rungs[i] == Volume::fromMillilitres(240);
            EXPECT_TRUE(own || !isLeap(rungs[i - 1], rungs[i], MeasureSystem::Metric))
                << target << ' ' << rungs[i].toMillilitres();
        }
    }
    // Drops alone do not lead to half a litre either.
    EXPECT_GT(
        rungsUpTo(templateOf({0.05}), Volume::fromMillilitres(500), MeasureSystem::Metric).size(),
        5);
}

TEST(LadderTemplateTest, itsRungsAlwaysMakeALadder) {
    for (double target : {0.05, 5.0, 19.999, 20.0, 4000.0}) {
        Ladder ladder;
        ladder.rungs = rungsUpTo(templateOf({0.05, 5, 20, 100}), Volume::fromMillilitres(target),
                                 MeasureSystem::Metric);
        EXPECT_TRUE(check(ladder).has_value()) << target;
        EXPECT_EQ(ladder.rungs.last(), Volume::fromMillilitres(target));
    }
}

} // namespace
} // namespace ladlework::intake
