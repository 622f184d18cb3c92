#include "ui/progress/comparison_chart.h"

#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>

namespace ladlework::ui {

namespace {
constexpr double fullPercent = 100;
constexpr double labelGap = 1.1; ///< lines of text between two names
} // namespace

ClimbComparisonChart::ClimbComparisonChart(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("The climbs of the family side by side"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

QSize ClimbComparisonChart::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 90, fontMetrics().lineSpacing() * 15};
}

QSize ClimbComparisonChart::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 40, fontMetrics().lineSpacing() * 9};
}

void ClimbComparisonChart::show(const QList<ClimbShares>& climbs, QDate today, int days) {
    m_climbs = climbs;
    m_today = today;
    m_first = today.addDays(-1);
    m_most = 1;
    for (const ClimbShares& climb : climbs) {
        if (!climb.days.isEmpty())
            m_first = std::min(m_first, climb.days.first().day);
        for (const ClimbShares::Day& day : climb.days)
            m_most = std::max(m_most, day.share.value_or(0));
    }
    if (days > 0)
        m_first = std::max(m_first, today.addDays(1 - days));
    update();
}

QRectF ClimbComparisonChart::plot() const {
    int widest = 0;
    for (const ClimbShares& climb : m_climbs)
        widest = std::max(widest, fontMetrics().horizontalAdvance(climb.name));
    const int gap = fontMetrics().averageCharWidth();
    const int line = fontMetrics().lineSpacing();
    const int scale = fontMetrics().horizontalAdvance(tr("target"));
    return QRectF(rect()).adjusted(scale + 2 * gap, line * 0.7, -(widest + 2 * gap), -1.6 * line);
}

double ClimbComparisonChart::xOf(QDate day) const {
    const auto days = static_cast<double>(m_first.daysTo(m_today) + 1);
    return plot().left() + static_cast<double>(m_first.daysTo(day)) / days * plot().width();
}

double ClimbComparisonChart::yOf(double share) const {
    return plot().bottom() - share / m_most * plot().height();
}

QPen ClimbComparisonChart::penOf(int at) const {
    const Colours& c = coloursOf(*this);
    const std::array<QColor, 4> inks{c.bay, c.slate, c.ink, c.quietInk};
    const std::array<Qt::PenStyle, 4> dashes{Qt::SolidLine, Qt::DashLine, Qt::DotLine,
                                             Qt::DashDotLine};
    const auto colour = static_cast<std::size_t>(at) % inks.size();
    // Past the fourth the dashes are dealt out anew, so that no two lines are alike.
    const auto dash =
        (static_cast<std::size_t>(at) + static_cast<std::size_t>(at) / inks.size()) % dashes.size();
    return {inks[colour], 2, dashes[dash]};
}

void ClimbComparisonChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_climbs.isEmpty())
        return;
    drawScale(painter);
    for (int at = 0; at < m_climbs.size(); ++at)
        drawClimb(painter, at);
    drawNames(painter);
}

void ClimbComparisonChart::drawScale(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const QRectF box = plot();
    const int gap = fontMetrics().averageCharWidth();
    const double high = fontMetrics().height();
    for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        const double y = yOf(share);
        const bool target = share == 1.0;
        painter.setPen(QPen(target ? c.bay : c.rule, 1));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        painter.setPen(target ? c.bay : c.quietInk);
        painter.drawText(QRectF(0, y - high / 2, box.left() - gap, high),
                         Qt::AlignRight | Qt::AlignVCenter,
                         target ? tr("target") : tr("%1 %").arg(share * fullPercent));
    }
    painter.setPen(c.quietInk);
    const double y = box.bottom() + high * 0.4 + fontMetrics().ascent();
    painter.drawText(QPointF(box.left(), y), printShortDay(m_first, QLocale()));
    const QString today = tr("today");
    painter.drawText(QPointF(box.right() - fontMetrics().horizontalAdvance(today), y), today);
}

void ClimbComparisonChart::drawClimb(QPainter& painter, int at) const {
    QPainterPath path;
    bool begun = false;
    for (const ClimbShares::Day& day : m_climbs.at(at).days) {
        if (day.day < m_first)
            continue;
        if (!day.share) {
            begun = false; // stopped: the line is broken
            continue;
        }
        const QPointF place(xOf(day.day), yOf(*day.share));
        if (begun)
            path.lineTo(place);
        else
            path.moveTo(place);
        path.lineTo(QPointF(xOf(day.day.addDays(1)), place.y()));
        begun = true;
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(penOf(at));
    painter.drawPath(path);
}

/// The names at the ends of the lines, moved apart where two lines end together.
QList<ClimbComparisonChart::Label> ClimbComparisonChart::placedLabels() const {
    QList<Label> labels;
    for (int at = 0; at < m_climbs.size(); ++at) {
        double share = 0;
        for (const ClimbShares::Day& day : m_climbs.at(at).days)
            share = day.share.value_or(share);
        labels.append({m_climbs.at(at).name, yOf(share), at});
    }
    std::ranges::stable_sort(labels, {}, &Label::y);
    const double least = labelGap * fontMetrics().height();
    for (qsizetype i = 1; i < labels.size(); ++i)
        labels[i].y = std::max(labels.at(i).y, labels.at(i - 1).y + least);
    double floor = height();
    for (qsizetype i = labels.size() - 1; i >= 0; --i) {
        floor -= least;
        labels[i].y = std::min(labels.at(i).y, floor + least / 2);
    }
    return labels;
}

void ClimbComparisonChart::drawNames(QPainter& painter) const {
    const double high = fontMetrics().height();
    const double left = plot().right() + fontMetrics().averageCharWidth();
    for (const Label& label : placedLabels()) {
        painter.setPen(penOf(label.at).color());
        painter.drawText(QRectF(left, label.y - high / 2, width() - left, high),
                         Qt::AlignLeft | Qt::AlignVCenter, label.name);
    }
}

} // namespace ladlework::ui
