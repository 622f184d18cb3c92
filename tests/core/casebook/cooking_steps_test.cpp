#include "casebook/cooking_steps.h"

#include "core/casebook/hand_made_family.h"

#include "casebook/casebook.h"

#include <gtest/gtest.h>

using namespace ladlework;
using namespace hand_made;
using casebook::Casebook;
using casebook::CookingStep;

namespace {
class CookingStepsTest : public ::testing::Test {
protected:
    CookingStepsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}
    [[nodiscard]] QList<CookingStep> steps() const {
        const Casebook book(records, catalogue, today);
        const kitchen::Pot& pot = records.pots.first();
        return casebook::cookingSteps(pot, kitchen::brew(book.brewInput(pot), catalogue),
                                      records.family.measures);
    }
    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
};
} // namespace

// The extras table: onion 90 minutes before the end of 150, peppercorns 60, garlic with the heat
// off.
TEST_F(CookingStepsTest, areThePotInOrderOfTime) {
    const QList<CookingStep> all = steps();
    ASSERT_EQ(all.size(), 4);
    EXPECT_EQ(all[0].kind, CookingStep::Kind::PutIn);
    EXPECT_TRUE(all[0].text.contains(QStringLiteral("salt. Pour in 3 quarts of water.")))
        << qPrintable(all[0].text);
    EXPECT_EQ(all[1].at.toMinutes(), 60);
    EXPECT_EQ(all[1].text, QStringLiteral("Add onion."));
    EXPECT_EQ(all[2].at.toMinutes(), 90);
    EXPECT_EQ(all[3].kind, CookingStep::Kind::HeatOff);
    EXPECT_EQ(all[3].at.toMinutes(), 150);
    EXPECT_EQ(all[3].what, QStringLiteral("garlic"));
    EXPECT_TRUE(all[3].text.contains(QStringLiteral("Stir in garlic.")));
}

TEST_F(CookingStepsTest, alwaysEndWithTheHeatTurnedOff) {
    records.pots.first().extras.clear();
    const QList<CookingStep> all = steps();
    ASSERT_EQ(all.size(), 2);
    EXPECT_EQ(all.last().text,
              QStringLiteral("Turn off the heat. Strain the stock and cool it fast."));
    EXPECT_TRUE(all.last().what.isEmpty());
}

TEST_F(CookingStepsTest, areDueSoLongAfterTheStartWhateverTheClocksDo) {
    const QTimeZone zone("America/New_York");
    const auto due = [&zone](QDate day, QTime start, double minutes) {
        return casebook::momentOfStep({day, legs, start}, quantity::Duration::fromMinutes(minutes),
                                      zone)
            .toTimeZone(zone)
            .toString(QStringLiteral("d HH:mm"));
    };
    EXPECT_EQ(due(monday, QTime(9, 0), 89.6), QStringLiteral("2 10:30"));
    EXPECT_EQ(due(monday, QTime(23, 0), 150), QStringLiteral("3 01:30"));
    EXPECT_EQ(due(QDate(2026, 3, 8), QTime(1, 0), 150), QStringLiteral("8 04:30"));
    EXPECT_EQ(due(QDate(2026, 11, 1), QTime(0, 0), 150), QStringLiteral("1 01:30"));
    EXPECT_FALSE(casebook::momentOfStep({monday, legs, QTime()}, {}, zone).isValid());
}
