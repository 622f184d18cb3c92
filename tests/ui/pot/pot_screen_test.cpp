#include "ui/pot/item_picker.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/pot_screen_fixture.h"
#include "ui/shared/text_field.h"

#include <QPushButton>
#include <QSignalSpy>

namespace ladlework::ui {

using quantity::Mass;
using quantity::Volume;

namespace {

class PotScreenTest : public PotScreenFixture {};

} // namespace

TEST_F(PotScreenTest, WaterIsReckonedOnEachKeyAndStoredOnce) {
    const qint64 before = lastAction();
    const QString stockBefore = stockOut();
    start(QStringLiteral("Water"), QStringLiteral("2"));
    const QString twoQuarts = stockOut();
    EXPECT_NE(twoQuarts, stockBefore);
    QTest::keyClicks(edit(QStringLiteral("Water")), QStringLiteral(" quarts"));
    EXPECT_EQ(stockOut(), twoQuarts) << "a bare number keeps the unit that was shown";
    EXPECT_EQ(lastAction(), before) << "nothing is stored while she types";
    EXPECT_EQ(chicken().water, Volume::fromQuarts(3));
    QTest::keyClick(edit(QStringLiteral("Water")), Qt::Key_Return);
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_EQ(chicken().water, Volume::fromQuarts(2));
    EXPECT_EQ(lastSentence(), QStringLiteral("Set the water of Chicken legs to 2 quarts"));
    EXPECT_TRUE(edit(QStringLiteral("Water"))->hasFocus());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(edit(QStringLiteral("Water"))->text(), QStringLiteral("3 quarts"));
    EXPECT_EQ(stockOut(), stockBefore);
}

TEST_F(PotScreenTest, EscapeTakesTheTypedWaterBack) {
    const QString stockBefore = stockOut();
    start(QStringLiteral("Water"), QStringLiteral("6 quarts"));
    QTest::keyClick(edit(QStringLiteral("Water")), Qt::Key_Escape);
    EXPECT_EQ(stockOut(), stockBefore);
    EXPECT_EQ(chicken().water, Volume::fromQuarts(3));
}

TEST_F(PotScreenTest, HalfTypedZeroIsNotReckoned) {
    const QString stockBefore = stockOut();
    start(QStringLiteral("Water"), QStringLiteral("0"));
    EXPECT_EQ(stockOut(), stockBefore);
    QTest::keyClick(edit(QStringLiteral("Water")), Qt::Key_Return);
    EXPECT_EQ(m_family.desk().told.size(), 1) << "a pot without water is refused";
    EXPECT_EQ(edit(QStringLiteral("Water"))->text(), QStringLiteral("3 quarts"));
}

TEST_F(PotScreenTest, WhatCannotBeReckonedLeavesTheAnswerOfBefore) {
    const auto* drawing = m_screen.findChild<PotDrawing*>();
    const QString stockBefore = stockOut();
    start(QStringLiteral("Water"), QStringLiteral("0"));
    EXPECT_EQ(stockOut(), stockBefore);
    EXPECT_TRUE(drawing->accessibleDescription().startsWith(
        QStringLiteral("As before the last change: Water 3 quarts")));
    QTest::keyClicks(edit(QStringLiteral("Water")), QStringLiteral(".5"));
    EXPECT_TRUE(drawing->accessibleDescription().startsWith(QStringLiteral("Water 2 cups")));
}

TEST_F(PotScreenTest, StripWaitsWhileTheLineMoves) {
    auto* drawing = m_screen.findChild<PotDrawing*>();
    drawing->setFocus();
    QTest::qWait(250); // until the cooling is said too
    QSignalSpy told(&m_screen, &FamilyScreen::findingsChanged);
    for (int key = 0; key < 9; ++key)
        QTest::keyPress(drawing, Qt::Key_Up); // past what these bones bear
    EXPECT_EQ(told.size(), 0);
    QTest::keyRelease(drawing, Qt::Key_Up);
    EXPECT_TRUE(hasCode(m_screen.findings(), u"water-above-most"));
}

TEST_F(PotScreenTest, WaterLineIsMovedByKeys) {
    auto* drawing = m_screen.findChild<PotDrawing*>();
    drawing->setFocus();
    const qint64 before = lastAction();
    QTest::keyPress(drawing, Qt::Key_Down);
    EXPECT_EQ(edit(QStringLiteral("Water"))->text(), QStringLiteral("2¾ quarts"))
        << "the field follows the line";
    QTest::keyPress(drawing, Qt::Key_Down);
    EXPECT_EQ(lastAction(), before);
    QTest::keyRelease(drawing, Qt::Key_Down);
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_NEAR(chicken().water.toQuarts(), 2.5, 1e-9);
    EXPECT_TRUE(drawing->hasFocus());
}

TEST_F(PotScreenTest, CutIsAddedByKeys) {
    ItemPicker* pick = byName<ItemPicker>(m_screen, QStringLiteral("Add bones or a cut"));
    pick->setFocus();
    pick->setEditText(QStringLiteral("chicken feet"));
    QTest::keyClick(pick->lineEdit(), Qt::Key_Return);
    auto* mass = edit(QStringLiteral("Mass as bought"));
    EXPECT_TRUE(mass->hasFocus());
    QTest::keyClicks(mass, QStringLiteral("1 lb"));
    QTest::keyClick(mass, Qt::Key_Return);
    ASSERT_EQ(chicken().cuts.size(), 2);
    EXPECT_EQ(chicken().cuts.last().cut, QStringLiteral("chicken-foot"));
    EXPECT_NEAR(chicken().cuts.last().mass.toPounds(), 1, 1e-9);
    EXPECT_EQ(lastSentence(), QStringLiteral("Added chicken feet to Chicken legs"));
    EXPECT_TRUE(pick->currentText().isEmpty());
}

TEST_F(PotScreenTest, ExtraIsAddedAndCounted) {
    ItemPicker* pick =
        byName<ItemPicker>(m_screen, QStringLiteral("Add a vegetable, herb or spice"));
    pick->setEditText(QStringLiteral("carrot"));
    QTest::keyClick(pick->lineEdit(), Qt::Key_Return);
    ASSERT_EQ(chicken().extras.size(), 2);
    const Mass carrot = m_family.context().catalogue.extra(QStringLiteral("carrot"))->piece;
    EXPECT_EQ(chicken().extras.last().mass, carrot);
    extras()->setFocus();
    extras()->setCurrentIndex(extras()->model()->index(1, 1));
    QTest::keyClicks(extras(), QStringLiteral("3"));
    auto* editor = extras()->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_EQ(chicken().extras.last().mass, carrot * 3);
    EXPECT_EQ(lastSentence(), QStringLiteral("Changed carrot in Chicken legs"));
    EXPECT_TRUE(extras()->hasFocus());
}

TEST_F(PotScreenTest, LastCutCannotGoAndNothingIsLost) {
    const qint64 before = lastAction();
    cuts()->setFocus();
    cuts()->setCurrentIndex(cuts()->model()->index(0, 1));
    QTest::keyClick(cuts(), Qt::Key_Delete);
    ASSERT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(lastAction(), before);
    EXPECT_EQ(cuts()->model()->rowCount(), 1) << "it stands there again";
    EXPECT_EQ(chicken().cuts.size(), 1);
}

TEST_F(PotScreenTest, LineIsTakenOutWithDelete) {
    extras()->setFocus();
    extras()->setCurrentIndex(extras()->model()->index(0, 1));
    QTest::keyClick(extras(), Qt::Key_Delete);
    EXPECT_TRUE(chicken().extras.isEmpty());
    EXPECT_EQ(lastSentence(), QStringLiteral("Took onion out of Chicken legs"));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(chicken().extras.size(), 1);
    EXPECT_EQ(extras()->model()->rowCount(), 1);
}

TEST_F(PotScreenTest, PotOfThePracticeIsSaidAndCopied) {
    auto* own = byText<QPushButton>(m_screen, QStringLiteral("Make it their own"));
    EXPECT_FALSE(own->isVisible());
    const PotId shared = addPracticePot();
    choose(shared);
    EXPECT_TRUE(own->isVisible());
    own->click();
    ASSERT_EQ(pots().size(), 4);
    EXPECT_FALSE(own->isVisible()) << "the copy is chosen";
    EXPECT_EQ(edit(QStringLiteral("Name"))->text(), QStringLiteral("Shared legs, Hale"));
    start(QStringLiteral("Water"), QStringLiteral("2 quarts"));
    QTest::keyClick(edit(QStringLiteral("Water")), Qt::Key_Return);
    EXPECT_EQ(pot(shared).water, Volume::fromQuarts(3)) << "the practice's pot stays";
}

TEST_F(PotScreenTest, NewPotIsReadyToBeNamed) {
    trigger(QStringLiteral("Start a new pot"));
    ASSERT_EQ(pots().size(), 3);
    auto* name = edit(QStringLiteral("Name"));
    EXPECT_TRUE(name->hasFocus());
    QTest::keyClicks(name, QStringLiteral("Sunday pot"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(lastSentence(), QStringLiteral("Renamed the pot New pot to Sunday pot"));
    EXPECT_TRUE(list()->currentIndex().data().toString().startsWith(QStringLiteral("Sunday pot")));
}

TEST_F(PotScreenTest, PotIsRemovedUnlessItIsUsed) {
    m_family.plan(FamilyWorkbook::monday(),
                  {week::Placement{FamilyWorkbook::today(), m_family.beef, QTime()}});
    choose(m_family.beef);
    list()->setFocus();
    QTest::keyClick(list(), Qt::Key_Delete);
    EXPECT_EQ(m_family.desk().told.size(), 1);
    EXPECT_EQ(pots().size(), 2);
    choose(m_family.chicken);
    QTest::keyClick(list(), Qt::Key_Delete);
    EXPECT_EQ(pots().size(), 1);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(pots().size(), 2);
}

TEST_F(PotScreenTest, FindingLeadsToItsField) {
    start(QStringLiteral("Water"), QStringLiteral("8 quarts"));
    ASSERT_TRUE(hasCode(m_screen.findings(), u"water-above-most"));
    m_screen.showField(QStringLiteral("water"));
    EXPECT_TRUE(edit(QStringLiteral("Water"))->hasFocus());
    m_screen.showField(QStringLiteral("cuts[0]"));
    EXPECT_TRUE(cuts()->hasFocus());
    EXPECT_EQ(cuts()->currentIndex().row(), 0);
    m_screen.showField(QStringLiteral("extras[0]"));
    EXPECT_TRUE(extras()->hasFocus());
    QSignalSpy wanted(&m_screen, &FamilyScreen::screenWanted);
    m_screen.showField(QStringLiteral("members[1]"));
    ASSERT_EQ(wanted.size(), 1);
}

TEST_F(PotScreenTest, WithoutPotsTheNextStepIsOffered) {
    for (const PotId id : {m_family.chicken, m_family.beef}) {
        choose(id);
        trigger(QStringLiteral("Remove the chosen pot"));
    }
    ASSERT_TRUE(pots().isEmpty());
    EXPECT_TRUE(m_screen.findings().isEmpty());
    auto* button = qobject_cast<QPushButton*>(m_screen.firstField());
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isVisible());
    button->click();
    EXPECT_EQ(pots().size(), 1);
    EXPECT_TRUE(cuts()->isVisible());
}

} // namespace ladlework::ui
