#include "ui/paint/finding_mark.h"

#include "ui/paint/theme.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ladlework::ui {

namespace {

/// A regular polygon that fills the circle, with its first corner at `turn` (radians).
QPolygonF regularPolygon(QPointF centre, double radius, int corners, double turn) {
    QPolygonF polygon;
    for (int corner = 0; corner < corners; ++corner) {
        const double angle = turn + 2.0 * std::numbers::pi * corner / corners;
        polygon << centre + QPointF(std::cos(angle), std::sin(angle)) * radius;
    }
    return polygon;
}

} // namespace

void drawFindingMark(QPainter& painter, const QRectF& box, Finding::Severity severity,
                     const Colours& colours) {
    const double radius = std::min(box.width(), box.height()) / 2.0;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(severityColour(colours, severity));
    switch (severity) {
    case Finding::Severity::Note:
        painter.drawEllipse(box.center(), radius * 0.55, radius * 0.55);
        break;
    case Finding::Severity::Caution:
        painter.drawPolygon(regularPolygon(box.center(), radius * 0.95, 4, 0.0));
        break;
    case Finding::Severity::Stop:
        painter.drawPolygon(regularPolygon(box.center(), radius, 8, std::numbers::pi / 8.0));
        // The bar tells it from a large dot where the print or the eye is poor.
        painter.setBrush(colours.raised);
        painter.drawRect(QRectF(box.center().x() - radius * 0.55, box.center().y() - radius * 0.16,
                                radius * 1.1, radius * 0.32));
        break;
    }
    painter.restore();
}

QString severityWord(Finding::Severity severity) {
    switch (severity) {
    case Finding::Severity::Note:
        return QCoreApplication::translate("FindingMark", "Note");
    case Finding::Severity::Caution:
        return QCoreApplication::translate("FindingMark", "Caution");
    case Finding::Severity::Stop:
        return QCoreApplication::translate("FindingMark", "Stop");
    }
    return {};
}

} // namespace ladlework::ui
