#include "ui/today/drunk_bar.h"

#include "ui/paint/theme.h"

#include <QPainter>

#include <algorithm>

namespace ladlework::ui {

DrunkBar::DrunkBar(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DrunkBar::setShare(double share) {
    m_share = std::clamp(share, 0.0, 1.0);
    update();
}

QSize DrunkBar::sizeHint() const {
    return {8 * step(*this), step(*this)};
}

void DrunkBar::paintEvent(QPaintEvent* /*event*/) {
    const Colours& colours = coloursOf(*this);
    const double thickness = height() * 0.7;
    const QRectF track(0.5, (height() - thickness) / 2.0, width() - 1.0, thickness);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours.quietInk, 1.0));
    painter.setBrush(colours.page);
    painter.drawRect(track);
    if (m_share > 0.0) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours.bay);
        QRectF filled = track;
        filled.setWidth(track.width() * m_share);
        painter.drawRect(filled);
    }
}

} // namespace ladlework::ui
