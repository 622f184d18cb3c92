#include "ui/shell/file_controller.h"

#include "exchange/sample_practice.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>
#include <QWidget>

namespace ladlework::ui {

namespace {

const QLatin1String suffix(".ladlework");

QString filter() {
    return FileController::tr("Workbooks (*.ladlework);;All files (*)");
}

} // namespace

FileController::FileController(const kitchen::Catalogue& catalogue, const Clock& clock, Desk& desk,
                               Preferences& preferences, QWidget* window)
    : QObject(window), m_catalogue(catalogue), m_clock(clock), m_desk(desk),
      m_preferences(preferences), m_window(window) {}

/// A new practice starts with the zone, the measures and the paper of the computer it is made on.
Outcome FileController::fillFromComputer(store::Action& action, store::Workbook& workbook) {
    people::Practice practice = workbook.practice().practice();
    const QTimeZone zone = QTimeZone::systemTimeZone();
    if (zone.isValid() && QTimeZone::isTimeZoneIdAvailable(zone.id()))
        practice.zone = zone;
    const bool metric = QLocale::system().measurementSystem() == QLocale::MetricSystem;
    practice.measures =
        metric ? quantity::MeasureSystem::Metric : quantity::MeasureSystem::UsCustomary;
    practice.paper = metric ? people::Paper::A4 : people::Paper::Letter;
    return workbook.practice().setPractice(action, practice);
}

void FileController::makeNew() {
    const std::optional<QString> chosen = m_desk.fileToSave(
        m_window, tr("Where shall the new workbook be?"), tr("My practice") + suffix, filter());
    if (!chosen)
        return;
    const QString path =
        QFileInfo(*chosen).suffix().isEmpty() ? QString(*chosen + suffix) : *chosen;
    auto workbook = store::Workbook::create(path, m_clock, &FileController::fillFromComputer);
    if (!workbook) {
        m_desk.tell(m_window, workbook.error().sentence);
        return;
    }
    m_preferences.rememberWorkbook(path);
    receive(*std::move(workbook));
}

void FileController::open() {
    const std::optional<QString> path =
        m_desk.fileToOpen(m_window, tr("Open a workbook"), filter());
    if (path)
        openOrTell(*path);
}

void FileController::openOrTell(const QString& path) {
    const Outcome outcome = openPath(path);
    if (!outcome)
        m_desk.tell(m_window, outcome.error().sentence);
}

Outcome FileController::openPath(const QString& path) {
    auto workbook = store::Workbook::open(path, m_clock);
    if (!workbook)
        return passOn(workbook);
    m_preferences.rememberWorkbook(path);
    receive(*std::move(workbook));
    return {};
}

void FileController::openSample() {
    auto folder = std::make_unique<QTemporaryDir>();
    if (!folder->isValid()) {
        m_desk.tell(m_window, tr("The sample needs room for temporary files, and there is none: %1")
                                  .arg(folder->errorString()));
        return;
    }
    const QString path = folder->filePath(tr("Sample practice") + suffix);
    auto workbook = exchange::createSamplePractice(path, m_catalogue, m_clock);
    if (!workbook) {
        m_desk.tell(m_window, workbook.error().sentence);
        return;
    }
    receive(*std::move(workbook));
    m_sampleFolder = std::move(folder); // the folder of an earlier sample goes when it is closed
}

void FileController::fillRecent(QMenu& menu) {
    menu.clear();
    for (const QString& path : m_preferences.recentWorkbooks()) {
        QString name = QFileInfo(path).completeBaseName();
        QAction* action = menu.addAction(name.replace(u'&', QStringLiteral("&&")));
        action->setStatusTip(QDir::toNativeSeparators(path));
        action->setToolTip(action->statusTip());
        connect(action, &QAction::triggered, this, [this, path] { openOrTell(path); });
    }
    menu.setEnabled(!menu.isEmpty());
}

void FileController::receive(std::unique_ptr<store::Workbook> workbook) {
    if (m_receiver)
        m_receiver(std::move(workbook));
}

} // namespace ladlework::ui
