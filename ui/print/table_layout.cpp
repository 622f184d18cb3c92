#include "ui/print/table_layout.h"

#include "ui/print/block_layout.h"

#include <algorithm>
#include <numeric>

namespace ladlework::ui {

namespace {

/// No single word may claim more of a table than this share; beyond it a word is broken.
constexpr double mostShareOfAWord = 0.4;
/// Rounding must not break a word that just fits.
constexpr double slack = 1.0;

class TableLayout {
public:
    TableLayout(const handout::Table& table, const PrintStyle& style, double width,
                double mostHeight)
        : m_table(table), m_style(style), m_width(width), m_mostHeight(mostHeight),
          m_columns(columnsOf(table)), m_toWriteIn(columnsToWriteIn(table, m_columns)) {}

    [[nodiscard]] QList<Strip> strips() const {
        if (m_columns == 0)
            return {};
        // Short cells are kept on one line as long as all columns find room.
        for (const double share : {0.45, 0.25, 0.15, 0.11, 0.08, 0.0}) {
            const QList<double> widths = shareWidth(weights(), needs(share * m_width), m_width);
            if (!widths.isEmpty())
                return rows(widths);
        }
        return stackedRows();
    }

private:
    static qsizetype columnsOf(const handout::Table& table) {
        qsizetype columns = table.header.size();
        for (const QList<handout::Cell>& row : table.rows)
            columns = std::max(columns, row.size());
        return columns;
    }

    /// A column that is empty in all rows waits for a pen.
    static QList<bool> columnsToWriteIn(const handout::Table& table, qsizetype columns) {
        QList<bool> toWriteIn(columns, false);
        for (qsizetype column = 0; column < columns; ++column)
            toWriteIn[column] =
                !table.header.value(column).isEmpty() &&
                std::all_of(table.rows.cbegin(), table.rows.cend(), [&](const auto& row) {
                    const handout::Cell cell = row.value(column);
                    return cell.text.isEmpty() && !cell.tickBox;
                });
        return toWriteIn;
    }

    [[nodiscard]] QList<double> weights() const {
        QList<double> weights(m_columns, 1.0);
        for (qsizetype i = 0; i < std::min(m_columns, m_table.weights.size()); ++i)
            if (m_table.weights.at(i) > 0)
                weights[i] = m_table.weights.at(i);
        return weights;
    }

    /// What each column needs: the longest word, or the whole text of cells up to `shortCell` wide.
    [[nodiscard]] QList<double> needs(double shortCell) const {
        QList<double> needs(m_columns, 2 * m_style.cellX);
        const auto need = [&](qsizetype column, const QString& text, const QFont& font,
                              double indent) {
            const double whole = naturalWidth(text, font) + indent;
            const double least = whole <= shortCell ? whole
                                                    : std::min(widestWord(text, font) + indent,
                                                               mostShareOfAWord * m_width);
            needs[column] = std::max(needs.at(column), least + 2 * m_style.cellX + slack);
        };
        for (qsizetype i = 0; i < m_table.header.size(); ++i)
            need(i, m_table.header.at(i), m_style.tableHead, 0);
        for (const QList<handout::Cell>& row : m_table.rows)
            for (qsizetype i = 0; i < row.size(); ++i)
                need(i, row.at(i).text, fontOf(row.at(i)), indentOf(row.at(i)));
        return needs;
    }

    [[nodiscard]] const QFont& fontOf(const handout::Cell& cell) const {
        return cell.strong ? m_style.strong : m_style.body;
    }

    [[nodiscard]] double indentOf(const handout::Cell& cell) const {
        return cell.tickBox ? 1.4 * m_style.tickBox : 0;
    }

    [[nodiscard]] bool hasHeader() const {
        return std::any_of(m_table.header.cbegin(), m_table.header.cend(),
                           [](const QString& text) { return !text.isEmpty(); });
    }

    [[nodiscard]] QList<Strip> rows(const QList<double>& widths) const {
        QList<Strip> strips;
        std::shared_ptr<const Strip> header;
        if (hasHeader()) {
            header = std::make_shared<const Strip>(headerRow(widths));
            strips << *header;
        }
        const double most = m_mostHeight - (header ? header->height : 0);
        for (qsizetype i = 0; i < m_table.rows.size(); ++i) {
            QList<Strip> row = rowStrips(m_table.rows.at(i), widths, most);
            for (Strip& strip : row)
                strip.repeated = header;
            // No last row alone on the next page.
            row.last().keepWithNext = i + 2 == m_table.rows.size();
            if (m_table.rowsTogether > 1) {
                const bool last = (i + 1) % m_table.rowsTogether == 0;
                row.last().keepWithNext = !last && i + 1 < m_table.rows.size();
                if (last)
                    row.last().drawing.rules.last().width = 1.6 * m_style.rule;
            }
            strips << row;
        }
        return strips;
    }

    [[nodiscard]] Strip headerRow(const QList<double>& widths) const {
        Strip strip;
        double left = 0;
        for (qsizetype i = 0; i < m_table.header.size(); ++i) {
            const BrokenText text = breakText(m_table.header.at(i), m_style.tableHead,
                                              widths.at(i) - 2 * m_style.cellX, 1.22);
            strip.drawing.texts << text.whole(QPointF(left + m_style.cellX, m_style.cellY));
            strip.height = std::max(strip.height, text.height + 2 * m_style.cellY);
            left += widths.at(i);
        }
        strip.drawing.rules << RuleItem{QPointF(0, strip.height), QPointF(m_width, strip.height),
                                        m_style.rule};
        strip.keepWithNext = true;
        return strip;
    }

    /// Usually one strip; a row higher than a page is cut between lines.
    [[nodiscard]] QList<Strip> rowStrips(const QList<handout::Cell>& cells,
                                         const QList<double>& widths, double mostHeight) const {
        QList<BrokenText> texts;
        int lines = 1;
        double lineHeight = 1;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const handout::Cell& cell = cells.at(i);
            texts << breakText(cell.text, fontOf(cell),
                               widths.at(i) - 2 * m_style.cellX - indentOf(cell), 1.25);
            lines = std::max(lines, texts.last().lines);
            lineHeight =
                std::max(lineHeight, texts.last().height / std::max(1, texts.last().lines));
        }
        const int linesAStrip =
            std::max(1, static_cast<int>((mostHeight - 2 * m_style.cellY) / lineHeight));
        QList<Strip> strips;
        for (int first = 0; first < lines; first += linesAStrip)
            strips << rowPart(cells, texts, widths, first, first + linesAStrip);
        strips.last().drawing.rules
            << RuleItem{QPointF(0, strips.last().height), QPointF(m_width, strips.last().height),
                        m_style.hairline};
        return strips;
    }

    [[nodiscard]] Strip rowPart(const QList<handout::Cell>& cells, const QList<BrokenText>& texts,
                                const QList<double>& widths, int firstLine, int lastLine) const {
        Strip strip;
        double left = 0;
        const double above = firstLine == 0 ? aboveHandwriting() : 0;
        if (above > 0)
            strip.height = m_style.handwriting + 2 * m_style.cellY;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const BrokenText& text = texts.at(i);
            const int first = std::min(firstLine, text.lines);
            const int last = std::min(lastLine, text.lines);
            const QPointF at(left + m_style.cellX, m_style.cellY + above);
            double height = text.heightOf(first, last);
            if (first < last)
                strip.drawing.texts
                    << text.item(first, last, at + QPointF(indentOf(cells.at(i)), 0));
            if (cells.at(i).tickBox && firstLine == 0) {
                strip.drawing.boxes << tickBoxAt(at, text.heightOf(0, 1), m_style);
                height = std::max(height, 1.2 * m_style.tickBox);
            }
            strip.height = std::max(strip.height, height + above + 2 * m_style.cellY);
            left += widths.at(i);
        }
        addFieldsToWriteIn(strip, widths);
        return strip;
    }

    /// How far the print of a row stands down when there is a line to write on beside it.
    [[nodiscard]] double aboveHandwriting() const {
        for (qsizetype column = 0; column < m_columns; ++column)
            if (m_toWriteIn.at(column))
                return std::max(1.0, (m_style.handwriting - 1.25 * m_style.bodySize) / 2);
        return 0;
    }

    /// A line at either side of each column that waits for a pen.
    void addFieldsToWriteIn(Strip& strip, const QList<double>& widths) const {
        double left = 0;
        for (qsizetype i = 0; i < m_columns; ++i) {
            if (m_toWriteIn.at(i)) {
                addUpright(strip, left);
                addUpright(strip, left + widths.at(i));
            }
            left += widths.at(i);
        }
    }

    void addUpright(Strip& strip, double left) const {
        const QPointF from(left, 0);
        const bool there = std::any_of(strip.drawing.rules.cbegin(), strip.drawing.rules.cend(),
                                       [&](const RuleItem& rule) { return rule.from == from; });
        if (!there)
            strip.drawing.rules << RuleItem{from, QPointF(left, strip.height), m_style.hairline};
    }

    [[nodiscard]] QList<Strip> stackedRows() const {
        QList<Strip> strips;
        for (const QList<handout::Cell>& row : m_table.rows) {
            QList<Strip> lines;
            for (qsizetype i = 0; i < row.size(); ++i)
                lines << (m_toWriteIn.at(i)
                              ? lineToWriteOn(m_table.header.value(i))
                              : stackedCell(row.at(i), m_table.header.value(i), i == 0));
            if (lines.isEmpty())
                continue;
            lines.first().gapBefore = strips.isEmpty() ? 0 : m_style.blockGap;
            lines.first().keepWithNext = lines.size() > 1;
            Strip& last = lines.last();
            last.height += m_style.cellY;
            last.drawing.rules << RuleItem{QPointF(0, last.height), QPointF(m_width, last.height),
                                           m_style.hairline};
            strips << lines;
        }
        return strips;
    }

    /// The name of a field and a line beside it for the pen.
    [[nodiscard]] QList<Strip> lineToWriteOn(const QString& header) const {
        const BrokenText name = breakText(QString(header + QLatin1Char(':')), m_style.body,
                                          m_width / 2, m_style.lineSpacing);
        Strip strip;
        strip.height = std::max(name.height, m_style.handwriting);
        const double down = strip.height - name.height;
        strip.drawing.texts << name.whole(QPointF(m_style.bodySize, down));
        const double from = 1.5 * m_style.bodySize + name.width;
        const double line = strip.height - 0.25 * m_style.bodySize;
        strip.drawing.rules << RuleItem{QPointF(from, line), QPointF(m_width, line),
                                        m_style.hairline};
        return {strip};
    }

    [[nodiscard]] QList<Strip> stackedCell(const handout::Cell& cell, const QString& header,
                                           bool first) const {
        if (cell.text.isEmpty() && !cell.tickBox)
            return {};
        QString words = cell.text;
        if (!first && !header.isEmpty())
            words = words.isEmpty() ? header : QString(header + QStringLiteral(": ") + words);
        const double indent = (first ? 0 : m_style.bodySize) + indentOf(cell);
        const QFont& font = first ? m_style.strong : fontOf(cell);
        const BrokenText text = breakText(words, font, m_width - indent, m_style.lineSpacing);
        QList<Strip> strips = lineStrips(text, indent);
        if (cell.tickBox) {
            strips.first().gapBefore = 0.3 * m_style.bodySize;
            strips.first().drawing.boxes
                << tickBoxAt(QPointF(indent - indentOf(cell), 0), text.heightOf(0, 1), m_style);
        }
        return strips;
    }

    const handout::Table& m_table;
    const PrintStyle& m_style;
    double m_width;
    double m_mostHeight;
    qsizetype m_columns;
    QList<bool> m_toWriteIn;
};

} // namespace

QList<double> shareWidth(const QList<double>& weights, const QList<double>& needs, double width) {
    if (std::accumulate(needs.cbegin(), needs.cend(), 0.0) > width)
        return {};
    // Columns that need more than their share take what they need; the others share the rest.
    QList<double> widths(weights.size(), 0.0);
    QList<bool> fixed(weights.size(), false);
    for (bool again = true; again;) {
        again = false;
        double rest = width;
        double weight = 0;
        for (qsizetype i = 0; i < weights.size(); ++i) {
            if (fixed.at(i))
                rest -= widths.at(i);
            else
                weight += weights.at(i);
        }
        for (qsizetype i = 0; i < weights.size(); ++i) {
            if (fixed.at(i))
                continue;
            widths[i] = rest * weights.at(i) / weight;
            if (widths.at(i) < needs.at(i)) {
                widths[i] = needs.at(i);
                fixed[i] = true;
                again = true;
                break;
            }
        }
    }
    return widths;
}

QList<Strip> layOutTable(const handout::Table& table, const PrintStyle& style, double width,
                         double mostHeight) {
    return TableLayout(table, style, width, mostHeight).strips();
}

} // namespace ladlework::ui
