#include "ui/members/containers_section.h"

#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"
#include "ui/shared/text_field.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using kitchen::Container;

namespace {

class ContainersSectionTest : public ::testing::Test {
protected:
    ContainersSectionTest() : m_section(m_family.context(), nullptr) {
        m_section.show(*m_family.casebook());
        QObject::connect(&m_family.workbook(), &store::Workbook::changed, &m_section,
                         [this] { m_section.show(*m_family.casebook()); });
        m_section.resize(900, 400);
        m_section.QWidget::show();
        QCoreApplication::processEvents(); // until the window is the active one
    }
    [[nodiscard]] QList<Container> containers() {
        return m_family.casebook()->records().containers;
    }
    void press(const QString& button) { byText<QPushButton>(m_section, button)->click(); }
    void type(const QString& name, const QString& text) {
        auto* edit = byName<QLineEdit>(m_section, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    [[nodiscard]] QTableView* table() const {
        return byName<QTableView>(m_section, QStringLiteral("Containers"));
    }

    FamilyWorkbook m_family;
    ContainersSection m_section;
};

} // namespace

TEST_F(ContainersSectionTest, IsAddedMeasuredAndRemoved) {
    EXPECT_FALSE(table()->isVisible());
    press(QStringLiteral("Add a container"));
    ASSERT_EQ(containers().size(), 1);
    auto* name = byName<TextField>(m_section, QStringLiteral("Name of the container"));
    EXPECT_TRUE(name->hasFocus());
    type(QStringLiteral("Name of the container"), QStringLiteral("roasting tray"));
    type(QStringLiteral("Inside length or width of the container"), QStringLiteral("15"));
    type(QStringLiteral("Inside width of the tray"), QStringLiteral("10 in"));
    type(QStringLiteral("Inside height of the container"), QStringLiteral("2"));
    const Container tray = containers().first();
    EXPECT_EQ(tray.name, QStringLiteral("roasting tray"));
    EXPECT_NEAR(tray.across.toInches(), 15, 1e-9);
    EXPECT_NEAR(tray.width.toInches(), 10, 1e-9);
    EXPECT_NEAR(tray.height.toInches(), 2, 1e-9);
    // 300 cubic inches; a US gallon is 231 of them (NIST Handbook 44).
    EXPECT_NEAR(tray.capacity().toGallons(), 300.0 / 231.0, 1e-6);
    EXPECT_EQ(m_family.workbook().history().nextUndo()->sentence,
              QStringLiteral("Changed the container roasting tray"));
    table()->setFocus();
    QTest::keyClick(table(), Qt::Key_Delete);
    EXPECT_TRUE(containers().isEmpty());
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(containers().size(), 1);
}

TEST_F(ContainersSectionTest, RoundOnesHaveOneWidth) {
    press(QStringLiteral("Add a container"));
    auto* shape = byName<QComboBox>(m_section, QStringLiteral("Shape of the container"));
    auto* width = byName<QLineEdit>(m_section, QStringLiteral("Inside width of the tray"));
    ASSERT_TRUE(width->isVisible());
    shape->setFocus();
    QTest::keyClick(shape, Qt::Key_Up);
    Q_EMIT shape->activated(shape->currentIndex());
    EXPECT_EQ(containers().first().shape, Container::Shape::Cylinder);
    EXPECT_EQ(containers().first().width, quantity::Length{});
    EXPECT_FALSE(width->isVisible());
    QTest::keyClick(shape, Qt::Key_Down);
    Q_EMIT shape->activated(shape->currentIndex());
    EXPECT_EQ(containers().first().shape, Container::Shape::Tray);
    EXPECT_GT(containers().first().width, quantity::Length{}) << "a square one, to be typed over";
}

TEST_F(ContainersSectionTest, WhatIsNoSizeIsRefusedAndTakenBack) {
    press(QStringLiteral("Add a container"));
    const Container before = containers().first();
    type(QStringLiteral("Inside height of the container"), QStringLiteral("3 ft 2 in"));
    EXPECT_EQ(m_family.desk().told.size(), 1) << "80 cm at most";
    EXPECT_EQ(containers().first(), before);
}

TEST_F(ContainersSectionTest, ModelSaysWhatItHolds) {
    ContainerModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    Container jar;
    jar.name = QStringLiteral("jar");
    jar.across = quantity::Length::fromCentimetres(10);
    jar.height = quantity::Length::fromCentimetres(14);
    jar.material = Container::Material::Glass;
    jar.covered = true;
    model.setContainers({jar}, quantity::MeasureSystem::Metric);
    ASSERT_EQ(model.rowCount(), 1);
    const auto text = [&model](int column) {
        return model.index(0, column).data().toString();
    };
    EXPECT_EQ(text(ContainerModel::SizeColumn), QStringLiteral("10 cm across"));
    EXPECT_EQ(text(ContainerModel::HoldsColumn), QStringLiteral("1.1 L")) << "pi/4 * 100 * 14 mL";
    EXPECT_EQ(text(ContainerModel::KindColumn), QStringLiteral("glass, covered"));
}

} // namespace ladlework::ui
