#pragma once

#include <QList>
#include <QTabBar>

class QAction;

namespace ladlework::ui {

/// The row of a family's screens, with an action for each (Ctrl+1 to Ctrl+8).
class Navigation final : public QTabBar {
    Q_OBJECT
public:
    explicit Navigation(QWidget* parent);

    /// In the order of screenNames().
    [[nodiscard]] const QList<QAction*>& actionsInOrder() const { return m_actions; }
    void setCurrent(const QString& screen);
    [[nodiscard]] QString current() const;

Q_SIGNALS:
    /// `byKeyboard`: the focus should follow into the screen.
    void screenChosen(const QString& screen, bool byKeyboard);

private:
    QList<QAction*> m_actions;
};

} // namespace ladlework::ui
