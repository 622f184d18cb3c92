#include "ui/shared/amount_delegate.h"

#include "ui/shared/amount_edit.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QSignalSpy>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

namespace ladlework::ui {

class AmountDelegateTest : public ::testing::Test {
protected:
    AmountDelegateTest()
        : m_model(2, 1), m_tester(&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal),
          m_delegate(AmountDelegate::Kind::Mass, quantity::MeasureSystem::UsCustomary, nullptr) {
        m_model.setData(m_model.index(0, 0), exact, Qt::EditRole);
        m_view.setModel(&m_model);
        m_view.setItemDelegate(&m_delegate);
        m_view.show();
        QApplication::setActiveWindow(&m_view);
        m_view.setCurrentIndex(m_model.index(0, 0));
    }

    QuantityEdit* openEditor() {
        m_view.edit(m_model.index(0, 0));
        return m_view.findChild<QuantityEdit*>();
    }
    [[nodiscard]] double stored() const {
        return m_model.index(0, 0).data(Qt::EditRole).toDouble();
    }

    static constexpr double exact = 1234.5;
    QStandardItemModel m_model;
    QAbstractItemModelTester m_tester;
    AmountDelegate m_delegate;
    QTableView m_view;
};

TEST_F(AmountDelegateTest, writesWhatIsTypedInTheBaseUnit) {
    QuantityEdit* editor = openEditor();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("2 lb"));
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
    // NIST Handbook 44: 1 lb = 453.59237 g exactly.
    EXPECT_NEAR(stored(), 907.18474, 1e-9);
}

TEST_F(AmountDelegateTest, anUntouchedCellKeepsItsExactAmount) {
    QuantityEdit* editor = openEditor();
    ASSERT_NE(editor, nullptr);
    const QSignalSpy changed(&m_model, &QAbstractItemModel::dataChanged);
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_EQ(stored(), exact);
    EXPECT_EQ(changed.count(), 0);
}

TEST_F(AmountDelegateTest, textThatCannotBeReadKeepsTheEditorOpenAndTheModelWhole) {
    QuantityEdit* editor = openEditor();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("plenty"));
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_EQ(m_view.findChild<QuantityEdit*>(), editor);
    EXPECT_EQ(stored(), exact);
    QTest::keyClick(editor, Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_EQ(stored(), exact);
}

} // namespace ladlework::ui
