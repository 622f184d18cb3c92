#include "ui/handout/printing.h"

#include "ui/print/page_painter.h"
#include "ui/print/print_font.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <algorithm>

namespace ladlework::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Printing)
};

constexpr double millimetresPerInch = 25.4;

/// The whole sheet of the printer; for labels the sheet that they were measured for.
QRectF sheetOn(const QPrinter& printer, const Page& page) {
    if (!page.isLabelSheet())
        return {QPointF(0, 0), printer.paperRect(QPrinter::DevicePixel).size()};
    return {QPointF(0, 0), page.size * printer.resolution() / unitsPerInch};
}

bool printRange(QPrinter& printer, const PageLayout& layout) {
    const int count = static_cast<int>(layout.pages.size());
    const bool some = printer.printRange() == QPrinter::PageRange && printer.fromPage() > 0;
    const int first = some ? printer.fromPage() : 1;
    const int last = some ? std::min(printer.toPage(), count) : count;
    if (layout.pages.value(first - 1).isLabelSheet())
        printer.setPageSize(pageSizeOf(layout, first - 1));
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    for (int page = first; page <= last; ++page) {
        if (page > first && layout.pages.at(page - 1).size != layout.pages.at(page - 2).size)
            printer.setPageSize(pageSizeOf(layout, page - 1));
        if (page > first && !printer.newPage())
            return false;
        paintPage(painter, layout, page - 1, sheetOn(printer, layout.pages.at(page - 1)));
    }
    return painter.end();
}

/// The smallest rectangle that holds all text of a page, in millimetres.
QRectF textOf(const Page& page) {
    QRectF all;
    for (const TextItem& text : page.texts)
        for (int line = text.firstLine; line < text.lastLine; ++line)
            all |= text.layout->lineAt(line).naturalTextRect().translated(text.at);
    const double scale = millimetresPerInch / unitsPerInch;
    return {all.topLeft() * scale, all.size() * scale};
}

} // namespace

QString outOfReach(const PageLayout& layout, const QMarginsF& marginsMm) {
    constexpr double tolerance = 0.1;
    const double scale = millimetresPerInch / unitsPerInch;
    int pages = 0;
    for (const Page& page : layout.pages) {
        const QRectF reach = QRectF(QPointF(0, 0), page.size * scale)
                                 .marginsRemoved(marginsMm)
                                 .adjusted(-tolerance, -tolerance, tolerance, tolerance);
        const QRectF text = textOf(page);
        if (!text.isEmpty() && !reach.contains(text))
            ++pages;
    }
    if (pages == 0)
        return {};
    const double most =
        std::max({marginsMm.left(), marginsMm.top(), marginsMm.right(), marginsMm.bottom()});
    const QString margin = QLocale().toString(most, 'f', 1);
    return pages == 1
               ? Words::tr("This printer leaves up to %1 mm at the edge of the sheet blank, and 1 "
                           "page has text there. Choose a printer that prints to the edge, or "
                           "other sheets.")
                     .arg(margin)
               : Words::tr("This printer leaves up to %1 mm at the edge of the sheet blank, and "
                           "%2 pages have text there. Choose a printer that prints to the edge, "
                           "or other sheets.")
                     .arg(margin)
                     .arg(pages);
}

Result<Printed> printWithDialog(QWidget* parent, const PageLayout& layout, const QString& title) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(title);
    printer.setPageSize(pageSizeOf(layout, 0));
    printer.setFullPage(true);
    QPrintDialog dialog(&printer, parent);
    dialog.setMinMax(1, static_cast<int>(layout.pages.size()));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    if (dialog.exec() != QDialog::Accepted)
        return Printed{};
    QPageLayout sheet = printer.pageLayout();
    sheet.setUnits(QPageLayout::Millimeter);
    const QMarginsF margins = sheet.minimumMargins();
    if (!printRange(printer, layout))
        return problem(Problem::Kind::Unavailable,
                       Words::tr("The printer did not take the pages. Check that it is on and has "
                                 "paper, or save a PDF and print that."));
    return Printed{true, outOfReach(layout, margins)};
}

} // namespace ladlework::ui
