#include "ui/members/hours_section.h"

#include "ui/shared/by_name.h"
#include "ui/shared/family_workbook.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::Duration;
using week::UsualHours;

namespace {

class HoursSectionTest : public ::testing::Test {
protected:
    HoursSectionTest() : m_section(m_family.context(), nullptr) {
        m_section.show(*m_family.casebook());
        QObject::connect(&m_family.workbook(), &store::Workbook::changed, &m_section,
                         [this] { m_section.show(*m_family.casebook()); });
        m_section.resize(900, 400);
        m_section.QWidget::show();
        QCoreApplication::processEvents(); // until the window is the active one
    }
    [[nodiscard]] QList<UsualHours> hours() { return m_family.casebook()->records().usualHours; }
    void press(const QString& button) { byText<QPushButton>(m_section, button)->click(); }
    void type(const QString& name, const QString& text) {
        auto* edit = byName<QLineEdit>(m_section, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    [[nodiscard]] QTableView* table() const {
        return byName<QTableView>(m_section, QStringLiteral("Free hours for cooking"));
    }
    [[nodiscard]] QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }

    FamilyWorkbook m_family;
    HoursSection m_section;
};

} // namespace

TEST_F(HoursSectionTest, AreAddedChangedAndRemovedByKeys) {
    EXPECT_FALSE(table()->isVisible());
    press(QStringLiteral("Add free hours"));
    ASSERT_EQ(hours().size(), 1);
    EXPECT_EQ(hours().first().weekday, 6);
    EXPECT_EQ(lastSentence(), QStringLiteral("Added free hours on Saturday"));
    type(QStringLiteral("When the free hours begin"), QStringLiteral("8:30"));
    type(QStringLiteral("How long they are"), QStringLiteral("7 h 15 min"));
    auto* pots = byName<QSpinBox>(m_section, QStringLiteral("Pots that can be on at once"));
    pots->setFocus();
    QTest::keyClick(pots, Qt::Key_Up);
    EXPECT_EQ(hours().first(), (UsualHours{6, {QTime(8, 30), Duration::fromMinutes(435), 2}}));
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_EQ(pots->value(), 1);
    table()->setFocus();
    QTest::keyClick(table(), Qt::Key_Delete);
    EXPECT_TRUE(hours().isEmpty());
    EXPECT_FALSE(table()->isVisible());
}

TEST_F(HoursSectionTest, StandInOrderOfTheWeekAndTheChosenStaysChosen) {
    press(QStringLiteral("Add free hours")); // Saturday
    press(QStringLiteral("Add free hours")); // Sunday
    ASSERT_EQ(hours().size(), 2);
    EXPECT_EQ(hours().last().weekday, 7);
    auto* day = byName<QComboBox>(m_section, QStringLiteral("Day of the free hours"));
    day->setFocus();
    QTest::keyClick(day, Qt::Key_Home); // Monday
    EXPECT_EQ(hours().first().weekday, 1);
    EXPECT_EQ(table()->currentIndex().row(), 0) << "it moved up, and is still the chosen one";
    EXPECT_EQ(day->currentText(), QStringLiteral("Monday"));
}

TEST_F(HoursSectionTest, WhatCannotBeIsRefusedAndPutBack) {
    press(QStringLiteral("Add free hours"));
    type(QStringLiteral("How long they are"), QStringLiteral("30 h"));
    EXPECT_EQ(hours().first().hours.length, Duration::fromHours(6));
    EXPECT_EQ(byName<QLineEdit>(m_section, QStringLiteral("How long they are"))->text(),
              QStringLiteral("6 h"));
}

TEST_F(HoursSectionTest, TheTableSaysTheHoursInWords) {
    HoursModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setHours({{3, {QTime(), Duration::fromHours(2.5), 1}},
                    {6, {QTime(9, 0), Duration::fromHours(6), 3}}});
    const auto row = [&model](int at) {
        QStringList words;
        for (int column = 0; column < model.columnCount(); ++column)
            words << model.index(at, column).data().toString();
        return words.join(u'|');
    };
    EXPECT_EQ(row(0), QStringLiteral("Wednesday|any time|2 h 30 min|one pot"));
    EXPECT_TRUE(row(1).startsWith(QStringLiteral("Saturday|")));
    EXPECT_TRUE(row(1).endsWith(QStringLiteral("|6 h|3 pots")));
}

} // namespace ladlework::ui
