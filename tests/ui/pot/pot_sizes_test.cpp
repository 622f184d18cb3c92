#include "ui/pot/pot_screen_fixture.h"

#include <QComboBox>
#include <QPushButton>
#include <QSpinBox>

namespace ladlework::ui {

using quantity::Mass;
using quantity::Volume;

namespace {

class PotSizesTest : public PotScreenFixture {
protected:
    [[nodiscard]] kitchen::Brewed brewed(PotId id) {
        return kitchen::brew(m_family.casebook()->brewInput(pot(id)), m_family.context().catalogue);
    }
};

} // namespace

TEST_F(PotSizesTest, FitsTheVesselInOneAction) {
    const kitchen::Pot before = chicken();
    const qint64 action = lastAction();
    trigger(QStringLiteral("Size the pot to what fits it"));
    EXPECT_EQ(lastAction(), action + 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Sized Chicken legs to the big pot"));
    EXPECT_GT(chicken().water, before.water) << "28 by 22 cm hold 13.5 L";
    EXPECT_GT(chicken().cuts.first().mass, before.cuts.first().mass);
    EXPECT_EQ(said(), QStringLiteral("Sized Chicken legs to the big pot. Undo takes it back."));
    EXPECT_EQ(edit(QStringLiteral("Water"))->text(),
              quantity::printVolume(chicken().water, quantity::MeasureSystem::UsCustomary));
    trigger(QStringLiteral("Size the pot to what fits it"));
    EXPECT_EQ(lastAction(), action + 1);
    EXPECT_EQ(said(), QStringLiteral("It has that size already."));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(chicken().water, before.water);
    EXPECT_EQ(chicken().cuts, before.cuts);
}

TEST_F(PotSizesTest, CoversTheDaysThatAreTyped) {
    auto* days = byName<QSpinBox>(m_screen, QStringLiteral("Days to cover"));
    EXPECT_EQ(days->value(), m_family.casebook()->records().practice.fridgeDays);
    days->setFocus();
    days->selectAll();
    QTest::keyClicks(days, QStringLiteral("2"));
    byText<QPushButton>(m_screen, QStringLiteral("Cover"))->click();
    EXPECT_EQ(lastSentence(), QStringLiteral("Sized Chicken legs to cover 2 days"));
    // Cy may have no poultry; Ana and Bo drink 6 cups a day. Amounts are rounded to quarter quarts
    // of water, a quarter cup of stock or two.
    EXPECT_NEAR(Volume::fromMillilitres(brewed(m_family.chicken).stockMl.best).toCups(), 12, 1);
    EXPECT_EQ(days->value(), 2) << "what was typed stays";
}

TEST_F(PotSizesTest, SaysBesideItWhyItCannotBe) {
    auto* days = byName<QSpinBox>(m_screen, QStringLiteral("Days to cover"));
    days->setValue(60);
    const qint64 action = lastAction();
    trigger(QStringLiteral("Size the pot to cover the days"));
    EXPECT_EQ(lastAction(), action);
    EXPECT_TRUE(said().contains(QStringLiteral("too small"))) << said().toStdString();
    EXPECT_TRUE(m_family.desk().told.isEmpty()) << "no box is in the way";
    choose(m_family.beef);
    EXPECT_TRUE(said().isEmpty()) << "it was said of the other pot";
}

TEST_F(PotSizesTest, UsesAllOfTheBones) {
    auto* mass = byName<QLineEdit>(m_screen, QStringLiteral("Mass at hand"));
    EXPECT_EQ(mass->text(), QStringLiteral("3 lb"));
    mass->setFocus();
    mass->selectAll();
    QTest::keyClicks(mass, QStringLiteral("2"));
    QTest::keyClick(mass, Qt::Key_Return);
    EXPECT_EQ(lastSentence(), QStringLiteral("Sized Chicken legs to 2 lb of chicken legs"));
    EXPECT_NEAR(chicken().cuts.first().mass.toPounds(), 2, 1e-9);
    EXPECT_NEAR(chicken().water.toQuarts(), 2, 1e-9) << "three quarts to three pounds";
    EXPECT_EQ(byName<QComboBox>(m_screen, QStringLiteral("Bones at hand"))->count(), 1);
}

TEST_F(PotSizesTest, LowMeatPotKeepsTheYield) {
    const double yield = brewed(m_family.chicken).stockMl.best;
    trigger(QStringLiteral("Make the nearest low-meat pot with the same yield"));
    ASSERT_EQ(pots().size(), 3);
    EXPECT_EQ(edit(QStringLiteral("Name"))->text(), QStringLiteral("Chicken legs, low-meat"));
    EXPECT_EQ(chicken().cuts.first().cut, QStringLiteral("chicken-leg")) << "the other one stays";
    for (const kitchen::Pot& made : pots())
        if (made.name == QStringLiteral("Chicken legs, low-meat")) {
            const kitchen::Brewed lean = brewed(made.id);
            EXPECT_TRUE(lean.lowMeat);
            EXPECT_NEAR(lean.stockMl.best / yield, 1, 0.06) << "to the marks of a kitchen";
        }
    EXPECT_FALSE(
        byText<QPushButton>(m_screen, QStringLiteral("Low-meat, same yield"))->isEnabled());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(pots().size(), 2);
}

TEST_F(PotSizesTest, PotOfThePracticeIsSizedAsACopy) {
    const PotId shared = addPracticePot();
    choose(shared);
    trigger(QStringLiteral("Size the pot to what fits it"));
    EXPECT_EQ(pot(shared).water, Volume::fromQuarts(3)) << "the other families keep theirs";
    EXPECT_EQ(edit(QStringLiteral("Name"))->text(), QStringLiteral("Shared legs, Hale"));
    EXPECT_EQ(lastSentence(),
              QStringLiteral("Sized Shared legs to the big pot, as this family's own"));
}

} // namespace ladlework::ui
