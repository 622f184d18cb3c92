#include "ui/print/label_layout.h"

#include "ui/print/block_layout.h"
#include "ui/print/print_font.h"
#include "ui/print/text_layout.h"

#include <algorithm>
#include <array>

namespace ladlework::ui {

namespace {

constexpr double millimetresPerInch = 25.4;
/// Between the edge of a label and its text: labels are never fed quite straight.
constexpr double insetMm = 2.0;
/// The sizes of type that are tried, from the usual down to the smallest that can be read at arm's
/// length from a shelf.
constexpr std::array typeSizes{13.0, 12.0, 11.0, 10.0, 9.0, 8.0, 7.0, 6.5};

double unitsOf(double millimetres) {
    return millimetres / millimetresPerInch * unitsPerInch;
}

QRectF unitsOf(const QRectF& millimetres) {
    return {unitsOf(millimetres.left()), unitsOf(millimetres.top()), unitsOf(millimetres.width()),
            unitsOf(millimetres.height())};
}

QRectF withinReachMm(const casebook::LabelStock& stock) {
    return QRectF(0, 0, stock.pageWidthMm, stock.pageHeightMm)
        .adjusted(printerMarginMm, printerMarginMm, -printerMarginMm, -printerMarginMm);
}

/// Where the text of a label may stand: inside the label and inside what the printer reaches.
QRectF textPlace(const casebook::LabelStock& stock, int place) {
    const QRectF label = labelPlaceMm(stock, place).adjusted(insetMm, insetMm, -insetMm, -insetMm);
    return unitsOf(label.intersected(withinReachMm(stock)));
}

struct LabelDrawing {
    Drawing drawing;
    double height = 0;
    qsizetype linesShown = 0;
};

LabelDrawing drawLabel(const handout::JarLabel& label, double points, QSizeF room,
                       qsizetype mostLines) {
    const PrintStyle style = labelStyle(points);
    LabelDrawing drawn;
    const auto add = [&](const QString& text, const QFont& font, bool tickBox) {
        const double indent = tickBox ? 1.5 * style.tickBox : 0;
        const BrokenText broken = breakText(text, font, room.width() - indent, 1.18);
        if (tickBox)
            drawn.drawing.boxes << tickBoxAt(QPointF(0, drawn.height), broken.heightOf(0, 1),
                                             style);
        drawn.drawing.texts << broken.whole(QPointF(indent, drawn.height));
        drawn.height += broken.height;
    };
    add(label.title, style.heading, false);
    for (qsizetype i = 0; i < std::min(mostLines, label.lines.size()); ++i) {
        const handout::Cell& line = label.lines.at(i);
        add(line.text, line.strong ? style.strong : style.body, line.tickBox);
        ++drawn.linesShown;
    }
    return drawn;
}

/// The largest type that holds all lines; when none does, the smallest with as many as fit.
LabelDrawing fitLabel(const handout::JarLabel& label, QSizeF room) {
    LabelDrawing drawn;
    for (const double points : typeSizes) {
        drawn = drawLabel(label, points, room, label.lines.size());
        if (drawn.height <= room.height())
            return drawn;
    }
    for (qsizetype lines = label.lines.size() - 1; lines >= 0; --lines) {
        drawn = drawLabel(label, typeSizes.back(), room, lines);
        if (drawn.height <= room.height())
            return drawn;
    }
    // Not even the name of the pot: a label that says nothing rather than one that runs over.
    return {};
}

} // namespace

Page emptyLabelSheet(const casebook::LabelStock& stock) {
    Page sheet{{}, QSizeF(unitsOf(stock.pageWidthMm), unitsOf(stock.pageHeightMm)), {}};
    for (int place = 0; place < stock.columns * stock.rows; ++place)
        sheet.labels << unitsOf(labelPlaceMm(stock, place));
    return sheet;
}

bool reachesIntoMargin(const casebook::LabelStock& stock) {
    const QRectF labels = labelPlaceMm(stock, 0).united(
        labelPlaceMm(stock, std::max(1, stock.columns * stock.rows) - 1));
    return !withinReachMm(stock).contains(labels);
}

QRectF labelPlaceMm(const casebook::LabelStock& stock, int place) {
    const int column = place % stock.columns;
    const int row = place / stock.columns;
    return {stock.leftMm + column * (stock.labelWidthMm + stock.gapAcrossMm),
            stock.topMm + row * (stock.labelHeightMm + stock.gapDownMm), stock.labelWidthMm,
            stock.labelHeightMm};
}

QList<Page> layOutLabels(const handout::LabelSheet& sheet) {
    const casebook::LabelStock& stock = sheet.stock;
    const int places = std::max(1, stock.columns * stock.rows);
    QList<Page> pages;
    const int used = std::clamp(sheet.placesUsed, 0, places - 1);
    LabelDrawing drawn;
    QSizeF lastRoom;
    for (qsizetype i = 0; i < sheet.labels.size(); ++i) {
        const auto place = static_cast<int>((i + used) % places);
        if (pages.isEmpty() || place == 0) {
            pages << emptyLabelSheet(stock);
        }
        const QRectF room = textPlace(stock, place);
        if (room.width() < unitsPerPoint || room.height() < unitsPerPoint)
            continue;
        // A pot fills several jars: most labels are the one before once more.
        const bool again =
            i > 0 && sheet.labels.at(i) == sheet.labels.at(i - 1) && room.size() == lastRoom;
        if (!again)
            drawn = fitLabel(sheet.labels.at(i), room.size());
        lastRoom = room.size();
        // In the middle of its height, so that a label that sits a little high or low looks right.
        const double down = (room.height() - drawn.height) / 2;
        pages.last().add(drawn.drawing, room.topLeft() + QPointF(0, down));
    }
    return pages;
}

int labelsCutShort(const handout::LabelSheet& sheet) {
    const int places = std::max(1, sheet.stock.columns * sheet.stock.rows);
    int cut = 0;
    for (qsizetype i = 0; i < sheet.labels.size(); ++i) {
        const auto place = static_cast<int>((i + sheet.placesUsed) % places);
        const QRectF room = textPlace(sheet.stock, place);
        const handout::JarLabel& label = sheet.labels.at(i);
        if (fitLabel(label, room.size()).linesShown < label.lines.size())
            ++cut;
    }
    return cut;
}

const handout::LabelSheet* labelSheetIn(const handout::Card& card) {
    if (card.kind != handout::Card::Kind::JarLabels || card.blocks.isEmpty())
        return nullptr;
    return std::get_if<handout::LabelSheet>(&card.blocks.first());
}

} // namespace ladlework::ui
