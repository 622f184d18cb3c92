#include "ui/shell/barrier_application.h"

#include "store/store_error.h"

#include <QMetaObject>

#include <exception>

namespace ladlework::ui {

QString sentenceIfBroken(const std::function<void()>& work) {
    try {
        work();
        return {};
    } catch (const store::StoreError& error) {
        return error.toProblem().sentence;
    } catch (const std::exception& error) {
        return QCoreApplication::translate("BarrierApplication",
                                           "Something in the program broke (%1). Nothing was "
                                           "half-saved; you can go on, and it would help to tell "
                                           "the makers.")
            .arg(QString::fromUtf8(error.what()));
    }
}

BarrierApplication::BarrierApplication(int& argc, char** argv) : QApplication(argc, argv) {}

bool BarrierApplication::notify(QObject* receiver, QEvent* event) {
    bool handled = false;
    const QString sentence =
        sentenceIfBroken([&] { handled = QApplication::notify(receiver, event); });
    if (!sentence.isEmpty()) {
        // Told after this event: a message box inside it would run half-handled code again.
        QMetaObject::invokeMethod(
            this, [this, sentence] { Q_EMIT broke(sentence); }, Qt::QueuedConnection);
    }
    return handled;
}

} // namespace ladlework::ui
