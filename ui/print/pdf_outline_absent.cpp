#include "ui/print/pdf_outline.h"

namespace ladlework::ui {

QByteArray withOutline(const QByteArray& pdf, const PageLayout& /*layout*/,
                       const handout::Document& /*document*/) {
    return pdf;
}

bool canWriteOutlines() {
    return false;
}

} // namespace ladlework::ui
