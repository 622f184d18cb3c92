#include "ui/shared/scripted_desk.h"
#include "ui/shell/main_window.h"
#include "ui/shell/window_actions.h"
#include "ui/walk/keyboard_hands.h"

#include <QAbstractButton>
#include <QAction>
#include <QCoreApplication>
#include <QHash>
#include <QLabel>
#include <QMenuBar>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ladlework::ui {

// Qt runs neither of two actions that share a shortcut: on no screen may one be given twice.
TEST(ShortcutTest, NoShortcutIsGivenTwiceOnAnyScreen) {
    QTemporaryDir folder;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
    const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    FixedClock clock(QDateTime(QDate(2026, 11, 4), QTime(15, 0), Qt::UTC));
    ScriptedDesk desk;
    desk.fileAnswer = folder.filePath(QStringLiteral("keys.ladlework"));
    MainWindow window(catalogue, clock, desk);
    KeyboardHands hands(window);
    hands.press(window.windowActions().newWorkbook->shortcut());
    ASSERT_NE(window.workbook(), nullptr);
    hands.press(window.windowActions().newFamily->shortcut());
    hands.type(QStringLiteral("Harrow"));
    hands.press(Qt::Key_Return);
    ASSERT_EQ(window.workbook()->families().families().size(), 1);
    constexpr int screens = 8;
    for (int number = 1; number <= screens; ++number) {
        hands.press(static_cast<Qt::Key>(Qt::Key_0 + number), Qt::ControlModifier);
        QHash<QString, QString> taken;
        const QList<CommandModel::Command> commands = window.windowActions().allCommands();
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
TEST(ShortcutTest, NoScreenAsksForTheLetterOfAMenu) {
    QTemporaryDir folder;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
    const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    FixedClock clock(QDateTime(QDate(2026, 11, 4), QTime(15, 0), Qt::UTC));
    ScriptedDesk desk;
    desk.fileAnswer = folder.filePath(QStringLiteral("letters.ladlework"));
    MainWindow window(catalogue, clock, desk);
    KeyboardHands hands(window);
    hands.press(window.windowActions().newWorkbook->shortcut());
    ASSERT_NE(window.workbook(), nullptr);
    QHash<QKeySequence, QString> menus;
    for (const QAction* menu : window.menuBar()->actions())
        menus.insert(QKeySequence::mnemonic(menu->text()), menu->text());
    ASSERT_GE(menus.size(), 5);
    QStringList texts;
    for (const QLabel* label : window.centralWidget()->findChildren<QLabel*>())
        if (label->buddy() != nullptr)
            texts << label->text();
    for (const QAbstractButton* button : window.centralWidget()->findChildren<QAbstractButton*>())
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
