#pragma once

class QAction;
class QPushButton;

namespace ladlework::ui {

/// A button that does what an action does, and is enabled as the action is; its tool tip is the
/// action's tip with the shortcut. `primary` marks the one button of a screen to look at first.
QPushButton* buttonFor(QAction* action, bool primary = false);

} // namespace ladlework::ui
