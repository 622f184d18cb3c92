#pragma once

#include "foundation/result.h"
#include "ui/print/page_layout.h"

#include <QMarginsF>
#include <functional>

class QWidget;

namespace ladlework::ui {

/// What became of pages that were to be printed.
struct Printed {
    bool sent = false; ///< false when the person thought better of it
    QString remark;    ///< what the printer cannot do with them; empty when all is well
};

/// Puts pages on paper. Passed in, so that a test needs no printer.
using PrintPages =
    std::function<Result<Printed>(QWidget* parent, const PageLayout& layout, const QString& title)>;

/// Asks for the printer with the system's own dialog and prints. Pages of another paper size are
/// fitted to the sheet; label sheets are printed in their own size, to the millimetre.
Result<Printed> printWithDialog(QWidget* parent, const PageLayout& layout, const QString& title);

/// Says when text of the pages stands where a printer with these margins, in millimetres, cannot
/// reach; empty when it reaches all.
QString outOfReach(const PageLayout& layout, const QMarginsF& marginsMm);

} // namespace ladlework::ui
