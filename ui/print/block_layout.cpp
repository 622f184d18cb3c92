#include "ui/print/block_layout.h"

#include "ui/print/letterhead_layout.h"
#include "ui/print/table_layout.h"

namespace ladlework::ui {

namespace {

class BlockLayout {
public:
    BlockLayout(const PrintStyle& style, double width, double mostHeight)
        : m_style(style), m_width(width), m_mostHeight(mostHeight) {}

    QList<Strip> operator()(const handout::Heading& heading) const {
        QList<Strip> strips =
            lineStrips(breakText(heading.text, m_style.heading, m_width, 1.25), 0);
        for (Strip& strip : strips)
            strip.keepWithNext = true;
        return strips;
    }

    QList<Strip> operator()(const handout::Paragraph& paragraph) const {
        const QFont& font = paragraph.quiet ? m_style.quiet : m_style.body;
        return lineStrips(breakText(paragraph.text, font, m_width, m_style.lineSpacing), 0);
    }

    QList<Strip> operator()(const handout::Lines& lines) const {
        const qsizetype columns = columnsFor(lines);
        if (columns > 1)
            return inColumns(lines, columns);
        QList<Strip> strips;
        for (qsizetype i = 0; i < lines.items.size(); ++i) {
            const BrokenText text = breakText(lines.items.at(i), m_style.body,
                                              m_width - signWidth(), m_style.lineSpacing);
            QList<Strip> item = lineStrips(text, signWidth());
            addSign(item.first(), lines.sign, i, 0, text.heightOf(0, 1));
            if (i > 0)
                item.first().gapBefore = gapBetween(lines.sign);
            strips << item;
        }
        return strips;
    }

    QList<Strip> operator()(const handout::Table& table) const {
        return layOutTable(table, m_style, m_width, m_mostHeight);
    }

    QList<Strip> operator()(const handout::Warning& warning) const {
        const double pad = 0.7 * m_style.bodySize;
        const BrokenText word =
            breakText(warning.word, m_style.strong, m_width / 3, m_style.lineSpacing);
        const double tab = warning.word.isEmpty() ? 0 : word.width + 2 * pad;
        const BrokenText text =
            breakText(warning.text, m_style.body, m_width - tab - 2 * pad, m_style.lineSpacing);
        const double height = std::max(word.height, text.height) + 1.2 * pad;
        if (height > m_mostHeight)
            return tooLongWarning(warning);
        Strip strip;
        strip.height = height;
        strip.drawing.boxes << BoxItem{QRectF(0, 0, m_width, height), 2 * m_style.hairline};
        if (tab > 0) {
            strip.drawing.boxes << BoxItem{QRectF(0, 0, tab, height), 0, true};
            TextItem item = word.whole(QPointF(pad, 0.6 * pad));
            item.onBlack = true;
            strip.drawing.texts << item;
        }
        strip.drawing.texts << text.whole(QPointF(tab + pad, 0.6 * pad));
        return {strip};
    }

    QList<Strip> operator()(const handout::Facts& facts) const {
        QList<Strip> strips;
        const double gutter = 1.6 * m_style.bodySize;
        const double column = (m_width - gutter) / 2;
        for (qsizetype i = 0; i < facts.pairs.size(); i += 2) {
            Strip strip;
            for (qsizetype side = 0; side < 2 && i + side < facts.pairs.size(); ++side) {
                const double left = static_cast<double>(side) * (column + gutter);
                addFact(strip, facts.pairs.at(i + side), left, column);
            }
            strip.gapBefore = i > 0 ? 0.5 * m_style.bodySize : 0;
            strips << strip;
        }
        return strips;
    }

    QList<Strip> operator()(const handout::Letterhead& head) const {
        return layOutLetterhead(head, m_style, m_width);
    }

    /// Labels are sheets of their own (label_layout.h), no part of a card.
    QList<Strip> operator()(const handout::LabelSheet& /*sheet*/) const { return {}; }

private:
    [[nodiscard]] double gapBetween(handout::Lines::Sign sign) const {
        return (sign == handout::Lines::Sign::TickBox ? 0.4 : 0.25) * m_style.bodySize;
    }

    [[nodiscard]] double signWidth() const { return 2.0 * m_style.bodySize; }

    /// Short items stand in as many columns as their longest allows.
    [[nodiscard]] qsizetype columnsFor(const handout::Lines& lines) const {
        constexpr qsizetype mostColumns = 3;
        constexpr qsizetype leastInAColumn = 2;
        double longest = 0;
        for (const QString& item : lines.items)
            longest = std::max(longest, naturalWidth(item, m_style.body));
        for (qsizetype columns = mostColumns; columns > 1; --columns)
            if (lines.items.size() >= columns * leastInAColumn &&
                longest + 1.5 * signWidth() <= m_width / static_cast<double>(columns))
                return columns;
        return 1;
    }

    /// Down the first column, then down the next.
    [[nodiscard]] QList<Strip> inColumns(const handout::Lines& lines, qsizetype columns) const {
        const qsizetype rows = (lines.items.size() + columns - 1) / columns;
        const double column = m_width / static_cast<double>(columns);
        QList<Strip> strips;
        for (qsizetype row = 0; row < rows; ++row) {
            Strip strip;
            strip.gapBefore = row > 0 ? gapBetween(lines.sign) : 0;
            // Broken between pages the reading order would jump: down one column and back.
            strip.keepWithNext = row + 1 < rows;
            for (qsizetype i = row; i < lines.items.size(); i += rows) {
                const qsizetype columnNumber = i / rows;
                const double left = static_cast<double>(columnNumber) * column;
                const BrokenText text = breakText(lines.items.at(i), m_style.body,
                                                  column - signWidth(), m_style.lineSpacing);
                addSign(strip, lines.sign, i, left, text.heightOf(0, 1));
                strip.drawing.texts << text.whole(QPointF(left + signWidth(), 0));
                strip.height = std::max(strip.height, text.height);
            }
            strips << strip;
        }
        return strips;
    }

    void addSign(Strip& strip, handout::Lines::Sign sign, qsizetype index, double left,
                 double lineHeight) const {
        switch (sign) {
        case handout::Lines::Sign::TickBox:
            strip.drawing.boxes << tickBoxAt(QPointF(left, 0), lineHeight, m_style);
            break;
        case handout::Lines::Sign::Number: {
            const QString number = QString::number(index + 1) + u'.';
            strip.drawing.texts << breakText(number, m_style.strong, signWidth(),
                                             m_style.lineSpacing)
                                       .whole(QPointF(left, 0));
            break;
        }
        case handout::Lines::Sign::Dot: {
            const double side = 0.32 * m_style.bodySize;
            const QRectF dot(left + 0.55 * m_style.bodySize, (lineHeight - side) / 2, side, side);
            strip.drawing.boxes << BoxItem{dot, 0, true, true};
            break;
        }
        }
    }

    void addFact(Strip& strip, const std::pair<QString, QString>& pair, double left,
                 double column) const {
        const BrokenText label = breakText(pair.first, m_style.label, column, 1.25);
        const BrokenText value =
            breakText(pair.second, m_style.strong, column, m_style.lineSpacing);
        strip.drawing.texts << label.whole(QPointF(left, 0))
                            << value.whole(QPointF(left, label.height));
        strip.height = std::max(strip.height, label.height + value.height);
    }

    /// A warning that no page holds in one frame: the word above, then its lines.
    [[nodiscard]] QList<Strip> tooLongWarning(const handout::Warning& warning) const {
        QList<Strip> strips = (*this)(handout::Heading{warning.word});
        strips << (*this)(handout::Paragraph{warning.text, false});
        return strips;
    }

    const PrintStyle& m_style;
    double m_width;
    double m_mostHeight;
};

} // namespace

BoxItem tickBoxAt(QPointF at, double lineHeight, const PrintStyle& style) {
    const double down = (lineHeight - style.tickBox) / 2;
    return BoxItem{QRectF(at.x(), at.y() + down, style.tickBox, style.tickBox),
                   1.6 * style.hairline};
}

QList<Strip> lineStrips(const BrokenText& text, double left) {
    QList<Strip> strips;
    for (int line = 0; line < text.lines; ++line) {
        Strip strip;
        strip.height = text.heightOf(line, line + 1);
        strip.keepWithNext = line + 1 < text.lines && (line == 0 || line + 2 == text.lines);
        strip.drawing.texts << text.item(line, line + 1, QPointF(left, 0));
        strips << strip;
    }
    return strips;
}

QList<Strip> layOutBlock(const handout::Block& block, const PrintStyle& style, double width,
                         double mostHeight) {
    return std::visit(BlockLayout(style, width, mostHeight), block);
}

} // namespace ladlework::ui
