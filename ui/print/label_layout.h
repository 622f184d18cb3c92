#pragma once

#include "ui/print/page_layout.h"

namespace ladlework::ui {

/// What printers can reach: nothing is printed nearer to the edge of the sheet than this. A sixth
/// of an inch, as office printers have it (common practice); the printer itself is asked before it
/// prints (see ui/handout/printing.h).
inline constexpr double printerMarginMm = 4.3;

/// The sheets of labels, to the millimetre of their stock: labels row by row from the top left, the
/// places used already left empty. A text stays inside its label and off the printer's margins;
/// type is made smaller down to a size that can still be read, and then the last lines are left
/// out. No sheets without labels.
QList<Page> layOutLabels(const handout::LabelSheet& sheet);

/// How many labels of this sheet could not show all of their lines.
int labelsCutShort(const handout::LabelSheet& sheet);

/// A sheet of the stock with nothing on it, to look at its measures.
Page emptyLabelSheet(const casebook::LabelStock& stock);

/// True when a label lies partly where printers do not reach.
bool reachesIntoMargin(const casebook::LabelStock& stock);

/// The place of one label on its sheet, counted row by row from 0, in millimetres.
QRectF labelPlaceMm(const casebook::LabelStock& stock, int place);

/// The label sheet that a card holds; nullptr for every other card.
const handout::LabelSheet* labelSheetIn(const handout::Card& card);

} // namespace ladlework::ui
