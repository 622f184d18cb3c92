#include "casebook/member_intake.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {

class MemberIntakeTest : public ::testing::Test {
protected:
    MemberIntakeTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        records.entries.clear();
        records.reactions.clear();
    }
    void drink(MemberId member, QDate day, double millilitres, PotId pot, LotId lot = {}) {
        intake::IntakeEntry entry = drank(member, day, millilitres);
        entry.pot = pot;
        entry.lot = lot;
        records.entries.append(entry);
    }
    [[nodiscard]] Casebook book() const { return {records, catalogue, today}; }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

} // namespace

TEST_F(MemberIntakeTest, TotalsAreThePotsFiguresTimesWhatWasDrunk) {
    drink(ana, QDate(2026, 11, 2), 250, legs);
    drink(ana, QDate(2026, 11, 3), 150, legs);
    drink(ben, QDate(2026, 11, 3), 900, legs); // somebody else's
    const auto totals = casebook::memberTotals(book(), ana, QDate(2026, 11, 2), QDate(2026, 11, 3));
    ASSERT_TRUE(totals);
    EXPECT_EQ(totals->days, 2);
    EXPECT_NEAR(totals->stock.toMillilitres(), 200, 1e-9);
    // 200 mL a day of what the pot itself says of 100 mL.
    const Casebook told = book();
    const kitchen::Brewed brewed = kitchen::brew(told.brewInput(*told.pot(legs)), told.catalogue());
    EXPECT_NEAR(totals->sodiumMg.best, 2 * brewed.sodiumMgPer100Ml.best, 1e-9);
    EXPECT_NEAR(totals->proteinG.high, 2 * brewed.proteinGPer100Ml.high, 1e-9);
    EXPECT_EQ(totals->ofUnknownPot, quantity::Volume{});
}

TEST_F(MemberIntakeTest, AContainerKnowsItsPotAndADayBeforeIsLeftOut) {
    kitchen::Batch batch;
    batch.id = BatchId{5};
    batch.pot = legs;
    kitchen::Lot lot;
    lot.id = LotId{6};
    lot.batch = batch.id;
    records.batches = {batch};
    records.lots = {lot};
    drink(ana, QDate(2026, 11, 1), 500, legs);
    drink(ana, QDate(2026, 11, 2), 100, {}, lot.id);
    drink(ana, QDate(2026, 11, 2), 100, {});
    const auto totals = casebook::memberTotals(book(), ana, QDate(2026, 11, 2), QDate(2026, 11, 3));
    ASSERT_TRUE(totals);
    EXPECT_EQ(totals->days, 1) << "only days with an entry";
    EXPECT_NEAR(totals->stock.toMillilitres(), 200, 1e-9);
    EXPECT_NEAR(totals->ofUnknownPot.toMillilitres(), 100, 1e-9);
    EXPECT_GT(totals->sodiumMg.best, 0);
    EXPECT_FALSE(casebook::memberTotals(book(), ben, QDate(2026, 11, 2), QDate(2026, 11, 3)));
}

TEST_F(MemberIntakeTest, PatternsAreThoseOfTheMemberAlone) {
    for (int day = 1; day <= 4; ++day)
        drink(ana, QDate(2026, 10, day), 100, day % 2 == 0 ? legs : shank);
    intake::Reaction reaction;
    reaction.member = ana;
    reaction.day = QDate(2026, 10, 2);
    reaction.symptom = QStringLiteral("bloating");
    reaction.strength = 5;
    records.reactions = {reaction};
    reaction.member = ben;
    reaction.day = QDate(2026, 10, 1);
    records.reactions.append(reaction);
    const auto patterns = casebook::memberPatterns(book(), ana, {0, 3});
    const Casebook told = book();
    const kitchen::Pot* pot = told.pot(legs);
    const auto found =
        std::ranges::find(patterns, pot->cuts.first().cut, &intake::Pattern::subject);
    ASSERT_NE(found, patterns.end());
    // Two days with the legs, one of them felt; two without, none felt: counted by hand.
    EXPECT_EQ(found->exposedReacted, 1);
    EXPECT_EQ(found->exposedFine, 1);
    EXPECT_EQ(found->otherReacted, 0);
    EXPECT_EQ(found->otherFine, 2);
}
