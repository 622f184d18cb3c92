#include "ui/shell/main_window.h"

#include "ui/shell/appearance.h"
#include "ui/shell/command_list.h"
#include "ui/shell/file_controller.h"
#include "ui/shell/start_page.h"
#include "ui/shell/undo_actions.h"
#include "ui/shell/window_actions.h"

#include <QAction>
#include <QCloseEvent>
#include <QFileInfo>
#include <QMenu>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>

namespace ladlework::ui {

namespace {
const QString geometryKey = QStringLiteral("geometry");
const QString splitterKey = QStringLiteral("splitter");
} // namespace

MainWindow::MainWindow(const kitchen::Catalogue& catalogue, const Clock& clock, Desk& desk,
                       QWidget* parent)
    : QMainWindow(parent), m_catalogue(catalogue), m_clock(clock), m_desk(desk),
      m_actions(new WindowActions(*this)), m_undo(new UndoActions(desk, this)),
      m_appearance(new Appearance(m_preferences, this)),
      m_files(new FileController(catalogue, clock, desk, m_preferences, this)),
      m_pages(new QStackedWidget), m_commands(new CommandList(this)) {
    m_actions->addUndo(m_undo->undo(), m_undo->redo());
    m_appearance->addTo(*m_actions->view);
    makeStart();
    setCentralWidget(m_pages);
    connectFiles();
    connectPlaces();
    connectView();
    restoreGeometryOrFit();
    update();
}

MainWindow::~MainWindow() {
    // The view reads the workbook until it is gone.
    delete m_view;
}

void MainWindow::connectFiles() {
    m_files->setReceiver(
        [this](std::unique_ptr<store::Workbook> workbook) { receive(std::move(workbook)); });
    connect(m_actions->newWorkbook, &QAction::triggered, m_files, &FileController::makeNew);
    connect(m_actions->openWorkbook, &QAction::triggered, m_files, &FileController::open);
    connect(m_actions->openSample, &QAction::triggered, m_files, &FileController::openSample);
    connect(m_actions->closeWorkbook, &QAction::triggered, this, &MainWindow::closeWorkbook);
    connect(m_actions->quit, &QAction::triggered, this, &QWidget::close);
    connect(m_undo, &UndoActions::done, this, [this] {
        if (m_view != nullptr)
            m_view->refreshAll();
    });
}

void MainWindow::makeStart() {
    m_start = new StartPage(m_pages);
    m_pages->insertWidget(0, m_start);
    connect(m_start, &StartPage::newWanted, m_files, &FileController::makeNew);
    connect(m_start, &StartPage::openWanted, m_files, &FileController::open);
    connect(m_start, &StartPage::sampleWanted, m_files, &FileController::openSample);
    connect(m_start, &StartPage::recentWanted, m_files, &FileController::openOrTell);
}

void MainWindow::forView(QAction* action, void (*work)(WorkbookView&)) {
    connect(action, &QAction::triggered, this, [this, work] {
        if (m_view != nullptr)
            work(*m_view);
    });
}

void MainWindow::connectPlaces() {
    forView(m_actions->everyone, [](WorkbookView& view) { view.showEveryone(); });
    forView(m_actions->findFamily, [](WorkbookView& view) { view.findFamily(); });
    forView(m_actions->nextFamily, [](WorkbookView& view) { view.nextFamily(); });
    forView(m_actions->previousFamily, [](WorkbookView& view) { view.previousFamily(); });
    forView(m_actions->newFamily, [](WorkbookView& view) { view.showNewFamily(); });
    forView(m_actions->removeFamily, [](WorkbookView& view) { view.removeFamily(); });
    forView(m_actions->practice, [](WorkbookView& view) { view.showPractice(); });
}

void MainWindow::connectView() {
    connect(m_actions->history, &QAction::triggered, this, [this](bool shown) {
        if (m_view != nullptr)
            m_view->setHistoryShown(shown);
    });
    connect(m_actions->list, &QAction::triggered, this, [this](bool shown) {
        if (m_view != nullptr)
            m_view->setListShown(shown);
    });
    connect(m_actions->oneFamily, &QAction::triggered, this, &MainWindow::setOneFamily);
    connect(m_actions->fullScreen, &QAction::triggered, this,
            [this](bool full) { full ? showFullScreen() : showNormal(); });
    connect(m_actions->commands, &QAction::triggered, this,
            [this] { m_commands->open(m_actions->allCommands()); });
    connect(m_actions->about, &QAction::triggered, this, [this] {
        m_desk.tell(this, tr("Ladlework %1\n\nA kitchen-and-client workbook for a nutrition "
                             "practitioner. Free software under the GNU General Public License, "
                             "version 3 or later, without any warranty.")
                              .arg(QStringLiteral(LADLEWORK_VERSION)));
    });
    // Later than the click: the menu that was clicked is still open until then.
    connect(m_appearance, &Appearance::changed, this, &MainWindow::remakeView,
            Qt::QueuedConnection);
}

Outcome MainWindow::openWorkbook(const QString& path) {
    // Opened a second time it would be read-only beside itself.
    if (m_workbook != nullptr && QFileInfo(m_workbook->path()) == QFileInfo(path))
        return {};
    return m_files->openPath(path);
}

void MainWindow::tellBroken(const QString& sentence) {
    m_desk.tell(this, sentence);
}

void MainWindow::receive(std::unique_ptr<store::Workbook> workbook) {
    closeWorkbook();
    m_workbook = std::move(workbook);
    m_undo->setWorkbook(m_workbook.get());
    makeView({});
}

void MainWindow::closeWorkbook() {
    m_undo->setWorkbook(nullptr);
    m_actions->setGoActions({});
    m_actions->setScreenActions({});
    delete m_view;
    m_view = nullptr;
    m_workbook.reset();
    update();
}

void MainWindow::makeView(const WorkbookView::Whereabouts& place) {
    m_view = new WorkbookView(*m_workbook, m_catalogue, m_clock, m_desk, m_pages);
    m_pages->addWidget(m_view);
    m_pages->setCurrentWidget(m_view);
    m_view->splitter().restoreState(m_preferences.bytes(splitterKey));
    m_actions->setGoActions(m_view->goActions());
    connect(m_view, &WorkbookView::placeChanged, this, &MainWindow::update);
    connect(m_view, &WorkbookView::broke, this, &MainWindow::tellBroken);
    m_view->goTo(place);
    update();
}

/// Fonts and colours that widgets took when they were made are taken anew.
void MainWindow::remakeView() {
    delete m_start;
    makeStart();
    if (m_view != nullptr) {
        const WorkbookView::Whereabouts place = m_view->whereabouts();
        m_actions->setGoActions({});
        m_actions->setScreenActions({});
        delete m_view;
        makeView(place);
    }
    update();
}

void MainWindow::setOneFamily(bool only) {
    if (m_view == nullptr)
        return;
    m_view->setOneFamily(only);
    m_undo->setOnlyFromNow(m_view->isOneFamily());
    update();
}

void MainWindow::update() {
    const bool open = m_view != nullptr;
    const bool only = open && m_view->isOneFamily();
    m_actions->setState(open, open && m_view->hasFamily(), only);
    m_actions->list->setChecked(open && m_view->isListShown());
    m_actions->history->setChecked(open && m_view->isHistoryShown());
    m_actions->setScreenActions(open ? m_view->screenActions() : QList<QAction*>());
    m_files->fillRecent(*m_actions->recent);
    QStringList title;
    if (open && !m_view->familyName().isEmpty())
        title << m_view->familyName();
    if (open && !only)
        title << QFileInfo(m_workbook->path()).completeBaseName();
    title << QStringLiteral("Ladlework");
    setWindowTitle(title.join(QStringLiteral(" – ")));
    if (!open) {
        m_start->setRecent(m_preferences.recentWorkbooks());
        m_pages->setCurrentWidget(m_start);
    }
}

void MainWindow::restoreGeometryOrFit() {
    if (restoreGeometry(m_preferences.bytes(geometryKey)))
        return;
    // The frame that the desktop puts around is not known before the window is shown.
    const int frame = 2 * fontMetrics().lineSpacing();
    const QSize room = screen()->availableSize() - QSize(frame / 2, frame);
    resize(
        room.boundedTo(QSize(fontMetrics().averageCharWidth() * 200, fontMetrics().height() * 55)));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_preferences.setBytes(geometryKey, saveGeometry());
    if (m_view != nullptr)
        m_preferences.setBytes(splitterKey, m_view->splitter().saveState());
    event->accept();
}

} // namespace ladlework::ui
