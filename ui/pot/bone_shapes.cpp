#include "ui/pot/bone_shapes.h"

#include <QRandomGenerator>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace ladlework::ui {

namespace {

constexpr unsigned seed = 7; // the same pot always looks the same
constexpr double rowShare = 0.62;
constexpr double knobShare = 0.6;
constexpr int mostTilt = 14;

/// A shaft with two knobs at each end, lying along the x axis around the origin.
QPainterPath bone(double length, double thick) {
    const double half = length / 2;
    const double knob = thick * knobShare;
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    path.addRect(QRectF(-half + knob, -thick / 2, length - 2 * knob, thick));
    for (const double x : {-half + knob, half - knob})
        for (const double y : {-thick / 2, thick / 2})
            path.addEllipse(QPointF(x, y), knob, knob);
    return path.simplified();
}

} // namespace

QPainterPath bonesIn(const QRectF& room, double size) {
    QPainterPath all;
    if (room.height() < 2 || room.width() < 2 || size < 2)
        return all;
    const int rows = std::max(1, static_cast<int>(std::lround(room.height() / (size * rowShare))));
    const int across = std::max(1, static_cast<int>(std::lround(room.width() / (size * 1.15))));
    const double rowHeight = room.height() / rows;
    const double place = room.width() / across;
    QRandomGenerator random(seed);
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < across; ++column) {
            const double length = place * (0.72 + 0.16 * random.generateDouble());
            const double thick = std::min(size * 0.22, rowHeight * 0.3);
            QTransform where;
            where.translate(room.left() + place * (column + 0.5),
                            room.bottom() - rowHeight * (row + 0.5));
            where.rotate(random.bounded(2 * mostTilt) - mostTilt);
            all.addPath(where.map(bone(length, thick)));
        }
    }
    return all;
}

} // namespace ladlework::ui
