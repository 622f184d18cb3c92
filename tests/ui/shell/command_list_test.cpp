#include "ui/shell/command_list.h"

#include "ui/shell/family_pane.h"
#include "ui/shell/window_fixture.h"

namespace ladlework::ui {

class CommandListTest : public WindowFixture {};

TEST_F(CommandListTest, findsAndTriggersByTyping) {
    open();
    m_window->view()->showFamily(m_ash, QStringLiteral("today"));
    key(Qt::Key_K, Qt::ControlModifier);
    ASSERT_TRUE(m_window->commandList().isVisible());
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("progr"));
    key(Qt::Key_Return);
    EXPECT_FALSE(m_window->commandList().isVisible());
    EXPECT_EQ(m_window->findChild<FamilyPane*>()->screenId(), QStringLiteral("progress"));
}

TEST_F(CommandListTest, theScreensOwnActionsAreInIt) {
    open();
    m_window->view()->showFamily(m_ash, QStringLiteral("today"));
    key(Qt::Key_K, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("what was drunk"));
    key(Qt::Key_Return);
    EXPECT_EQ(m_window->findChild<FamilyPane*>()->screenId(), QStringLiteral("log"));
}

TEST_F(CommandListTest, escapeGoesBackToWhereOneWas) {
    open();
    key(Qt::Key_F, Qt::ControlModifier);
    QWidget* before = QApplication::focusWidget();
    ASSERT_NE(before, nullptr);
    key(Qt::Key_K, Qt::ControlModifier);
    EXPECT_NE(QApplication::focusWidget(), before);
    key(Qt::Key_Escape);
    EXPECT_FALSE(m_window->commandList().isVisible());
    EXPECT_EQ(QApplication::focusWidget(), before);
}

TEST_F(CommandListTest, everyActionHasWordsAndNoTwoShareAShortcut) {
    open();
    m_window->view()->showFamily(m_ash, QStringLiteral("today"));
    QHash<QKeySequence, QString> taken;
    for (const auto& command : m_window->windowActions().allCommands()) {
        if (command.action->isSeparator())
            continue;
        EXPECT_FALSE(plainText(*command.action).isEmpty());
        for (const QKeySequence& keys : command.action->shortcuts()) {
            EXPECT_FALSE(taken.contains(keys))
                << keys.toString().toStdString() << ": " << taken.value(keys).toStdString()
                << " and " << command.action->text().toStdString();
            taken.insert(keys, command.action->text());
        }
    }
    EXPECT_GT(taken.size(), 20);
}

} // namespace ladlework::ui
