#include "casebook/cooking.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Cooking;
using casebook::matchBatches;
using namespace hand_made;

namespace {
kitchen::Batch batchOf(int id, PotId pot, QDate day) {
    kitchen::Batch batch;
    batch.id = BatchId{id};
    batch.pot = pot;
    batch.day = day;
    return batch;
}

/// The ids of the batches in the order of the placements; 0 for none.
QList<qint64> matched(const QList<week::Placement>& placements,
                      const QList<kitchen::Batch>& batches) {
    QList<qint64> ids;
    for (const Cooking& cooking : matchBatches(placements, batches))
        ids.append(cooking.batch != nullptr ? cooking.batch->id.value : 0);
    return ids;
}
} // namespace

TEST(CookingTest, oneBatchIsOfOneCooking) {
    const QList<week::Placement> twice{{monday, legs, QTime(9, 0)}, {monday, legs, QTime(17, 0)}};
    EXPECT_EQ(matched(twice, {}), (QList<qint64>{0, 0}));
    EXPECT_EQ(matched(twice, {batchOf(4, legs, monday)}), (QList<qint64>{4, 0}));
    EXPECT_EQ(matched(twice, {batchOf(5, legs, monday), batchOf(4, legs, monday)}),
              (QList<qint64>{4, 5}));
}

TEST(CookingTest, theEarliestStartTakesTheFirstBatch) {
    const QList<week::Placement> mixed{
        {monday, legs, {}}, {monday, legs, QTime(17, 0)}, {monday, legs, QTime(9, 0)}};
    EXPECT_EQ(matched(mixed, {batchOf(1, legs, monday), batchOf(2, legs, monday)}),
              (QList<qint64>{0, 2, 1}));
}

TEST(CookingTest, anotherPotOrDayIsAnotherCooking) {
    const QList<week::Placement> placements{{monday, legs, {}}, {today, shank, {}}};
    EXPECT_EQ(matched(placements, {batchOf(1, shank, monday), batchOf(2, legs, today)}),
              (QList<qint64>{0, 0}));
    EXPECT_EQ(matched(placements, {batchOf(1, shank, today), batchOf(2, legs, monday)}),
              (QList<qint64>{2, 1}));
}
