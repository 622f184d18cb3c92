#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {
constexpr VesselId big{1};
constexpr VesselId small{2};

class FamilyKitchenTest : public ::testing::Test {
protected:
    FamilyKitchenTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Casebook book() const { return {records, catalogue, today}; }
    [[nodiscard]] const kitchen::Pot& pot(PotId id) const {
        return *std::ranges::find(records.pots, id, &kitchen::Pot::id);
    }

    /// What physics alone says that a pot gives in a vessel.
    [[nodiscard]] kitchen::Brewed reckoned(PotId id, VesselId vessel) const {
        kitchen::BrewInput input;
        input.pot = pot(id);
        input.vessel = *book().vessel(vessel);
        input.altitude = records.family.altitude;
        return kitchen::brew(input, catalogue);
    }

    /// A batch as the pot asks for, that gave so much.
    void cook(PotId id, VesselId vessel, std::optional<double> yieldMl) {
        kitchen::Batch batch;
        batch.id = BatchId{records.batches.size() + 1};
        batch.pot = id;
        batch.day = today.addDays(-records.batches.size() - 1);
        batch.cooked = kitchen::asPlanned(pot(id), book().vessel(vessel));
        if (yieldMl)
            batch.yield = ml(*yieldMl);
        records.batches.append(batch);
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

double width(const kitchen::Range& range) {
    return range.high / range.low;
}
} // namespace

TEST_F(FamilyKitchenTest, aVesselLearnsFromWhatWasMeasuredInItAndNoOther) {
    const kitchen::Brewed before = reckoned(shank, big);
    for (int count = 0; count < 6; ++count)
        cook(shank, big, before.stockMl.best - before.evaporatedMl.best * 0.5);
    const Casebook casebook = book();
    const kitchen::Calibration* learnt = casebook.calibration(big);
    ASSERT_NE(learnt, nullptr);
    EXPECT_EQ(learnt->points.size(), 6U);
    // Half as much again was lost as reckoned: the factor lies between the physics and that.
    EXPECT_GT(learnt->posterior.best, 1.1);
    EXPECT_LE(learnt->posterior.best, 1.5 + 1e-9);
    EXPECT_LT(width(learnt->posterior), width(learnt->prior));
    EXPECT_EQ(casebook.calibration(small), nullptr);
    EXPECT_EQ(casebook.calibration(VesselId{99}), nullptr);

    const kitchen::Brewed after = kitchen::brew(casebook.brewInput(pot(shank)), catalogue);
    EXPECT_LT(after.stockMl.best, before.stockMl.best);
    EXPECT_LT(after.stockMl.high - after.stockMl.low, before.stockMl.high - before.stockMl.low);
}

TEST_F(FamilyKitchenTest, theVesselCountsThatTheBatchWasCookedInNotThePots) {
    cook(legs, small, reckoned(legs, small).stockMl.best);
    const Casebook casebook = book();
    EXPECT_EQ(casebook.calibration(big), nullptr);
    ASSERT_NE(casebook.calibration(small), nullptr);
    EXPECT_NEAR(casebook.calibration(small)->posterior.best, 1.0, 0.01);
}

TEST_F(FamilyKitchenTest, whatCannotBeReckonedIsLeftOut) {
    const double stock = reckoned(legs, big).stockMl.best;
    cook(legs, big, std::nullopt); // not measured
    cook(legs, big, stock);
    records.batches.last().pot = PotId{99}; // its pot is gone
    cook(legs, big, stock);
    records.batches.last().cooked.vessel = {}; // cooked in nobody knows what
    cook(legs, big, stock);
    records.batches.last().cooked.vessel = VesselId{99};
    cook(broth, big, stock);
    records.pots.last().cuts.first().cut = QStringLiteral("griffin-wing");
    EXPECT_EQ(book().calibration(big), nullptr);
    EXPECT_FALSE(book().brewInput(pot(legs)).learntEvaporation);
    cook(legs, big, stock);
    ASSERT_NE(book().calibration(big), nullptr);
    EXPECT_EQ(book().calibration(big)->points.size(), 1U);
    EXPECT_TRUE(book().brewInput(pot(legs)).learntEvaporation);
}

TEST_F(FamilyKitchenTest, waterAndSimmerOfTheBatchCountNotThoseOfThePot) {
    cook(shank, big, 0);
    kitchen::AsCooked& cooked = records.batches.first().cooked;
    cooked.water = quantity::Volume::fromQuarts(4);
    cooked.simmer = quantity::Duration::fromHours(4);
    kitchen::BrewInput input;
    input.pot = pot(shank);
    input.pot.water = cooked.water;
    input.pot.simmer = cooked.simmer;
    input.vessel = *book().vessel(big);
    input.altitude = records.family.altitude;
    records.batches.first().yield = ml(kitchen::brew(input, catalogue).stockMl.best);
    ASSERT_NE(book().calibration(big), nullptr);
    EXPECT_NEAR(book().calibration(big)->points.front().factor.best, 1.0, 0.01);
}

TEST_F(FamilyKitchenTest, theLatestThirtyBatchesCount) {
    const double stock = reckoned(legs, big).stockMl.best;
    for (int count = 0; count < 34; ++count)
        cook(legs, big, stock);
    const Casebook casebook = book();
    const kitchen::Calibration* learnt = casebook.calibration(big);
    ASSERT_NE(learnt, nullptr);
    ASSERT_EQ(learnt->points.size(), 30U);
    EXPECT_EQ(learnt->points.front().day, today.addDays(-30));
    EXPECT_EQ(learnt->points.back().day, today.addDays(-1));
}

TEST_F(FamilyKitchenTest, aCopyKnowsTheSame) {
    cook(legs, big, reckoned(legs, big).stockMl.best);
    const auto first = std::make_unique<Casebook>(book());
    const Casebook second = *first;
    ASSERT_NE(first->calibration(big), nullptr);
    EXPECT_EQ(second.calibration(big)->points.size(), 1U);
}

TEST_F(FamilyKitchenTest, pricesReachThePot) {
    EXPECT_FALSE(kitchen::brew(book().brewInput(pot(legs)), catalogue).cost);
    for (const char* item : {"chicken-leg", "onion", "garlic", "peppercorns", "salt"})
        records.prices.insert(QLatin1String(item), 10.0);
    const auto cost = kitchen::brew(book().brewInput(pot(legs)), catalogue).cost;
    ASSERT_TRUE(cost);
    // 3 lb of legs, 220 g onion, 6 g garlic, 2.9 g peppercorns and 6 g salt at 10 a kilogram; a
    // pound is 453.59237 g (NIST SP 811).
    EXPECT_NEAR(*cost, (3 * 453.59237 + 220 + 6 + 2.9 + 6) / 100, 1e-6);
}

TEST_F(FamilyKitchenTest, aPotCoolsInItsOwnContainerThenTheFirstThenAUsualOne) {
    kitchen::Pot asked = pot(legs);
    EXPECT_EQ(book().containerFor(asked), kitchen::usualContainers().front());
    kitchen::Container tray;
    tray.id = ContainerId{7};
    tray.name = QStringLiteral("tray");
    kitchen::Container jar;
    jar.id = ContainerId{8};
    jar.name = QStringLiteral("jar");
    records.containers = {tray, jar};
    EXPECT_EQ(book().containerFor(asked).name, QStringLiteral("tray"));
    asked.coolIn = jar.id;
    EXPECT_EQ(book().containerFor(asked).name, QStringLiteral("jar"));
    asked.coolIn = ContainerId{99}; // gone
    EXPECT_EQ(book().containerFor(asked).name, QStringLiteral("tray"));
}
