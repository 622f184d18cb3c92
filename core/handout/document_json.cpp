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

/// Runs `read` on each object of a list; the first problem is handed to the reader.
template <class Read>
void eachObject(JsonReader& reader, const QString& name, Read read) {
    const QJsonArray array = reader.array(name);
    for (qsizetype index = 0; index < array.size() && !reader.failed(); ++index) {
        if (!array.at(index).isObject()) {
            reader.fail(wrong(Words::tr("This must be an object in curly brackets."),
                              reader.pathOf(name, index)));
            return;
        }
        JsonReader inner(array.at(index).toObject(), reader.pathOf(name, index));
        read(inner);
        if (const Outcome done = inner.finish(); !done)
            reader.fail(done.error());
    }
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
        Cell cell;
        cell.text = inner.text(key("text"));
        cell.strong = inner.flag(key("strong"));
        cell.tickBox = inner.flag(key("tick_box"));
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
    return table;
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
    reader.fail(key("block"), Words::tr("\"%1\" is no word that a handout has here.").arg(kind));
    return std::nullopt;
}

Card readCard(JsonReader& reader) {
    Card card;
    card.kind = valueOf(cardWords, reader, key("kind"));
    card.title = reader.text(key("title"));
    card.startsPage = reader.flag(key("starts_page"));
    eachObject(reader, key("blocks"), [&card](JsonReader& inner) {
        if (std::optional<Block> block = readBlock(inner))
            card.blocks.append(*std::move(block));
    });
    return card;
}
} // namespace

Result<Document> fromJson(const QJsonObject& object) {
    JsonReader reader(object, QString());
    Document document;
    reader.integer(key("format"), documentFormat, documentFormat);
    document.title = reader.text(key("title"));
    document.author = reader.text(key("author"));
    document.footer = reader.text(key("footer"));
    document.printedOn = reader.text(key("printed_on"));
    document.paper = valueOf(paperWords, reader, key("paper"));
    document.largePrint = reader.flag(key("large_print"));
    // Pages given before there was a choice are English.
    document.language = reader.optionalText(key("language")).value_or(document.language);
    eachObject(reader, key("cards"),
               [&document](JsonReader& inner) { document.cards.append(readCard(inner)); });
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    return document;
}

} // namespace ladlework::handout
