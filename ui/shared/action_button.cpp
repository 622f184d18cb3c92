#include "ui/shared/action_button.h"

#include <QAction>
#include <QPushButton>

namespace ladlework::ui {

QPushButton* buttonFor(QAction* action, bool primary) {
    auto* button = new QPushButton(action->text());
    button->setToolTip(QStringLiteral("%1 (%2)").arg(
        action->statusTip(), action->shortcut().toString(QKeySequence::NativeText)));
    button->setProperty("primary", primary);
    QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
    QObject::connect(action, &QAction::changed, button,
                     [button, action] { button->setEnabled(action->isEnabled()); });
    return button;
}

} // namespace ladlework::ui
