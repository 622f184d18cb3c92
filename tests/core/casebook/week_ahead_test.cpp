#include "casebook/casebook.h"
#include "casebook/planned_week.h"
#include "week/week_solver.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using casebook::Settled;
using casebook::WeekAhead;
using namespace hand_made;
using Place = kitchen::Lot::Place;

namespace {
// Today is the Wednesday of the week of `monday`.
class WeekAheadTest : public ::testing::Test {
protected:
    WeekAheadTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Casebook book() const { return {records, catalogue, today}; }
    [[nodiscard]] WeekAhead weekOf(QDate start, Settled settled = Settled::All) const {
        const Casebook casebook = book();
        return casebook.weekAhead(casebook.plan(start), settled);
    }
    [[nodiscard]] double expectedMl(PotId pot) const {
        const Casebook casebook = book();
        return kitchen::brew(casebook.brewInput(*casebook.pot(pot)), catalogue).stockMl.best;
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

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};
} // namespace

TEST_F(WeekAheadTest, beginsTodayInTheWeekOfToday) {
    const WeekAhead week = weekOf(monday);
    EXPECT_EQ(week.start, today);
    EXPECT_EQ(week.problem.days, 5);
    EXPECT_EQ(week.problem.spill, records.practice.spill);
    EXPECT_EQ(week.problem.fridgeRoom, records.family.fridgeRoom);
    EXPECT_TRUE(week::check(week.problem).has_value());
}

TEST_F(WeekAheadTest, aCookingToComeIsSettledWithItsYield) {
    const WeekAhead week = weekOf(monday);
    ASSERT_EQ(week.problem.settled.size(), 1U);
    EXPECT_EQ(week.problem.settled[0].day, 1); // Thursday
    EXPECT_EQ(week.pots[week.problem.settled[0].pot], shank);
    EXPECT_EQ(week.placements[0], 1);
    const week::PotChoice& beef = week.problem.pots[week.problem.settled[0].pot];
    EXPECT_DOUBLE_EQ(beef.stock.toMillilitres(), expectedMl(shank));
    EXPECT_EQ(beef.name, QStringLiteral("Beef shank"));
    EXPECT_EQ(beef.animal, catalogue.animal(QStringLiteral("beef"))->name);
    EXPECT_GT(beef.total, beef.handsOn);
    // Ben may not have beef, Leo may have nothing.
    ASSERT_EQ(week.members, (std::vector<MemberId>{ana, ben, mia, leo}));
    EXPECT_EQ(beef.may, (std::vector<bool>{true, false, true, false}));
    // Too young is never a way out.
    EXPECT_FALSE(week.problem.couldTry[3][week.problem.settled[0].pot]);
}

TEST_F(WeekAheadTest, whatIsStillToBeDrunkIsAskedFromTodayOn) {
    records.entries.append(drank(ana, today, 20));
    const std::vector<quantity::Volume> anas = weekOf(monday).problem.drinkers[0].perDay;
    EXPECT_EQ(anas[0], ml(40)); // 60 asked, 20 drunk
    EXPECT_EQ(anas[1], ml(60)); // today so far is no good day
}

TEST_F(WeekAheadTest, aCookingOfThePastIsALotOfWhatTheLogLeaves) {
    intake::IntakeEntry entry = drank(ana, monday, 200);
    entry.pot = legs;
    records.entries.append(entry);
    WeekAhead week = weekOf(monday);
    ASSERT_EQ(week.problem.lots.size(), 1U);
    EXPECT_NEAR(week.problem.lots[0].volume.toMillilitres(), expectedMl(legs) - 200, 1e-6);
    EXPECT_EQ(week.problem.lots[0].useByDay, 1); // Monday and three days: Thursday
    EXPECT_FALSE(week.lots[0].isStored());
    EXPECT_EQ(week.problem.lots[0].may, (std::vector<bool>{true, true, true, false}));
    addBatch(legs, monday, 2000);
    week = weekOf(monday);
    EXPECT_NEAR(week.problem.lots[0].volume.toMillilitres(), 1800, 1e-6);
}

TEST_F(WeekAheadTest, twoCookingsOfOnePotAndDayHaveABatchEach) {
    records.weeks.first().placements = {{monday, legs, QTime(9, 0)}, {monday, legs, QTime(17, 0)}};
    addBatch(legs, monday, 2000);
    addBatch(legs, monday, 1500);
    intake::IntakeEntry entry = drank(ana, monday, 200);
    entry.pot = legs;
    records.entries.append(entry);
    WeekAhead week = weekOf(monday);
    ASSERT_EQ(week.problem.lots.size(), 2U);
    EXPECT_NEAR(week.problem.lots[0].volume.toMillilitres(), 1800, 1e-6);
    EXPECT_NEAR(week.problem.lots[1].volume.toMillilitres(), 1500, 1e-6) << "drunk once, not twice";
    // The lots of the second batch stand in for the second cooking only.
    addLot(Place::Fridge, 1400, monday.addDays(3));
    week = weekOf(monday);
    ASSERT_EQ(week.problem.lots.size(), 2U);
    EXPECT_EQ(week.lots[0], LotId{1});
    EXPECT_NEAR(week.problem.lots[1].volume.toMillilitres(), 1800, 1e-6);
}

TEST_F(WeekAheadTest, storedLotsStandInForTheirCooking) {
    addBatch(legs, monday, 2000);
    addLot(Place::Fridge, 900, monday.addDays(3));
    addLot(Place::Freezer, 700, monday.addDays(60));
    const WeekAhead week = weekOf(monday);
    ASSERT_EQ(week.problem.lots.size(), 2U);
    EXPECT_EQ(week.lots[0], LotId{1});
    EXPECT_EQ(week.problem.lots[0].useByDay, 1); // Thursday
    EXPECT_EQ(week.problem.lots[1].place, Place::Freezer);
}

TEST_F(WeekAheadTest, aCookingOfTodayWithItsJarsIsNotCountedTwice) {
    records.weeks.first().placements = {{today, legs, {}}};
    addBatch(legs, today, 2000);
    addLot(Place::Fridge, 1900, today.addDays(3));
    const WeekAhead week = weekOf(monday);
    EXPECT_TRUE(week.problem.settled.empty());
    ASSERT_EQ(week.problem.lots.size(), 1U);
    EXPECT_EQ(week.problem.lots[0].volume, ml(1900));
}

TEST_F(WeekAheadTest, fridgeStockPastItsUseByIsNoStock) {
    records.weeks.clear();
    addBatch(legs, monday, 2000);
    addLot(Place::Fridge, 900, today.addDays(-1));
    EXPECT_TRUE(weekOf(monday).problem.lots.empty());
}

TEST_F(WeekAheadTest, aPotOfLastSundayFeedsThisWeek) {
    week::WeekPlan before;
    before.start = monday.addDays(-7);
    before.placements = {{monday.addDays(-1), legs, {}}, {monday.addDays(-6), legs, {}}};
    records.weeks.append(before);
    records.weeks.first().placements.clear();
    const WeekAhead week = weekOf(monday);
    ASSERT_EQ(week.problem.lots.size(), 1U);
    EXPECT_EQ(week.problem.lots[0].useByDay, 0); // Sunday and three days: today
}

TEST_F(WeekAheadTest, nextWeekStartsWithWhatThisWeekLeavesOver) {
    const QDate next = monday.addDays(7);
    // Thursday's shank is good until Sunday; what is left of it is frozen where there is room.
    ASSERT_EQ(weekOf(next).problem.lots.size(), 1U);
    EXPECT_EQ(weekOf(next).problem.lots[0].place, Place::Freezer);
    records.family.freezerRoom = ml(0);
    EXPECT_TRUE(weekOf(next).problem.lots.empty());
    records.weeks.first().placements.append({monday.addDays(6), shank, {}});
    const WeekAhead thisWeek = weekOf(monday);
    const week::WeekSolution solution = week::serveSettled(thisWeek.problem);
    double drunk = 0;
    for (const week::PlannedServing& serving : solution.servings)
        if (serving.from.kind == week::StockSource::Kind::Cooking &&
            solution.cookings[serving.from.index].day == 4)
            drunk += serving.volume.toMillilitres();
    const WeekAhead week = weekOf(next);
    ASSERT_EQ(week.problem.lots.size(), 1U);
    EXPECT_EQ(week.problem.lots[0].useByDay, 2);
    EXPECT_NEAR(week.problem.lots[0].volume.toMillilitres(), expectedMl(shank) - drunk, 0.01);
    EXPECT_EQ(week.problem.drinkers[0].perDay[0], ml(240));
}

TEST_F(WeekAheadTest, frozenStockIsFollowedIntoLaterWeeks) {
    records.weeks.clear();
    addBatch(legs, monday.addDays(-10), {});
    addLot(Place::Freezer, 5000, monday.addDays(60));
    const WeekAhead week = weekOf(monday.addDays(7));
    ASSERT_EQ(week.problem.lots.size(), 1U);
    EXPECT_EQ(week.problem.lots[0].place, Place::Freezer);
    EXPECT_EQ(week.lots[0], LotId{1});
    EXPECT_LT(week.problem.lots[0].volume, ml(5000));
}

TEST_F(WeekAheadTest, aWeekThatIsOverIsShownAsPlanned) {
    records.weeks.first().start = monday.addDays(-7);
    records.weeks.first().placements = {{monday.addDays(-7), legs, {}}};
    const WeekAhead week = weekOf(monday.addDays(-7));
    EXPECT_EQ(week.problem.days, 7);
    ASSERT_EQ(week.problem.settled.size(), 1U);
    EXPECT_EQ(week.problem.settled[0].day, 0);
    EXPECT_FALSE(week.problem.settled[0].stock.has_value());
    EXPECT_EQ(week.problem.drinkers[2].perDay[4], ml(30)); // Mia on the day she was stopped
    EXPECT_EQ(week.problem.drinkers[2].perDay[5], ml(0));
}

TEST_F(WeekAheadTest, aPotThatCannotBeReckonedPromisesNothingAndIsNotOffered) {
    records.pots[0].cuts.append({QStringLiteral("unheard-of"), quantity::Mass::fromGrams(1), true});
    records.weeks.first().placements.first().day = monday.addDays(5);
    const WeekAhead shown = weekOf(monday);
    const auto place = std::ranges::find(shown.pots, legs) - shown.pots.begin();
    EXPECT_EQ(shown.problem.pots[static_cast<std::size_t>(place)].stock, ml(0));
    const WeekAhead offered = weekOf(monday, Settled::Locked);
    EXPECT_EQ(std::ranges::count(offered.pots, legs), 0);
    ASSERT_FALSE(offered.unfit.isEmpty());
    EXPECT_EQ(offered.unfit.first().pot, legs);
    EXPECT_FALSE(offered.unfit.first().why.isEmpty());
}

TEST_F(WeekAheadTest, aPotThatIsGoneIsPassedOver) {
    records.weeks.first().placements.append({monday.addDays(4), PotId{77}, {}});
    EXPECT_EQ(weekOf(monday).problem.settled.size(), 1U);
}

TEST_F(WeekAheadTest, whatIsLockedStaysAndTheRestIsOffered) {
    records.usualHours = {{4, {QTime(9, 0), quantity::Duration::fromHours(8), 2}},
                          {6, {QTime(10, 0), quantity::Duration::fromHours(8), 1}}};
    WeekAhead week = weekOf(monday, Settled::Locked);
    EXPECT_TRUE(week.problem.settled.empty());
    ASSERT_EQ(week.problem.freeTimes.size(), 2U);
    EXPECT_EQ(week.problem.freeTimes[0].day, 1);
    EXPECT_EQ(week.problem.freeTimes[1].day, 3);
    records.weeks.first().lockedDays = {monday.addDays(3)};
    week = weekOf(monday, Settled::Locked);
    ASSERT_EQ(week.problem.settled.size(), 1U);
    ASSERT_EQ(week.problem.freeTimes.size(), 1U);
    EXPECT_EQ(week.problem.freeTimes[0].day, 3);
    // A day of its own: no cooking on Saturday.
    records.weeks.first().hours = {{monday.addDays(5), {}}};
    EXPECT_TRUE(weekOf(monday, Settled::Locked).problem.freeTimes.empty());
}

TEST_F(WeekAheadTest, anAnimalThatIsNewToSomeoneIsNotPlannedForThem) {
    const auto mayHave = [this](MemberId member, PotId pot) {
        const WeekAhead week = weekOf(monday, Settled::Locked);
        const auto drinker = std::ranges::find(week.members, member) - week.members.begin();
        const auto place = std::ranges::find(week.pots, pot) - week.pots.begin();
        return bool(week.problem.pots[static_cast<std::size_t>(place)]
                        .may[static_cast<std::size_t>(drinker)]);
    };
    for (intake::IntakeEntry& entry : records.entries)
        entry.pot = {};
    EXPECT_TRUE(mayHave(ana, legs)) << "nothing is known of her yet";
    EXPECT_TRUE(mayHave(ana, shank));
    intake::IntakeEntry entry = drank(ana, monday, 100);
    entry.pot = legs;
    records.entries.append(entry);
    EXPECT_TRUE(mayHave(ana, legs));
    EXPECT_FALSE(mayHave(ana, shank)) << "beef would be new";
    EXPECT_TRUE(mayHave(mia, shank)) << "of Mia nothing is known";
    people::ToleranceNote fine;
    fine.member = ana;
    fine.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
    fine.verdict = people::ToleranceNote::Verdict::Fine;
    fine.noted = monday;
    records.tolerances.append(fine);
    EXPECT_TRUE(mayHave(ana, shank));
}

TEST_F(WeekAheadTest, aSolutionBecomesAPlanWithStartTimes) {
    records.usualHours = {{3, {QTime(9, 0), quantity::Duration::fromHours(8), 1}},
                          {4, {QTime(9, 0), quantity::Duration::fromHours(8), 1}},
                          {6, {QTime(10, 0), quantity::Duration::fromHours(8), 1}}};
    records.practice.spill = 0;
    const Casebook casebook = book();
    const week::WeekPlan plan = casebook.plan(monday);
    const WeekAhead week = casebook.weekAhead(plan, Settled::Locked);
    const week::WeekSolution solution = week::solveWeek(week.problem);
    EXPECT_EQ(solution.status, week::WeekSolution::Status::Optimal);
    const week::WeekPlan planned = casebook::plannedWeek(casebook, plan, week, solution);
    // Monday's pot is past and stays; Thursday's was not locked.
    ASSERT_FALSE(planned.placements.isEmpty());
    EXPECT_EQ(planned.placements.first().day, monday);
    EXPECT_EQ(planned.placements.size(), 1 + static_cast<qsizetype>(solution.cookings.size()));
    for (const week::Placement& placement : planned.placements.sliced(1))
        EXPECT_EQ(placement.start, placement.day.dayOfWeek() == 6 ? QTime(10, 0) : QTime(9, 0));
    EXPECT_TRUE(week::check(planned).has_value());
}

TEST_F(WeekAheadTest, thePlanOfAWeekWithoutOneIsEmpty) {
    EXPECT_EQ(book().plan(monday).placements.size(), 2);
    EXPECT_TRUE(book().plan(monday.addDays(70)).placements.isEmpty());
    EXPECT_EQ(book().plan(monday.addDays(70)).start, monday.addDays(70));
}
