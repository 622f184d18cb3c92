#pragma once

#include "foundation/clock.h"
#include "kitchen/catalogue.h"
#include "store/workbook.h"
#include "ui/shared/desk.h"
#include "ui/shell/preferences.h"
#include "ui/shell/workbook_view.h"

#include <QMainWindow>
#include <memory>

class QStackedWidget;

namespace ladlework::ui {

class Appearance;
class CommandList;
class FileController;
class StartPage;
class UndoActions;
class WindowActions;

/// The window: the start page or an open workbook, and the menus above. Catalogue, clock and desk
/// must outlive it.
class MainWindow final : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(const kitchen::Catalogue& catalogue, const Clock& clock, Desk& desk,
               QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a workbook in place of the one that is open. When it cannot be opened nothing changes
    /// and the Problem says why.
    Outcome openWorkbook(const QString& path);
    /// Shows what broke below: the message of the last barrier.
    void tellBroken(const QString& sentence);

    /// nullptr while the start page is shown.
    [[nodiscard]] store::Workbook* workbook() const { return m_workbook.get(); }
    [[nodiscard]] WorkbookView* view() const { return m_view; }
    [[nodiscard]] WindowActions& windowActions() const { return *m_actions; }
    [[nodiscard]] UndoActions& undoActions() const { return *m_undo; }
    [[nodiscard]] CommandList& commandList() const { return *m_commands; }

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void makeStart();
    void connectFiles();
    void connectPlaces();
    void connectView();
    void receive(std::unique_ptr<store::Workbook> workbook);
    void closeWorkbook();
    void makeView(const WorkbookView::Whereabouts& place);
    void remakeView();
    void update();
    void setOneFamily(bool only);
    void restoreGeometryOrFit();
    /// Connects an action to work on the open view; without a view it does nothing.
    void forView(QAction* action, void (*work)(WorkbookView&));

    const kitchen::Catalogue& m_catalogue;
    const Clock& m_clock;
    Desk& m_desk;
    Preferences m_preferences;
    std::unique_ptr<store::Workbook> m_workbook;
    WindowActions* m_actions;
    UndoActions* m_undo;
    Appearance* m_appearance;
    FileController* m_files;
    QStackedWidget* m_pages;
    StartPage* m_start = nullptr;
    WorkbookView* m_view = nullptr;
    CommandList* m_commands;
};

} // namespace ladlework::ui
