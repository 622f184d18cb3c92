#include "ui/progress/climb_legend.h"

#include "ui/paint/theme.h"

#include <QPainter>
#include <QSizePolicy>

namespace ladlework::ui {

using intake::LadderDecision;

ClimbLegend::ClimbLegend(QWidget* parent) : QWidget(parent) {
    const intake::LadderRules rules;
    ClimbMark enough;
    enough.enoughDrunk = true;
    ClimbMark gap;
    gap.decision = LadderDecision::Gap;
    ClimbMark stopped;
    stopped.stopped = true;
    const auto felt = [](int strength) {
        ClimbMark mark;
        mark.worstReaction = strength;
        return mark;
    };
    m_items = {{enough, tr("enough drunk"), false},
               {ClimbMark{}, tr("less"), false},
               {gap, tr("no entry"), false},
               {stopped, tr("stopped: nothing asked"), false},
               {felt(rules.mildTo), tr("mild reaction"), true},
               {felt(rules.moderateTo), tr("moderate"), true},
               {felt(rules.strongTo), tr("strong"), true},
               {felt(rules.strongTo + 1), tr("red flag or stop"), true}};
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    QStringList words;
    for (const Item& item : m_items)
        words.append(item.words);
    setAccessibleName(tr("Marks of the climb: %1").arg(words.join(QStringLiteral(", "))));
}

int ClimbLegend::widthOf(const Item& item) const {
    return fontMetrics().height() + fontMetrics().horizontalAdvance(item.words) +
           2 * fontMetrics().averageCharWidth();
}

template <class Place>
int ClimbLegend::flow(int width, Place place) const {
    const int line = fontMetrics().lineSpacing();
    int x = 0;
    int y = 0;
    for (const Item& item : m_items) {
        const int wide = widthOf(item);
        if (x > 0 && x + wide > width) {
            x = 0;
            y += line;
        }
        place(item, x, y);
        x += wide;
    }
    return y + line;
}

QSize ClimbLegend::sizeHint() const {
    int wide = 0;
    for (const Item& item : m_items)
        wide += widthOf(item);
    return {wide, fontMetrics().lineSpacing()};
}

int ClimbLegend::heightForWidth(int width) const {
    return flow(width, [](const Item&, int, int) {});
}

void ClimbLegend::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursOf(*this);
    const intake::LadderRules rules;
    const double size = fontMetrics().height() * 0.5;
    flow(width(), [&](const Item& item, int x, int y) {
        const QPointF middle(x + fontMetrics().height() / 2.0,
                             y + fontMetrics().lineSpacing() / 2.0);
        if (item.reactionOnly)
            drawReactionMark(painter, middle, size * 1.3, bearingOf(item.mark, rules), c);
        else
            drawClimbMark(painter, middle, size, item.mark, rules, c);
        painter.setPen(c.quietInk);
        painter.drawText(QPointF(x + fontMetrics().height() * 1.15,
                                 y + fontMetrics().leading() / 2.0 + fontMetrics().ascent()),
                         item.words);
    });
}

} // namespace ladlework::ui
