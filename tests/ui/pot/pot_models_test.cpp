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
    /// A dollar a pound: 2.20462 a kilogram (NIST Handbook 44: 453.59237 g to the pound).
    const Prices m_prices{{{QStringLiteral("chicken-leg"), 1000 / 453.59237}},
                          QStringLiteral("$"),
                          MeasureSystem::UsCustomary};
};

} // namespace

TEST_F(PotModelsTest, OwnPotsStandFirstUnderTheirHeading) {
    PotLibraryModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    kitchen::Pot practice;
    practice.id = PotId{90};
    practice.name = QStringLiteral("A pot of the practice");
    QList<kitchen::Pot> pots = m_family.casebook()->records().pots;
    pots.prepend(practice);
    model.show(pots);
    ASSERT_EQ(model.rowCount(), 5);
    EXPECT_EQ(model.index(0).data().toString(), QStringLiteral("This family's own"));
    EXPECT_EQ(model.index(3).data().toString(), QStringLiteral("The practice's"));
    EXPECT_EQ(model.rowOf(practice.id), 4);
    for (const int heading : {0, 3}) {
        EXPECT_EQ(model.potAt(heading), nullptr);
        EXPECT_EQ(model.flags(model.index(heading)), Qt::NoItemFlags) << "the keys step over it";
    }
    EXPECT_TRUE(model.flags(model.index(1)).testFlag(Qt::ItemIsSelectable));
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    pots[0].name = QStringLiteral("Renamed");
    model.show(pots);
    EXPECT_EQ(reset.size(), 0);
    EXPECT_EQ(model.potAt(4)->name, QStringLiteral("Renamed"));
    pots.removeFirst();
    model.show(pots);
    EXPECT_EQ(model.rowCount(), 3) << "a heading of nothing goes too";
}

TEST_F(PotModelsTest, FilterKeepsPotsWithAllItsWords) {
    PotLibraryModel model;
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 0);
    model.show(m_family.casebook()->records().pots); // "Beef shank", "Chicken legs"
    model.setFilter(QStringLiteral("  LEGS chick "));
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.potAt(1)->name, QStringLiteral("Chicken legs"));
    EXPECT_EQ(model.firstPotRow(), 1);
    EXPECT_EQ(model.pots().size(), 2) << "what is hidden is still at hand";
    model.setFilter(QStringLiteral("legs beef"));
    ASSERT_EQ(model.rowCount(), 1) << "one line says that there is none";
    EXPECT_EQ(model.firstPotRow(), -1);
    model.setFilter({});
    EXPECT_EQ(model.rowCount(), 3);
}

TEST_F(PotModelsTest, CutsAreChangedAddedAndTakenOut) {
    CutsModel model(m_catalogue, nullptr);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    QSignalSpy edited(&model, &CutsModel::edited);
    model.show({{QStringLiteral("chicken-leg"), Mass::fromPounds(3), true}}, m_prices);
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
    model.show({{QStringLiteral("onion"), onion * 2}}, {{}, {}, MeasureSystem::Metric});
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

TEST_F(PotModelsTest, PriceIsAskedForQuietlyAndToldOn) {
    CutsModel cuts(m_catalogue, nullptr);
    const Tester tester(&cuts, Tester::FailureReportingMode::Fatal);
    cuts.show({{QStringLiteral("chicken-leg"), Mass::fromPounds(3), true},
               {QStringLiteral("chicken-foot"), Mass::fromPounds(1), true}},
              m_prices);
    const QModelIndex known = cuts.index(0, CutsModel::PriceColumn);
    const QModelIndex missing = cuts.index(1, CutsModel::PriceColumn);
    EXPECT_EQ(known.data().toString(), QStringLiteral("$1.00/lb"));
    EXPECT_EQ(missing.data().toString(), QStringLiteral("price?"));
    EXPECT_TRUE(missing.data(Qt::EditRole).toString().isEmpty());
    QSignalSpy edited(&cuts, &CutsModel::edited);
    QSignalSpy refused(&cuts, &CutsModel::refused);
    QString item;
    std::optional<double> price = -1;
    QObject::connect(&cuts, &CutsModel::priced, &cuts,
                     [&](const QString& id, std::optional<double> perKilogram) {
                         item = id;
                         price = perKilogram;
                     });
    EXPECT_TRUE(cuts.setData(missing, QStringLiteral("2"), Qt::EditRole));
    EXPECT_EQ(item, QStringLiteral("chicken-foot"));
    EXPECT_NEAR(price.value_or(0), 2 * 1000 / 453.59237, 1e-9);
    EXPECT_FALSE(cuts.setData(known, known.data(Qt::EditRole), Qt::EditRole)) << "walked through";
    EXPECT_FALSE(cuts.setData(known, QStringLiteral("dear"), Qt::EditRole));
    EXPECT_EQ(refused.size(), 1);
    EXPECT_TRUE(cuts.setData(known, QString(), Qt::EditRole));
    EXPECT_FALSE(price) << "an empty cell takes the price away";
    EXPECT_EQ(edited.size(), 0) << "a price is no part of the pot";
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
