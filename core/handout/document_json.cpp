#include "handout/document_json.h"

#include "foundation/json_reader.h"
#include "handout/document_words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <optional>

namespace ladlework::handout {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(DocumentJson)
};

/// Weights are shares of a width; more than this is no share of a page.
constexpr double mostWeight = 1000;
constexpr int mostRowsTogether = 1000;

QString key(const char* name) {
    return QString::fromLatin1(name);
}

Problem wrong(const QString& sentence, const QString& path) {
    return {Problem::Kind::BadInput, sentence, {}, path};
}

/// The value that a word stands for; an unknown word is a failure of the reader.
template <class WordList>
auto valueOf(const WordList& words, JsonReader& reader, const QString& name) {
    const QString read = reader.text(name);
    for (const auto& [value, word] : words) {
        if (read == word)
            return value;
    }
    reader.fail(name, Words::tr("\"%1\" is no word that a handout has here.").arg(read));
    return words.front().first;
}

QStringList textList(JsonReader& reader, const QString& name) {
    const QJsonArray array = reader.array(name);
    QStringList texts;
    for (qsizetype index = 0; index < array.size(); ++index) {
        const QJsonValue value = array.at(index);
        if (!value.isString())
            reader.fail(wrong(Words::tr("This must be text in quotation marks."),
                              reader.pathOf(name, index)));
        texts.append(value.toString());
    }
    return texts;
}

Cell readCell(JsonReader& reader) {
    Cell cell;
    cell.text = reader.text(key("text"));
    cell.strong = reader.flag(key("strong"));
    cell.tickBox = reader.flag(key("tick_box"));
    return cell;
}

QList<Cell> readRow(const QJsonValue& value, JsonReader& reader, const QString& path) {
    QList<Cell> cells;
    if (!value.isArray()) {
        reader.fail(wrong(Words::tr("This must be a list in square brackets."), path));
        return cells;
    }
    const QJsonArray array = value.toArray();
    for (qsizetype index = 0; index < array.size() && !reader.failed(); ++index) {
        const QString place = QStringLiteral("%1[%2]").arg(path).arg(index);
        if (!array.at(index).isObject()) {
            reader.fail(wrong(Words::tr("This must be an object in curly brackets."), place));
            return cells;
        }
        JsonReader inner(array.at(index).toObject(), place);
        const Cell cell = readCell(inner);
        if (const Outcome done = inner.finish(); !done)
            reader.fail(done.error());
        cells.append(cell);
    }
    return cells;
}

Table readTable(JsonReader& reader) {
    Table table;
    table.header = textList(reader, key("header"));
    const QJsonArray rows = reader.array(key("rows"));
    for (qsizetype index = 0; index < rows.size() && !reader.failed(); ++index)
        table.rows.append(readRow(rows.at(index), reader, reader.pathOf(key("rows"), index)));
    const QJsonArray weights = reader.array(key("weights"));
    for (qsizetype index = 0; index < weights.size(); ++index) {
        const double weight = weights.at(index).toDouble(-1);
        if (!(weight >= 0 && weight <= mostWeight))
            reader.fail(wrong(Words::tr("This must be a number from 0 to 1000."),
                              reader.pathOf(key("weights"), index)));
        table.weights.append(weight);
    }
    table.rowsTogether =
        reader.optionalInteger(key("rows_together"), 0, mostRowsTogether).value_or(0);
    return table;
}

Letterhead readLetterhead(JsonReader& reader) {
    Letterhead head;
    head.practice = reader.text(key("practice"));
    head.practitioner = reader.text(key("practitioner"));
    head.contact = textList(reader, key("contact"));
    head.logo = QByteArray::fromBase64(reader.text(key("logo_png")).toLatin1());
    return head;
}

casebook::LabelStock readStock(JsonReader& reader) {
    constexpr double mostMm = 500;
    constexpr int mostInALine = 20;
    casebook::LabelStock stock;
    stock.name = reader.text(key("name"));
    stock.pageWidthMm = reader.number(key("page_width_mm"), 1, mostMm);
    stock.pageHeightMm = reader.number(key("page_height_mm"), 1, mostMm);
    stock.columns = reader.integer(key("columns"), 1, mostInALine);
    stock.rows = reader.integer(key("rows"), 1, mostInALine);
    stock.leftMm = reader.number(key("left_mm"), 0, mostMm);
    stock.topMm = reader.number(key("top_mm"), 0, mostMm);
    stock.labelWidthMm = reader.number(key("label_width_mm"), 1, mostMm);
    stock.labelHeightMm = reader.number(key("label_height_mm"), 1, mostMm);
    stock.gapAcrossMm = reader.number(key("gap_across_mm"), 0, mostMm);
    stock.gapDownMm = reader.number(key("gap_down_mm"), 0, mostMm);
    return stock;
}

LabelSheet readLabelSheet(JsonReader& reader) {
    constexpr int mostPlaces = 400;
    LabelSheet sheet;
    reader.readObject(key("stock"), [&](JsonReader& inner) { sheet.stock = readStock(inner); });
    sheet.placesUsed = reader.integer(key("places_used"), 0, mostPlaces);
    reader.readEach(key("labels"), [&](JsonReader& inner) {
        JarLabel label;
        label.title = inner.text(key("title"));
        inner.readEach(key("lines"), [&](JsonReader& line) { label.lines.append(readCell(line)); });
        sheet.labels.append(label);
    });
    return sheet;
}

Facts readFacts(JsonReader& reader) {
    Facts facts;
    const QJsonArray pairs = reader.array(key("pairs"));
    for (qsizetype index = 0; index < pairs.size(); ++index) {
        const QJsonArray pair = pairs.at(index).toArray();
        if (pair.size() != 2 || !pair.at(0).isString() || !pair.at(1).isString())
            reader.fail(wrong(Words::tr("This must be a list of two texts."),
                              reader.pathOf(key("pairs"), index)));
        facts.pairs.append({pair.at(0).toString(), pair.at(1).toString()});
    }
    return facts;
}

std::optional<Block> readBlock(JsonReader& reader) {
    const QString kind = reader.text(key("block"));
    if (kind == QLatin1String("heading"))
        return Heading{reader.text(key("text"))};
    if (kind == QLatin1String("paragraph")) {
        const QString text = reader.text(key("text"));
        return Paragraph{text, reader.flag(key("quiet"))};
    }
    if (kind == QLatin1String("lines")) {
        const Lines::Sign sign = valueOf(signWords, reader, key("sign"));
        return Lines{sign, textList(reader, key("items"))};
    }
    if (kind == QLatin1String("table"))
        return readTable(reader);
    if (kind == QLatin1String("warning")) {
        const QString word = reader.text(key("word"));
        return Warning{word, reader.text(key("text"))};
    }
    if (kind == QLatin1String("facts"))
        return readFacts(reader);
    if (kind == QLatin1String("letterhead"))
        return readLetterhead(reader);
    if (kind == QLatin1String("label-sheet"))
        return readLabelSheet(reader);
    reader.fail(key("block"), Words::tr("\"%1\" is no word that a handout has here.").arg(kind));
    return std::nullopt;
}

Card readCard(JsonReader& reader) {
    Card card;
    card.kind = valueOf(cardWords, reader, key("kind"));
    card.title = reader.text(key("title"));
    card.startsPage = reader.flag(key("starts_page"));
    reader.readEach(key("blocks"), [&card](JsonReader& inner) {
        if (std::optional<Block> block = readBlock(inner))
            card.blocks.append(*std::move(block));
    });
    return card;
}
} // namespace

Result<Document> fromJson(const QJsonObject& object) {
    JsonReader reader(object, QString());
    Document document;
    reader.integer(key("format"), oldestDocumentFormat, documentFormat);
    document.title = reader.text(key("title"));
    document.author = reader.text(key("author"));
    document.footer = reader.text(key("footer"));
    document.printedOn = reader.text(key("printed_on"));
    document.paper = valueOf(paperWords, reader, key("paper"));
    document.largePrint = reader.flag(key("large_print"));
    // Pages given before there was a choice are English.
    document.language = reader.optionalText(key("language")).value_or(document.language);
    reader.readEach(key("cards"),
                    [&document](JsonReader& inner) { document.cards.append(readCard(inner)); });
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    return document;
}

} // namespace ladlework::handout
