#include "ui/shell/undo_actions.h"

#include "ui/shared/workbook_fixture.h"

#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>

namespace ladlework::ui {

class UndoActionsTest : public WorkbookFixture {
protected:
    void SetUp() override {
        WorkbookFixture::SetUp();
        m_field = new QLineEdit(&m_window);
        m_actions = new UndoActions(m_desk, &m_window);
        m_window.addAction(m_actions->undo());
        m_window.addAction(m_actions->redo());
        m_actions->setWorkbook(m_workbook.get());
        m_window.show();
        QApplication::setActiveWindow(&m_window);
        m_field->setFocus();
    }
    [[nodiscard]] qsizetype families() const { return m_workbook->families().families().size(); }

    QWidget m_window;
    QLineEdit* m_field = nullptr;
    UndoActions* m_actions = nullptr;
};

TEST_F(UndoActionsTest, followTheHistoryWithItsSentence) {
    EXPECT_FALSE(m_actions->undo()->isEnabled());
    addFamily(QStringLiteral("Ash"));
    EXPECT_TRUE(m_actions->undo()->isEnabled());
    EXPECT_EQ(m_actions->undo()->text(), QStringLiteral("&Undo: Prepared the test"));
    EXPECT_FALSE(m_actions->redo()->isEnabled());
    m_actions->undo()->trigger();
    EXPECT_EQ(families(), 0);
    m_actions->redo()->trigger();
    EXPECT_EQ(families(), 1);
}

TEST_F(UndoActionsTest, theKeysReachTheWorkbookFromAnUntouchedField) {
    addFamily(QStringLiteral("Ash"));
    QTest::keyClick(m_field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(families(), 0);
    QTest::keyClick(m_field, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(families(), 1);
}

TEST_F(UndoActionsTest, typingIsTakenBackInTheFieldFirst) {
    addFamily(QStringLiteral("Ash"));
    QTest::keyClicks(m_field, QStringLiteral("soup"));
    QTest::keyClick(m_field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(families(), 1);
    EXPECT_TRUE(m_field->text().isEmpty());
}

TEST_F(UndoActionsTest, anAmpersandInTheSentenceIsNoMnemonic) {
    act([&](store::Action&) -> Outcome { return {}; });
    people::Practice practice = m_workbook->practice().practice();
    practice.name = QStringLiteral("Salt & Bone");
    ASSERT_TRUE(m_workbook->act(QStringLiteral("Named it Salt & Bone"), [&](store::Action& action) {
        return m_workbook->practice().setPractice(action, practice);
    }));
    EXPECT_EQ(m_actions->undo()->text(), QStringLiteral("&Undo: Named it Salt && Bone"));
}

TEST_F(UndoActionsTest, withoutAWorkbookThereIsNothingToUndo) {
    addFamily(QStringLiteral("Ash"));
    m_actions->setWorkbook(nullptr);
    EXPECT_FALSE(m_actions->undo()->isEnabled());
    m_workbook.reset();
    m_actions->undo()->trigger();
    EXPECT_TRUE(m_desk.told.isEmpty());
}

} // namespace ladlework::ui
