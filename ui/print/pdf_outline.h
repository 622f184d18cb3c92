#pragma once

#include "handout/document.h"
#include "ui/print/page_layout.h"

#include <QByteArray>

namespace ladlework::ui {

/// What Qt's PDF writer has no way to say: an outline with an entry for each card, and the author
/// in the document's information. Written by libqpdf; where the program was built without it, or
/// when it cannot read the file, the PDF comes back as it was.
QByteArray withOutline(const QByteArray& pdf, const PageLayout& layout,
                       const handout::Document& document);

/// True when the program was built with libqpdf.
bool canWriteOutlines();

} // namespace ladlework::ui
