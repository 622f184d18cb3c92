#include "ui/pot/cooking_line.h"

#include "quantity/measure.h"
#include "ui/paint/theme.h"
#include "ui/pot/keeping_panel.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>

namespace ladlework::ui {

using quantity::Duration;

namespace {
constexpr int windowAlpha = 60;
constexpr int barAlpha = 150;
constexpr int secondsAMinute = 60;
constexpr int mostHourMarks = 12;
constexpr double mostNameShare = 0.4;
} // namespace

CookingLine::CookingLine(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("When what goes in"));
}

void CookingLine::show(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                       const kitchen::Catalogue& catalogue) {
    m_rows.clear();
    m_keeping.clear();
    for (const kitchen::CutInPot& inPot : pot.cuts)
        if (const kitchen::Cut* cut = catalogue.cut(inPot.cut); cut != nullptr && inPot.raw)
            m_keeping.append(rawKeepingWords(cut->cookClass));
    m_keeping.removeDuplicates();
    m_end = pot.simmer;
    for (const kitchen::Addition& addition : brewed.additions) {
        if (addition.what == kitchen::Addition::What::Water)
            continue;
        Row row;
        row.name = addition.name;
        row.at = addition.at;
        row.heatOff = addition.heatOff;
        const kitchen::Cut* cut = catalogue.cut(addition.id);
        const kitchen::Animal* animal = cut ? catalogue.animal(cut->animal) : nullptr;
        if (animal && pot.brew == kitchen::Pot::Brew::MeatStock) {
            const kitchen::CookWindow& window = catalogue.window(animal->cookClass);
            row.windowed = true;
            row.earliest = std::max(Duration{}, m_end - window.most);
            row.latest = std::max(Duration{}, m_end - window.least);
            const Duration cooked = m_end - row.at;
            row.inWindow = cooked >= window.least && cooked <= window.most;
        }
        const bool joins = !cut && !m_rows.isEmpty() && !m_rows.last().windowed &&
                           m_rows.last().at == row.at && m_rows.last().heatOff == row.heatOff;
        if (joins)
            m_rows.last().name += QStringLiteral(", ") + row.name;
        else
            m_rows.append(row);
    }
    describe();
    updateGeometry();
    update();
}

void CookingLine::setStart(QTime start) {
    m_start = start;
    describe();
    update();
}

QSize CookingLine::sizeHint() const {
    const double rows = static_cast<double>(m_rows.size()) * 1.5 + 1.8;
    return {fontMetrics().averageCharWidth() * 80,
            static_cast<int>(rows * fontMetrics().lineSpacing())};
}

QSize CookingLine::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 48, sizeHint().height()};
}

QString CookingLine::clock(Duration at) const {
    if (!m_start.isValid())
        return at == Duration{} ? tr("at the start")
                                : tr("after %1").arg(quantity::printDuration(at));
    const QTime time = m_start.addSecs(qRound(at.toMinutes() * secondsAMinute));
    return QLocale().toString(time, QLocale::ShortFormat);
}

double CookingLine::xOf(const QRectF& bar, Duration at) const {
    return bar.left() + bar.width() * std::clamp(at / m_end, 0.0, 1.0);
}

void CookingLine::paintEvent(QPaintEvent* /*event*/) {
    if (m_rows.isEmpty() || m_end <= Duration{})
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const int character = fontMetrics().averageCharWidth();
    const int clockWidth =
        fontMetrics().horizontalAdvance(QStringLiteral("after 00 h 00 min")) + 2 * character;
    int names = 0;
    for (const Row& row : m_rows)
        names = std::max(names, fontMetrics().horizontalAdvance(row.name));
    names = std::min(names + 2 * character, static_cast<int>(width() * mostNameShare));
    const QRectF bar(names, 0, std::max(20, width() - names - clockWidth), height());
    drawHours(painter, bar);
    const double rowHeight = 1.5 * fontMetrics().lineSpacing();
    double y = 1.4 * fontMetrics().lineSpacing();
    for (const Row& row : m_rows) {
        drawRow(painter, bar, row, y);
        y += rowHeight;
    }
}

void CookingLine::drawHours(QPainter& painter, const QRectF& bar) const {
    const Colours& c = coloursOf(*this);
    const double hours = m_end.toHours();
    const int every = std::max(1, static_cast<int>(hours / mostHourMarks + 1));
    for (int hour = 0; hour <= static_cast<int>(hours + 0.001); hour += every) {
        const double x = xOf(bar, Duration::fromHours(hour));
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(x, fontMetrics().lineSpacing()), QPointF(x, height()));
        painter.setPen(c.quietInk);
        const QString words = tr("%1 h").arg(hour);
        const int wide = fontMetrics().horizontalAdvance(words);
        const double left = std::clamp(x - wide / 2.0, bar.left(), bar.right() - wide);
        painter.drawText(QPointF(left, fontMetrics().ascent()), words);
    }
}

void CookingLine::drawRow(QPainter& painter, const QRectF& bar, const Row& row, double y) const {
    const Colours& c = coloursOf(*this);
    const double line = fontMetrics().lineSpacing();
    const int character = fontMetrics().averageCharWidth();
    const QRectF nameBox(0, y, bar.left() - character, line);
    painter.setPen(c.ink);
    painter.drawText(
        nameBox, Qt::AlignLeft | Qt::AlignVCenter,
        fontMetrics().elidedText(row.name, Qt::ElideRight, static_cast<int>(nameBox.width())));
    const QColor colour = row.inWindow ? c.bay : c.copper;
    if (row.windowed) {
        QColor window = c.slate;
        window.setAlpha(windowAlpha);
        painter.fillRect(QRectF(QPointF(xOf(bar, row.earliest), y + line * 0.12),
                                QPointF(xOf(bar, row.latest), y + line * 0.88)),
                         window);
        QColor cooking = colour;
        cooking.setAlpha(barAlpha);
        painter.fillRect(QRectF(QPointF(xOf(bar, row.at), y + line * 0.38),
                                QPointF(bar.right(), y + line * 0.62)),
                         cooking);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(row.heatOff ? c.quietInk : colour);
    const double x = xOf(bar, row.at);
    painter.drawEllipse(QPointF(x, y + line / 2), line * 0.26, line * 0.26);
    painter.setPen(row.inWindow ? c.quietInk : c.copper);
    const QString when = row.heatOff ? tr("end, heat off") : clock(row.at);
    painter.drawText(QRectF(bar.right() + character, y, width() - bar.right() - character, line),
                     Qt::AlignLeft | Qt::AlignVCenter, when);
}

void CookingLine::describe() {
    QStringList lines;
    for (const Row& row : m_rows)
        lines.append(tr("%1: %2").arg(row.name, row.heatOff ? tr("end, heat off") : clock(row.at)));
    setAccessibleDescription(lines.join(QStringLiteral(". ")));
    setToolTip((lines + m_keeping).join(u'\n'));
}

} // namespace ladlework::ui
