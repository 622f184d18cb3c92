#include "ui/pot/calibration_drawing.h"

#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

namespace ladlework::ui {

using kitchen::MeasuredLoss;
using kitchen::Range;

namespace {

constexpr double halfCounts = 0.5;
constexpr std::array marks{0.05, 0.1, 0.25, 0.5, 1.0, 2.0, 4.0, 8.0};

QString times(double factor) {
    return CalibrationDrawing::tr("%1×").arg(QLocale().toString(factor, 'g', 2));
}

} // namespace

CalibrationDrawing::CalibrationDrawing(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("What measured batches say of this vessel"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

bool CalibrationDrawing::isOdd(const MeasuredLoss& loss) {
    return loss.weight < halfCounts;
}

double CalibrationDrawing::rowHeight() const {
    return fontMetrics().lineSpacing() * 1.35;
}

QSize CalibrationDrawing::sizeHint() const {
    const double rows = static_cast<double>(latest().size()) + 2;
    return {fontMetrics().averageCharWidth() * 64,
            static_cast<int>(rowHeight() * rows + 1.6 * fontMetrics().lineSpacing())};
}

QSize CalibrationDrawing::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 44, sizeHint().height()};
}

std::vector<MeasuredLoss> CalibrationDrawing::latest() const {
    const auto& points = m_calibration.points;
    const std::size_t from = points.size() > mostBatches ? points.size() - mostBatches : 0;
    return {points.begin() + static_cast<std::ptrdiff_t>(from), points.end()};
}

void CalibrationDrawing::show(const kitchen::Calibration& calibration) {
    m_calibration = calibration;
    fitScale();
    describe();
    updateGeometry();
    update();
}

void CalibrationDrawing::fitScale() {
    m_low = m_calibration.prior.low;
    m_high = m_calibration.prior.high;
    for (const MeasuredLoss& loss : latest()) {
        m_low = std::min(m_low, loss.factor.low);
        m_high = std::max(m_high, loss.factor.high);
    }
    constexpr double air = 1.15;
    m_low = std::max(marks.front(), m_low / air);
    m_high = std::max(m_low * 2, std::min(marks.back(), m_high * air));
}

QRectF CalibrationDrawing::plot() const {
    const double character = fontMetrics().averageCharWidth();
    const double names = fontMetrics().horizontalAdvance(tr("physics alone")) + 2 * character;
    const double words = fontMetrics().horizontalAdvance(tr("odd, counts little")) + character;
    return QRectF(rect()).adjusted(names, 0, -words, -1.5 * fontMetrics().lineSpacing());
}

double CalibrationDrawing::xOf(double factor) const {
    const QRectF area = plot();
    const double share = std::log(std::max(factor, 1e-6) / m_low) / std::log(m_high / m_low);
    return area.left() + area.width() * std::clamp(share, 0.0, 1.0);
}

void CalibrationDrawing::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    drawScale(painter);
    double y = rowHeight() / 2;
    drawExpected(painter, tr("physics alone"), m_calibration.prior, c.slate, y);
    for (const MeasuredLoss& loss : latest()) {
        y += rowHeight();
        drawBatch(painter, loss, y);
    }
    drawExpected(painter, tr("expected now"), m_calibration.posterior, c.bay, y + rowHeight());
}

void CalibrationDrawing::drawScale(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const QRectF area = plot();
    for (const double mark : marks) {
        if (mark < m_low || mark > m_high)
            continue;
        const double x = xOf(mark);
        painter.setPen(QPen(mark == 1.0 ? c.quietInk : c.rule, 1));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        painter.setPen(c.quietInk);
        const QString text = times(mark);
        painter.drawText(QPointF(x - fontMetrics().horizontalAdvance(text) / 2.0,
                                 area.bottom() + fontMetrics().lineSpacing()),
                         text);
    }
}

void CalibrationDrawing::drawExpected(QPainter& painter, const QString& name, const Range& range,
                                      const QColor& colour, double y) const {
    const Colours& c = coloursOf(*this);
    const double line = fontMetrics().lineSpacing();
    painter.setPen(c.ink);
    painter.drawText(QRectF(0, y - line / 2, plot().left(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     name);
    constexpr int bandAlpha = 90;
    QColor band = colour;
    band.setAlpha(bandAlpha);
    const double half = line * 0.24;
    painter.fillRect(QRectF(QPointF(xOf(range.low), y - half), QPointF(xOf(range.high), y + half)),
                     band);
    painter.setPen(QPen(colour, 3));
    const double best = xOf(range.best);
    painter.drawLine(QPointF(best, y - half * 1.5), QPointF(best, y + half * 1.5));
    painter.setPen(colour);
    painter.drawText(QRectF(plot().right() + fontMetrics().averageCharWidth(), y - line / 2,
                            width() - plot().right(), line),
                     Qt::AlignLeft | Qt::AlignVCenter, times(range.best));
}

void CalibrationDrawing::drawBatch(QPainter& painter, const MeasuredLoss& loss, double y) const {
    const Colours& c = coloursOf(*this);
    const double line = fontMetrics().lineSpacing();
    const bool odd = isOdd(loss);
    const QColor colour = odd ? c.copper : c.ink;
    painter.setPen(odd ? c.copper : c.quietInk);
    painter.drawText(QRectF(0, y - line / 2, plot().left(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     printShortDay(loss.day, QLocale()));
    painter.setPen(QPen(colour, 1, odd ? Qt::DotLine : Qt::SolidLine));
    painter.drawLine(QPointF(xOf(loss.factor.low), y), QPointF(xOf(loss.factor.high), y));
    const double radius = line * (0.14 + 0.2 * std::clamp(loss.weight, 0.0, 1.0));
    painter.setPen(QPen(colour, 1.5));
    painter.setBrush(odd ? QBrush(c.raised) : QBrush(colour));
    painter.drawEllipse(QPointF(xOf(loss.factor.best), y), radius, radius);
    painter.setBrush(Qt::NoBrush);
    if (!odd)
        return;
    painter.drawText(QRectF(plot().right() + fontMetrics().averageCharWidth(), y - line / 2,
                            width() - plot().right(), line),
                     Qt::AlignLeft | Qt::AlignVCenter, tr("odd, counts little"));
}

void CalibrationDrawing::describe() {
    QStringList lines;
    const auto add = [&lines](const QString& name, const Range& range) {
        lines.append(tr("%1: %2, from %3 to %4.")
                         .arg(name, times(range.best), times(range.low), times(range.high)));
    };
    add(tr("Physics alone"), m_calibration.prior);
    for (const MeasuredLoss& loss : latest()) {
        const QString day = printShortDay(loss.day, QLocale());
        add(isOdd(loss) ? tr("%1, odd").arg(day) : day, loss.factor);
    }
    add(tr("Expected now"), m_calibration.posterior);
    setAccessibleDescription(lines.join(u' '));
    setToolTip(lines.join(u'\n'));
}

} // namespace ladlework::ui
