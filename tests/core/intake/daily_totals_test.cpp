#include "intake/daily_totals.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

using people::IntakeCondition;
using quantity::MeasureSystem;
using quantity::Volume;

const QDate day(2024, 3, 1);
const PotId salted{1};
const PotId plain{2};

IntakeEntry drunk(int offset, double ml, PotId pot) {
    IntakeEntry entry;
    entry.day = day.addDays(offset);
    entry.drunk = Volume::fromMillilitres(ml);
    entry.pot = pot;
    return entry;
}

QHash<PotId, StockFigures> figures() {
    return {{salted, {{80, 100, 130}, {1, 2, 3}}}, {plain, {{10, 20, 40}, {2, 2.5, 3}}}};
}

TEST(DailyTotalsTest, addsUpOneDayByHand) {
    const std::optional<DailyTotals> totals = dailyTotals(
        {drunk(0, 300, salted), drunk(0, 200, plain), drunk(0, 50, {}), drunk(1, 999, salted)},
        figures(), {}, day, day);
    ASSERT_TRUE(totals.has_value());
    EXPECT_EQ(totals->days, 1);
    EXPECT_NEAR(totals->stock.toMillilitres(), 550, 1e-9);
    EXPECT_NEAR(totals->ofUnknownPot.toMillilitres(), 50, 1e-9);
    EXPECT_NEAR(totals->sodiumMg.low, 3 * 80 + 2 * 10, 1e-9);
    EXPECT_NEAR(totals->sodiumMg.best, 3 * 100 + 2 * 20, 1e-9);
    EXPECT_NEAR(totals->sodiumMg.high, 3 * 130 + 2 * 40, 1e-9);
    EXPECT_NEAR(totals->proteinG.best, 3 * 2 + 2 * 2.5, 1e-9);
}

TEST(DailyTotalsTest, aSpanIsTheMeanOfTheDaysWithAnEntry) {
    const LotId jar{7};
    IntakeEntry fromJar = drunk(2, 100, {});
    fromJar.lot = jar;
    const QList<IntakeEntry> entries{drunk(-1, 500, salted),
                                     drunk(0, 300, salted),
                                     drunk(0, 100, salted),
                                     drunk(1, 0, {}),
                                     fromJar,
                                     drunk(9, 500, salted)};
    const std::optional<DailyTotals> totals =
        dailyTotals(entries, figures(), {{jar, plain}}, day, day.addDays(6));
    ASSERT_TRUE(totals.has_value());
    EXPECT_EQ(totals->days, 3) << "a day of nothing drunk is a day with an entry";
    EXPECT_NEAR(totals->stock.toMillilitres(), 500.0 / 3, 1e-9);
    EXPECT_NEAR(totals->sodiumMg.best, (400.0 + 20) / 3, 1e-9);
    EXPECT_EQ(totals->ofUnknownPot.toMillilitres(), 0);
    EXPECT_FALSE(dailyTotals(entries, figures(), {}, day.addDays(3), day.addDays(5)).has_value());
}

DailyTotals usual() {
    DailyTotals totals;
    totals.days = 1;
    totals.stock = Volume::fromMillilitres(1000);
    totals.sodiumMg = {640, 853, 1110};
    totals.proteinG = {16, 21.4, 27};
    return totals;
}

QList<TotalBesideReference> linesFor(int years, int months, IntakeCondition condition,
                                     const DailyTotals& totals = usual()) {
    const QDate birth(2000, 6, 10);
    const auto reference =
        people::dietaryReferenceFor(birth, birth.addYears(years).addMonths(months), condition);
    return besideReferences(totals, *reference, MeasureSystem::Metric);
}

TEST(DailyTotalsTest, standsBesideThePublishedReferences) {
    // NASEM 2019 Tables J-3 and S-1 (sodium); IOM 2005 summary tables (water, protein).
    const QList<TotalBesideReference> adult = linesFor(30, 0, IntakeCondition::None);
    ASSERT_EQ(adult.size(), 3);
    EXPECT_EQ(adult[0].what, TotalBesideReference::What::Sodium);
    EXPECT_NEAR(adult[0].referenceLow, 1500, 1e-9);
    EXPECT_NEAR(*adult[0].limit, 2300, 1e-9);
    EXPECT_NEAR(adult[1].referenceLow, 46, 1e-9);
    EXPECT_NEAR(adult[1].referenceHigh, 56, 1e-9);
    EXPECT_NEAR(adult[2].referenceLow, 2700, 1e-9);
    EXPECT_NEAR(adult[2].referenceHigh, 3700, 1e-9);
    const QList<TotalBesideReference> feeding = linesFor(30, 0, IntakeCondition::Feeding);
    EXPECT_NEAR(feeding[1].referenceLow, 71, 1e-9);
    EXPECT_NEAR(feeding[2].referenceHigh, 3800, 1e-9);
    const QList<TotalBesideReference> infant = linesFor(0, 8, IntakeCondition::None);
    EXPECT_NEAR(infant[0].referenceLow, 370, 1e-9);
    EXPECT_FALSE(infant[0].limit.has_value());
    for (const TotalBesideReference& line : adult)
        EXPECT_TRUE(line.source.contains(QStringLiteral("published")));
}

TEST(DailyTotalsTest, isWordedAsInformation) {
    const QList<TotalBesideReference> adult = linesFor(30, 0, IntakeCondition::None);
    EXPECT_EQ(
        adult[0].text.toStdString(),
        "Sodium from stock: about 850 mg (640 to 1,100 mg). The adequate intake from all food "
        "and drink at this life stage (19-30 years) is 1,500 mg a day. Above 2,300 mg a day "
        "less is advised.");
    EXPECT_EQ(
        adult[1].text.toStdString(),
        "Protein from stock: about 21 g (16 to 27 g), much of it gelatin, which alone is no "
        "complete protein. The recommended intake from all food (19-30 years) is 46 to 56 g a "
        "day for women and men.");
    EXPECT_EQ(adult[2].text.toStdString(),
              "Fluid from stock: 1 L. The adequate intake of water in all drinks and foods (19-30 "
              "years) is 2.7 to 3.7 litres a day for women and men.");
    const QList<TotalBesideReference> child = linesFor(5, 0, IntakeCondition::None);
    EXPECT_TRUE(child[1].text.endsWith(QStringLiteral("is 19 g a day.")));
}

TEST(DailyTotalsTest, saysWhatIsLeftOut) {
    DailyTotals totals = usual();
    totals.ofUnknownPot = Volume::fromMillilitres(250);
    const QList<TotalBesideReference> lines = linesFor(30, 0, IntakeCondition::None, totals);
    const QString leftOut = QStringLiteral(" 250 mL of a pot that is not known is left out.");
    EXPECT_TRUE(lines[0].text.endsWith(leftOut));
    EXPECT_TRUE(lines[1].text.endsWith(leftOut));
    EXPECT_FALSE(lines[2].text.contains(leftOut));
}

} // namespace
} // namespace ladlework::intake
