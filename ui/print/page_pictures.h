#pragma once

#include "handout/document.h"
#include "ui/print/page_layout.h"
#include "ui/print/whole_files.h"

#include <QImage>

namespace ladlework::ui {

/// Sharp enough to read on a telephone and to print again.
inline constexpr int picturesPerInch = 150;

/// A page as a picture, black on white.
QImage pictureOf(const PageLayout& layout, qsizetype page, int dotsPerInch = picturesPerInch);

/// Each page of a document as a PNG file in a folder: "page-1.png", "page-2.png"... with as many
/// digits as the last needs, and `name` in place of "page". Nothing is written yet.
Result<QList<WholeFile>> picturesOf(const handout::Document& document, const QString& folder,
                                    const QString& name = QStringLiteral("page"));

} // namespace ladlework::ui
