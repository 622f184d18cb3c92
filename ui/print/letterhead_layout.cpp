#include "ui/print/letterhead_layout.h"

#include "ui/print/text_layout.h"

#include <algorithm>

namespace ladlework::ui {

namespace {

constexpr double logoHeight = 46 * unitsPerPoint;
constexpr double logoWidth = 120 * unitsPerPoint;
/// No finer than a printer shows; a photograph would make the file needlessly large.
constexpr int logoDotsPerInch = 300;

QImage logoOf(const QByteArray& png) {
    QImage image = QImage::fromData(png, "PNG");
    if (image.isNull())
        return image;
    const QSize most(qRound(logoWidth / unitsPerInch * logoDotsPerInch),
                     qRound(logoHeight / unitsPerInch * logoDotsPerInch));
    if (image.width() > most.width() || image.height() > most.height())
        image = image.scaled(most, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    return image;
}

/// Texts below one another.
struct Column {
    Drawing drawing;
    double height = 0;
    double width = 0;

    void add(const QString& text, const QFont& font, double room) {
        if (text.isEmpty())
            return;
        const BrokenText broken = breakText(text, font, room, 1.25);
        drawing.texts << broken.whole(QPointF(0, height));
        height += broken.height;
        width = std::max(width, broken.width);
    }
};

} // namespace

QList<Strip> layOutLetterhead(const handout::Letterhead& head, const PrintStyle& style,
                              double width) {
    Strip strip;
    const double gutter = 1.2 * style.bodySize;
    double left = 0;
    QSizeF picture;
    const QImage logo = logoOf(head.logo);
    if (!logo.isNull()) {
        picture = QSizeF(logo.size()).scaled(logoWidth, logoHeight, Qt::KeepAspectRatio);
        left = picture.width() + gutter;
    }
    // What is long on one side gets the more room: neither is cut.
    const double rest = width - left;
    Column reach;
    for (const QString& line : head.contact)
        reach.add(line, style.quiet, 0.48 * rest);
    Column who;
    const double room = reach.width > 0 ? rest - reach.width - gutter : rest;
    who.add(head.practice, style.strong, room);
    who.add(head.practitioner, style.body, room);

    const double height = std::max({picture.height(), reach.height, who.height});
    if (height <= 0)
        return {};
    const auto middle = [height](double own) {
        return (height - own) / 2;
    };
    if (!logo.isNull())
        strip.drawing.pictures << PictureItem{QRectF(QPointF(0, middle(picture.height())), picture),
                                              logo};
    strip.drawing.add(who.drawing, QPointF(left, middle(who.height)));
    strip.drawing.add(reach.drawing, QPointF(width - reach.width, middle(reach.height)));
    strip.height = height + 0.6 * style.bodySize;
    strip.drawing.rules << RuleItem{QPointF(0, strip.height), QPointF(width, strip.height),
                                    style.hairline};
    return {strip};
}

} // namespace ladlework::ui
