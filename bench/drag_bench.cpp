// Drags the water line of the real pot screen up and down and says how long each frame takes: the
// mouse move, the reckoning, the labels and the painting. Exit status 1 when the 95 % frame is
// slower than 60 frames a second. Works without a screen: QT_QPA_PLATFORM=offscreen.
#include "casebook/casebook.h"
#include "store/exchange/sample_practice.h"
#include "ui/paint/theme.h"
#include "ui/pot/pot_drawing.h"
#include "ui/pot/pot_screen.h"
#include "ui/shared/desk.h"
#include "ui/shared/findings_strip.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextStream>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>
#include <vector>

namespace {

using namespace ladlework;
using ladlework::ui::PotDrawing;
using ladlework::ui::PotScreen;

constexpr int moves = 300;
constexpr double goalMs = 1000.0 / 60.0;

/// Nobody is asked anything here.
class SilentDesk final : public ui::Desk {
public:
    std::optional<QString> fileToSave(QWidget* /*parent*/, const QString& /*title*/,
                                      const QString& /*suggested*/,
                                      const QString& /*filter*/) override {
        return std::nullopt;
    }
    std::optional<QString> fileToOpen(QWidget* /*parent*/, const QString& /*title*/,
                                      const QString& /*filter*/) override {
        return std::nullopt;
    }
    bool confirm(QWidget* /*parent*/, const QString& /*question*/,
                 const QString& /*yes*/) override {
        return false;
    }
    void tell(QWidget* /*parent*/, const QString& /*sentence*/) override {}
};

void send(QWidget& widget, QEvent::Type type, QPointF at) {
    const bool isUp = type == QEvent::MouseButtonRelease;
    QMouseEvent event(type, at, widget.mapToGlobal(at), Qt::LeftButton,
                      isUp ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&widget, &event);
}

/// Counts how often a widget was painted, so that no frame is timed that showed nothing.
class PaintCount final : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint)
            ++count;
        return QObject::eventFilter(watched, event);
    }
    int count = 0;
};

/// Up to the moment at which nothing is left to lay out or to paint. The platform would wait a few
/// milliseconds for more before it paints; that waiting is no work and is left out.
void finishFrame(QWidget& window) {
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
    QEvent paint(QEvent::UpdateRequest);
    QCoreApplication::sendEvent(&window, &paint);
}

std::vector<double> dragged(PotDrawing& drawing) {
    std::vector<double> frames;
    QWidget& window = *drawing.window();
    PaintCount painted;
    drawing.installEventFilter(&painted);
    const double x = drawing.width() / 2.0;
    const double middle = drawing.height() * 0.55;
    const double swing = drawing.height() * 0.3;
    send(drawing, QEvent::MouseButtonPress, {x, drawing.waterLine()});
    finishFrame(window);
    painted.count = 0;
    for (int move = 0; move < moves; ++move) {
        constexpr double turns = 6;
        const double y = middle + swing * std::sin(2 * std::numbers::pi * turns * move / moves);
        QElapsedTimer timer;
        timer.start();
        send(drawing, QEvent::MouseMove, {x, y});
        finishFrame(window);
        frames.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    if (painted.count < moves)
        throw std::logic_error("a frame was not painted");
    send(drawing, QEvent::MouseButtonRelease, {x, middle});
    finishFrame(window);
    std::ranges::sort(frames);
    return frames;
}

double share(const std::vector<double>& sorted, double part) {
    return sorted.at(static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1)));
}

/// True when it meets the goal.
bool say(const QString& what, const std::vector<double>& frames) {
    const double most = share(frames, 0.95);
    const bool good = most <= goalMs;
    QTextStream(stdout) << QStringLiteral("%1: median %2 ms, 95 % of frames within %3 ms, goal "
                                          "%4 ms: %5\n")
                               .arg(what)
                               .arg(share(frames, 0.5), 0, 'f', 2)
                               .arg(most, 0, 'f', 2)
                               .arg(goalMs, 0, 'f', 1)
                               .arg(good ? QStringLiteral("met") : QStringLiteral("missed"));
    return good;
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    ui::applyTheme(application, ui::Scheme::Light);
    const auto catalogue = kitchen::Catalogue::load();
    if (!catalogue)
        return 2;
    const QTemporaryDir folder;
    const SystemClock clock;
    const auto workbook = exchange::createSamplePractice(
        folder.filePath(QStringLiteral("drag.ladlework")), *catalogue, clock);
    if (!workbook)
        return 2;
    SilentDesk desk;
    const ui::ScreenContext context{**workbook, *catalogue, clock, desk};
    const FamilyId family = (*workbook)->families().families().first().id;

    QWidget window; // as wide and high as the family's part of a window of 1920 by 1080
    auto* layout = new QVBoxLayout(&window);
    auto* screen = new PotScreen(context, &window);
    auto* strip = new ui::FindingsStrip(&window);
    layout->addWidget(screen, 1);
    layout->addWidget(strip);
    QObject::connect(screen, &ui::FamilyScreen::findingsChanged, strip,
                     [=] { strip->setFindings(screen->findings()); });
    screen->setCasebook(std::make_shared<const casebook::Casebook>(
        *(*workbook)->records(family), *catalogue, clock.nowUtc().date()));
    window.resize(1690, 1000);
    window.show();
    finishFrame(window);

    auto* drawing = screen->findChild<PotDrawing*>();
    auto* pages = screen->findChild<QTabWidget*>();
    bool good = true;
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        finishFrame(window);
        good = say(QStringLiteral("dragging with %1 in sight").arg(pages->tabText(page)),
                   dragged(*drawing)) &&
               good;
    }
    return good ? 0 : 1;
}
