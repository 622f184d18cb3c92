#pragma once

#include <QApplication>
#include <functional>

namespace ladlework::ui {

/// Does `work`; when it throws, gives the sentence to show instead (empty when all went well). The
/// sentence of a StoreError is its own; anything else broken says that the program goes on.
QString sentenceIfBroken(const std::function<void()>& work);

/// The application with the last barrier: what breaks while an event is handled is told, and the
/// program keeps running. Nothing is half-saved by then: a transaction has taken itself back.
class BarrierApplication final : public QApplication {
    Q_OBJECT
public:
    BarrierApplication(int& argc, char** argv);
    bool notify(QObject* receiver, QEvent* event) override;

Q_SIGNALS:
    /// Sent from the event loop, once for each thing that broke.
    void broke(const QString& sentence);
};

} // namespace ladlework::ui
