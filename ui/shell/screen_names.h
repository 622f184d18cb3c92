#pragma once

#include <QList>
#include <QString>

namespace ladlework::ui {

/// One of a family's screens.
struct ScreenName {
    QString id;      ///< "today": what a screen asks the shell for
    QString title;   ///< with a mnemonic for the Go menu
    QString purpose; ///< one line for the command list
};

/// The screens in the order of the window and of Ctrl+1 to Ctrl+8.
QList<ScreenName> screenNames();

} // namespace ladlework::ui
