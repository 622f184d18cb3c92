#include "kitchen/batch.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>

namespace ladlework::kitchen {

namespace {
const QDate today(2026, 3, 10);

Batch batch() {
    Batch made;
    made.day = today;
    made.cooked.water = quantity::Volume::fromLitres(2.6);
    made.cooked.simmer = quantity::Duration::fromHours(2.5);
    made.yield = quantity::Volume::fromLitres(2.4);
    return made;
}

Lot lot() {
    Lot made;
    made.volume = quantity::Volume::fromLitres(1);
    made.stored = today;
    made.useBy = today.addDays(3);
    return made;
}
} // namespace

TEST(BatchTest, AcceptsAnOrdinaryBatch) {
    EXPECT_TRUE(check(batch(), today));
    Batch unmeasured = batch();
    unmeasured.yield.reset();
    EXPECT_TRUE(check(unmeasured, today));
}

TEST(BatchTest, RefusesYieldsThatNoPotGives) {
    for (double litres : {0.0, -1.0, 100.1, std::numeric_limits<double>::quiet_NaN()}) {
        Batch bad = batch();
        bad.yield = quantity::Volume::fromLitres(litres);
        const Outcome outcome = check(bad, today);
        ASSERT_FALSE(outcome) << litres;
        EXPECT_EQ(outcome.error().place, QStringLiteral("yield"));
    }
    Batch most = batch();
    most.yield = quantity::Volume::fromLitres(100);
    EXPECT_TRUE(check(most, today));
}

TEST(BatchTest, RefusesWaterAndTimesThatNoCookingHas) {
    for (double litres : {0.0, -1.0, 100.1, std::numeric_limits<double>::quiet_NaN()}) {
        Batch bad = batch();
        bad.cooked.water = quantity::Volume::fromLitres(litres);
        ASSERT_FALSE(check(bad, today)) << litres;
        EXPECT_EQ(check(bad, today).error().place, QStringLiteral("cooked.water"));
    }
    for (double hours : {0.0, -1.0, 168.1, std::numeric_limits<double>::quiet_NaN()}) {
        Batch bad = batch();
        bad.cooked.simmer = quantity::Duration::fromHours(hours);
        ASSERT_FALSE(check(bad, today)) << hours;
        EXPECT_EQ(check(bad, today).error().place, QStringLiteral("cooked.simmer"));
    }
    Batch longest = batch();
    longest.cooked.simmer = quantity::Duration::fromHours(168);
    EXPECT_TRUE(check(longest, today));
}

TEST(BatchTest, IsPlannedAsThePotAsks) {
    Pot pot;
    pot.water = quantity::Volume::fromLitres(3);
    pot.simmer = quantity::Duration::fromHours(2);
    Vessel vessel;
    vessel.id = VesselId{4};
    vessel.lid = Vessel::Lid::On;
    const AsCooked planned = asPlanned(pot, &vessel);
    EXPECT_EQ(planned, (AsCooked{VesselId{4}, Vessel::Lid::On, pot.water, pot.simmer}));
    const AsCooked unknown = asPlanned(pot, nullptr);
    EXPECT_EQ(unknown, (AsCooked{VesselId{}, Vessel::Lid::Ajar, pot.water, pot.simmer}));
}

TEST(BatchTest, RefusesADayThatIsMissingOrToCome) {
    for (const QDate& day : {QDate(), today.addDays(1)}) {
        Batch bad = batch();
        bad.day = day;
        const Outcome outcome = check(bad, today);
        ASSERT_FALSE(outcome);
        EXPECT_EQ(outcome.error().place, QStringLiteral("day"));
    }
}

TEST(BatchTest, ChecksLots) {
    EXPECT_TRUE(check(lot()));
    Lot sameDay = lot();
    sameDay.useBy = sameDay.stored;
    EXPECT_TRUE(check(sameDay));
    Lot early = lot();
    early.useBy = early.stored.addDays(-1);
    ASSERT_FALSE(check(early));
    EXPECT_EQ(check(early).error().place, QStringLiteral("useBy"));
    Lot empty = lot();
    empty.volume = quantity::Volume();
    ASSERT_FALSE(check(empty));
    EXPECT_EQ(check(empty).error().place, QStringLiteral("volume"));
    Lot undated = lot();
    undated.stored = QDate();
    ASSERT_FALSE(check(undated));
    EXPECT_EQ(check(undated).error().place, QStringLiteral("stored"));
}

TEST(BatchTest, StockInTheRefrigeratorKeepsFourDaysAtMost) {
    // FoodSafety.gov Cold Storage Chart, soups and stews: 3 to 4 days.
    Lot last = lot();
    last.useBy = last.stored.addDays(4);
    EXPECT_TRUE(check(last));
    Lot late = lot();
    late.useBy = late.stored.addDays(5);
    ASSERT_FALSE(check(late));
    EXPECT_EQ(check(late).error().place, QStringLiteral("useBy"));
    late.place = Lot::Place::Freezer;
    EXPECT_TRUE(check(late)) << "the freezer keeps it longer";
}

TEST(BatchTest, PlacesHaveWords) {
    for (Lot::Place place : {Lot::Place::Fridge, Lot::Place::Freezer})
        EXPECT_EQ(lotPlaceFromId(lotPlaceId(place)), place);
    EXPECT_EQ(lotPlaceId(Lot::Place::Freezer), QStringLiteral("freezer"));
    EXPECT_FALSE(lotPlaceFromId(u"cellar"));
}

} // namespace ladlework::kitchen
