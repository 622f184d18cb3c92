#include "ui/families/new_family_panel.h"

#include "ui/shared/workbook_fixture.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace ladlework::ui {

class NewFamilyPanelTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_panel = std::make_unique<NewFamilyPanel>(*m_context, nullptr);
        m_panel->show();
        QApplication::setActiveWindow(m_panel.get());
        m_panel->startAfresh();
    }
    std::unique_ptr<NewFamilyPanel> m_panel;
};

TEST_F(NewFamilyPanelTest, aNameAndEnterAreEnough) {
    const QSignalSpy made(m_panel.get(), &NewFamilyPanel::familyMade);
    QWidget* name = QApplication::focusWidget();
    ASSERT_NE(qobject_cast<QLineEdit*>(name), nullptr);
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(made.count(), 0) << "without a name nothing is made";
    QTest::keyClicks(name, QStringLiteral("  Hale "));
    QTest::keyClick(name, Qt::Key_Return);
    ASSERT_EQ(made.count(), 1);
    const auto families = m_workbook->families().families();
    ASSERT_EQ(families.size(), 1);
    EXPECT_EQ(families.first().name, QStringLiteral("Hale"));
    EXPECT_EQ(families.first().since, m_today);
    EXPECT_EQ(families.first().id, made.first().first().value<FamilyId>());
    EXPECT_EQ(m_workbook->history().nextUndo()->sentence,
              QStringLiteral("Took on the family Hale"));
}

TEST_F(NewFamilyPanelTest, aBareHeightIsInFeetOrMetres) {
    auto* altitude = m_panel->findChild<AltitudeEdit*>();
    ASSERT_NE(altitude, nullptr);
    altitude->setFocus();
    altitude->selectAll();
    QTest::keyClicks(altitude, QStringLiteral("5,280"));
    QTest::keyClick(altitude, Qt::Key_Return);
    // NIST SP 811, appendix B: 1 mile = 5 280 ft = 1 609.344 m.
    EXPECT_NEAR(altitude->value().toMetres(), 1609.344, 1e-6);
    EXPECT_EQ(altitude->text(), QStringLiteral("5,280 ft"));
    m_panel->findChild<QComboBox*>()->setCurrentIndex(1);
    EXPECT_EQ(altitude->text(), QStringLiteral("1,609 m"));
    altitude->selectAll();
    QTest::keyClicks(altitude, QStringLiteral("500"));
    QTest::keyClick(altitude, Qt::Key_Return);
    EXPECT_NEAR(altitude->value().toMetres(), 500.0, 1e-9);
}

TEST_F(NewFamilyPanelTest, escapeLeaves) {
    const QSignalSpy cancelled(m_panel.get(), &NewFamilyPanel::cancelled);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_EQ(cancelled.count(), 1);
}

} // namespace ladlework::ui
