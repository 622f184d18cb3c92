#include "ui/members/family_section.h"

#include "ui/members/members_screen.h"
#include "ui/members/vessels_section.h"
#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/text_field.h"

#include <QAction>
#include <QComboBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

class FamilyPageTest : public ::testing::Test {
protected:
    FamilyPageTest() : m_screen(m_family.context(), nullptr) {
        m_family.attach(m_screen);
        m_screen.resize(1136, 640);
        m_screen.show();
        for (QAction* action : m_screen.actions())
            if (action->text() == QStringLiteral("Go to the family and its kitchen"))
                action->trigger();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] people::Family record() { return m_family.casebook()->records().family; }
    [[nodiscard]] QList<kitchen::Vessel> vessels() {
        return m_family.casebook()->records().vessels;
    }
    static void type(QLineEdit* edit, const QString& text) {
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    [[nodiscard]] QLineEdit* field(const QString& name) const {
        auto* widget = m_screen.findChild<FamilySection*>()->field(name);
        return qobject_cast<QLineEdit*>(widget);
    }

    FamilyWorkbook m_family;
    MembersScreen m_screen;
};

} // namespace

TEST_F(FamilyPageTest, BareAltitudeIsFeet) {
    type(field(QStringLiteral("altitude")), QStringLiteral("5400"));
    EXPECT_NEAR(record().altitude.toFeet(), 5400, 0.01);
    EXPECT_EQ(field(QStringLiteral("altitude"))->text(), QStringLiteral("5,400 ft"));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(field(QStringLiteral("altitude"))->text(), QStringLiteral("0 ft"));
}

TEST_F(FamilyPageTest, MeasuresChangeEveryField) {
    QComboBox* measures = nullptr;
    for (QComboBox* box : m_screen.findChildren<QComboBox*>())
        if (box->itemText(1) == QStringLiteral("Metric"))
            measures = box;
    ASSERT_NE(measures, nullptr);
    measures->setCurrentIndex(1);
    Q_EMIT measures->activated(1);
    EXPECT_EQ(record().measures, quantity::MeasureSystem::Metric);
    EXPECT_EQ(field(QStringLiteral("altitude"))->text(), QStringLiteral("0 m"));
    EXPECT_TRUE(field(QStringLiteral("fridge"))->text().endsWith(QStringLiteral("L")));
}

TEST_F(FamilyPageTest, TheLanguageOfThePagesAndTheMostOfOneAnimalAreKept) {
    auto* family = m_screen.findChild<FamilySection*>();
    auto* language = qobject_cast<QComboBox*>(family->field(QStringLiteral("handoutLanguage")));
    auto* most = qobject_cast<QSpinBox*>(family->field(QStringLiteral("mostOfOneAnimal")));
    ASSERT_TRUE(language != nullptr && most != nullptr);
    EXPECT_EQ(language->currentText(), QStringLiteral("English"));
    EXPECT_EQ(most->text(), QStringLiteral("as often as it takes"));
    language->setFocus();
    QTest::keyClick(language, Qt::Key_Down);
    EXPECT_EQ(record().handoutLanguage, QStringLiteral("es"));
    EXPECT_EQ(language->currentText(), QStringLiteral("Español"));
    most->setFocus();
    QTest::keyClick(most, Qt::Key_Up);
    QTest::keyClick(most, Qt::Key_Up);
    EXPECT_EQ(record().mostOfOneAnimal, 2);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(most->value(), 1);
}

TEST_F(FamilyPageTest, UnknownZoneIsRefusedAndPutBack) {
    QComboBox* zone = nullptr;
    for (QComboBox* box : m_screen.findChildren<QComboBox*>())
        if (box->findText(QStringLiteral("America/Denver")) >= 0)
            zone = box;
    ASSERT_NE(zone, nullptr);
    zone->setCurrentIndex(zone->findText(QStringLiteral("America/Denver")));
    Q_EMIT zone->activated(zone->currentIndex());
    EXPECT_EQ(record().zone.id(), QByteArray("America/Denver"));
    zone->setEditText(QStringLiteral("Nowhere/Atall"));
    Q_EMIT zone->activated(0);
    EXPECT_FALSE(problemIn(m_screen).isEmpty());
    EXPECT_EQ(zone->currentText(), QStringLiteral("America/Denver"));
}

TEST_F(FamilyPageTest, VesselIsAddedMeasuredAndRemoved) {
    byText<QPushButton>(m_screen, QStringLiteral("Add a vessel"))->click();
    ASSERT_EQ(vessels().size(), 2);
    auto* name = byName<TextField>(m_screen, QStringLiteral("Name of the vessel"));
    EXPECT_TRUE(name->hasFocus());
    QTest::keyClicks(name, QStringLiteral("the enamel pot"));
    QTest::keyClick(name, Qt::Key_Return);
    type(byName<QLineEdit>(m_screen, QStringLiteral("Inside width")), QStringLiteral("30 cm"));
    const auto stored = vessels();
    const auto enamel = std::find_if(stored.cbegin(), stored.cend(), [](const auto& vessel) {
        return vessel.name == QStringLiteral("the enamel pot");
    });
    ASSERT_NE(enamel, stored.cend());
    EXPECT_NEAR(enamel->diameter.toCentimetres(), 30, 0.001);

    // A vessel that no kitchen has is refused, and the width goes back.
    type(byName<QLineEdit>(m_screen, QStringLiteral("Inside width")), QStringLiteral("3 m"));
    EXPECT_EQ(m_family.desk().told.size(), 1);

    auto* table = byName<QTableView>(m_screen, QStringLiteral("Vessels"));
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(vessels().size(), 1);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(vessels().size(), 2);
}

TEST_F(FamilyPageTest, WithoutAVesselThePageSaysWhatIsReckonedWith) {
    auto* table = byName<QTableView>(m_screen, QStringLiteral("Vessels"));
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_TRUE(vessels().isEmpty());
    EXPECT_FALSE(table->isVisible());
    EXPECT_FALSE(byName<TextField>(m_screen, QStringLiteral("Name of the vessel"))->isVisible());
}

} // namespace ladlework::ui
