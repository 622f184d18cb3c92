#include "handout/family_handout.h"

#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"
#include "kitchen/keeping_figures.h"

#include <gtest/gtest.h>

using namespace ladlework;
using namespace hand_made;
using namespace handout_reader;

namespace {
class KeepingCardTest : public ::testing::Test {
protected:
    KeepingCardTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Card card() const {
        HandoutOptions options;
        options.week = monday;
        const casebook::Casebook book(records, catalogue, today);
        return cardsOf(familyHandout(book, options), Card::Kind::Keeping).first();
    }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
};
} // namespace

TEST_F(KeepingCardTest, printsTheTwoStagesOfTheFoodCode) {
    // FDA Food Code 2022, 3-501.14(A): 57 C (135 F) to 21 C (70 F) within 2 hours, to 5 C (41 F)
    // within 6 hours in all.
    const QString text = textOf(card());
    EXPECT_TRUE(
        text.contains(QStringLiteral("from 135 °F (57 °C) to 70 °F (21 °C) within 2 hours")))
        << qPrintable(text);
    EXPECT_TRUE(text.contains(QStringLiteral("down to 41 °F (5 °C) within 6 hours in all")));
}

TEST_F(KeepingCardTest, printsTheHomeRulesOfTheAgencies) {
    // USDA FSIS: into the refrigerator within 2 hours, 1 hour above 90 F; refrigerator at 40 F or
    // below; leftovers to 165 F (74 C). Shallow: 2 inches (university extension services).
    const QString text = textOf(card());
    EXPECT_TRUE(text.contains(QStringLiteral("in the fridge within 2 hours")));
    EXPECT_TRUE(text.contains(QStringLiteral("hotter than 90 °F (32 °C), within 1 hour")));
    EXPECT_TRUE(text.contains(QStringLiteral("40 °F (4 °C) or below")));
    EXPECT_TRUE(text.contains(QStringLiteral("165 °F (74 °C)")));
    EXPECT_TRUE(text.contains(QStringLiteral("no more than 2 in deep")));
    EXPECT_TRUE(text.contains(QStringLiteral("This is not home canning.")));
    EXPECT_TRUE(text.contains(QStringLiteral("local extension service")));
    EXPECT_TRUE(text.contains(QStringLiteral("Your local food safety rules go first")));
    EXPECT_TRUE(text.contains(QStringLiteral("Keep raw fish cold")));
}

TEST_F(KeepingCardTest, keepsNoLongerThanTheChart) {
    // FoodSafety.gov cold storage chart: soups 3-4 days, cooked meat 3-4 days, raw poultry 1-2
    // days, raw steaks and roasts 3-5 days, soups frozen 2-3 months; an older row gives meat broth
    // 1-2 days.
    const Table table = tableOf(card());
    EXPECT_EQ(rowOf(table, QStringLiteral("Stock")),
              (QStringList{QStringLiteral("Stock"), QStringLiteral("3 days"),
                           QStringLiteral("2 to 3 months")}));
    EXPECT_EQ(rowOf(table, QStringLiteral("Cooked meat")).value(1), QStringLiteral("3 to 4 days"));
    EXPECT_EQ(rowOf(table, QStringLiteral("Raw chicken and other birds")).value(1),
              QStringLiteral("1 to 2 days"));
    EXPECT_EQ(rowOf(table, QStringLiteral("Other raw meat")).value(1),
              QStringLiteral("3 to 5 days"));
    EXPECT_TRUE(textOf(card()).contains(QStringLiteral("meat broth 1 to 2 days")));
}

TEST_F(KeepingCardTest, usesTheDaysOfThePractice) {
    records.practice.fridgeDays = 2;
    const QString text = textOf(card());
    EXPECT_TRUE(text.contains(QStringLiteral("Your practice uses 2 days.")));
    EXPECT_TRUE(text.contains(QStringLiteral("Chicken legs, cooked on Monday 2 November: drink or "
                                             "freeze by Wednesday 4 November.")))
        << qPrintable(text);
}

TEST_F(KeepingCardTest, namesItsSources) {
    const QString text = textOf(card());
    EXPECT_TRUE(text.contains(QStringLiteral("FDA Food Code 2022, 3-501.14")));
    EXPECT_TRUE(text.contains(QStringLiteral("USDA FSIS")));
}

TEST_F(KeepingCardTest, aFigureThatIsNotThereIsABrokenInvariant) {
    const kitchen::KeepingFigures& figures = kitchen::KeepingFigures::shipped();
    EXPECT_THROW((void)figures.count(QStringLiteral("no-such-row")), std::runtime_error);
    EXPECT_THROW((void)figures.count(QStringLiteral("cool-from")), std::runtime_error);
}
