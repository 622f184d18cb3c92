#include "ui/print/page_painter.h"

#include "ui/print/print_font.h"

#include <QPainter>
#include <QStringList>

namespace ladlework::ui {

namespace {

void paintBoxes(QPainter& painter, const QList<BoxItem>& boxes) {
    for (const BoxItem& box : boxes) {
        painter.setPen(box.filled ? QPen(Qt::NoPen) : QPen(Qt::black, box.lineWidth));
        painter.setBrush(box.filled ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
        if (box.round)
            painter.drawEllipse(box.rect);
        else
            painter.drawRect(box.rect);
    }
}

void paintTexts(QPainter& painter, const QList<TextItem>& texts) {
    for (const TextItem& text : texts) {
        painter.setPen(text.onBlack ? Qt::white : Qt::black);
        for (int line = text.firstLine; line < text.lastLine; ++line)
            text.layout->lineAt(line).draw(&painter, text.at);
    }
}

} // namespace

void paintPage(QPainter& painter, const PageLayout& layout, qsizetype page, const QRectF& target) {
    if (page < 0 || page >= layout.pages.size() || target.isEmpty())
        return;
    const Page& drawing = layout.pages.at(page);
    const double scale =
        std::min(target.width() / drawing.size.width(), target.height() / drawing.size.height());
    const QSizeF drawn = drawing.size * scale;
    painter.save();
    painter.translate(target.left() + (target.width() - drawn.width()) / 2,
                      target.top() + (target.height() - drawn.height()) / 2);
    painter.scale(scale, scale);
    paintBoxes(painter, drawing.boxes);
    for (const RuleItem& rule : drawing.rules) {
        painter.setPen(QPen(Qt::black, rule.width, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(rule.from, rule.to);
    }
    for (const PictureItem& picture : drawing.pictures)
        painter.drawImage(picture.rect, picture.image);
    paintTexts(painter, drawing.texts);
    painter.restore();
}

QPageSize pageSizeOf(const PageLayout& layout, qsizetype page) {
    const QPageSize paper(layout.paper == people::Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
    const QSizeF size = layout.pages.value(page).size / unitsPerPoint;
    if (size.isEmpty() || layout.pages.at(page).size == layout.size)
        return paper;
    return QPageSize(size, QPageSize::Point, QString(), QPageSize::FuzzyMatch);
}

QString wordsOf(const PageLayout& layout, qsizetype page) {
    QStringList words;
    if (page >= 0 && page < layout.pages.size()) {
        for (const TextItem& text : layout.pages.at(page).texts) {
            const QTextLine first = text.layout->lineAt(text.firstLine);
            const QTextLine last = text.layout->lineAt(text.lastLine - 1);
            words << text.layout->text().mid(
                first.textStart(), last.textStart() + last.textLength() - first.textStart());
        }
    }
    return words.join(QLatin1Char('\n'));
}

} // namespace ladlework::ui
