#include "ui/shared/side_by_side.h"

#include <QBoxLayout>
#include <QEvent>

#include <algorithm>

namespace ladlework::ui {

namespace {

int leastWidth(const QWidget& part) {
    return std::max(part.minimumWidth(), part.minimumSizeHint().width());
}

} // namespace

SideBySide::SideBySide(QWidget* parent)
    : QWidget(parent), m_layout(new QBoxLayout(QBoxLayout::LeftToRight, this)) {
    m_layout->setContentsMargins(0, 0, 0, 0);
}

void SideBySide::add(QWidget* part, int stretch) {
    m_parts.append(part);
    const bool low = part->sizePolicy().verticalPolicy() == QSizePolicy::Maximum;
    m_layout->addWidget(part, stretch, low ? Qt::Alignment(Qt::AlignTop) : Qt::Alignment());
}

void SideBySide::setSpacing(int spacing) {
    m_layout->setSpacing(spacing);
}

QSize SideBySide::minimumSizeHint() const {
    QSize least = m_layout->minimumSize();
    int widest = 0;
    for (const QWidget* part : m_parts)
        if (!part->isHidden())
            widest = std::max(widest, leastWidth(*part));
    least.setWidth(widest);
    return least;
}

void SideBySide::resizeEvent(QResizeEvent* event) {
    arrange();
    QWidget::resizeEvent(event);
}

bool SideBySide::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest)
        arrange(); // a part was shown, or asks for another width
    return QWidget::event(event);
}

void SideBySide::arrange() {
    int beside = 0;
    int shown = 0;
    for (const QWidget* part : m_parts)
        if (!part->isHidden()) {
            beside += leastWidth(*part);
            ++shown;
        }
    beside += std::max(0, shown - 1) * m_layout->spacing();
    const auto direction = beside <= width() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom;
    if (direction == m_layout->direction())
        return;
    m_layout->setDirection(direction);
    Q_EMIT arranged(direction == QBoxLayout::LeftToRight);
}

} // namespace ladlework::ui
