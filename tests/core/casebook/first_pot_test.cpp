#include "casebook/first_pot.h"

#include "kitchen/catalogue.h"

#include <gtest/gtest.h>

namespace ladlework::casebook {

TEST(FirstPotTest, CanBeKeptOnceItHasAName) {
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    ASSERT_TRUE(catalogue);
    kitchen::Pot pot = firstPot();
    EXPECT_FALSE(kitchen::check(pot, *catalogue)) << "it has no name yet";
    pot.name = QStringLiteral("New pot");
    const Outcome good = kitchen::check(pot, *catalogue);
    EXPECT_TRUE(good) << (good ? std::string() : toLine(good.error()).toStdString());
    EXPECT_FALSE(pot.family.isStored());
    EXPECT_FALSE(pot.vessel.isStored());
}

// Common practice, no source: a cup to a quart of water to a pound of bones, poultry 1.5 to 3
// hours.
TEST(FirstPotTest, FollowsTheHouseRules) {
    const kitchen::Pot pot = firstPot();
    quantity::Mass bones;
    for (const kitchen::CutInPot& cut : pot.cuts)
        bones += cut.mass;
    const double pounds = bones.toPounds();
    EXPECT_GE(pot.water, quantity::Volume::fromCups(pounds));
    EXPECT_LE(pot.water, quantity::Volume::fromQuarts(pounds));
    EXPECT_GE(pot.simmer, quantity::Duration::fromHours(1.5));
    EXPECT_LE(pot.simmer, quantity::Duration::fromHours(3));
    EXPECT_GT(firstCutMass(), quantity::Mass());
}

} // namespace ladlework::casebook
