#pragma once

#include "ui/print/card_layout.h"

namespace ladlework::ui {

/// The strips of a table: a header that is repeated on the next page and a strip a row. The
/// weights share out the width as far as no column becomes narrower than its longest word; when
/// the page is too narrow for that, the rows are written below one another, each cell after the
/// header of its column.
QList<Strip> layOutTable(const handout::Table& table, const PrintStyle& style, double width,
                         double mostHeight);

/// The widths that columns get: by weight, but none below what it needs; empty when the needs
/// together are more than the width. Both lists are of equal length, weights positive.
QList<double> shareWidth(const QList<double>& weights, const QList<double>& needs, double width);

} // namespace ladlework::ui
