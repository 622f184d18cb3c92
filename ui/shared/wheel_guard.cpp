#include "ui/shared/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace ladlework::ui {

WheelGuard::WheelGuard(QWidget& page) : QObject(&page) {
    const auto guard = [this](QWidget* box) {
        box->setFocusPolicy(Qt::StrongFocus);
        box->installEventFilter(this);
    };
    for (QComboBox* box : page.findChildren<QComboBox*>())
        guard(box);
    for (QAbstractSpinBox* box : page.findChildren<QAbstractSpinBox*>())
        guard(box);
}

void WheelGuard::protect(QWidget& page) {
    new WheelGuard(page); // the page owns it
}

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    const auto* box = qobject_cast<QWidget*>(watched);
    if (event->type() == QEvent::Wheel && box != nullptr && !box->hasFocus()) {
        event->ignore(); // goes on to the page
        return true;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace ladlework::ui
