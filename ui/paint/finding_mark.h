#pragma once

#include "foundation/finding.h"

#include <QRectF>

class QPainter;

namespace ladlework::ui {

struct Colours;

/// Draws the shape of a severity, so that colour never speaks alone: a filled dot for a note, a
/// diamond for a caution, an octagon for a stop.
void drawFindingMark(QPainter& painter, const QRectF& box, Finding::Severity severity,
                     const Colours& colours);

/// "Note", "Caution", "Stop", translated.
QString severityWord(Finding::Severity severity);

} // namespace ladlework::ui
