#pragma once

#include "ui/shell/command_model.h"

#include <QObject>

class QAction;
class QMainWindow;
class QMenu;

namespace ladlework::ui {

/// The actions of the window itself, in their menus. What they do is connected by the window.
class WindowActions final : public QObject {
    Q_OBJECT
public:
    explicit WindowActions(QMainWindow& window);

    QAction* newWorkbook = nullptr;
    QAction* openWorkbook = nullptr;
    QAction* openSample = nullptr;
    QAction* closeWorkbook = nullptr;
    QAction* quit = nullptr;
    QAction* history = nullptr;
    QAction* newFamily = nullptr;
    QAction* findFamily = nullptr;
    QAction* nextFamily = nullptr;
    QAction* previousFamily = nullptr;
    QAction* removeFamily = nullptr;
    QAction* everyone = nullptr;
    QAction* practice = nullptr;
    QAction* oneFamily = nullptr;
    QAction* list = nullptr;
    QAction* fullScreen = nullptr;
    QAction* commands = nullptr;
    QAction* about = nullptr;

    QMenu* recent = nullptr;
    QMenu* edit = nullptr;
    QMenu* go = nullptr;
    QMenu* screen = nullptr;
    QMenu* view = nullptr;

    /// Undo and Redo stand at the head of the Edit menu.
    void addUndo(QAction* undo, QAction* redo);
    /// The screens in the Go menu, in place of earlier ones.
    void setGoActions(const QList<QAction*>& actions);
    /// The actions of the screen of the moment.
    void setScreenActions(const QList<QAction*>& actions);
    /// What can be done depends on what is open.
    void setState(bool workbook, bool family, bool oneFamily);
    /// Everything that can be done now, with the menu it stands in.
    [[nodiscard]] QList<CommandModel::Command> allCommands() const;

private:
    QAction* make(QMenu* menu, const QString& text, const QKeySequence& keys, const QString& tip);
    void makeFile(QMainWindow& window);
    void makeFamily(QMainWindow& window);
    void makeView(QMainWindow& window);

    QList<QMenu*> m_menus;
    QList<QAction*> m_goActions;
    QAction* m_goEnd = nullptr;
};

} // namespace ladlework::ui
