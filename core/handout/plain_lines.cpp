#include "handout/plain_lines.h"

namespace ladlework::handout {

namespace {
/// Writes the text of each kind of block.
class LineWriter {
public:
    explicit LineWriter(QStringList& lines) : m_lines(lines) {}

    void operator()(const Heading& heading) { add(heading.text); }
    void operator()(const Paragraph& paragraph) { add(paragraph.text); }
    void operator()(const Lines& lines) {
        for (const QString& item : lines.items)
            add(item);
    }
    void operator()(const Table& table) {
        for (const QString& text : table.header)
            add(text);
        for (const QList<Cell>& row : table.rows) {
            for (const Cell& cell : row)
                add(cell.text);
        }
    }
    void operator()(const Warning& warning) {
        add(QStringLiteral("%1: %2").arg(warning.word, warning.text));
    }
    void operator()(const Facts& facts) {
        for (const auto& [what, value] : facts.pairs)
            add(QStringLiteral("%1: %2").arg(what, value));
    }
    void operator()(const Letterhead& head) {
        add(head.practice);
        add(head.practitioner);
        for (const QString& line : head.contact)
            add(line);
    }
    void operator()(const LabelSheet& sheet) {
        for (const JarLabel& label : sheet.labels) {
            add(label.title);
            for (const Cell& line : label.lines)
                add(line.text);
        }
    }

private:
    void add(const QString& text) {
        if (!text.isEmpty())
            m_lines.append(text);
    }

    QStringList& m_lines;
};
} // namespace

QStringList plainLines(const Card& card) {
    QStringList lines;
    if (!card.title.isEmpty())
        lines.append(card.title);
    LineWriter writer(lines);
    for (const Block& block : card.blocks)
        std::visit(writer, block);
    return lines;
}

QStringList plainLines(const Document& document) {
    QStringList lines;
    for (const Card& card : document.cards)
        lines += plainLines(card);
    return lines;
}

} // namespace ladlework::handout
