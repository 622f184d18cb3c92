#include "ui/shared/amount_edit.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Mass;
using quantity::MeasureSystem;
using quantity::Volume;

class AmountEditTest : public ::testing::Test {
protected:
    AmountEditTest() {
        auto* row = new QHBoxLayout(&m_window);
        row->addWidget(&m_edit);
        row->addWidget(&m_other);
        m_edit.setAccessibleDescription(QStringLiteral("how much water"));
        m_edit.setValue(Volume::fromCups(2), MeasureSystem::UsCustomary);
        m_window.show();
        QApplication::setActiveWindow(&m_window);
        m_edit.setFocus();
        m_edit.selectAll();
    }

    void type(const QString& text) { QTest::keyClicks(&m_edit, text); }

    QWidget m_window;
    VolumeEdit m_edit;
    QLineEdit m_other;
};

TEST_F(AmountEditTest, showsTheValueInKitchenWords) {
    EXPECT_EQ(m_edit.text(), QStringLiteral("2 cups"));
    m_edit.setValue(Volume::fromMillilitres(350), MeasureSystem::Metric);
    EXPECT_EQ(m_edit.text(), QStringLiteral("350 mL"));
}

TEST_F(AmountEditTest, typingTellsOnEveryReadableKeystrokeAndCommitsOnce) {
    const QSignalSpy edited(&m_edit, &QuantityEdit::valueEdited);
    const QSignalSpy committed(&m_edit, &QuantityEdit::valueCommitted);
    type(QStringLiteral("3 cups"));
    EXPECT_GE(edited.count(), 1);
    EXPECT_EQ(committed.count(), 0);
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(committed.count(), 1);
    EXPECT_EQ(m_edit.value(), Volume::fromCups(3));
    m_other.setFocus();
    EXPECT_EQ(committed.count(), 1) << "leaving after Enter must not commit again";
}

TEST_F(AmountEditTest, bareNumberKeepsTheUnitThatWasShown) {
    m_edit.setValue(Volume::fromQuarts(3), MeasureSystem::UsCustomary);
    m_edit.selectAll();
    type(QStringLiteral("2"));
    EXPECT_NEAR(m_edit.value().toQuarts(), 2, 1e-9);
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(m_edit.text(), QStringLiteral("2 quarts"));
    // Half typed it shows nothing new: the unit stays that of the words before.
    m_edit.selectAll();
    type(QStringLiteral("1/4"));
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(m_edit.text(), QStringLiteral("1 cup"));
    m_edit.selectAll();
    type(QStringLiteral("2"));
    EXPECT_NEAR(m_edit.value().toCups(), 2, 1e-9) << "now cups were shown";
}

TEST_F(AmountEditTest, bareTimeIsNeverSixtyTimesAsLong) {
    DurationEdit edit;
    edit.setValue(quantity::Duration::fromMinutes(45), MeasureSystem::UsCustomary);
    edit.selectAll();
    QTest::keyClicks(&edit, QStringLiteral("90"));
    EXPECT_EQ(edit.value().toMinutes(), 90);
    edit.setValue(quantity::Duration::fromMinutes(150), MeasureSystem::UsCustomary);
    edit.selectAll();
    QTest::keyClicks(&edit, QStringLiteral("90"));
    EXPECT_FALSE(edit.isGood());
    EXPECT_TRUE(edit.problemSentence().contains(QStringLiteral("90 min")));
    QTest::keyClicks(&edit, QStringLiteral(" min"));
    EXPECT_TRUE(edit.isGood());
    EXPECT_EQ(edit.value().toMinutes(), 90);
}

TEST_F(AmountEditTest, leavingCommits) {
    const QSignalSpy committed(&m_edit, &QuantityEdit::valueCommitted);
    type(QStringLiteral("1 1/2"));
    QTest::keyClick(&m_edit, Qt::Key_Tab);
    EXPECT_EQ(committed.count(), 1);
    EXPECT_EQ(m_edit.text(), QStringLiteral("1½ cups"));
}

TEST_F(AmountEditTest, anUntouchedEditCommitsNothing) {
    const QSignalSpy committed(&m_edit, &QuantityEdit::valueCommitted);
    m_other.setFocus();
    m_edit.setFocus();
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(committed.count(), 0);
}

TEST_F(AmountEditTest, unreadableTextIsMarkedExplainedAndTakenBackOnLeaving) {
    const QSignalSpy committed(&m_edit, &QuantityEdit::valueCommitted);
    type(QStringLiteral("3 bananas"));
    EXPECT_FALSE(m_edit.isGood());
    EXPECT_TRUE(m_edit.property("bad").toBool());
    EXPECT_FALSE(m_edit.actions().isEmpty()) << "the mark beside the colour";
    EXPECT_EQ(m_edit.toolTip(), m_edit.problemSentence());
    EXPECT_EQ(m_edit.accessibleDescription(), m_edit.problemSentence());
    QTest::keyClick(&m_edit, Qt::Key_Return);
    EXPECT_EQ(m_edit.text(), QStringLiteral("3 bananas")) << "Enter leaves it to be mended";
    QTest::keyClick(&m_edit, Qt::Key_Tab);
    EXPECT_TRUE(m_edit.isGood());
    EXPECT_EQ(m_edit.value(), Volume::fromCups(2)) << "not the 3 that was readable in passing";
    EXPECT_EQ(m_edit.text(), QStringLiteral("2 cups"));
    EXPECT_EQ(m_edit.accessibleDescription(), QStringLiteral("how much water"));
    EXPECT_TRUE(m_edit.toolTip().isEmpty());
    EXPECT_EQ(committed.count(), 0);
}

TEST_F(AmountEditTest, escapeTakesTheTypingBack) {
    type(QStringLiteral("7 cups"));
    QTest::keyClick(&m_edit, Qt::Key_Escape);
    EXPECT_EQ(m_edit.value(), Volume::fromCups(2));
    EXPECT_EQ(m_edit.text(), QStringLiteral("2 cups"));
}

TEST_F(AmountEditTest, aRefreshDoesNotDisturbTyping) {
    type(QStringLiteral("4 cu"));
    m_edit.setValue(Volume::fromCups(9), MeasureSystem::UsCustomary);
    EXPECT_EQ(m_edit.text(), QStringLiteral("4 cu"));
}

TEST_F(AmountEditTest, eachQuantityReadsAndPrintsItself) {
    MassEdit mass;
    mass.setValue(Mass::fromPounds(3), MeasureSystem::UsCustomary);
    EXPECT_EQ(mass.text(), QStringLiteral("3 lb"));
    DurationEdit duration;
    duration.setValue(quantity::Duration::fromMinutes(150), MeasureSystem::Metric);
    EXPECT_EQ(duration.text(), QStringLiteral("2 h 30 min"));
    LengthEdit length;
    length.setValue(quantity::Length::fromCentimetres(28), MeasureSystem::Metric);
    EXPECT_EQ(length.text(), QStringLiteral("28 cm"));
}

} // namespace ladlework::ui
