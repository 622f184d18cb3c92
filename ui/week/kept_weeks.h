#pragma once

#include "casebook/casebook.h"
#include "ui/shared/screen_context.h"
#include "week/week_template.h"

#include <QWidget>
#include <memory>

class QAction;
class QLabel;
class QLineEdit;
class QMenu;
class QPushButton;

namespace ladlework::ui {

/// Weeks kept under a name: a menu to use, rename and remove them, and a line for the name, which
/// is there only while one is written. Keeping, renaming and removing are each one step that can be
/// undone; using one is the screen's.
class KeptWeeks final : public QWidget {
    Q_OBJECT
public:
    /// `keep` is the action that keeps the week; it stands first in the menu.
    KeptWeeks(const ScreenContext& context, QAction* keep, QWidget* parent = nullptr);

    void showWeeks(std::shared_ptr<const casebook::Casebook> casebook, const week::WeekPlan& plan);
    /// The button that opens the menu.
    [[nodiscard]] QPushButton* button() const { return m_button; }
    [[nodiscard]] QMenu* menu() const { return m_menu; }
    [[nodiscard]] QLineEdit* nameField() const { return m_name; }
    /// Asks for a name for the week in sight.
    void askForName();

Q_SIGNALS:
    void useWanted(const ladlework::week::WeekTemplate& kept);
    /// The line of the name was put away.
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fillMenu();
    void askFor(const week::WeekTemplate& renamed);
    void take();
    void leave();
    void keep(const QString& name);
    void rename(week::WeekTemplate kept, const QString& name);
    void remove(const week::WeekTemplate& kept);

    const ScreenContext& m_context;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    week::WeekPlan m_plan;
    week::WeekTemplate m_renamed; ///< not stored while a week is to be kept
    QAction* m_keep;
    QPushButton* m_button;
    QMenu* m_menu;
    QLabel* m_words;
    QLineEdit* m_name;
    QPushButton* m_done;
};

} // namespace ladlework::ui
