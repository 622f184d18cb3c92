#include "ui/print/page_pictures.h"

#include "ui/print/page_painter.h"
#include "ui/print/print_font.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QPainter>
#include <cmath>

namespace ladlework::ui {

QImage pictureOf(const PageLayout& layout, qsizetype page, int dotsPerInch) {
    if (page < 0 || page >= layout.pages.size())
        return {};
    const QSizeF size = layout.pages.at(page).size * dotsPerInch / unitsPerInch;
    QImage image(size.toSize(), QImage::Format_RGB32);
    if (image.isNull())
        return image;
    constexpr double millimetresPerMetre = 1000;
    constexpr double millimetresPerInch = 25.4;
    const int dotsPerMetre = qRound(dotsPerInch * millimetresPerMetre / millimetresPerInch);
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing |
                           QPainter::SmoothPixmapTransform);
    paintPage(painter, layout, page, QRectF(QPointF(0, 0), image.size()));
    return image;
}

Result<QList<WholeFile>> picturesOf(const handout::Document& document, const QString& folder,
                                    const QString& name) {
    const PageLayout layout = layOut(document);
    const auto digits = static_cast<int>(QString::number(layout.pages.size()).size());
    QList<WholeFile> files;
    for (qsizetype page = 0; page < layout.pages.size(); ++page) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        if (!pictureOf(layout, page).save(&buffer, "PNG"))
            return problem(
                Problem::Kind::Unavailable,
                QCoreApplication::translate("PagePictures",
                                            "Page %1 could not be drawn as a picture. Close other "
                                            "programs and try again, or save a PDF.")
                    .arg(page + 1),
                folder);
        const QString file =
            QStringLiteral("%1-%2.png").arg(name).arg(page + 1, digits, 10, QLatin1Char('0'));
        files << WholeFile{QDir(folder).filePath(file), bytes};
    }
    return files;
}

} // namespace ladlework::ui
