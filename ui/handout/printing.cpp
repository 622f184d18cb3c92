#include "ui/handout/printing.h"

#include "ui/print/page_painter.h"

#include <QCoreApplication>
#include <QPageSize>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

namespace ladlework::ui {

namespace {

bool printRange(QPrinter& printer, const PageLayout& layout) {
    const int count = static_cast<int>(layout.pages.size());
    const bool some = printer.printRange() == QPrinter::PageRange && printer.fromPage() > 0;
    const int first = some ? printer.fromPage() : 1;
    const int last = some ? std::min(printer.toPage(), count) : count;
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    for (int page = first; page <= last; ++page) {
        if (page > first && !printer.newPage())
            return false;
        const QRectF sheet(QPointF(0, 0), printer.paperRect(QPrinter::DevicePixel).size());
        paintPage(painter, layout, page - 1, sheet);
    }
    return painter.end();
}

} // namespace

Result<bool> printWithDialog(QWidget* parent, const PageLayout& layout, const QString& title) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(title);
    printer.setPageSize(
        QPageSize(layout.paper == people::Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setFullPage(true);
    QPrintDialog dialog(&printer, parent);
    dialog.setMinMax(1, static_cast<int>(layout.pages.size()));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    if (dialog.exec() != QDialog::Accepted)
        return false;
    if (!printRange(printer, layout))
        return problem(Problem::Kind::Unavailable,
                       QCoreApplication::translate(
                           "Printing", "The printer did not take the pages. Check that it is on "
                                       "and has paper, or save a PDF and print that."));
    return true;
}

} // namespace ladlework::ui
