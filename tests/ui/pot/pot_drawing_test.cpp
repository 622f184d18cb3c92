#include "ui/pot/pot_drawing.h"

#include "ui/shared/family_workbook.h"

#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Volume;

namespace {

class PotDrawingTest : public ::testing::Test {
protected:
    PotDrawingTest() : m_book(m_family.casebook()), m_pot(*m_book->pot(m_family.chicken)) {
        show(m_pot.water);
        m_drawing.resize(560, 300);
        m_drawing.QWidget::show();
        m_drawing.setFocus();
        // What the screen does: it shows the draft with the water that the line is dragged to.
        QObject::connect(&m_drawing, &PotDrawing::waterDragged, &m_drawing,
                         [this](Volume water) { show(water); });
        QCoreApplication::processEvents();
    }
    void show(Volume water) {
        kitchen::Pot pot = m_pot;
        pot.water = water;
        const kitchen::BrewInput input = m_book->brewInput(pot);
        m_drawing.show(pot, input.vessel, kitchen::brew(input, m_family.context().catalogue),
                       quantity::MeasureSystem::UsCustomary);
    }
    void mouse(QEvent::Type type, double y) {
        const QPointF at(m_drawing.width() / 2.0, y);
        const bool move = type == QEvent::MouseMove;
        QMouseEvent event(type, at, m_drawing.mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton,
                          type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(&m_drawing, &event);
    }

    FamilyWorkbook m_family;
    std::shared_ptr<const casebook::Casebook> m_book;
    kitchen::Pot m_pot;
    PotDrawing m_drawing{nullptr};
    QSignalSpy m_chosen{&m_drawing, &PotDrawing::waterChosen};
    QSignalSpy m_draggedTo{&m_drawing, &PotDrawing::waterDragged};
};

Volume water(const QSignalSpy& spy) {
    return spy.last().first().value<Volume>();
}

} // namespace

TEST_F(PotDrawingTest, DraggingIsEnteringTheWater) {
    const double line = m_drawing.waterLine();
    mouse(QEvent::MouseButtonPress, line);
    mouse(QEvent::MouseMove, line - 10);
    const Volume lower = water(m_draggedTo);
    mouse(QEvent::MouseMove, line - 60);
    EXPECT_GT(water(m_draggedTo), lower) << "higher is more water";
    EXPECT_EQ(m_chosen.size(), 0) << "not before it is let go";
    mouse(QEvent::MouseButtonRelease, line - 60);
    ASSERT_EQ(m_chosen.size(), 1);
    EXPECT_EQ(water(m_chosen), water(m_draggedTo));
    EXPECT_EQ(water(m_chosen),
              quantity::roundToKitchen(water(m_chosen), quantity::MeasureSystem::UsCustomary))
        << "an amount that the kitchen can measure";
}

TEST_F(PotDrawingTest, AClickBesideTheLineChangesNothing) {
    for (double away : {-60.0, 60.0}) {
        mouse(QEvent::MouseButtonPress, m_drawing.waterLine() + away);
        mouse(QEvent::MouseMove, m_drawing.waterLine() + away / 2);
        mouse(QEvent::MouseButtonRelease, m_drawing.waterLine() + away / 2);
    }
    EXPECT_EQ(m_draggedTo.size(), 0);
    EXPECT_EQ(m_chosen.size(), 0);
}

TEST_F(PotDrawingTest, LineStaysInsideTheVessel) {
    mouse(QEvent::MouseButtonPress, m_drawing.waterLine());
    mouse(QEvent::MouseMove, -500);
    const auto brim = water(m_draggedTo);
    EXPECT_LE(brim, m_book->brewInput(m_pot).vessel.capacity());
    mouse(QEvent::MouseMove, 5000);
    EXPECT_GT(water(m_draggedTo), Volume{}) << "never a pot without water";
    mouse(QEvent::MouseButtonRelease, 5000);
}

TEST_F(PotDrawingTest, KeysMoveTheLineByWhatTheKitchenMeasures) {
    QTest::keyPress(&m_drawing, Qt::Key_Up);
    QTest::keyPress(&m_drawing, Qt::Key_Up);
    EXPECT_EQ(m_chosen.size(), 0) << "still held";
    QTest::keyRelease(&m_drawing, Qt::Key_Up);
    ASSERT_EQ(m_chosen.size(), 1);
    // 3 quarts, then the next two that are printed: 3 1/4 and 3 1/2.
    EXPECT_NEAR(water(m_chosen).toQuarts(), 3.5, 1e-9);
    QTest::keyClick(&m_drawing, Qt::Key_Down);
    ASSERT_EQ(m_chosen.size(), 2);
    EXPECT_NEAR(water(m_chosen).toQuarts(), 3.25, 1e-9);
}

TEST_F(PotDrawingTest, RepeatedReleaseDoesNotChoose) {
    QTest::keyPress(&m_drawing, Qt::Key_Up);
    QKeyEvent repeated(QEvent::KeyRelease, Qt::Key_Up, Qt::NoModifier, QString(), true);
    QCoreApplication::sendEvent(&m_drawing, &repeated);
    EXPECT_EQ(m_chosen.size(), 0);
    QTest::keyRelease(&m_drawing, Qt::Key_Up);
    EXPECT_EQ(m_chosen.size(), 1);
}

TEST_F(PotDrawingTest, EscapeGivesUpAndLeavingChooses) {
    QTest::keyPress(&m_drawing, Qt::Key_Up);
    QTest::keyClick(&m_drawing, Qt::Key_Escape);
    EXPECT_EQ(m_chosen.size(), 0);
    EXPECT_EQ(water(m_draggedTo), m_pot.water);
    QTest::keyRelease(&m_drawing, Qt::Key_Up);
    EXPECT_EQ(m_chosen.size(), 0);
    QTest::keyPress(&m_drawing, Qt::Key_Up);
    m_drawing.clearFocus();
    EXPECT_EQ(m_chosen.size(), 1) << "what was moved is not lost";
}

TEST_F(PotDrawingTest, SaysItsAmounts) {
    EXPECT_TRUE(m_drawing.accessibleDescription().contains(QStringLiteral("3 quarts")))
        << m_drawing.accessibleDescription().toStdString();
}

} // namespace ladlework::ui
