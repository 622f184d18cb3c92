#pragma once

#include "handout/document.h"

#include <QImage>
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

struct PictureItem {
    QRectF rect;
    QImage image;
};

/// Things to draw, in page units from the top left of whatever holds them.
struct Drawing {
    QList<BoxItem> boxes;
    QList<RuleItem> rules;
    QList<TextItem> texts;
    QList<PictureItem> pictures;

    /// Takes over all of another drawing, moved by `offset`.
    void add(const Drawing& other, QPointF offset);
};

/// One side of one sheet.
struct Page : Drawing {
    QSizeF size; ///< of the sheet, in page units (see print_font.h)
    /// The labels of a label sheet. They are cut already: shown on a screen, never printed.
    QList<QRectF> labels;

    [[nodiscard]] bool isLabelSheet() const { return !labels.isEmpty(); }
};

/// Where a card begins: an entry of the outline.
struct OutlineEntry {
    QString title;
    qsizetype page = 0;
    double top = 0; ///< from the top of the page, in page units
};

/// A document set out on pages: geometry alone, the same for PDF, printer, picture and preview.
struct PageLayout {
    people::Paper paper = people::Paper::Letter;
    QSizeF size;    ///< of the sheets that cards stand on
    QRectF content; ///< where cards may stand
    QRectF footer;  ///< below it, inside the margins
    QList<Page> pages;
    QList<OutlineEntry> outline;
};

/// Lays a document out. A card stays on one page as long as a page can hold it; a longer one
/// breaks between lines and table rows, with its title and the table's header repeated. There is
/// always at least one page. Sheets of labels are pages of their own, of the size of their stock,
/// without a footer and not counted in it. Needs a QGuiApplication.
PageLayout layOut(const handout::Document& document);

/// The label sheets alone, or all but them, for paper that is fed separately.
PageLayout labelSheetsOf(const PageLayout& layout);
PageLayout withoutLabelSheets(const PageLayout& layout);

/// Letters of the pages that no font here has: they would print as empty boxes. Each once.
QString lettersWithoutShape(const PageLayout& layout);

} // namespace ladlework::ui
