#include "ui/shared/screen_context.h"

#include <QCoreApplication>

#include <exception>

namespace ladlework::ui {

bool ScreenContext::act(QWidget* parent, const QString& sentence,
                        const std::function<Outcome(store::Action&)>& work) const {
    try {
        const Outcome outcome = workbook.act(sentence, work);
        if (outcome)
            return true;
        desk.tell(parent, outcome.error().sentence);
    } catch (const std::exception& broken) {
        // The action boundary: whatever broke below, its transaction has been taken back.
        desk.tell(parent, QCoreApplication::translate(
                              "ScreenContext", "This could not be done and nothing was saved: %1")
                              .arg(QString::fromUtf8(broken.what())));
    }
    return false;
}

} // namespace ladlework::ui
