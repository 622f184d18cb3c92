#include "ui/progress/climb_chart.h"

#include "intake/easing.h"
#include "ui/shared/asked_amount.h"
#include "ui/shared/day_text.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <algorithm>

namespace ladlework::ui {

using intake::LadderDay;

namespace {
constexpr int daysAheadAtLeast = 14;
constexpr int daysAheadAtMost = 120;
} // namespace

ClimbChart::ClimbChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding); // takes what height there is
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
    if (s->target) {
        const QDate eased = intake::easingEnds(*s->target, *s->ladder);
        if (eased.isValid())
            last = std::clamp(eased.addDays(2), last, today.addDays(daysAheadAtMost));
    }
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

double ClimbChart::heightOf(quantity::Volume asked) const {
    const QList<quantity::Volume>& rungs = standing()->ladder->rungs;
    if (asked <= quantity::Volume{})
        return m_scale.plot().bottom();
    // What the ladder or the plan asks is a rung of this ladder.
    const auto rung = std::ranges::lower_bound(rungs, asked);
    return m_scale.yOf(
        static_cast<int>(std::min<qsizetype>(rung - rungs.begin(), rungs.size() - 1)));
}

double ClimbChart::heightOf(const LadderDay& day) const {
    // While stopped nothing is asked, but the ladder stands on its rung.
    return beganStopped(day) ? m_scale.yOf(day.rung)
                             : heightOf(askedOn(*m_casebook, *standing(), day));
}

double ClimbChart::markSize() const {
    // Small enough to leave room between days, yet never too small to tell a dot from a ring.
    const double line = fontMetrics().height();
    return std::clamp(m_scale.dayWidth() * 0.6, line * 0.15,
                      std::clamp(m_scale.rungHeight() * 0.4, line * 0.35, line * 0.6));
}

void ClimbChart::describe() {
    const casebook::Standing* s = standing();
    QString words;
    if (s && m_day.isValid()) {
        const auto& days = s->replay.days;
        const auto found = std::ranges::lower_bound(days, m_day, {}, &LadderDay::day);
        if (found != days.end() && found->day == m_day)
            words = tr("%1: asked %2. %3")
                        .arg(printDay(m_day, QLocale()),
                             amountWords(askedOn(*m_casebook, *s, *found),
                                         m_casebook->records().family.measures),
                             whyWords(*m_casebook, *s, *found));
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
