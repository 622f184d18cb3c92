#pragma once

#include "ui/print/page_layout.h"

#include <QPageSize>

class QPainter;

namespace ladlework::ui {

/// Draws a page black on whatever ground there is, fitted into `target` (in the painter's own
/// coordinates) with its proportions kept: the same page for PDF, printer and preview. A page
/// number outside the layout draws nothing.
void paintPage(QPainter& painter, const PageLayout& layout, qsizetype page, const QRectF& target);

/// The size of a page's sheet for a printer or a PDF: of its paper by name, else by its measures.
QPageSize pageSizeOf(const PageLayout& layout, qsizetype page);

/// All words of a page in the order they were laid out, for screen readers and tests.
QString wordsOf(const PageLayout& layout, qsizetype page);

} // namespace ladlework::ui
