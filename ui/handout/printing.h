#pragma once

#include "foundation/result.h"
#include "ui/print/page_layout.h"

#include <functional>

class QWidget;

namespace ladlework::ui {

/// Puts pages on paper: true when they were sent to a printer, false when the person thought
/// better of it. Passed in, so that a test needs no printer.
using PrintPages =
    std::function<Result<bool>(QWidget* parent, const PageLayout& layout, const QString& title)>;

/// Asks for the printer with the system's own dialog and prints. Pages of another paper size are
/// fitted to the sheet.
Result<bool> printWithDialog(QWidget* parent, const PageLayout& layout, const QString& title);

} // namespace ladlework::ui
