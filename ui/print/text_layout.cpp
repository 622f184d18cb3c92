#include "ui/print/text_layout.h"

#include <QGlyphRun>
#include <QTextOption>

namespace ladlework::ui {

namespace {

/// Line breaks as Qt's text layout knows them; other control characters would print as boxes.
QString printable(const QString& text) {
    QString clean;
    clean.reserve(text.size());
    for (const QChar letter : text) {
        if (letter == QLatin1Char('\n'))
            clean += QChar(QChar::LineSeparator);
        else if (letter.category() == QChar::Other_Control)
            clean += letter.isSpace() ? QStringLiteral(" ") : QString();
        else
            clean += letter;
    }
    return clean;
}

QTextOption optionOf(QTextOption::WrapMode wrap) {
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setWrapMode(wrap);
    option.setTextDirection(Qt::LayoutDirectionAuto);
    option.setUseDesignMetrics(true);
    return option;
}

} // namespace

double BrokenText::heightOf(int first, int last) const {
    return tops.at(last) - tops.at(first);
}

TextItem BrokenText::item(int first, int last, QPointF at) const {
    return TextItem{layout, first, last, at - QPointF(0, tops.at(first))};
}

BrokenText breakText(const QString& text, const QFont& font, double width, double spacing) {
    const auto layout = std::make_shared<QTextLayout>(printable(text), font);
    layout->setTextOption(optionOf(QTextOption::WrapAtWordBoundaryOrAnywhere));
    layout->setCacheEnabled(true);
    const double least = spacing * font.pixelSize();
    BrokenText broken;
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
        line.setLineWidth(width);
        const double pitch = std::max(least, line.height() * 1.02);
        line.setPosition(QPointF(0, broken.height + (pitch - line.height()) / 2));
        broken.tops << broken.height;
        broken.height += pitch;
        broken.width = std::max(broken.width, line.naturalTextWidth());
        ++broken.lines;
    }
    broken.tops << broken.height;
    layout->endLayout();
    broken.layout = layout;
    return broken;
}

namespace {

double widestLine(const QString& text, const QFont& font, double lineWidth) {
    QTextLayout layout(printable(text), font);
    layout.setTextOption(optionOf(QTextOption::WordWrap));
    layout.beginLayout();
    double widest = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(lineWidth);
        widest = std::max(widest, line.naturalTextWidth());
    }
    layout.endLayout();
    return widest;
}

} // namespace

QString shapelessIn(const TextItem& item) {
    QString letters;
    for (int number = item.firstLine; number < item.lastLine; ++number) {
        const QTextLine line = item.layout->lineAt(number);
        for (int at = line.textStart(); at < line.textStart() + line.textLength(); ++at) {
            const QChar letter = item.layout->text().at(at);
            if (letter.isSpace() || letter.category() == QChar::Other_Format ||
                letter.isLowSurrogate())
                continue;
            for (const QGlyphRun& run : line.glyphRuns(at, 1))
                if (run.glyphIndexes().contains(0U))
                    letters += letter;
        }
    }
    return letters;
}

double naturalWidth(const QString& text, const QFont& font) {
    constexpr double noLimit = 1e6;
    return widestLine(text, font, noLimit);
}

double widestWord(const QString& text, const QFont& font) {
    return widestLine(text, font, 1);
}

} // namespace ladlework::ui
