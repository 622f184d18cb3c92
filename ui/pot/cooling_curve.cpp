#include "ui/pot/cooling_curve.h"

#include "kitchen/cooling_run.h"
#include "ui/paint/theme.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace ladlework::ui {

using quantity::Duration;
using quantity::Temperature;

namespace {

constexpr double leastHours = 7; // so that both gates stand in every drawing
constexpr double mostHours = 24; // what comes later is only drawn as going on
constexpr int mostHourMarks = 8;
constexpr int leastLines = 7;
constexpr int usualLines = 11;
constexpr int wallAlpha = 46;
constexpr double coldest = 0;   // °C at the foot of the drawing
constexpr double hottest = 100; // and at its head

Temperature celsius(double degrees) {
    return Temperature::fromCelsius(degrees);
}

/// When the warmest place passes the temperature at which the rule begins.
Duration ruleStart(const std::vector<kitchen::CoolingPoint>& curve, Temperature from) {
    for (std::size_t i = 1; i < curve.size(); ++i) {
        const kitchen::CoolingPoint& a = curve[i - 1];
        const kitchen::CoolingPoint& b = curve[i];
        if (a.core > from && b.core <= from) {
            const double fall = a.core.toCelsius() - b.core.toCelsius();
            return a.at + (b.at - a.at) * ((a.core.toCelsius() - from.toCelsius()) / fall);
        }
    }
    return {};
}

} // namespace

CoolingCurve::CoolingCurve(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Cooling curve"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

QSize CoolingCurve::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 70, fontMetrics().lineSpacing() * usualLines};
}

QSize CoolingCurve::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 44, fontMetrics().lineSpacing() * leastLines};
}

void CoolingCurve::show(const kitchen::Cooling& cooling, quantity::MeasureSystem measures) {
    m_cooling = cooling;
    m_measures = measures;
    layGates();
    describe();
    update();
}

void CoolingCurve::layGates() {
    const auto rule = kitchen::TwoStageRule::shipped();
    const Duration start = ruleStart(m_cooling.curve, celsius(rule.fromC));
    const auto gate = [&](double below, Duration within, const std::optional<Duration>& reached) {
        return Gate{celsius(below), within, start + within, reached && *reached <= within};
    };
    m_gates = {gate(rule.middleC, rule.middleWithin, m_cooling.toMiddle),
               gate(rule.endC, rule.endWithin, m_cooling.toEnd)};
    const Duration last = m_cooling.curve.empty() ? Duration{} : m_cooling.curve.back().at;
    m_end = std::clamp(std::max(last, m_gates.last().at + Duration::fromHours(0.5)),
                       Duration::fromHours(leastHours), Duration::fromHours(mostHours));
}

QRectF CoolingCurve::plot() const {
    const double character = fontMetrics().averageCharWidth();
    const double line = fontMetrics().lineSpacing();
    const double left = fontMetrics().horizontalAdvance(QStringLiteral("100 °F")) + character;
    return QRectF(rect()).adjusted(left, line * 1.4, -character, -line * 1.3);
}

double CoolingCurve::xOf(Duration at) const {
    const QRectF area = plot();
    return area.left() + area.width() * std::clamp(at / m_end, 0.0, 1.0);
}

double CoolingCurve::yOf(Temperature temperature) const {
    const QRectF area = plot();
    const double share = (temperature.toCelsius() - coldest) / (hottest - coldest);
    return area.bottom() - area.height() * std::clamp(share, 0.0, 1.0);
}

QString CoolingCurve::words(Temperature temperature) const {
    return quantity::printTemperature(temperature, m_measures);
}

void CoolingCurve::paintEvent(QPaintEvent* /*event*/) {
    if (m_cooling.curve.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawGrid(painter);
    for (const Gate& gate : m_gates)
        drawGate(painter, gate, plot().top());
    drawCurve(painter);
}

void CoolingCurve::drawGrid(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const QRectF area = plot();
    const double line = fontMetrics().lineSpacing();
    const double start = kitchen::TwoStageRule::shipped().fromC;
    for (const Temperature mark : {celsius(start), m_gates.first().below, m_gates.last().below}) {
        const double y = yOf(mark);
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        painter.setPen(c.quietInk);
        painter.drawText(
            QRectF(0, y - line / 2, area.left() - fontMetrics().averageCharWidth(), line),
            Qt::AlignRight | Qt::AlignVCenter, words(mark));
    }
    const int every = std::max(1, static_cast<int>(m_end.toHours() / mostHourMarks + 0.99));
    for (int hour = 0; hour <= static_cast<int>(m_end.toHours()); hour += every) {
        const double x = xOf(Duration::fromHours(hour));
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x, area.bottom() + line * 0.25));
        painter.setPen(c.quietInk);
        const QString text = tr("%1 h").arg(hour);
        const double wide = fontMetrics().horizontalAdvance(text);
        const double left = std::clamp(x - wide / 2, 0.0, std::max(0.0, width() - wide));
        painter.drawText(QPointF(left, area.bottom() + line * 1.1), text);
    }
    painter.setPen(QPen(c.quietInk, 1));
    painter.drawLine(area.bottomLeft(), area.bottomRight());
}

void CoolingCurve::drawGate(QPainter& painter, const Gate& gate, double top) const {
    const Colours& c = coloursOf(*this);
    const double line = fontMetrics().lineSpacing();
    const double x = xOf(gate.at);
    const double foot = yOf(gate.below);
    const QColor colour = gate.passed ? c.bay : c.beet;
    QColor wall = colour;
    wall.setAlpha(wallAlpha);
    const double wide = fontMetrics().averageCharWidth() * 1.5;
    painter.fillRect(QRectF(QPointF(x, top), QPointF(x + wide, foot)), wall);
    painter.setPen(QPen(colour, 2));
    painter.drawLine(QPointF(x, top), QPointF(x, foot));
    painter.drawLine(QPointF(x - wide / 2, foot), QPointF(x + wide, foot));
    // The word stands over its post, so that colour does not speak alone.
    const QString text = gate.passed ? tr("%1 in time").arg(words(gate.below))
                                     : tr("%1 missed").arg(words(gate.below));
    const double textWide = fontMetrics().horizontalAdvance(text);
    const double left = std::clamp(x - textWide / 2, 0.0, std::max(0.0, width() - textWide));
    painter.setPen(colour);
    painter.drawText(QRectF(left, top - line * 1.2, textWide + 2, line),
                     Qt::AlignLeft | Qt::AlignVCenter, text);
}

void CoolingCurve::drawCurve(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    QPainterPath core;
    QPainterPath surface;
    bool first = true;
    for (const kitchen::CoolingPoint& point : m_cooling.curve) {
        if (point.at > m_end)
            break;
        const double x = xOf(point.at);
        if (std::exchange(first, false)) {
            core.moveTo(x, yOf(point.core));
            surface.moveTo(x, yOf(point.surface));
        } else {
            core.lineTo(x, yOf(point.core));
            surface.lineTo(x, yOf(point.surface));
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.quietInk, 1.2, Qt::DotLine));
    painter.drawPath(surface);
    painter.setPen(QPen(c.ink, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(core);
}

void CoolingCurve::describe() {
    QStringList lines;
    for (const Gate& gate : m_gates)
        lines.append(gate.passed
                         ? tr("The gate of %1 within %2 is passed.")
                               .arg(words(gate.below), quantity::printDuration(gate.within))
                         : tr("The gate of %1 within %2 is missed.")
                               .arg(words(gate.below), quantity::printDuration(gate.within)));
    setAccessibleDescription(lines.join(u' '));
    lines.append(tr("Solid: the warmest place. Dotted: the top."));
    setToolTip(lines.join(u'\n'));
}

} // namespace ladlework::ui
