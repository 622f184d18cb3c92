#include "people/dietary_reference.h"

#include <gtest/gtest.h>

namespace ladlework::people {
namespace {

struct ReferenceCase {
    int years;
    int months;
    IntakeCondition condition;
    double sodiumMg;
    double limitMg; ///< 0: not determined
    double potassiumLowMg;
    double potassiumHighMg;
    double waterLowL;
    double waterHighL;
    double proteinLowG;
    double proteinHighG;
};

class DietaryReferenceTest : public ::testing::TestWithParam<ReferenceCase> {};

TEST_P(DietaryReferenceTest, equalsThePublishedTables) {
    const ReferenceCase& c = GetParam();
    const QDate birth(2000, 6, 10);
    const auto found =
        dietaryReferenceFor(birth, birth.addYears(c.years).addMonths(c.months), c.condition);
    ASSERT_TRUE(found.has_value());
    EXPECT_NEAR(found->sodiumAdequate.toGrams() * 1000, c.sodiumMg, 1e-9);
    EXPECT_EQ(found->sodiumLimit.has_value(), c.limitMg > 0);
    if (found->sodiumLimit) {
        EXPECT_NEAR(found->sodiumLimit->toGrams() * 1000, c.limitMg, 1e-9);
    }
    EXPECT_NEAR(found->potassiumAdequate.low.toGrams() * 1000, c.potassiumLowMg, 1e-9);
    EXPECT_NEAR(found->potassiumAdequate.high.toGrams() * 1000, c.potassiumHighMg, 1e-9);
    EXPECT_NEAR(found->totalWater.low.toLitres(), c.waterLowL, 1e-12);
    EXPECT_NEAR(found->totalWater.high.toLitres(), c.waterHighL, 1e-12);
    EXPECT_NEAR(found->protein.low.toGrams(), c.proteinLowG, 1e-12);
    EXPECT_NEAR(found->protein.high.toGrams(), c.proteinHighG, 1e-12);
    EXPECT_TRUE(found->source.contains(QStringLiteral("NASEM 2019")));
}

// NASEM 2019, Dietary Reference Intakes for Sodium and Potassium, Tables J-3 and S-1; IOM 2005,
// summary tables for total water and protein. Men and women where they differ.
INSTANTIATE_TEST_SUITE_P(
    Stages, DietaryReferenceTest,
    ::testing::Values(
        ReferenceCase{0, 0, IntakeCondition::None, 110, 0, 400, 400, 0.7, 0.7, 9.1, 9.1},
        ReferenceCase{0, 5, IntakeCondition::None, 110, 0, 400, 400, 0.7, 0.7, 9.1, 9.1},
        ReferenceCase{0, 6, IntakeCondition::None, 370, 0, 860, 860, 0.8, 0.8, 11, 11},
        ReferenceCase{0, 11, IntakeCondition::None, 370, 0, 860, 860, 0.8, 0.8, 11, 11},
        ReferenceCase{1, 0, IntakeCondition::None, 800, 1200, 2000, 2000, 1.3, 1.3, 13, 13},
        ReferenceCase{4, 0, IntakeCondition::None, 1000, 1500, 2300, 2300, 1.7, 1.7, 19, 19},
        ReferenceCase{9, 0, IntakeCondition::None, 1200, 1800, 2300, 2500, 2.1, 2.4, 34, 34},
        ReferenceCase{13, 11, IntakeCondition::Pregnant, 1200, 1800, 2300, 2500, 2.1, 2.4, 34, 34},
        ReferenceCase{14, 0, IntakeCondition::None, 1500, 2300, 2300, 3000, 2.3, 3.3, 46, 52},
        ReferenceCase{18, 11, IntakeCondition::Pregnant, 1500, 2300, 2600, 2600, 3.0, 3.0, 71, 71},
        ReferenceCase{30, 0, IntakeCondition::None, 1500, 2300, 2600, 3400, 2.7, 3.7, 46, 56},
        ReferenceCase{80, 0, IntakeCondition::None, 1500, 2300, 2600, 3400, 2.7, 3.7, 46, 56},
        ReferenceCase{30, 0, IntakeCondition::Pregnant, 1500, 2300, 2900, 2900, 3.0, 3.0, 71, 71},
        ReferenceCase{17, 0, IntakeCondition::Feeding, 1500, 2300, 2500, 2500, 3.8, 3.8, 71, 71},
        ReferenceCase{30, 0, IntakeCondition::Feeding, 1500, 2300, 2800, 2800, 3.8, 3.8, 71, 71}));

TEST_F(DietaryReferenceTest, coversEveryMonthOnce) {
    for (int month = 0; month <= 120 * 12; ++month) {
        int rows = 0;
        for (const DietaryReference& reference : dietaryReferences())
            rows += reference.condition == IntakeCondition::None && month >= reference.fromMonth &&
                            (!reference.toMonth || month < *reference.toMonth)
                        ? 1
                        : 0;
        ASSERT_EQ(rows, 1) << "month " << month;
    }
}

TEST_F(DietaryReferenceTest, hasTheLifeStagesOfTheTables) {
    const QDate birth(1952, 2, 29);
    const auto stageAt = [&birth](QDate day) {
        return dietaryReferenceFor(birth, day, IntakeCondition::None)->stage.toStdString();
    };
    // Birthdays of the leap day fall on 1 March in a common year.
    EXPECT_EQ(stageAt(QDate(1971, 2, 28)), "14-18 years");
    EXPECT_EQ(stageAt(QDate(1971, 3, 1)), "19-30 years");
    EXPECT_EQ(stageAt(QDate(1983, 2, 28)), "19-30 years");
    EXPECT_EQ(stageAt(QDate(1983, 3, 1)), "31-50 years");
    EXPECT_EQ(stageAt(QDate(2003, 2, 28)), "31-50 years");
    EXPECT_EQ(stageAt(QDate(2003, 3, 1)), "51-70 years");
    EXPECT_EQ(stageAt(QDate(2023, 2, 28)), "51-70 years");
    EXPECT_EQ(stageAt(QDate(2023, 3, 1)), "over 70 years");
}

TEST_F(DietaryReferenceTest, readsTheConditionFromTheCautions) {
    const auto of = [](const QStringList& kinds) {
        QList<Caution> cautions;
        for (const QString& kind : kinds) {
            cautions.append(Caution());
            cautions.last().kind = kind;
        }
        return intakeCondition(cautions);
    };
    EXPECT_EQ(of({}), IntakeCondition::None);
    EXPECT_EQ(of({QStringLiteral("kidney")}), IntakeCondition::None);
    EXPECT_EQ(of({QStringLiteral("kidney"), QStringLiteral("feeding")}), IntakeCondition::Feeding);
    EXPECT_EQ(of({QStringLiteral("feeding"), QStringLiteral("pregnant")}),
              IntakeCondition::Pregnant);
}

TEST_F(DietaryReferenceTest, knowsNothingBeforeBirth) {
    EXPECT_FALSE(dietaryReferenceFor(QDate(2000, 1, 2), QDate(2000, 1, 1), IntakeCondition::None));
    EXPECT_FALSE(dietaryReferenceFor(QDate(), QDate(2000, 1, 1), IntakeCondition::None));
}

} // namespace
} // namespace ladlework::people
