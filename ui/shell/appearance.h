#pragma once

#include "ui/shell/preferences.h"

#include <QFont>
#include <QObject>

class QAction;
class QActionGroup;
class QMenu;

namespace ladlework::ui {

/// Theme and text size: their actions, what they do to the application, and that it is remembered.
class Appearance final : public QObject {
    Q_OBJECT
public:
    Appearance(Preferences& preferences, QObject* parent);

    /// Puts the actions into the View menu.
    void addTo(QMenu& menu);

Q_SIGNALS:
    /// Widgets with fonts and colours of their own are to be made again.
    void changed();

private:
    void addThemes(QMenu& menu);
    void setTheme(Preferences::Theme theme);
    void setTextSteps(int steps);

    Preferences& m_preferences;
    QActionGroup* m_themes;
    QAction* m_larger;
    QAction* m_smaller;
    QAction* m_usual;
};

/// Gives the application the remembered theme and text size; called once before the first window.
void applyAppearance(const Preferences& preferences);

} // namespace ladlework::ui
