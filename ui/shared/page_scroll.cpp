#include "ui/shared/page_scroll.h"

#include "ui/shared/wheel_guard.h"

#include <QScrollBar>

namespace ladlework::ui {

PageScroll::PageScroll(QWidget* page, QWidget* parent) : QScrollArea(parent) {
    setWidget(page);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    WheelGuard::protect(*page);
}

QSize PageScroll::minimumSizeHint() const {
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            QScrollArea::minimumSizeHint().height()};
}

} // namespace ladlework::ui
