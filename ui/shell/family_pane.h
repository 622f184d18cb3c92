#pragma once

#include "ui/shared/family_screen.h"

#include <QHash>
#include <QSet>
#include <QWidget>

class QLabel;
class QStackedWidget;

namespace ladlework::ui {

class FamilyController;
class FindingsStrip;
class Navigation;

/// The family in the middle of the window: its name, the row of screens, the screen, and what there
/// is to say about it. A screen is brought up to date when it is looked at.
class FamilyPane final : public QWidget {
    Q_OBJECT
public:
    FamilyPane(const ScreenContext& context, FamilyController& family, QWidget* parent);

    /// Shows a screen by its id; an unknown id is left alone. With `focus` the keyboard follows.
    void showScreen(const QString& id, bool focus);
    [[nodiscard]] FamilyScreen* screen() const;
    [[nodiscard]] QString screenId() const;
    [[nodiscard]] Navigation& navigation() const { return *m_navigation; }

Q_SIGNALS:
    /// Another screen is shown: its actions are the ones of the moment.
    void screenChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void addScreen(const QString& id, FamilyScreen* screen);
    void build();
    void onCasebookChanged();
    void bringUpToDate();
    void showFindings();

    FamilyController& m_family;
    QLabel* m_name;
    Navigation* m_navigation;
    QStackedWidget* m_stack;
    FindingsStrip* m_strip;
    QHash<QString, FamilyScreen*> m_screens;
    QSet<FamilyScreen*> m_stale;
};

} // namespace ladlework::ui
