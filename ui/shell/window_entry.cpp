#include "ui/shell/window_entry.h"

#include "ui/shell/appearance.h"
#include "ui/shell/barrier_application.h"
#include "ui/shell/main_window.h"
#include "ui/shell/widget_desk.h"

#include <QLocale>
#include <QTimer>

namespace ladlework::ui {

int openWindow(int argc, char** argv, const QString& workbookPath) {
    BarrierApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Ladlework"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LADLEWORK_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("ladlework"));
    // A system without a language set would write times to the second and days in code.
    if (QLocale::system().language() == QLocale::C)
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    applyAppearance(Preferences());

    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    WidgetDesk desk;
    if (!catalogue) {
        desk.tell(nullptr, toLine(catalogue.error()));
        return 1;
    }
    const SystemClock clock;
    MainWindow window(*catalogue, clock, desk);
    QObject::connect(&application, &BarrierApplication::broke, &window, &MainWindow::tellBroken);
    window.show();
    if (!workbookPath.isEmpty()) {
        // After the window is up, so that a problem is told in front of it.
        QTimer::singleShot(0, &window, [&] {
            const Outcome opened = window.openWorkbook(workbookPath);
            if (!opened)
                window.tellBroken(opened.error().sentence);
        });
    }
    return QApplication::exec();
}

} // namespace ladlework::ui
