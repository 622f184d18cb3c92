#pragma once

#include "ui/print/page_layout.h"
#include "ui/print/print_font.h"

namespace ladlework::ui {

/// A part of a card that no page break goes through: a line of text, a table row, a framed box.
struct Strip {
    double height = 0;
    double gapBefore = 0;      ///< left out at the top of a page
    bool keepWithNext = false; ///< a heading, a table's header, the first line of a paragraph
    Drawing drawing;           ///< from the strip's top left
    /// Drawn again above this strip when it comes first on a page: the header of its table.
    std::shared_ptr<const Strip> repeated;
};

/// A card cut into strips, of the width it was laid out for.
struct CardLayout {
    bool framed = true;
    QList<Strip> title;
    QList<Strip> continuedTitle; ///< when the card goes on on another page
    QList<Strip> body;
};

/// Lays a card out; the strips are `width` wide and none is higher than `mostHeight`.
CardLayout layOutCard(const handout::Card& card, const PrintStyle& style, double width,
                      double mostHeight);

/// The height of strips that stand on one page; the first one's gap is left out.
double heightOf(const QList<Strip>& strips);

} // namespace ladlework::ui
