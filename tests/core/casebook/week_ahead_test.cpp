#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;
using Place = kitchen::Lot::Place;

namespace {
class WeekAheadTest : public ::testing::Test {
protected:
    WeekAheadTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] week::OutlookInput inputOf(QDate start) const {
        const Casebook book(records, catalogue, today);
        return book.outlookInput(book.plan(start));
    }
    [[nodiscard]] double expectedMl(PotId pot) const {
        const Casebook book(records, catalogue, today);
        return kitchen::brew(book.brewInput(*book.pot(pot)), catalogue).stockMl.best;
    }
    void addBatch(PotId pot, QDate day, std::optional<double> yield) {
        kitchen::Batch batch;
        batch.id = BatchId{records.batches.size() + 1};
        batch.pot = pot;
        batch.day = day;
        if (yield)
            batch.yield = ml(*yield);
        records.batches.append(batch);
    }
    void addLot(Place place, double volume, QDate useBy) {
        kitchen::Lot lot;
        lot.id = LotId{records.lots.size() + 1};
        lot.batch = records.batches.last().id;
        lot.volume = ml(volume);
        lot.place = place;
        lot.stored = monday;
        lot.useBy = useBy;
        records.lots.append(lot);
    }
    static week::Source sourceOf(const week::OutlookInput& input, PotId pot) {
        const auto found = std::ranges::find(input.sources, pot, &week::Source::pot);
        return found == input.sources.end() ? week::Source() : *found;
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};
} // namespace

TEST_F(WeekAheadTest, placementsBecomeSourcesWithTheirYieldAndDays) {
    const week::OutlookInput input = inputOf(monday);
    ASSERT_EQ(input.sources.size(), 2);
    const week::Source beef = sourceOf(input, shank);
    EXPECT_DOUBLE_EQ(beef.volume.toMillilitres(), expectedMl(shank));
    EXPECT_GT(beef.volume.toMillilitres(), 1000);
    EXPECT_EQ(beef.readyDay, 3);
    EXPECT_EQ(beef.lastDay, 3 + records.practice.fridgeDays);
    EXPECT_EQ(beef.place, Place::Fridge);
    EXPECT_EQ(beef.name, QStringLiteral("Beef shank, Thursday"));
    // Ben may not have beef, Leo may have nothing.
    EXPECT_EQ(beef.may, (QList<MemberId>{ana, mia}));
    EXPECT_EQ(sourceOf(input, legs).may, (QList<MemberId>{ana, ben, mia}));
    EXPECT_EQ(input.spill, records.practice.spill);
    EXPECT_EQ(input.fridgeRoom, records.family.fridgeRoom);
    EXPECT_EQ(input.measures, records.family.measures);
}

TEST_F(WeekAheadTest, inTheWeekOfTodayOnlyWhatIsStillToBeDrunkIsAsked) {
    records.entries.append(drank(ana, today, 20));
    const week::OutlookInput input = inputOf(monday);
    const QList<quantity::Volume>& anas = input.demands.first().perDay;
    EXPECT_EQ(anas[0], ml(0));
    EXPECT_EQ(anas[1], ml(0));
    EXPECT_EQ(anas[2], ml(40)); // 60 asked, 20 drunk
    EXPECT_EQ(anas[3], ml(60)); // today so far is no good day
}

TEST_F(WeekAheadTest, aCookingOfThePastIsWhatTheLogLeavesOfIt) {
    intake::IntakeEntry entry = drank(ana, monday, 200);
    entry.pot = legs;
    records.entries.append(entry);
    const week::Source source = sourceOf(inputOf(monday), legs);
    EXPECT_NEAR(source.volume.toMillilitres(), expectedMl(legs) - 200, 1e-6);
    addBatch(legs, monday, 2000);
    EXPECT_NEAR(sourceOf(inputOf(monday), legs).volume.toMillilitres(), 1800, 1e-6);
}

TEST_F(WeekAheadTest, twoCookingsOfOnePotAndDayHaveABatchEach) {
    records.weeks.first().placements = {{monday, legs, QTime(9, 0)}, {monday, legs, QTime(17, 0)}};
    addBatch(legs, monday, 2000);
    addBatch(legs, monday, 1500);
    intake::IntakeEntry entry = drank(ana, monday, 200);
    entry.pot = legs;
    records.entries.append(entry);
    const week::OutlookInput both = inputOf(monday);
    ASSERT_EQ(both.sources.size(), 2);
    EXPECT_NEAR(both.sources[0].volume.toMillilitres(), 1800, 1e-6);
    EXPECT_NEAR(both.sources[1].volume.toMillilitres(), 1500, 1e-6) << "drunk once, not twice";
    // The lots of the second batch stand in for the second cooking only.
    addLot(Place::Fridge, 1400, monday.addDays(3));
    const week::OutlookInput stored = inputOf(monday);
    ASSERT_EQ(stored.sources.size(), 2);
    EXPECT_EQ(stored.sources[0].lot, LotId{1});
    EXPECT_NEAR(stored.sources[1].volume.toMillilitres(), 1800, 1e-6);
}

TEST_F(WeekAheadTest, storedLotsStandInForTheirCooking) {
    addBatch(legs, monday, 2000);
    addLot(Place::Fridge, 900, monday.addDays(3));
    addLot(Place::Freezer, 700, monday.addDays(60));
    const week::OutlookInput input = inputOf(monday);
    EXPECT_FALSE(sourceOf(input, legs).pot.isStored());
    ASSERT_EQ(input.sources.size(), 3);
    EXPECT_EQ(input.sources[0].lot, LotId{1});
    EXPECT_EQ(input.sources[0].readyDay, 2); // today is Wednesday
    EXPECT_EQ(input.sources[0].lastDay, 3);
    EXPECT_EQ(input.sources[1].place, Place::Freezer);
    EXPECT_EQ(input.sources[1].readyDay, 3); // it thaws overnight
    EXPECT_EQ(input.sources[1].lastDay, 6);
}

TEST_F(WeekAheadTest, fridgeStockPastItsUseByIsNoStock) {
    addBatch(legs, monday, 2000);
    addLot(Place::Fridge, 900, today.addDays(-1));
    EXPECT_EQ(inputOf(monday).sources.size(), 1); // the shank of Thursday
}

TEST_F(WeekAheadTest, aPotOfLastSundayFeedsThisWeek) {
    week::WeekPlan before;
    before.start = monday.addDays(-7);
    before.placements = {{monday.addDays(-1), legs, {}}, {monday.addDays(-6), legs, {}}};
    records.weeks.append(before);
    records.weeks.first().placements.clear();
    const week::OutlookInput input = inputOf(monday);
    ASSERT_EQ(input.sources.size(), 1);
    EXPECT_EQ(input.sources.first().readyDay, 0);
    EXPECT_EQ(input.sources.first().lastDay, 2); // Sunday and three days: Wednesday
}

TEST_F(WeekAheadTest, nextWeekStartsWithWhatThisWeekLeavesOver) {
    const QDate next = monday.addDays(7);
    const week::OutlookInput input = inputOf(next);
    ASSERT_EQ(input.sources.size(), 0); // Thursday's shank is good until Sunday
    records.weeks.first().placements.append({monday.addDays(6), shank, {}});
    const week::OutlookInput more = inputOf(next);
    ASSERT_EQ(more.sources.size(), 1);
    EXPECT_EQ(more.sources.first().readyDay, 0);
    EXPECT_EQ(more.sources.first().lastDay, 2);
    const week::Outlook thisWeek = week::outlook(inputOf(monday));
    double drunk = 0;
    for (const week::Serving& serving : thisWeek.servings)
        drunk += serving.source == 2 ? serving.volume.toMillilitres() : 0;
    EXPECT_NEAR(more.sources.first().volume.toMillilitres(), expectedMl(shank) - drunk, 1e-6);
    EXPECT_EQ(more.demands.first().perDay.first(), ml(240));
}

TEST_F(WeekAheadTest, frozenStockIsFollowedIntoLaterWeeks) {
    records.weeks.clear();
    addBatch(legs, monday.addDays(-10), {});
    addLot(Place::Freezer, 5000, monday.addDays(60));
    const week::OutlookInput input = inputOf(monday.addDays(7));
    ASSERT_EQ(input.sources.size(), 1);
    EXPECT_EQ(input.sources.first().readyDay, 0);
    EXPECT_EQ(input.sources.first().lastDay, 6);
    EXPECT_LT(input.sources.first().volume, ml(5000));
}

TEST_F(WeekAheadTest, aWeekThatIsOverIsShownAsPlanned) {
    records.weeks.first().start = monday.addDays(-7);
    records.weeks.first().placements = {{monday.addDays(-7), legs, {}}};
    const week::OutlookInput input = inputOf(monday.addDays(-7));
    ASSERT_EQ(input.sources.size(), 1);
    EXPECT_DOUBLE_EQ(input.sources.first().volume.toMillilitres(), expectedMl(legs));
    EXPECT_EQ(input.sources.first().readyDay, 0);
    EXPECT_EQ(input.demands[2].perDay[4], ml(30)); // Mia on 30 October, the day she was stopped
    EXPECT_EQ(input.demands[2].perDay[5], ml(0));
}

TEST_F(WeekAheadTest, aPotThatCannotBeReckonedPromisesNothing) {
    records.pots[0].cuts.append({QStringLiteral("unheard-of"), quantity::Mass::fromGrams(1), true});
    records.weeks.first().placements.first().day = monday.addDays(5);
    EXPECT_EQ(sourceOf(inputOf(monday), legs).volume, ml(0));
}

TEST_F(WeekAheadTest, aPotThatIsGoneOrUnknownIsPassedOver) {
    records.weeks.first().placements.append({monday.addDays(4), PotId{77}, {}});
    EXPECT_EQ(inputOf(monday).sources.size(), 2);
}

TEST_F(WeekAheadTest, thePlanOfAWeekWithoutOneIsEmpty) {
    const Casebook book(records, catalogue, today);
    EXPECT_EQ(book.plan(monday).placements.size(), 2);
    EXPECT_TRUE(book.plan(monday.addDays(70)).placements.isEmpty());
    EXPECT_EQ(book.plan(monday.addDays(70)).start, monday.addDays(70));
}
