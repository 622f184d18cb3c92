#include "casebook/cookings_to_confirm.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {
class CookingsToConfirmTest : public ::testing::Test {
protected:
    CookingsToConfirmTest()
        : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] QList<week::Placement> open() const {
        return casebook::cookingsToConfirm(casebook::Casebook(records, catalogue, today));
    }
    void cooked(PotId pot, QDate day) {
        kitchen::Batch batch;
        batch.id = BatchId{records.batches.size() + 1};
        batch.pot = pot;
        batch.day = day;
        records.batches.append(batch);
    }
    QList<week::Placement>& placements() { return records.weeks.first().placements; }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};
} // namespace

TEST_F(CookingsToConfirmTest, aPlannedCookingIsOpenUntilItsBatchIsRecorded) {
    // Of the legs on Monday and the shank on Thursday only Monday lies before today, Wednesday.
    ASSERT_EQ(open().size(), 1);
    EXPECT_EQ(open().first().pot, legs);
    cooked(shank, monday);
    cooked(legs, monday.addDays(1));
    EXPECT_EQ(open().size(), 1) << "another pot, another day";
    cooked(legs, monday);
    EXPECT_TRUE(open().isEmpty());
}

TEST_F(CookingsToConfirmTest, eachCookingOfADayWantsItsOwnBatch) {
    placements() = {{monday, legs, QTime(17, 0)}, {monday, legs, QTime(9, 0)}};
    ASSERT_EQ(open().size(), 2);
    EXPECT_EQ(open().first().start, QTime(9, 0)) << "by start";
    cooked(legs, monday);
    ASSERT_EQ(open().size(), 1);
    EXPECT_EQ(open().first().start, QTime(17, 0)) << "the batch is of the first cooking";
    cooked(legs, monday);
    EXPECT_TRUE(open().isEmpty());
}

TEST_F(CookingsToConfirmTest, sevenDaysBackButNotToday) {
    placements() = {{today, legs, {}},
                    {today.addDays(-1), legs, {}},
                    {today.addDays(-7), legs, {}},
                    {today.addDays(-8), legs, {}}};
    ASSERT_EQ(open().size(), 2);
    EXPECT_EQ(open().first().day, today.addDays(-7));
    EXPECT_EQ(open().last().day, today.addDays(-1));
}
