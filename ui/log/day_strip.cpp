#include "ui/log/day_strip.h"

#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

namespace ladlework::ui {

namespace {
constexpr int shownDays = 14;
constexpr double cellCharacters = 4.4;
} // namespace

QList<DayFill> lastDays(const casebook::Casebook& book, int days) {
    const QDate first = book.today().addDays(1 - days);
    QList<DayFill> fills;
    for (int at = 0; at < days; ++at)
        fills.append({first.addDays(at), 0, 0});
    for (const casebook::Standing& standing : book.standings()) {
        QSet<QDate> entered;
        for (const intake::IntakeEntry& entry : book.records().entries)
            if (entry.member == standing.member.id)
                entered.insert(entry.day);
        const QList<quantity::Volume> asked = book.plannedAmounts(standing.member.id, first, days);
        for (int at = 0; at < days; ++at) {
            if (asked.value(at) <= quantity::Volume{})
                continue;
            ++fills[at].asked;
            if (entered.contains(fills.at(at).day))
                ++fills[at].entered;
        }
    }
    return fills;
}

DayStrip::DayStrip(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(tr("The last two weeks"));
}

void DayStrip::show(const casebook::Casebook& book, QDate day) {
    m_days = lastDays(book, shownDays);
    m_day = day;
    const auto found = std::ranges::find(m_days, m_day, &DayFill::day);
    setAccessibleDescription(found == m_days.end() ? printDay(m_day, QLocale()) : words(*found));
    update();
}

QDate DayStrip::latestOpen() const {
    for (qsizetype at = m_days.size() - 2; at >= 0; --at) // today is not over
        if (!m_days.at(at).isComplete())
            return m_days.at(at).day;
    return {};
}

QSize DayStrip::sizeHint() const {
    const QFontMetricsF metrics(font());
    return {qRound(cellCharacters * metrics.averageCharWidth() * shownDays),
            qRound(metrics.lineSpacing() * 2 + metrics.height() * 0.8)};
}

QSize DayStrip::minimumSizeHint() const {
    return sizeHint();
}

double DayStrip::cellWidth() const {
    return static_cast<double>(width()) / shownDays;
}

qsizetype DayStrip::cellAt(double x) const {
    return std::clamp<qsizetype>(static_cast<qsizetype>(x / cellWidth()), 0, m_days.size() - 1);
}

QString DayStrip::words(const DayFill& fill) {
    const QString day = printDay(fill.day, QLocale());
    if (fill.asked == 0)
        return tr("%1: nothing was asked").arg(day);
    return tr("%1: %2 of %3 entered").arg(day).arg(fill.entered).arg(fill.asked);
}

void DayStrip::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    for (qsizetype at = 0; at < m_days.size(); ++at) {
        const QRectF box(static_cast<double>(at) * cellWidth(), 0, cellWidth(), height());
        drawDay(painter, box.adjusted(1, 1, -1, -1), m_days.at(at));
    }
    if (hasFocus()) {
        painter.setPen(QPen(c.bay, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void DayStrip::drawDay(QPainter& painter, const QRectF& box, const DayFill& fill) const {
    const Colours& c = coloursOf(*this);
    const bool chosen = fill.day == m_day;
    if (chosen) {
        painter.setPen(QPen(c.bay, 2));
        painter.setBrush(c.raised);
        painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 3, 3);
    }
    const QFontMetricsF metrics(font());
    const double line = metrics.lineSpacing();
    painter.setPen(chosen ? c.ink : c.quietInk);
    painter.drawText(QRectF(box.left(), box.top() + 2, box.width(), line), Qt::AlignHCenter,
                     QLocale().dayName(fill.day.dayOfWeek(), QLocale::ShortFormat).left(2));
    painter.drawText(QRectF(box.left(), box.top() + 2 + line * 0.92, box.width(), line),
                     Qt::AlignHCenter, QString::number(fill.day.day()));
    if (fill.asked == 0)
        return;
    const double radius = metrics.height() * 0.2;
    const QPointF middle(box.center().x(), box.bottom() - radius - 3);
    const QRectF dot(middle - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    painter.setPen(QPen(c.bay, 1.4));
    painter.setBrush(fill.isComplete() ? QBrush(c.bay) : QBrush(Qt::NoBrush));
    painter.drawEllipse(dot);
    if (fill.entered > 0 && !fill.isComplete()) {
        constexpr int sixteenthsADegree = 16;
        painter.setBrush(c.bay);
        painter.drawPie(dot, 90 * sixteenthsADegree, 180 * sixteenthsADegree);
    }
}

void DayStrip::choose(QDate day) {
    if (!m_days.isEmpty() && day <= m_days.last().day && day != m_day)
        Q_EMIT dayChosen(day);
}

void DayStrip::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        choose(m_day.addDays(-1));
        return;
    case Qt::Key_Right:
        choose(m_day.addDays(1));
        return;
    case Qt::Key_Home:
        choose(m_days.isEmpty() ? m_day : m_days.first().day);
        return;
    case Qt::Key_End:
        choose(m_days.isEmpty() ? m_day : m_days.last().day);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void DayStrip::mousePressEvent(QMouseEvent* event) {
    if (!m_days.isEmpty())
        choose(m_days.at(cellAt(event->position().x())).day);
}

void DayStrip::focusInEvent(QFocusEvent* event) {
    update();
    QWidget::focusInEvent(event);
}

bool DayStrip::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && !m_days.isEmpty()) {
        const auto* help = static_cast<QHelpEvent*>(event);
        QToolTip::showText(help->globalPos(), words(m_days.at(cellAt(help->pos().x()))), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace ladlework::ui
