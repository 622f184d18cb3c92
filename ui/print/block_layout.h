#pragma once

#include "ui/print/card_layout.h"
#include "ui/print/text_layout.h"

namespace ladlework::ui {

/// The strips of one block, `width` wide and none higher than `mostHeight`.
QList<Strip> layOutBlock(const handout::Block& block, const PrintStyle& style, double width,
                         double mostHeight);

/// A strip a line, the text's left edge at `left`; the first two and the last two lines of a text
/// stay together.
QList<Strip> lineStrips(const BrokenText& text, double left);

/// An empty box to tick, centred on the first line of a text whose lines are `lineHeight` apart.
BoxItem tickBoxAt(QPointF at, double lineHeight, const PrintStyle& style);

} // namespace ladlework::ui
