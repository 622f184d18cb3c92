#include "handout/document_json.h"
#include "handout/document_words.h"

#include <QJsonArray>

namespace ladlework::handout {

namespace {
QString key(const char* name) {
    return QString::fromLatin1(name);
}

template <class Words, class Value>
QString wordOf(const Words& words, Value value) {
    for (const auto& [known, word] : words) {
        if (known == value)
            return word;
    }
    return {};
}

QJsonArray texts(const QStringList& list) {
    return QJsonArray::fromStringList(list);
}

QJsonObject cellJson(const Cell& cell) {
    return {
        {key("text"), cell.text}, {key("strong"), cell.strong}, {key("tick_box"), cell.tickBox}};
}

QJsonObject stockJson(const casebook::LabelStock& stock) {
    return {{key("name"), stock.name},
            {key("page_width_mm"), stock.pageWidthMm},
            {key("page_height_mm"), stock.pageHeightMm},
            {key("columns"), stock.columns},
            {key("rows"), stock.rows},
            {key("left_mm"), stock.leftMm},
            {key("top_mm"), stock.topMm},
            {key("label_width_mm"), stock.labelWidthMm},
            {key("label_height_mm"), stock.labelHeightMm},
            {key("gap_across_mm"), stock.gapAcrossMm},
            {key("gap_down_mm"), stock.gapDownMm}};
}

/// Writes each kind of block under its word.
struct BlockWriter {
    QJsonObject operator()(const Heading& heading) const {
        return {{key("block"), key("heading")}, {key("text"), heading.text}};
    }
    QJsonObject operator()(const Paragraph& paragraph) const {
        return {{key("block"), key("paragraph")},
                {key("text"), paragraph.text},
                {key("quiet"), paragraph.quiet}};
    }
    QJsonObject operator()(const Lines& lines) const {
        return {{key("block"), key("lines")},
                {key("sign"), wordOf(signWords, lines.sign)},
                {key("items"), texts(lines.items)}};
    }
    QJsonObject operator()(const Table& table) const {
        QJsonArray rows;
        for (const QList<Cell>& row : table.rows) {
            QJsonArray cells;
            for (const Cell& cell : row)
                cells.append(cellJson(cell));
            rows.append(cells);
        }
        QJsonArray weights;
        for (const double weight : table.weights)
            weights.append(weight);
        return {{key("block"), key("table")},
                {key("header"), texts(table.header)},
                {key("rows"), rows},
                {key("weights"), weights},
                {key("rows_together"), table.rowsTogether}};
    }
    QJsonObject operator()(const Warning& warning) const {
        return {{key("block"), key("warning")},
                {key("word"), warning.word},
                {key("text"), warning.text}};
    }
    QJsonObject operator()(const Facts& facts) const {
        QJsonArray pairs;
        for (const auto& [what, value] : facts.pairs)
            pairs.append(texts({what, value}));
        return {{key("block"), key("facts")}, {key("pairs"), pairs}};
    }
    QJsonObject operator()(const Letterhead& head) const {
        return {{key("block"), key("letterhead")},
                {key("practice"), head.practice},
                {key("practitioner"), head.practitioner},
                {key("contact"), texts(head.contact)},
                {key("logo_png"), QString::fromLatin1(head.logo.toBase64())}};
    }
    QJsonObject operator()(const LabelSheet& sheet) const {
        QJsonArray labels;
        for (const JarLabel& label : sheet.labels) {
            QJsonArray lines;
            for (const Cell& line : label.lines)
                lines.append(cellJson(line));
            labels.append(QJsonObject{{key("title"), label.title}, {key("lines"), lines}});
        }
        return {{key("block"), key("label-sheet")},
                {key("stock"), stockJson(sheet.stock)},
                {key("places_used"), sheet.placesUsed},
                {key("labels"), labels}};
    }
};

QJsonObject cardJson(const Card& card) {
    QJsonArray blocks;
    for (const Block& block : card.blocks)
        blocks.append(std::visit(BlockWriter(), block));
    return {{key("kind"), wordOf(cardWords, card.kind)},
            {key("title"), card.title},
            {key("starts_page"), card.startsPage},
            {key("blocks"), blocks}};
}
} // namespace

QJsonObject toJson(const Document& document) {
    QJsonArray cards;
    for (const Card& card : document.cards)
        cards.append(cardJson(card));
    return {{key("format"), documentFormat},
            {key("title"), document.title},
            {key("author"), document.author},
            {key("footer"), document.footer},
            {key("printed_on"), document.printedOn},
            {key("paper"), wordOf(paperWords, document.paper)},
            {key("large_print"), document.largePrint},
            {key("language"), document.language},
            {key("cards"), cards}};
}

} // namespace ladlework::handout
