#pragma once

#include "foundation/result.h"
#include "handout/document.h"

#include <QByteArray>

namespace ladlework::ui {

/// Lays the document out and writes it as a PDF with embedded fonts, title and author. Needs a
/// QGuiApplication. The file appears whole or not at all; the Problem says what stood in the way.
Outcome writePdf(const handout::Document& document, const QString& path);

/// The same pages in memory, for the record of handouts.
Result<QByteArray> pdfOf(const handout::Document& document);

/// Writes a finished PDF (one kept as it was given) to a file, whole or not at all. Refused when
/// the path leads, also through links, to a database or to anything that is no ordinary file.
Outcome saveWhole(const QByteArray& pdf, const QString& path);

} // namespace ladlework::ui
