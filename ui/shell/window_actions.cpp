#include "ui/shell/window_actions.h"

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

namespace ladlework::ui {

WindowActions::WindowActions(QMainWindow& window) : QObject(&window) {
    makeFile(window);
    makeFamily(window);
    makeView(window);
}

QAction* WindowActions::make(QMenu* menu, const QString& text, const QKeySequence& keys,
                             const QString& tip) {
    QAction* action = menu->addAction(text);
    action->setShortcut(keys);
    action->setStatusTip(tip);
    return action;
}

void WindowActions::makeFile(QMainWindow& window) {
    QMenu* file = window.menuBar()->addMenu(tr("&File"));
    edit = window.menuBar()->addMenu(tr("&Edit"));
    m_menus = {file, edit};
    newWorkbook = make(file, tr("&New workbook…"), QKeySequence(tr("Ctrl+Shift+N")),
                       tr("Start a practice in a new file"));
    openWorkbook = make(file, tr("&Open a workbook…"), QKeySequence(QKeySequence::Open),
                        tr("Go on with a file you have"));
    recent = file->addMenu(tr("Opened &last"));
    openSample =
        make(file, tr("Look at the &sample"), {}, tr("An invented practice to try everything on"));
    file->addSeparator();
    closeWorkbook = make(file, tr("&Close the workbook"), QKeySequence(tr("Ctrl+Shift+W")),
                         tr("Back to the start page"));
    quit = make(file, tr("&Quit"), QKeySequence(tr("Ctrl+Q")), {});
    history = make(edit, tr("&History"), QKeySequence(tr("Ctrl+H")),
                   tr("What was done, and the way back to before it"));
    history->setCheckable(true);
}

void WindowActions::makeFamily(QMainWindow& window) {
    QMenu* family = window.menuBar()->addMenu(tr("F&amily"));
    m_menus.append(family);
    everyone = make(family, tr("&Who needs me today"), QKeySequence(tr("Ctrl+9")),
                    tr("What every family needs"));
    findFamily = make(family, tr("&Find a family"), QKeySequence(QKeySequence::Find),
                      tr("Type a part of its name"));
    nextFamily = make(family, tr("Ne&xt family"), QKeySequence(tr("Ctrl+PgDown")), {});
    previousFamily = make(family, tr("&Previous family"), QKeySequence(tr("Ctrl+PgUp")), {});
    family->addSeparator();
    newFamily =
        make(family, tr("&New family"), QKeySequence(QKeySequence::New), tr("Take on a family"));
    removeFamily =
        make(family, tr("&Remove this family"), {}, tr("With all its records; it can be undone"));
    family->addSeparator();
    practice = make(family, tr("Pra&ctice"), QKeySequence(tr("Ctrl+,")),
                    tr("Letterhead, house rules, phases"));
}

void WindowActions::makeView(QMainWindow& window) {
    go = window.menuBar()->addMenu(tr("&Go"));
    screen = window.menuBar()->addMenu(tr("This &screen"));
    view = window.menuBar()->addMenu(tr("&View"));
    QMenu* help = window.menuBar()->addMenu(tr("&Help"));
    m_menus.append({go, screen, view, help});
    m_goEnd = go->addSeparator();
    oneFamily = make(view, tr("&One-family view"), QKeySequence(tr("F9")),
                     tr("Hide every other family's name while a client looks on"));
    oneFamily->setCheckable(true);
    list = make(view, tr("&Families list"), QKeySequence(tr("F8")), tr("Show or fold the list"));
    list->setCheckable(true);
    list->setChecked(true);
    fullScreen = make(view, tr("F&ull screen"), QKeySequence(tr("F11")), {});
    fullScreen->setCheckable(true);
    view->addSeparator();
    commands = make(help, tr("&Command list"), QKeySequence(tr("Ctrl+K")),
                    tr("Find anything that can be done by typing"));
    about = make(help, tr("&About Ladlework"), {}, {});
}

void WindowActions::addUndo(QAction* undo, QAction* redo) {
    edit->insertAction(history, undo);
    edit->insertAction(history, redo);
    edit->insertSeparator(history);
}

void WindowActions::setGoActions(const QList<QAction*>& actions) {
    for (QAction* action : m_goActions)
        go->removeAction(action);
    m_goActions = actions;
    go->insertActions(m_goEnd, actions);
}

void WindowActions::setScreenActions(const QList<QAction*>& actions) {
    screen->clear();
    screen->addActions(actions);
    screen->setEnabled(!actions.isEmpty());
}

void WindowActions::setState(bool workbook, bool family, bool only) {
    const bool all = workbook && !only;
    for (QAction* action : {closeWorkbook, history, newFamily, findFamily, nextFamily,
                            previousFamily, everyone, practice, list})
        action->setEnabled(all);
    removeFamily->setEnabled(all && family);
    for (QAction* action : {newWorkbook, openWorkbook, openSample})
        action->setEnabled(!only);
    recent->menuAction()->setVisible(!only);
    oneFamily->setEnabled(family || only);
    oneFamily->setChecked(only);
    for (QAction* action : m_goActions)
        action->setEnabled(family);
}

QList<CommandModel::Command> WindowActions::allCommands() const {
    QList<CommandModel::Command> found;
    const auto collect = [&found](const auto& self, const QMenu& menu,
                                  const QString& place) -> void {
        for (QAction* action : menu.actions()) {
            if (action->menu() == nullptr)
                found.append({action, place});
            else if (action->isVisible())
                self(self, *action->menu(), place + u" › " + plainText(*action));
        }
    };
    for (const QMenu* menu : {screen, go})
        collect(collect, *menu, plainText(*menu->menuAction()));
    for (const QMenu* menu : m_menus) {
        if (menu != screen && menu != go)
            collect(collect, *menu, plainText(*menu->menuAction()));
    }
    return found;
}

} // namespace ladlework::ui
