#pragma once

#include <QPainterPath>
#include <QRectF>

namespace ladlework::ui {

/// Bones as they lie in `room`, in rows that just fill it, each about `size` long: one path, the
/// same for the same room. Empty when there is no room.
QPainterPath bonesIn(const QRectF& room, double size);

} // namespace ladlework::ui
