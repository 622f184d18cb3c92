#include "ui/print/write_pages.h"

#include "ui/print/page_pictures.h"
#include "ui/print/pdf_writer.h"

namespace ladlework::ui {

Result<QStringList> writePages(const handout::Document& document, const QString& pdfPath,
                               const QString& picturesFolder) {
    const Result<QByteArray> pdf = pdfOf(document);
    if (!pdf)
        return passOn(pdf);
    QList<WholeFile> files;
    if (!picturesFolder.isEmpty()) {
        auto pictures = picturesOf(document, picturesFolder);
        if (!pictures)
            return passOn(pictures);
        files = *std::move(pictures);
    }
    QStringList paths;
    for (const WholeFile& file : std::as_const(files))
        paths << file.path;
    files << WholeFile{pdfPath, *pdf};
    if (const Outcome saved = saveAllWhole(files); !saved)
        return passOn(saved);
    return paths;
}

} // namespace ladlework::ui
