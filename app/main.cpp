#include "app/command_line.h"
#include "ui/print/write_pages.h"
#include "ui/shell/window_entry.h"

#include <QGuiApplication>
#include <cstdio>
#include <memory>

using namespace ladlework;

namespace {

QStringList wordsOf(int argc, char** argv) {
    QStringList words;
    for (int index = 1; index < argc; ++index)
        words.append(QString::fromLocal8Bit(argv[index]));
    return words;
}

bool isSet(const char* variable) {
    return !qEnvironmentVariableIsEmpty(variable);
}

bool hasDisplay() {
#ifdef Q_OS_LINUX
    return isSet("DISPLAY") || isSet("WAYLAND_DISPLAY") || isSet("QT_QPA_PLATFORM");
#else
    return true;
#endif
}

bool put(const QByteArray& text, std::FILE* stream) {
    const auto size = static_cast<size_t>(text.size());
    return std::fwrite(text.constData(), 1, size, stream) == size && std::fflush(stream) == 0;
}

/// On the terminal standard error is one line that a script can read: what Qt itself remarks on its
/// surroundings is left out, what is critical is kept.
void keepCriticalOnly(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg)
        put(text.toLocal8Bit() + '\n', stderr);
}

/// Starts no more of Qt than the command line asks for; the window makes its own application.
std::unique_ptr<QCoreApplication> makeApplication(app::Face face, int& argc, char** argv) {
    if (face == app::Face::Window)
        return nullptr;
    qInstallMessageHandler(keepCriticalOnly);
    if (face == app::Face::Terminal)
        return std::make_unique<QCoreApplication>(argc, argv);
    // Pages are drawn to a file: no display is needed, and none is to be asked for.
    if (!isSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", QByteArrayLiteral("offscreen"));
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace

int main(int argc, char** argv) {
    const QStringList words = wordsOf(argc, argv);
    const auto application = makeApplication(app::faceOf(words), argc, argv);
    const auto openWindow = [argc, argv](const QString& path) -> int {
        if (hasDisplay())
            return ui::openWindow(argc, argv, path);
        // Qt would end the program here; the terminal gets a sentence instead.
        put(QByteArrayLiteral("ladlework: There is no display to open the window on.\n"), stderr);
        return app::Failed;
    };
    const SystemClock clock;
    const app::CommandResult result =
        app::runCommandLine(words, app::Outside{clock, ui::writePages, openWindow});
    const bool told = put(result.output, stdout) && put(result.complaint, stderr);
    return told || result.status != app::Done ? result.status : app::Failed;
}
