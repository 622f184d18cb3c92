#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using casebook::StockItem;
using namespace hand_made;

namespace {
kitchen::Lot jar(int id, double volume, QDate useBy) {
    kitchen::Lot lot;
    lot.id = LotId{id};
    lot.batch = BatchId{1};
    lot.container = QStringLiteral("jar %1").arg(id);
    lot.volume = ml(volume);
    lot.stored = monday;
    lot.useBy = useBy;
    return lot;
}

class StockOnHandTest : public ::testing::Test {
protected:
    StockOnHandTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        kitchen::Batch batch;
        batch.id = BatchId{1};
        batch.pot = legs;
        batch.day = monday;
        records.batches = {batch};
    }

    [[nodiscard]] QList<StockItem> stock() const {
        return Casebook(records, catalogue, today).stockOnHand();
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};
} // namespace

TEST_F(StockOnHandTest, isTheLotLessWhatTheLogTookFromIt) {
    records.lots = {jar(1, 1000, monday.addDays(3))};
    intake::IntakeEntry entry = drank(ana, monday, 200);
    entry.lot = LotId{1};
    records.entries.append(entry);
    entry.day = today;
    records.entries.append(entry);
    records.entries.append(drank(ana, today, 999)); // names no lot
    ASSERT_EQ(stock().size(), 1);
    EXPECT_EQ(stock().first().left, ml(600));
    EXPECT_EQ(stock().first().pot, legs);
    EXPECT_EQ(stock().first().potName, QStringLiteral("Chicken legs"));
    EXPECT_FALSE(stock().first().pastUse);
}

TEST_F(StockOnHandTest, leavesOutWhatIsGoneOrDrunkUp) {
    records.lots = {jar(1, 1000, today), jar(2, 100, today), jar(3, 500, today)};
    records.lots[0].goneOn = today;
    intake::IntakeEntry entry = drank(ana, today, 150); // more than was in it
    entry.lot = LotId{2};
    records.entries.append(entry);
    ASSERT_EQ(stock().size(), 1);
    EXPECT_EQ(stock().first().lot.id, LotId{3});
}

TEST_F(StockOnHandTest, comesOldestUseByFirst) {
    records.lots = {jar(1, 1, today.addDays(2)), jar(2, 1, today), jar(3, 1, today.addDays(-1))};
    QList<qint64> ids;
    for (const StockItem& item : stock())
        ids.append(item.lot.id.value);
    EXPECT_EQ(ids, (QList<qint64>{3, 2, 1}));
    EXPECT_TRUE(stock().first().pastUse);
    EXPECT_FALSE(stock().at(1).pastUse); // its use-by day is still a good day
}

TEST_F(StockOnHandTest, keepsAJarWhosePotIsUnknown) {
    records.lots = {jar(1, 500, today)};
    records.batches.clear();
    ASSERT_EQ(stock().size(), 1);
    EXPECT_FALSE(stock().first().potName.isEmpty());
}
