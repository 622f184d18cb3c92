#include "ui/progress/series_chart.h"

#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ladlework::ui {

SeriesChart::SeriesChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The series as a drawing"));
}

QSize SeriesChart::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 60, fontMetrics().lineSpacing() * 11};
}

QSize SeriesChart::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 30, fontMetrics().lineSpacing() * 8};
}

void SeriesChart::setPoints(const QList<SeriesPoint>& points) {
    // Whoever looks at the latest value goes on to a newer one.
    const bool atEnd = m_at + 1 >= m_points.size();
    const QDate before = atEnd ? QDate() : m_points.at(m_at).day;
    m_points = points;
    m_at = std::max<qsizetype>(0, m_points.size() - 1);
    const auto kept = std::ranges::find(m_points, before, &SeriesPoint::day);
    if (kept != m_points.end())
        m_at = kept - m_points.begin();
    if (!m_points.isEmpty()) {
        const auto [least, most] = std::ranges::minmax(m_points, {}, &SeriesPoint::value);
        // A flat series lies in the middle and not at an edge.
        const double room = std::max((most.value - least.value) * 0.1, std::abs(most.value) * 0.01);
        m_least = least.value - room;
        m_most = most.value + std::max(room, 1e-9);
    }
    describe();
    update();
}

void SeriesChart::setDay(QDate day) {
    const auto found = std::ranges::find(m_points, day, &SeriesPoint::day);
    if (found != m_points.end())
        choose(found - m_points.begin());
}

QRectF SeriesChart::plot() const {
    int widest = 0;
    for (const SeriesPoint& point : m_points)
        widest = std::max(widest, fontMetrics().horizontalAdvance(point.words));
    const int gap = fontMetrics().averageCharWidth();
    const int line = fontMetrics().lineSpacing();
    return QRectF(rect()).adjusted(widest + 2.5 * gap, 0.7 * line, -2 * gap, -1.6 * line);
}

QPointF SeriesChart::placeOf(const SeriesPoint& point) const {
    const QRectF box = plot();
    const qint64 days = m_points.first().day.daysTo(m_points.last().day);
    const double along = days > 0 ? static_cast<double>(m_points.first().day.daysTo(point.day)) /
                                        static_cast<double>(days)
                                  : 0.5;
    const double up = (point.value - m_least) / (m_most - m_least);
    return {box.left() + along * box.width(), box.bottom() - up * box.height()};
}

void SeriesChart::drawScale(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const QRectF box = plot();
    const auto [least, most] = std::ranges::minmax(m_points, {}, &SeriesPoint::value);
    const int gap = fontMetrics().averageCharWidth();
    const double high = fontMetrics().height();
    double lastY = -high;
    for (const SeriesPoint& edge : {most, least}) {
        const double y = placeOf(edge).y();
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        if (std::abs(y - lastY) < high)
            continue;
        lastY = y;
        painter.setPen(c.quietInk);
        painter.drawText(QRectF(0, y - high / 2, box.left() - gap, high),
                         Qt::AlignRight | Qt::AlignVCenter, edge.words);
    }
    painter.setPen(c.quietInk);
    const double y = box.bottom() + fontMetrics().height() * 0.4 + fontMetrics().ascent();
    const QString first = printShortDay(m_points.first().day, QLocale());
    painter.drawText(QPointF(placeOf(m_points.first()).x(), y), first);
    const QString last = printShortDay(m_points.last().day, QLocale());
    if (m_points.first().day != m_points.last().day)
        painter.drawText(QPointF(box.right() - fontMetrics().horizontalAdvance(last), y), last);
}

void SeriesChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    if (!m_points.isEmpty()) {
        drawScale(painter);
        QPolygonF line;
        for (const SeriesPoint& point : m_points)
            line.append(placeOf(point));
        painter.setPen(QPen(c.bay, 1.5));
        painter.drawPolyline(line);
        const double radius = fontMetrics().height() * 0.2;
        painter.setBrush(c.bay);
        for (const QPointF& place : line)
            painter.drawEllipse(place, radius, radius);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(c.ink, 1.5));
        painter.drawEllipse(line.at(m_at), 2 * radius, 2 * radius);
    }
    if (hasFocus()) {
        painter.setPen(QPen(c.bay, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void SeriesChart::choose(qsizetype at) {
    if (m_points.isEmpty())
        return;
    at = std::clamp<qsizetype>(at, 0, m_points.size() - 1);
    if (at == m_at)
        return;
    m_at = at;
    describe();
    update();
    Q_EMIT dayChosen(m_points.at(m_at).day);
}

void SeriesChart::describe() {
    const QString words =
        m_points.isEmpty()
            ? tr("nothing entered yet")
            : tr("%1: %2").arg(printDay(m_points.at(m_at).day, QLocale()), m_points.at(m_at).words);
    setAccessibleDescription(words);
    setToolTip(words);
}

void SeriesChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        choose(m_at - 1);
        return;
    case Qt::Key_Right:
        choose(m_at + 1);
        return;
    case Qt::Key_Home:
        choose(0);
        return;
    case Qt::Key_End:
        choose(m_points.size() - 1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void SeriesChart::mousePressEvent(QMouseEvent* event) {
    qsizetype nearest = m_at;
    for (qsizetype at = 0; at < m_points.size(); ++at)
        if (std::abs(placeOf(m_points.at(at)).x() - event->position().x()) <
            std::abs(placeOf(m_points.at(nearest)).x() - event->position().x()))
            nearest = at;
    choose(nearest);
}

} // namespace ladlework::ui
