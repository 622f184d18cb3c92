#pragma once

#include "handout/document.h"

#include <QList>
#include <QPointF>
#include <QRectF>
#include <QTextLayout>
#include <memory>

namespace ladlework::ui {

/// Lines of a laid out text; `at` is where the text layout's own origin comes to lie.
struct TextItem {
    std::shared_ptr<const QTextLayout> layout;
    int firstLine = 0;
    int lastLine = 0; ///< one past the last line shown
    QPointF at;
    bool onBlack = false; ///< white letters on a black ground
};

/// A rectangle: an outline of this width, or filled with black.
struct BoxItem {
    QRectF rect;
    double lineWidth = 0;
    bool filled = false;
    bool round = false; ///< a disc in the rectangle (the dot of a line)
};

struct RuleItem {
    QPointF from;
    QPointF to;
    double width = 0;
};

/// Things to draw, in page units from the top left of whatever holds them.
struct Drawing {
    QList<BoxItem> boxes;
    QList<RuleItem> rules;
    QList<TextItem> texts;

    /// Takes over all of another drawing, moved by `offset`.
    void add(const Drawing& other, QPointF offset);
};

/// A document set out on pages: geometry alone, the same for PDF, printer and preview.
struct PageLayout {
    people::Paper paper = people::Paper::Letter;
    QSizeF size;    ///< of the sheet, in page units (see print_font.h)
    QRectF content; ///< where cards may stand
    QRectF footer;  ///< below it, inside the margins
    QList<Drawing> pages;
};

/// Lays a document out. A card stays on one page as long as a page can hold it; a longer one
/// breaks between lines and table rows, with its title and the table's header repeated. There is
/// always at least one page. Needs a QGuiApplication.
PageLayout layOut(const handout::Document& document);

} // namespace ladlework::ui
