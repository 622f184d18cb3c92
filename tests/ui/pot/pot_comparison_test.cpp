#include "ui/pot/pot_comparison.h"

#include "ui/pot/comparison_model.h"
#include "ui/pot/comparison_page.h"
#include "ui/pot/pot_screen_fixture.h"

#include <QAbstractItemModelTester>
#include <QComboBox>

namespace ladlework::ui {

namespace {

using kitchen::Range;

const Prices prices{{}, QStringLiteral("$"), quantity::MeasureSystem::Metric};

BrewedPot potWith(const Range& stockMl) {
    BrewedPot one;
    one.brewed.stockMl = stockMl;
    one.pot.simmer = quantity::Duration::fromHours(2);
    one.brewed.who = {{QStringLiteral("Ana"), true, {}, false}};
    return one;
}

ComparedLine lineOf(const QList<ComparedLine>& lines, const QString& what) {
    for (const ComparedLine& line : lines)
        if (line.what == what)
            return line;
    ADD_FAILURE() << "no line " << what.toStdString();
    return {};
}

class PotComparisonTest : public PotScreenFixture {
protected:
    void compare() {
        trigger(QStringLiteral("Compare with another pot"));
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QTableView* table() const {
        return byName<QTableView>(m_screen, QStringLiteral("Two pots compared"));
    }
};

} // namespace

TEST_F(PotComparisonTest, WordsSayWhetherTheRangesAreParted) {
    const QString stock = QStringLiteral("Stock out");
    const BrewedPot two = potWith({1800, 2000, 2200});
    ComparedLine line = lineOf(comparePots(two, potWith({2100, 2500, 2900}), prices), stock);
    EXPECT_EQ(line.difference, QStringLiteral("500 mL more, within the ranges"));
    EXPECT_FALSE(line.clearly);
    line = lineOf(comparePots(two, potWith({2300, 2500, 2900}), prices), stock);
    EXPECT_EQ(line.difference, QStringLiteral("clearly more, by 500 mL"));
    EXPECT_TRUE(line.clearly);
    line = lineOf(comparePots(two, potWith({900, 1000, 1100}), prices), stock);
    EXPECT_EQ(line.difference, QStringLiteral("clearly less, by 1 L"));
    line = lineOf(comparePots(two, potWith({1800, 2001, 2200}), prices), stock);
    EXPECT_EQ(line.difference, QStringLiteral("the same")) << "no kitchen can measure it";
    EXPECT_FALSE(line.clearly);
}

TEST_F(PotComparisonTest, WhoMayAndWhatIsUnknown) {
    BrewedPot first = potWith({1800, 2000, 2200});
    BrewedPot second = first;
    second.brewed.who.first().may = false;
    second.brewed.who.first().why = QStringLiteral("no poultry");
    QList<ComparedLine> lines = comparePots(first, second, prices);
    const ComparedLine ana = lineOf(lines, QStringLiteral("Ana"));
    EXPECT_EQ(ana.second, QStringLiteral("may not: no poultry"));
    EXPECT_TRUE(ana.clearly);
    for (const ComparedLine& line : lines)
        EXPECT_NE(line.what, QStringLiteral("Cost")) << "without a price nothing is said of cost";
    EXPECT_EQ(lineOf(lines, QStringLiteral("Covers")).first, QString(QChar(0x2014)));
    first.brewed.cost = 8;
    second.brewed.cost = 5.5;
    EXPECT_EQ(lineOf(comparePots(first, second, prices), QStringLiteral("Cost")).difference,
              QStringLiteral("$2.50 less"));
}

TEST_F(PotComparisonTest, HandsAreNeededAtTheseTimes) {
    BrewedPot first = potWith({1800, 2000, 2200});
    kitchen::Addition late;
    late.at = quantity::Duration::fromMinutes(90);
    first.brewed.additions = {kitchen::Addition{}, late, late};
    const ComparedLine line = lineOf(comparePots(first, potWith({1800, 2000, 2200}), prices),
                                     QStringLiteral("At the stove"));
    EXPECT_EQ(line.first, QStringLiteral("start, after 1 h 30 min, end"));
    EXPECT_EQ(line.second, QStringLiteral("start, end"));
    EXPECT_TRUE(line.clearly);
}

TEST_F(PotComparisonTest, ModelKeepsItsShape) {
    ComparisonModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(QStringLiteral("A"), QStringLiteral("B"),
               comparePots(potWith({1, 2, 3}), potWith({5, 6, 7}), prices));
    const int rows = model.rowCount();
    ASSERT_GT(rows, 8);
    EXPECT_EQ(model.headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(), QStringLiteral("A"));
    EXPECT_TRUE(
        model.index(0, ComparisonModel::DifferenceColumn).data(Qt::FontRole).value<QFont>().bold());
    model.show(QStringLiteral("A"), QStringLiteral("B"), {});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(PotComparisonTest, OpensByActionAndEscapeLeaves) {
    compare();
    auto* page = m_screen.findChild<ComparisonPage*>();
    ASSERT_TRUE(page->isVisible());
    EXPECT_FALSE(edit(QStringLiteral("Water"))->isVisible());
    auto* other = byName<QComboBox>(m_screen, QStringLiteral("Compare with"));
    EXPECT_TRUE(other->hasFocus());
    EXPECT_EQ(other->currentText(), QStringLiteral("Beef shank (their own)"));
    EXPECT_GT(table()->model()->rowCount(), 10);
    EXPECT_EQ(table()->model()->headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(),
              QStringLiteral("Chicken legs"));
    QTest::keyClick(other, Qt::Key_Escape);
    EXPECT_FALSE(page->isVisible());
    EXPECT_TRUE(edit(QStringLiteral("Water"))->isVisible());
    EXPECT_TRUE(list()->hasFocus());
}

TEST_F(PotComparisonTest, FollowsThePotThatIsChosen) {
    compare();
    choose(m_family.beef);
    EXPECT_EQ(table()->model()->headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(),
              QStringLiteral("Beef shank"));
    EXPECT_EQ(table()->model()->headerData(2, Qt::Horizontal, Qt::DisplayRole).toString(),
              QStringLiteral("Chicken legs"));
}

} // namespace ladlework::ui
