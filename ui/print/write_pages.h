#pragma once

#include "foundation/result.h"
#include "handout/document.h"

#include <QStringList>

namespace ladlework::ui {

/// Writes a document as a PDF and, when `picturesFolder` is not empty, each page as a PNG picture
/// into that folder ("page-1.png"...): all of it or nothing. Gives the paths of the pictures. Needs
/// a QGuiApplication.
Result<QStringList> writePages(const handout::Document& document, const QString& pdfPath,
                               const QString& picturesFolder);

} // namespace ladlework::ui
