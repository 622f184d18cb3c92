#include "ui/week/pots_model.h"
#include "ui/week/servings_model.h"
#include "ui/week/shopping_model.h"

#include <QAbstractItemModelTester>
#include <QFont>
#include <QMimeData>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using quantity::Volume;

/// Ana wants a cup a day; two and a half are cooked on the first day and keep for three more.
casebook::WeekAhead aWeek() {
    casebook::WeekAhead ahead;
    ahead.start = QDate(2026, 11, 2);
    week::WeekProblem& problem = ahead.problem;
    problem.spill = 0;
    problem.fridgeDays = 3;
    problem.fridgeRoom = Volume::fromQuarts(8);
    problem.drinkers = {{QStringLiteral("Ana"), std::vector<Volume>(7, Volume::fromCups(1))},
                        {QStringLiteral("Bo"), std::vector<Volume>(7, Volume())}};
    week::PotChoice pot;
    pot.name = QStringLiteral("Chicken legs");
    pot.stock = Volume::fromCups(2.5);
    pot.may = {true, true};
    problem.pots = {pot};
    problem.settled = {{0, 0}};
    return ahead;
}

WeekShown shown(const casebook::WeekAhead& ahead) {
    return shownWeek(QDate(2026, 11, 2), ahead, week::serveSettled(ahead.problem),
                     quantity::MeasureSystem::UsCustomary);
}

class WeekModelsTest : public ::testing::Test {};

} // namespace

TEST_F(WeekModelsTest, ServingsSayWhatIsWantedAndShort) {
    ServingsModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setWeek(shown(aWeek()));
    ASSERT_EQ(model.rowCount(), 2);
    ASSERT_EQ(model.columnCount(), 7);
    EXPECT_EQ(model.index(0, 0).data().toString(), QStringLiteral("1 cup"));
    EXPECT_FALSE(model.isShort(model.index(0, 1)));
    EXPECT_TRUE(model.isShort(model.index(0, 2))) << "half a cup is left";
    EXPECT_EQ(model.index(0, 2).data().toString(), QStringLiteral("1 cup\nshort ½ cup"));
    EXPECT_EQ(model.index(0, 6).data().toString(), QStringLiteral("1 cup\nshort 1 cup"));
    EXPECT_EQ(model.index(1, 0).data().toString(), QStringLiteral("–"));
    EXPECT_TRUE(model.index(0, 0)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .contains(QStringLiteral("Chicken legs, Monday")));
    EXPECT_EQ(model.headerData(0, Qt::Vertical, Qt::DisplayRole).toString(), QStringLiteral("Ana"));
    model.setWeek(WeekShown());
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(WeekModelsTest, MovesAndMeatStandBelowTheMembers) {
    ServingsModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    WeekShown week = shown(aWeek());
    model.setWeek(week);
    EXPECT_EQ(model.rowCount(), 2);
    week.meatPerDay = quantity::Mass::fromPounds(1);
    week.days[1].meat = quantity::Mass::fromOunces(12);
    week.days[2].moves = {QStringLiteral("freeze 1 quart of Beef shank")};
    week.days[2].shortMoves = {QStringLiteral("freeze 1 quart")};
    model.setWeek(week);
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.headerData(2, Qt::Vertical, Qt::DisplayRole).toString(),
              QStringLiteral("freezer"));
    EXPECT_EQ(model.index(2, 2).data().toString(), QStringLiteral("freeze 1 quart"));
    EXPECT_EQ(model.index(2, 2).data(Qt::ToolTipRole).toString(),
              QStringLiteral("Wednesday: freeze 1 quart of Beef shank"));
    EXPECT_EQ(model.index(3, 1).data().toString(), QStringLiteral("12 oz"));
    EXPECT_TRUE(model.headerData(3, Qt::Vertical, Qt::DisplayRole)
                    .toString()
                    .contains(QStringLiteral("1 lb a day")));
    EXPECT_FALSE(model.isShort(model.index(3, 0)));
    week.days[2].shortMoves.clear();
    model.setWeek(week);
    EXPECT_EQ(model.rowCount(), 3);
}

TEST_F(WeekModelsTest, WhatIsFrozenAndThawedIsSaidInWords) {
    casebook::WeekAhead ahead = aWeek();
    ahead.problem.freezerRoom = Volume::fromQuarts(8);
    week::WeekSolution solution = week::serveSettled(ahead.problem);
    solution.freezing = {{0, {week::StockSource::Kind::Cooking, 0}, Volume::fromCups(1)}};
    solution.thawing = {{4, {week::StockSource::Kind::Cooking, 0}, Volume::fromCups(1)}};
    const WeekShown week =
        shownWeek(QDate(2026, 11, 2), ahead, solution, quantity::MeasureSystem::UsCustomary);
    EXPECT_EQ(week.days.at(0).moves,
              QStringList{QStringLiteral("freeze 1 cup of Chicken legs, Monday")});
    EXPECT_EQ(week.days.at(4).moves,
              QStringList{QStringLiteral(
                  "move 1 cup of Chicken legs, Monday from the freezer to the refrigerator")});
    EXPECT_EQ(week.days.at(4).shortMoves, QStringList{QStringLiteral("thaw 1 cup")});
}
namespace {
/// Legs, onions that are all at home, garlic by the head, and rice that no pot asks for.
week::ShoppingList aList() {
    using quantity::Mass;
    week::ShoppingItem legs;
    legs.id = QStringLiteral("chicken-leg");
    legs.name = QStringLiteral("chicken legs");
    legs.needed = Mass::fromPounds(3);
    legs.atHome = Mass::fromPounds(1);
    legs.toBuy = Mass::fromPounds(2);
    week::ShoppingItem garlic;
    garlic.section = week::ShopSection::Vegetables;
    garlic.id = QStringLiteral("garlic");
    garlic.name = QStringLiteral("garlic");
    garlic.needed = Mass::fromGrams(9);
    garlic.neededPieces = 3;
    garlic.pieceName = QStringLiteral("clove");
    garlic.toBuy = Mass::fromOunces(2);
    garlic.count = 1;
    garlic.countName = QStringLiteral("head");
    week::ShoppingItem onion = garlic;
    onion.id = onion.name = QStringLiteral("onion");
    onion.pieceName = onion.countName = QStringLiteral("medium onion");
    onion.count = 0;
    onion.toBuy = {};
    onion.atHome = Mass::fromOunces(8);
    week::ShoppingItem rice;
    rice.section = week::ShopSection::Household;
    rice.name = QStringLiteral("rice");
    return {{legs, garlic, onion, rice}, 12.5, 1};
}
} // namespace

TEST_F(WeekModelsTest, ShoppingStandsUnderItsSections) {
    ShoppingModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setList(aList(), quantity::MeasureSystem::UsCustomary);
    ASSERT_EQ(model.rowCount(), 7); // three headings
    const auto text = [&model](int row, int column = ShoppingModel::ThingColumn) {
        return model.index(row, column).data().toString();
    };
    EXPECT_TRUE(model.index(0, 0).data(ShoppingModel::HeadingRole).toBool());
    EXPECT_FALSE(model.flags(model.index(0, 0)).testFlag(Qt::ItemIsSelectable));
    EXPECT_EQ(text(1), QStringLiteral("chicken legs: 2 lb\n3 lb needed"));
    EXPECT_EQ(text(1, ShoppingModel::AtHomeColumn), QStringLiteral("1 lb"));
    EXPECT_EQ(text(3), QStringLiteral("garlic: 1 \u00d7 head (2 oz)\n3 \u00d7 clove needed"));
    EXPECT_EQ(text(4), QStringLiteral("onion: at home\n3 \u00d7 medium onion needed"));
    EXPECT_TRUE(model.index(4, 0).data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_EQ(text(5), QStringLiteral("For the house"));
    EXPECT_EQ(text(6), QStringLiteral("rice"));
    EXPECT_FALSE(
        model.flags(model.index(6, ShoppingModel::AtHomeColumn)).testFlag(Qt::ItemIsEditable));
    EXPECT_TRUE(model.asText().contains(QStringLiteral("  garlic: 1 \u00d7 head")));
    model.setList({}, quantity::MeasureSystem::UsCustomary);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(WeekModelsTest, ShoppingAsksForWhatIsAtHomeAndKeepsItsRowsWhenItComesBack) {
    ShoppingModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    week::ShoppingList list = aList();
    model.setList(list, quantity::MeasureSystem::Metric);
    QSignalSpy wanted(&model, &ShoppingModel::atHomeWanted);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    const QModelIndex cell = model.index(1, ShoppingModel::AtHomeColumn);
    EXPECT_TRUE(model.setData(cell, 500.0, Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, ShoppingModel::AtHomeColumn), 1.0, Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(6, ShoppingModel::AtHomeColumn), 1.0, Qt::EditRole));
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.first().first().toString(), QStringLiteral("chicken-leg"));
    list.items[0].atHome = quantity::Mass::fromGrams(500);
    model.setList(list, quantity::MeasureSystem::Metric);
    EXPECT_EQ(reset.size(), 0);
    EXPECT_EQ(cell.data().toString(), QStringLiteral("500 g"));
}

TEST_F(WeekModelsTest, PotsCanBeDragged) {
    PotsModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({PotsModel::Row{PotId{4}, QStringLiteral("Beef shank"),
                                  QStringLiteral("makes 2 quarts in 5 h")}});
    EXPECT_TRUE(model.flags(model.index(0)).testFlag(Qt::ItemIsDragEnabled));
    const std::unique_ptr<QMimeData> data(model.mimeData({model.index(0)}));
    EXPECT_TRUE(data->hasFormat(model.mimeTypes().first()));
    EXPECT_EQ(model.potAt(0), PotId{4});
    EXPECT_FALSE(model.potAt(7).isStored());
}

} // namespace ladlework::ui
