#include "ui/pot/cooling_curve.h"
#include "ui/pot/pot_screen_fixture.h"
#include "ui/shared/amount_edit.h"

#include <QComboBox>
#include <QSpinBox>

namespace ladlework::ui {

namespace {

class PotCoolingTest : public PotScreenFixture {
protected:
    PotCoolingTest() {
        trigger(QStringLiteral("Show: How it cools"));
        settle();
    }
    void settle() { QTest::qWait(300); }
    [[nodiscard]] QComboBox* container() const {
        return byName<QComboBox>(m_screen, QStringLiteral("Cool it in"));
    }
    [[nodiscard]] QComboBox* way() const {
        return byName<QComboBox>(m_screen, QStringLiteral("Way"));
    }
    [[nodiscard]] QSpinBox* count() const {
        return byName<QSpinBox>(m_screen, QStringLiteral("how many"));
    }
    [[nodiscard]] QString words() const {
        QString all;
        for (const QLabel* label : m_screen.findChildren<QLabel*>())
            if (label->isVisible() && label->wordWrap())
                all += label->text() + u'\n';
        return all;
    }
    /// Chooses a line with the keys, as a person does.
    static void pick(QComboBox* box, const QString& part) {
        box->setFocus();
        for (int row = 0; row < box->count(); ++row)
            if (box->itemText(row).contains(part)) {
                box->setCurrentIndex(row);
                Q_EMIT box->activated(row);
                return;
            }
        ADD_FAILURE() << "no line with " << part.toStdString();
    }
};

} // namespace

TEST_F(PotCoolingTest, SaysInWordsWhetherItPasses) {
    EXPECT_TRUE(container()->hasFocus());
    EXPECT_TRUE(container()->currentText().contains(QStringLiteral("shallow steel tray")));
    EXPECT_TRUE(words().contains(QStringLiteral("it cools in time: 70 °F after")))
        << words().toStdString();
    EXPECT_TRUE(count()->text().startsWith(QStringLiteral("fewest: ")));
    const auto* curve = m_screen.findChild<CoolingCurve*>();
    EXPECT_TRUE(curve->accessibleDescription().contains(
        QStringLiteral("The gate of 70 °F within 2 h is passed.")));
}

TEST_F(PotCoolingTest, ADeepPotIsTooSlowAndSaidInTheStrip) {
    pick(container(), QStringLiteral("stock pot"));
    settle();
    count()->setValue(1);
    settle();
    EXPECT_TRUE(words().contains(QStringLiteral("it is too slow: "))) << words().toStdString();
    EXPECT_TRUE(hasCode(m_screen.findings(), u"cooling-first-stage-late"));
    EXPECT_FALSE(hasCode(m_screen.findings(), u"cooling-estimate"))
        << "the strip stays empty when there is nothing to do";
    m_screen.showField(QStringLiteral("stages"));
    EXPECT_TRUE(way()->hasFocus());
}

TEST_F(PotCoolingTest, AUsualContainerBecomesTheKitchensInOneAction) {
    const qint64 before = lastAction();
    pick(container(), QStringLiteral("wide steel bowl"));
    EXPECT_EQ(lastAction(), before + 1);
    EXPECT_EQ(lastSentence(), QStringLiteral("Chose to cool Chicken legs in wide steel bowl"));
    const auto containers = m_family.casebook()->records().containers;
    ASSERT_EQ(containers.size(), 1);
    EXPECT_EQ(chicken().coolIn, containers.first().id);
    EXPECT_TRUE(container()->currentText().contains(QStringLiteral("wide steel bowl")));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_FALSE(chicken().coolIn.isStored());
    EXPECT_TRUE(m_family.casebook()->records().containers.isEmpty());
}

TEST_F(PotCoolingTest, WayIsKeptOnThePot) {
    pick(way(), QStringLiteral("ice bath"));
    EXPECT_EQ(chicken().coolingWay, kitchen::CoolingWay::IceBath);
    EXPECT_EQ(lastSentence(), QStringLiteral("Chose to cool Chicken legs in an ice bath, "
                                             "then refrigerator"));
}

TEST_F(PotCoolingTest, PotOfThePracticeKeepsNoContainer) {
    const PotId shared = addPracticePot();
    choose(shared);
    settle();
    const qint64 before = lastAction();
    pick(container(), QStringLiteral("wide steel bowl"));
    settle();
    EXPECT_EQ(lastAction(), before);
    EXPECT_TRUE(words().contains(QStringLiteral("Tried out here only")));
    EXPECT_TRUE(container()->currentText().contains(QStringLiteral("wide steel bowl")));
}

TEST_F(PotCoolingTest, HowManyIsTriedOutOnly) {
    const qint64 before = lastAction();
    const QString fewest = words();
    count()->setFocus();
    QTest::keyClick(count(), Qt::Key_Up);
    for (int more = 0; more < 8; ++more)
        QTest::keyClick(count(), Qt::Key_Up);
    settle();
    EXPECT_NE(words(), fewest);
    EXPECT_TRUE(words().contains(QStringLiteral("In 9 of these")));
    EXPECT_TRUE(words().contains(QStringLiteral("The fewest that pass: ")));
    EXPECT_EQ(lastAction(), before);
}

} // namespace ladlework::ui
