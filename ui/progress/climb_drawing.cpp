#include "intake/easing.h"
#include "ui/paint/theme.h"
#include "ui/progress/climb_chart.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/day_text.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace ladlework::ui {

using intake::LadderDay;

namespace {
constexpr int bandAlpha = 46;
constexpr int targetAlpha = 30;
} // namespace

void ClimbChart::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    painter.fillRect(rect(), c.raised);
    if (!standing()) {
        return; // the screen says why there is nothing
    }
    drawProjection(painter);
    drawRungs(painter);
    drawMonths(painter);
    drawToday(painter);
    drawEasing(painter);
    drawStairs(painter);
    drawDays(painter);
    if (hasFocus()) {
        painter.setPen(QPen(c.bay, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void ClimbChart::drawRungs(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const int rungs = static_cast<int>(standing()->ladder->rungs.size());
    const int gap = fontMetrics().averageCharWidth();
    // Labels are left out where rungs stand closer than a line of text; the first and the last
    // stay.
    const int every =
        std::max(1, static_cast<int>(fontMetrics().height() / m_scale.rungHeight() + 0.999));
    for (int rung = 0; rung < rungs; ++rung) {
        const double y = m_scale.yOf(rung);
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(m_scale.plot().left(), y), QPointF(m_scale.plot().right(), y));
        const bool last = rung == rungs - 1;
        if (!last && (rung % every != 0 || rungs - 1 - rung < every))
            continue;
        painter.setPen(last ? c.bay : c.quietInk);
        const QRectF box(0, y - fontMetrics().height() / 2.0, m_scale.plot().left() - gap,
                         fontMetrics().height());
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, rungWords(rung));
    }
}

void ClimbChart::drawMonths(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const QLocale locale;
    const int textWidth = fontMetrics().horizontalAdvance(QStringLiteral("00 Mmmm "));
    const double y = m_scale.plot().bottom();
    double nextFree = m_scale.plot().left();
    for (QDate day = m_scale.first(); day <= m_scale.last(); day = day.addDays(1)) {
        if (day.dayOfWeek() != Qt::Monday)
            continue;
        const double x = m_scale.xOf(day);
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(x, y), QPointF(x, y + fontMetrics().height() / 3.0));
        if (x < nextFree || x + textWidth > m_scale.plot().right())
            continue;
        painter.setPen(c.quietInk);
        painter.drawText(QPointF(x, y + fontMetrics().ascent() + fontMetrics().height() / 3.0),
                         printShortDay(day, locale));
        nextFree = x + textWidth;
    }
}

void ClimbChart::drawStairs(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    QPainterPath path;
    QPainterPath stopped;
    bool begun = false;
    for (const LadderDay& day : standing()->replay.days) {
        if (day.day < m_scale.first())
            continue;
        const QPointF from(m_scale.xOf(day.day), heightOf(day));
        const QPointF to = from + QPointF(m_scale.dayWidth(), 0);
        if (beganStopped(day)) {
            stopped.moveTo(from);
            stopped.lineTo(to);
            path.moveTo(to);
        } else {
            if (begun)
                path.lineTo(from);
            else
                path.moveTo(from);
            path.lineTo(to);
        }
        begun = true;
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.5));
    painter.drawPath(path);
    painter.setPen(QPen(c.beet, 1, Qt::DotLine));
    painter.drawPath(stopped);
}

void ClimbChart::drawDays(QPainter& painter) const {
    for (const LadderDay& day : standing()->replay.days)
        if (day.day >= m_scale.first())
            drawDay(painter, day);
}

void ClimbChart::drawDay(QPainter& painter, const LadderDay& day) const {
    const casebook::Standing* s = standing();
    const Colours& c = coloursOf(*this);
    ClimbMark mark;
    mark.decision = day.decision;
    mark.stopped = beganStopped(day);
    if (const auto log = m_log.constFind(day.day); log != m_log.constEnd()) {
        mark.enoughDrunk = log->drunk >= askedOn(*m_casebook, *s, day) * s->ladder->rules.goodShare;
        mark.worstReaction = log->worstReaction;
        mark.redFlag = log->redFlag;
    }
    const QPointF middle(m_scale.middleOf(day.day), heightOf(day));
    drawClimbMark(painter, middle, markSize(), mark, s->ladder->rules, c);
    if (day.day != m_day)
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.5));
    painter.drawEllipse(middle, markSize(), markSize());
}

/// What the plan asks from today on, as a dashed staircase down.
void ClimbChart::drawEasing(QPainter& painter) const {
    const casebook::Standing* s = standing();
    if (!s->target || !s->target->easeOffFrom.isValid())
        return;
    const Colours& c = coloursOf(*this);
    QPainterPath path;
    const QDate first = std::max(s->target->easeOffFrom, m_casebook->today());
    for (QDate day = first; day <= m_scale.last(); day = day.addDays(1)) {
        const auto eased = intake::easedAmount(*s->target, *s->ladder, day);
        if (!eased)
            continue;
        const QPointF from(m_scale.xOf(day), heightOf(*eased));
        if (day == first)
            path.moveTo(from);
        else
            path.lineTo(from);
        path.lineTo(from + QPointF(m_scale.dayWidth(), 0));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.slate, 1.5, Qt::DashLine));
    painter.drawPath(path);
}

void ClimbChart::drawProjection(QPainter& painter) const {
    const casebook::Standing* s = standing();
    const Colours& c = coloursOf(*this);
    const int top = static_cast<int>(s->ladder->rungs.size()) - 1;
    QColor target = c.bay;
    target.setAlpha(targetAlpha);
    painter.fillRect(QRectF(m_scale.plot().left(), m_scale.yOf(top) - m_scale.rungHeight() / 2,
                            m_scale.plot().width(), m_scale.rungHeight()),
                     target);
    if (!s->targetDate || s->replay.rung >= top || s->easedToday)
        return;
    const auto xOf = [this](QDate day) {
        return m_scale.xOf(std::clamp(day, m_scale.first(), m_scale.last()));
    };
    const QPointF now(m_scale.middleOf(m_casebook->today()), m_scale.yOf(s->replay.rung));
    QColor band = c.slate;
    band.setAlpha(bandAlpha);
    painter.setPen(Qt::NoPen);
    painter.setBrush(band);
    painter.drawPolygon(QPolygonF{now, QPointF(xOf(s->targetDate->p10), m_scale.yOf(top)),
                                  QPointF(xOf(s->targetDate->p90), m_scale.yOf(top))});
    painter.setPen(QPen(c.slate, 1.5, Qt::DashLine));
    painter.drawLine(now, QPointF(xOf(s->targetDate->median), m_scale.yOf(top)));
}

void ClimbChart::drawToday(QPainter& painter) const {
    const Colours& c = coloursOf(*this);
    const double x = m_scale.middleOf(m_casebook->today());
    painter.setPen(QPen(c.quietInk, 1, Qt::DotLine));
    painter.drawLine(QPointF(x, m_scale.plot().top()), QPointF(x, m_scale.plot().bottom()));
    painter.setPen(c.quietInk);
    const int wide = fontMetrics().horizontalAdvance(tr("today"));
    painter.drawText(QPointF(x - wide / 2.0, m_scale.plot().top() - fontMetrics().descent()),
                     tr("today"));
}

} // namespace ladlework::ui
