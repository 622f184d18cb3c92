#include "ui/pot/cuts_model.h"
#include "ui/pot/extras_model.h"
#include "ui/pot/item_picker.h"
#include "ui/pot/pot_library_model.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace ladlework::ui {

using kitchen::CutInPot;
using kitchen::ExtraInPot;
using quantity::Mass;
using quantity::MeasureSystem;

namespace {

using Tester = QAbstractItemModelTester;

class PotModelsTest : public ::testing::Test {
protected:
    FamilyWorkbook m_family;
    const kitchen::Catalogue& m_catalogue = m_family.context().catalogue;
};

} // namespace

TEST_F(PotModelsTest, OwnPotsStandFirst) {
    PotLibraryModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    kitchen::Pot practice;
    practice.id = PotId{90};
    practice.name = QStringLiteral("A pot of the practice");
    QList<kitchen::Pot> pots = m_family.casebook()->records().pots;
    pots.prepend(practice);
    model.show(pots);
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.rowOf(practice.id), 2);
    EXPECT_TRUE(model.index(2).data().toString().endsWith(QStringLiteral("the practice's")));
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    pots[0].name = QStringLiteral("Renamed");
    model.show(pots);
    EXPECT_EQ(reset.size(), 0);
    EXPECT_EQ(model.potAt(2)->name, QStringLiteral("Renamed"));
}

TEST_F(PotModelsTest, CutsAreChangedAddedAndTakenOut) {
    CutsModel model(m_catalogue, nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    QSignalSpy edited(&model, &CutsModel::edited);
    model.show({{QStringLiteral("chicken-leg"), Mass::fromPounds(3), true}},
               MeasureSystem::UsCustomary);
    EXPECT_EQ(edited.size(), 0) << "showing is not editing";
    const QModelIndex mass = model.index(0, CutsModel::MassColumn);
    EXPECT_EQ(mass.data().toString(), QStringLiteral("3 lb"));
    EXPECT_TRUE(model.setData(mass, 907.18474, Qt::EditRole));
    EXPECT_EQ(mass.data().toString(), QStringLiteral("2 lb"));
    EXPECT_FALSE(model.setData(mass, 0.0, Qt::EditRole));
    EXPECT_TRUE(
        model.setData(model.index(0, CutsModel::RawColumn), Qt::Unchecked, Qt::CheckStateRole));
    EXPECT_FALSE(model.cuts().first().raw);
    model.add({QStringLiteral("chicken-foot"), Mass::fromPounds(1), true});
    model.remove(0);
    model.remove(7); // not there
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.cuts().first().cut, QStringLiteral("chicken-foot"));
    EXPECT_EQ(edited.size(), 4);
}

TEST_F(PotModelsTest, ExtrasByPiecesAndByWeight) {
    const Mass onion = m_catalogue.extra(QStringLiteral("onion"))->piece;
    ExtrasModel model(m_catalogue, nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    QSignalSpy edited(&model, &ExtrasModel::edited);
    model.show({{QStringLiteral("onion"), onion * 2}}, MeasureSystem::Metric);
    const QModelIndex pieces = model.index(0, ExtrasModel::PiecesColumn);
    const QModelIndex mass = model.index(0, ExtrasModel::MassColumn);
    EXPECT_TRUE(pieces.data().toString().startsWith(QStringLiteral("2 × ")));
    EXPECT_TRUE(model.setData(pieces, QStringLiteral("3"), Qt::EditRole));
    EXPECT_EQ(model.extras().first().mass, onion * 3);
    EXPECT_TRUE(model.setData(pieces, QStringLiteral("1/2"), Qt::EditRole));
    EXPECT_EQ(model.extras().first().mass, onion * 0.5);
    EXPECT_TRUE(model.setData(pieces, QStringLiteral("1 1/2"), Qt::EditRole));
    EXPECT_EQ(model.extras().first().mass, onion * 1.5);
    EXPECT_TRUE(model.setData(mass, 100.0, Qt::EditRole));
    EXPECT_EQ(edited.size(), 4);
    // What stands in an untouched cell is a rounded number of pieces: the exact weight stays.
    EXPECT_FALSE(model.setData(pieces, pieces.data(Qt::EditRole), Qt::EditRole));
    EXPECT_EQ(model.extras().first().mass, Mass::fromGrams(100));
    QSignalSpy refused(&model, &ExtrasModel::refused);
    for (const char* text : {"some", "-1", "0", "5000", "", "2 cups"})
        EXPECT_FALSE(model.setData(pieces, QString::fromUtf8(text), Qt::EditRole)) << text;
    EXPECT_EQ(refused.size(), 6);
    EXPECT_EQ(edited.size(), 4);
}

TEST_F(PotModelsTest, PickerTakesAPartThatOnlyOneNameHolds) {
    ItemPicker picker(QStringLiteral("Add"), nullptr);
    picker.fill({{QStringLiteral("chicken feet"), QStringLiteral("a")},
                 {QStringLiteral("chicken legs"), QStringLiteral("b")},
                 {QStringLiteral("beef shank"), QStringLiteral("c")}});
    EXPECT_TRUE(picker.id().isEmpty()) << "nothing is picked at first";
    EXPECT_TRUE(picker.currentText().isEmpty());
    picker.setEditText(QStringLiteral("Beef Shank"));
    EXPECT_EQ(picker.id(), QStringLiteral("c"));
    picker.setEditText(QStringLiteral("feet"));
    EXPECT_EQ(picker.id(), QStringLiteral("a"));
    picker.setEditText(QStringLiteral("chicken"));
    EXPECT_TRUE(picker.id().isEmpty()) << "two hold it";
    picker.setEditText(QStringLiteral("tuna"));
    EXPECT_TRUE(picker.id().isEmpty());
}

} // namespace ladlework::ui
