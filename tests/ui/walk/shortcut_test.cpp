#include "ui/shared/scripted_desk.h"
#include "ui/shell/main_window.h"
#include "ui/shell/window_actions.h"
#include "ui/walk/keyboard_hands.h"

#include <QAction>
#include <QCoreApplication>
#include <QHash>
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
                    << taken.value(word).toStdString() << " and " << command.action->text().toStdString();
                taken.insert(word, command.action->text());
            }
    }
}

} // namespace ladlework::ui
