#include "core/calendar/calendar_fixture.h"

namespace ladlework::calendar {
namespace {

using namespace hand_made;
using quantity::Volume;

/// Nothing planned; a batch of legs of last Sunday.
class StockEntriesTest : public CalendarFixture {
protected:
    StockEntriesTest() {
        plan().placements.clear();
        kitchen::Batch batch;
        batch.id = BatchId{7};
        batch.family = FamilyId{1};
        batch.pot = legs;
        batch.day = monday.addDays(-1);
        records.batches = {batch};
    }
    void keep(int id, double millilitres, QDate useBy,
              kitchen::Lot::Place place = kitchen::Lot::Place::Fridge) {
        kitchen::Lot lot;
        lot.id = LotId{id};
        lot.batch = BatchId{7};
        lot.container = QStringLiteral("jar %1").arg(id);
        lot.volume = ml(millilitres);
        lot.place = place;
        lot.stored = monday.addDays(-1);
        lot.useBy = useBy;
        records.lots.append(lot);
    }
};

TEST_F(StockEntriesTest, tellsTheLastDayOfWhatIsStoredTogether) {
    keep(1, 473, monday.addDays(2));
    keep(2, 473, monday.addDays(2));
    keep(3, 946, monday.addDays(5), kitchen::Lot::Place::Freezer);
    keep(4, 946, monday.addDays(9));
    const Entry fridge = titled(QStringLiteral("Last day for Chicken legs"));
    EXPECT_EQ(fridge.day, monday.addDays(2));
    EXPECT_EQ(
        fridge.details,
        QStringLiteral("jar 1, jar 2\n4 cups left.\nDrink it today, or freeze what is left."));
    EXPECT_EQ(titled(QStringLiteral("Use up Chicken legs from the freezer")).day,
              monday.addDays(5));
    EXPECT_EQ(entries().size(), 2) << "jar 4 keeps until after these days";
}

TEST_F(StockEntriesTest, leavesOutWhatIsDrunkUpOrGone) {
    keep(1, 100, monday.addDays(2));
    keep(2, 100, monday.addDays(2));
    intake::IntakeEntry entry = drank(ana, monday, 100);
    entry.lot = LotId{1};
    records.entries.append(entry);
    records.lots[1].goneOn = monday;
    EXPECT_TRUE(entries().isEmpty());
}

TEST_F(StockEntriesTest, aCookingsLastDayGoesOverToItsContainers) {
    records.batches[0].day = monday;
    plan().placements = {{monday, legs, QTime(9, 0)}};
    const QString before = titled(QStringLiteral("Last day for Chicken legs")).uid;
    keep(1, 500, monday.addDays(2));
    const Entry after = titled(QStringLiteral("Last day for Chicken legs"));
    EXPECT_EQ(after.uid, before) << "told once, and updated";
    EXPECT_EQ(after.day, monday.addDays(2));
    // Drunk up: nothing is left to be told.
    records.lots[0].goneOn = monday;
    EXPECT_TRUE(titles().filter(QStringLiteral("Last day")).isEmpty());
}

TEST_F(StockEntriesTest, thawsOnTheDayThatWasPlanned) {
    const QString jars = QStringLiteral("Chicken legs, Sunday");
    options.thaws = {{monday.addDays(1), jars, Volume::fromCups(2)},
                     {monday.addDays(1), jars, Volume::fromCups(1)},
                     {monday.addDays(3), QStringLiteral("Beef shank"), Volume::fromCups(1)},
                     {monday.addDays(7), jars, Volume::fromCups(1)}};
    const Entry thaw = titled(QStringLiteral("Thaw 3 cups of Chicken legs, Sunday"));
    EXPECT_EQ(thaw.day, monday.addDays(1));
    EXPECT_EQ(thaw.alarms.size(), 1);
    EXPECT_TRUE(thaw.details.contains(QStringLiteral("from the freezer to the refrigerator")));
    EXPECT_EQ(titled(QStringLiteral("Thaw 1 cup of Beef shank")).day, monday.addDays(3));
    EXPECT_EQ(entries().size(), 2);
}

} // namespace
} // namespace ladlework::calendar
