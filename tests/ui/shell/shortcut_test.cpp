#include "ui/shell/window_fixture.h"
#include "ui/shell/workbook_view.h"

#include <QAbstractButton>
#include <QHash>

namespace ladlework::ui {

class ShortcutTest : public WindowFixture {
protected:
    void SetUp() override {
        WindowFixture::SetUp();
        open();
        m_window->view()->showFamily(m_ash, QStringLiteral("today"));
        QApplication::processEvents();
    }
};

// Qt runs neither of two actions that share a shortcut: on no screen may one be given twice.
TEST_F(ShortcutTest, NoShortcutIsGivenTwiceOnAnyScreen) {
    constexpr int screens = 8;
    for (int number = 1; number <= screens; ++number) {
        key(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
        QHash<QString, QString> taken;
        const QList<CommandModel::Command> commands = m_window->windowActions().allCommands();
        ASSERT_GT(commands.size(), 20);
        for (const CommandModel::Command& command : commands)
            for (const QKeySequence& keys : command.action->shortcuts()) {
                const QString word = keys.toString();
                EXPECT_FALSE(taken.contains(word) && taken.value(word) != command.action->text())
                    << "screen " << number << ": " << word.toStdString() << " is both "
                    << taken.value(word).toStdString() << " and "
                    << command.action->text().toStdString();
                taken.insert(word, command.action->text());
            }
    }
}

// Alt and a letter goes to the menu of that letter: a screen that asks for the same letter would
// only take turns with it.
TEST_F(ShortcutTest, NoScreenAsksForTheLetterOfAMenu) {
    QHash<QKeySequence, QString> menus;
    for (const QAction* menu : m_window->menuBar()->actions())
        menus.insert(QKeySequence::mnemonic(menu->text()), menu->text());
    ASSERT_GE(menus.size(), 5);
    QStringList texts;
    for (const QLabel* label : m_window->centralWidget()->findChildren<QLabel*>())
        if (label->buddy() != nullptr)
            texts << label->text();
    for (const auto* button : m_window->centralWidget()->findChildren<QAbstractButton*>())
        texts << button->text();
    ASSERT_GT(texts.size(), 50);
    for (const QString& text : texts) {
        const QKeySequence letter = QKeySequence::mnemonic(text);
        EXPECT_FALSE(!letter.isEmpty() && menus.contains(letter))
            << text.toStdString() << " asks for the letter of "
            << menus.value(letter).toStdString();
    }
}

} // namespace ladlework::ui
