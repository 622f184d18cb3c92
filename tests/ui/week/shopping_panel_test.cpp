#include "ui/week/shopping_panel.h"

#include "ui/shared/family_workbook.h"
#include "ui/shared/text_field.h"
#include "ui/week/shopping_model.h"

#include <QAction>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using quantity::Mass;

/// The panel over the week of one pot of beef; what it does is stored and shown again.
class ShoppingPanelTest : public ::testing::Test {
protected:
    ShoppingPanelTest() : m_panel(m_family.context()) {
        QObject::connect(&m_family.workbook(), &store::Workbook::changed, &m_panel,
                         [this] { show(); });
        m_family.context().act(&m_panel, QStringLiteral("Put"), [this](store::Action& action) {
            week::WeekPlan plan = stored();
            plan.placements = {{FamilyWorkbook::monday(), m_family.beef, {}}};
            const auto set = m_family.workbook().weeks().setPlan(action, plan);
            return set ? Outcome{} : Outcome(passOn(set));
        });
        m_panel.resize(420, 600);
        m_panel.show();
        m_panel.table()->setFocus();
        QCoreApplication::processEvents();
    }

    week::WeekPlan stored() {
        week::WeekPlan plan = m_family.casebook()->plan(FamilyWorkbook::monday());
        plan.family = m_family.casebook()->records().family.id;
        plan.start = FamilyWorkbook::monday();
        return plan;
    }
    void show() { m_panel.show(m_family.casebook(), stored()); }
    void choose(int row) {
        m_panel.table()->setCurrentIndex(m_panel.model()->index(row, ShoppingModel::ThingColumn));
    }
    QString lastSentence() {
        const auto entry = m_family.workbook().history().nextUndo();
        return entry ? entry->sentence : QString();
    }

    FamilyWorkbook m_family;
    ShoppingPanel m_panel;
};

} // namespace

TEST_F(ShoppingPanelTest, SpaceSaysThatAllOfItIsAtHomeAndAgainThatItIsNot) {
    choose(1);
    const week::ShoppingItem item = *m_panel.model()->itemAt(1);
    QTest::keyClick(m_panel.table(), Qt::Key_Space);
    ASSERT_EQ(stored().atHome.size(), 1);
    EXPECT_EQ(stored().atHome.first(), (week::AtHome{item.id, item.needed}));
    EXPECT_TRUE(m_panel.model()->itemAt(1)->isAtHome());
    EXPECT_EQ(m_panel.table()->currentIndex().row(), 1) << "the choice stays";
    QTest::keyClick(m_panel.table(), Qt::Key_Space);
    EXPECT_TRUE(stored().atHome.isEmpty());
    EXPECT_TRUE(lastSentence().startsWith(QStringLiteral("Noted that there is no")));
}

TEST_F(ShoppingPanelTest, AnAmountAtHomeIsTypedIntoItsCellAndUndone) {
    m_panel.table()->setCurrentIndex(m_panel.model()->index(1, ShoppingModel::AtHomeColumn));
    const Mass before = m_panel.model()->itemAt(1)->toBuy;
    QTest::keyClick(m_panel.table(), Qt::Key_F2);
    auto* editor = m_panel.table()->viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("1 lb"));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents(); // the delegate hands the amount over when the key is done,
    QCoreApplication::processEvents(); // and the model speaks when the editor is
    ASSERT_EQ(stored().atHome.size(), 1);
    EXPECT_EQ(stored().atHome.first().mass, Mass::fromPounds(1));
    EXPECT_LT(m_panel.model()->itemAt(1)->toBuy, before);
    ASSERT_TRUE(m_family.workbook().undo());
    EXPECT_TRUE(stored().atHome.isEmpty());
    EXPECT_EQ(m_panel.model()->itemAt(1)->toBuy, before);
}

TEST_F(ShoppingPanelTest, SomethingElseIsAddedByEnterAndTakenOffByDelete) {
    m_panel.extra()->setFocus();
    QTest::keyClicks(m_panel.extra(), QStringLiteral("two bags of rice"));
    m_panel.extraSection()->setCurrentIndex(
        m_panel.extraSection()->findData(week::shopSectionId(week::ShopSection::Dry)));
    QTest::keyClick(m_panel.extra(), Qt::Key_Return);
    ASSERT_EQ(stored().extras.size(), 1);
    EXPECT_EQ(stored().extras.first(),
              (week::HouseholdExtra{QStringLiteral("two bags of rice"), week::ShopSection::Dry}));
    EXPECT_TRUE(m_panel.extra()->text().isEmpty());
    EXPECT_EQ(lastSentence(), QStringLiteral("Added two bags of rice to the shopping list"));
    QTest::keyClick(m_panel.extra(), Qt::Key_Return); // nothing written, nothing added
    EXPECT_EQ(stored().extras.size(), 1);

    for (int row = 0; row < m_panel.model()->rowCount(); ++row)
        if (const week::ShoppingItem* item = m_panel.model()->itemAt(row);
            item != nullptr && item->isHousehold())
            choose(row);
    m_panel.table()->setFocus();
    QTest::keyClick(m_panel.table(), Qt::Key_Delete);
    EXPECT_TRUE(stored().extras.isEmpty());
}

TEST_F(ShoppingPanelTest, TheListGoesToTheClipboard) {
    m_panel.copyToClipboard();
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(QStringLiteral("shank")));
}

} // namespace ladlework::ui
