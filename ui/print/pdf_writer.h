#pragma once

#include "foundation/result.h"
#include "handout/document.h"
#include "ui/print/whole_files.h"

#include <QByteArray>

namespace ladlework::ui {

/// Lays the document out and writes it as a PDF with embedded fonts, title, author and, where the
/// program was built with libqpdf, an outline of the cards. Needs a QGuiApplication. The file
/// appears whole or not at all; the Problem says what stood in the way.
Outcome writePdf(const handout::Document& document, const QString& path);

/// The same pages in memory, for the record of handouts.
Result<QByteArray> pdfOf(const handout::Document& document);

} // namespace ladlework::ui
