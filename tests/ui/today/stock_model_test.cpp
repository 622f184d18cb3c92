#include "ui/today/stock_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace ladlework::ui {
namespace {

const QDate today(2026, 11, 4);

casebook::StockItem item(qint64 id, double cups, QDate useBy, kitchen::Lot::Place place) {
    casebook::StockItem made;
    made.lot.id = LotId{id};
    made.lot.useBy = useBy;
    made.lot.place = place;
    made.potName = QStringLiteral("Chicken legs");
    made.left = quantity::Volume::fromCups(cups);
    made.pastUse = useBy < today;
    return made;
}

QStringList row(const StockModel& model, int at) {
    QStringList words;
    for (int column = 0; column < model.columnCount(); ++column)
        words << model.index(at, column).data().toString();
    return words;
}

} // namespace

class StockModelTest : public ::testing::Test {};

TEST_F(StockModelTest, saysHowMuchWhereAndUntilWhen) {
    StockModel model(nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    using Place = kitchen::Lot::Place;
    model.setStock({item(1, 2, today.addDays(-1), Place::Fridge),
                    item(2, 1.5, today, Place::Fridge), item(3, 4, today.addDays(1), Place::Fridge),
                    item(4, 1, today.addDays(60), Place::Freezer)},
                   today, quantity::MeasureSystem::UsCustomary);
    EXPECT_EQ(row(model, 0),
              (QStringList{QStringLiteral("2 cups"), QStringLiteral("Chicken legs"),
                           QStringLiteral("refrigerator"), QStringLiteral("past its day")}));
    EXPECT_EQ(row(model, 1).at(3), QStringLiteral("today"));
    EXPECT_EQ(row(model, 2).at(3), QStringLiteral("tomorrow"));
    EXPECT_EQ(row(model, 3).at(2), QStringLiteral("freezer"));
    EXPECT_EQ(row(model, 3).at(3), QStringLiteral("Sun 3 Jan"));
}

TEST_F(StockModelTest, theSameLotsKeepTheirRows) {
    StockModel model(nullptr);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    using Place = kitchen::Lot::Place;
    model.setStock({item(1, 2, today, Place::Fridge)}, today, quantity::MeasureSystem::Metric);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.setStock({item(1, 1, today, Place::Fridge)}, today, quantity::MeasureSystem::Metric);
    EXPECT_EQ(reset.count(), 0);
    model.setStock({}, today, quantity::MeasureSystem::Metric);
    EXPECT_EQ(reset.count(), 1);
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace ladlework::ui
