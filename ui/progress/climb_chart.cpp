#include "ui/progress/climb_chart.h"

#include "ui/paint/theme.h"
#include "ui/shared/day_text.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace ladlework::ui {

using intake::LadderDay;

namespace {
constexpr int daysAheadAtLeast = 14;
constexpr int daysAheadAtMost = 120;
constexpr int bandAlpha = 46;
constexpr int targetAlpha = 30;
} // namespace

ClimbChart::ClimbChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored); // takes what height there is
    setAccessibleName(tr("The climb"));
}

QSize ClimbChart::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 90, fontMetrics().lineSpacing() * 18};
}

QSize ClimbChart::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 40, fontMetrics().lineSpacing() * 9};
}

const casebook::Standing* ClimbChart::standing() const {
    const casebook::Standing* found = m_casebook ? m_casebook->standing(m_member) : nullptr;
    return found && found->ladder ? found : nullptr;
}

void ClimbChart::show(std::shared_ptr<const casebook::Casebook> casebook, MemberId member,
                      int days) {
    const bool same = m_casebook && member == m_member;
    m_casebook = std::move(casebook);
    m_member = member;
    m_days = days;
    m_log.clear();
    if (const casebook::Standing* s = standing()) {
        QList<intake::IntakeEntry> entries;
        QList<intake::Reaction> reactions;
        for (const auto& entry : m_casebook->records().entries)
            if (entry.member == member)
                entries.append(entry);
        for (const auto& reaction : m_casebook->records().reactions)
            if (reaction.member == member)
                reactions.append(reaction);
        for (const intake::LogDay& day : intake::logDays(entries, reactions, s->ladder->from))
            m_log.insert(day.day, day);
        if (!same || !m_day.isValid())
            m_day = s->replay.days.isEmpty() ? m_casebook->today() : s->replay.days.last().day;
    }
    layOut();
    describe();
    update();
}

void ClimbChart::setDay(QDate day) {
    const casebook::Standing* s = standing();
    if (!s || s->replay.days.isEmpty())
        return;
    day = std::clamp(day, s->replay.days.first().day, s->replay.days.last().day);
    if (day == m_day)
        return;
    m_day = day;
    describe();
    update();
    Q_EMIT dayChosen(day);
}

void ClimbChart::layOut() {
    const casebook::Standing* s = standing();
    if (!s)
        return;
    const QDate today = m_casebook->today();
    const QDate begun = s->replay.days.isEmpty() ? today : s->replay.days.first().day;
    const QDate first = m_days > 0 ? std::max(begun, today.addDays(-m_days + 1)) : begun;
    QDate last = today.addDays(daysAheadAtLeast);
    if (s->targetDate)
        last = std::clamp(s->targetDate->p90.addDays(2), last, today.addDays(daysAheadAtMost));
    int widest = 0;
    for (int rung = 0; rung < s->ladder->rungs.size(); ++rung)
        widest = std::max(widest, fontMetrics().horizontalAdvance(rungWords(rung)));
    const int gap = fontMetrics().averageCharWidth();
    const int line = fontMetrics().lineSpacing();
    const QRectF plot = QRectF(rect()).adjusted(widest + 2 * gap, line, -gap, -1.6 * line);
    m_scale = ClimbScale(plot, first, last, static_cast<int>(s->ladder->rungs.size()));
}

QString ClimbChart::rungWords(int rung) const {
    return quantity::printVolume(standing()->ladder->rungs.at(rung),
                                 m_casebook->records().family.measures);
}

double ClimbChart::markSize() const {
    // Small enough to leave room between days, yet never too small to tell a dot from a ring.
    const double line = fontMetrics().height();
    return std::clamp(m_scale.dayWidth() * 0.6, line * 0.15,
                      std::clamp(m_scale.rungHeight() * 0.4, line * 0.35, line * 0.6));
}

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
    bool begun = false;
    for (const LadderDay& day : standing()->replay.days) {
        if (day.day < m_scale.first())
            continue;
        const QPointF from(m_scale.xOf(day.day), m_scale.yOf(day.rung));
        if (begun)
            path.lineTo(from);
        else
            path.moveTo(from);
        begun = true;
        path.lineTo(from + QPointF(m_scale.dayWidth(), 0));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.5));
    painter.drawPath(path);
}

void ClimbChart::drawDays(QPainter& painter) const {
    const casebook::Standing* s = standing();
    const Colours& c = coloursOf(*this);
    for (const LadderDay& day : s->replay.days) {
        if (day.day < m_scale.first())
            continue;
        ClimbMark mark;
        mark.decision = day.decision;
        if (const auto log = m_log.constFind(day.day); log != m_log.constEnd()) {
            mark.enoughDrunk = log->drunk >= day.asked * s->ladder->rules.goodShare;
            mark.worstReaction = log->worstReaction;
            mark.redFlag = log->redFlag;
        }
        const QPointF middle(m_scale.middleOf(day.day), m_scale.yOf(day.rung));
        drawClimbMark(painter, middle, markSize(), mark, s->ladder->rules, c);
        if (day.day == m_day) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(c.ink, 1.5));
            painter.drawEllipse(middle, markSize(), markSize());
        }
    }
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
    if (!s->targetDate || s->replay.rung >= top)
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

void ClimbChart::describe() {
    const casebook::Standing* s = standing();
    QString words;
    if (s && m_day.isValid()) {
        const auto& days = s->replay.days;
        const auto found = std::ranges::lower_bound(days, m_day, {}, &LadderDay::day);
        if (found != days.end() && found->day == m_day)
            words = tr("%1: asked %2. %3")
                        .arg(printDay(m_day, QLocale()), rungWords(found->rung),
                             intake::explain(*found, s->ladder->rules));
    }
    setAccessibleDescription(words);
    setToolTip(words);
}

void ClimbChart::moveTo(QDate day) {
    setDay(std::max(day, m_scale.first())); // the keys stay on what the drawing shows
}

void ClimbChart::keyPressEvent(QKeyEvent* event) {
    constexpr int daysAWeek = 7;
    switch (event->key()) {
    case Qt::Key_Left:
        moveTo(m_day.addDays(-1));
        return;
    case Qt::Key_Right:
        moveTo(m_day.addDays(1));
        return;
    case Qt::Key_PageUp:
        moveTo(m_day.addDays(-daysAWeek));
        return;
    case Qt::Key_PageDown:
        moveTo(m_day.addDays(daysAWeek));
        return;
    case Qt::Key_Home:
        moveTo(m_scale.first());
        return;
    case Qt::Key_End:
        moveTo(m_scale.last());
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ClimbChart::mousePressEvent(QMouseEvent* event) {
    if (standing())
        moveTo(m_scale.dayAt(event->position().x()));
}

void ClimbChart::resizeEvent(QResizeEvent* /*event*/) {
    layOut();
}

} // namespace ladlework::ui
