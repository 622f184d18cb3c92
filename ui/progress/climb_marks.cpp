#include "ui/progress/climb_marks.h"

#include "ui/paint/finding_mark.h"
#include "ui/paint/theme.h"

#include <QPainter>
#include <QPolygonF>

namespace ladlework::ui {

Bearing bearingOf(const ClimbMark& mark, const intake::LadderRules& rules) {
    const int worst = mark.worstReaction.value_or(0);
    if (mark.redFlag || worst > rules.strongTo)
        return Bearing::Stop;
    if (worst > rules.moderateTo)
        return Bearing::Strong;
    if (worst > rules.mildTo)
        return Bearing::Moderate;
    return worst > 0 ? Bearing::Mild : Bearing::Fine;
}

void drawReactionMark(QPainter& painter, QPointF middle, double size, Bearing bearing,
                      const Colours& colours) {
    const double r = size / 2;
    painter.setPen(Qt::NoPen);
    switch (bearing) {
    case Bearing::Fine:
        return;
    case Bearing::Mild:
        painter.setBrush(colours.slate);
        painter.drawPolygon(
            QPolygonF{middle + QPointF(0, -r), middle + QPointF(r, r), middle + QPointF(-r, r)});
        return;
    case Bearing::Moderate:
        drawFindingMark(painter, QRectF(middle - QPointF(r, r), QSizeF(size, size)),
                        Finding::Severity::Caution, colours);
        return;
    case Bearing::Strong:
        painter.setBrush(colours.copper);
        painter.drawRect(QRectF(middle - QPointF(r, r), QSizeF(size, size)));
        return;
    case Bearing::Stop:
        drawFindingMark(painter, QRectF(middle - QPointF(r, r), QSizeF(size, size)),
                        Finding::Severity::Stop, colours);
        return;
    }
}

void drawClimbMark(QPainter& painter, QPointF middle, double size, const ClimbMark& mark,
                   const intake::LadderRules& rules, const Colours& colours) {
    const double r = size / 2;
    const bool gap = mark.decision == intake::LadderDecision::Gap ||
                     mark.decision == intake::LadderDecision::Stale;
    painter.save();
    if (mark.stopped) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours.beet);
        painter.drawRect(QRectF(middle - QPointF(r, size / 8), QSizeF(size, size / 4)));
    } else if (gap) {
        painter.setPen(QPen(colours.quietInk, size / 5));
        painter.drawLine(middle + QPointF(0, -r), middle + QPointF(0, r));
    } else if (mark.enoughDrunk) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours.bay);
        painter.drawEllipse(middle, r, r);
    } else {
        painter.setPen(QPen(colours.bay, size / 5));
        painter.setBrush(colours.raised);
        painter.drawEllipse(middle, r * 0.9, r * 0.9);
    }
    drawReactionMark(painter, middle + QPointF(0, -1.9 * size), 1.3 * size, bearingOf(mark, rules),
                     colours);
    painter.restore();
}

} // namespace ladlework::ui
