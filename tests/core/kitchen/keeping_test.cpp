#include "kitchen/keeping.h"

#include <gtest/gtest.h>

using namespace ladlework;
using namespace ladlework::kitchen;

namespace {

Batch batchOf(double litres) {
    Batch batch;
    batch.id = BatchId{7};
    batch.day = QDate(2026, 1, 30);
    batch.yield = quantity::Volume::fromLitres(litres);
    return batch;
}

} // namespace

// FoodSafety.gov cold storage chart: soups and stews keep 3-4 days refrigerated, 2-3 months frozen.
TEST(KeepingTest, usesTheShorterEndOfThePublishedKeepingTimes) {
    EXPECT_EQ(useBy(Lot::Place::Fridge, QDate(2026, 11, 2), 3), QDate(2026, 11, 5));
    EXPECT_EQ(useBy(Lot::Place::Fridge, QDate(2026, 11, 2), 2), QDate(2026, 11, 4));
    EXPECT_EQ(useBy(Lot::Place::Freezer, QDate(2026, 11, 2), 3), QDate(2027, 1, 2));
}

// 30 December has no 30 February after it: the last day of that month is meant, never later.
TEST(KeepingTest, takesTheLastDayOfAShorterMonth) {
    EXPECT_EQ(useBy(Lot::Place::Freezer, QDate(2026, 12, 30), 3), QDate(2027, 2, 28));
}

TEST(KeepingTest, sharesOutTheWholeYield) {
    const QList<Lot> lots = shareOut(batchOf(3.0), 2, 1, 3);
    ASSERT_EQ(lots.size(), 3);
    double total = 0;
    for (const Lot& lot : lots) {
        EXPECT_EQ(lot.batch, BatchId{7});
        EXPECT_TRUE(check(lot)) << lot.container.toStdString();
        total += lot.volume.toMillilitres();
    }
    EXPECT_DOUBLE_EQ(total, 3000.0);
    EXPECT_EQ(lots.at(1).place, Lot::Place::Fridge);
    EXPECT_EQ(lots.at(2).place, Lot::Place::Freezer);
    EXPECT_EQ(lots.at(0).useBy, QDate(2026, 2, 2));
    EXPECT_EQ(lots.at(2).useBy, QDate(2026, 3, 30));
}

TEST(KeepingTest, hasNothingToShareOutWithoutYieldOrContainers) {
    Batch unmeasured = batchOf(3.0);
    unmeasured.yield.reset();
    EXPECT_TRUE(shareOut(unmeasured, 2, 0, 3).isEmpty());
    EXPECT_TRUE(shareOut(batchOf(3.0), 0, 0, 3).isEmpty());
}

// FoodSafety.gov cold storage chart: raw poultry 1 to 2 days; raw steaks, chops and roasts 3 to 5;
// raw fish 1 to 2 (the stricter older row). Equal.
TEST(KeepingTest, rawCutsKeepAsTheChartSays) {
    struct Row {
        CookClass cookClass;
        int least;
        int most;
    };
    for (const Row& row : {Row{CookClass::Poultry, 1, 2}, Row{CookClass::LandAnimal, 3, 5},
                           Row{CookClass::Fish, 1, 2}}) {
        const RawKeeping keeping = rawKeeping(row.cookClass);
        EXPECT_EQ(keeping.leastDays, row.least);
        EXPECT_EQ(keeping.mostDays, row.most);
        EXPECT_TRUE(keeping.provenance.source.contains(QStringLiteral("FoodSafety.gov")));
        EXPECT_EQ(keeping.provenance.basis, QStringLiteral("published"));
    }
}
