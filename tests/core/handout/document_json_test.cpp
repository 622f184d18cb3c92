#include "handout/document_json.h"

#include "core/casebook/hand_made_family.h"
#include "handout/family_handout.h"

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>

using namespace ladlework;
using namespace ladlework::handout;

namespace {
LabelSheet oneLabelSheet() {
    LabelSheet sheet;
    sheet.stock.name = QStringLiteral("sheets");
    sheet.stock.leftMm = 4.7;
    sheet.placesUsed = 3;
    sheet.labels = {JarLabel{QStringLiteral("pot"),
                             {{QStringLiteral("use by"), true, true}, {QStringLiteral("x")}}},
                    JarLabel()};
    return sheet;
}

Document oneOfEach() {
    Document document;
    document.title = QStringLiteral("Hartley - week of 2 November 2026");
    document.author = QStringLiteral("A practice");
    document.footer = QStringLiteral("footer \"quoted\"");
    document.printedOn = QStringLiteral("4 November 2026");
    document.paper = people::Paper::A4;
    document.largePrint = true;
    Card card;
    card.kind = Card::Kind::Shopping;
    card.title = QStringLiteral("½ cup");
    card.startsPage = true;
    card.blocks = {Heading{QStringLiteral("h")},
                   Paragraph{QStringLiteral("p"), true},
                   Lines{Lines::Sign::TickBox, {QStringLiteral("a"), QString()}},
                   Lines{Lines::Sign::Number, {}},
                   Table{{QStringLiteral("x"), QStringLiteral("y")},
                         {{{QStringLiteral("1"), true, false}, {QString(), false, true}}, {}},
                         {1.0 / 3, 2}},
                   Warning{QStringLiteral("Stop"), QStringLiteral("w\nx")},
                   Facts{{{QStringLiteral("k"), QStringLiteral("v")}}},
                   Letterhead{QStringLiteral("practice"),
                              QStringLiteral("who"),
                              {QStringLiteral("555")},
                              QByteArray("\x89PNG\0\xff", 6)},
                   oneLabelSheet()};
    std::get<Table>(card.blocks[4]).rowsTogether = 3;
    document.cards = {card, Card()};
    return document;
}

QJsonObject withBlock(const QJsonObject& block) {
    QJsonObject object = toJson(oneOfEach());
    QJsonArray cards = object.value(QLatin1String("cards")).toArray();
    QJsonObject card = cards.at(0).toObject();
    card.insert(QLatin1String("blocks"), QJsonArray{block});
    cards.replace(0, card);
    object.insert(QLatin1String("cards"), cards);
    return object;
}
} // namespace

TEST(DocumentJsonTest, readsBackWhatItWrites) {
    const Document document = oneOfEach();
    // Through text, as it is kept.
    const QByteArray text = QJsonDocument(toJson(document)).toJson();
    const Result<Document> read = fromJson(QJsonDocument::fromJson(text).object());
    ASSERT_TRUE(read) << qPrintable(read.error().sentence);
    EXPECT_TRUE(*read == document);
}

TEST(DocumentJsonTest, readsBackEveryKindOfCardAndPaper) {
    for (int kind = 0; kind <= static_cast<int>(Card::Kind::JarLabels); ++kind) {
        Document document;
        document.cards.append(Card{static_cast<Card::Kind>(kind), {}, {}, false});
        const Result<Document> read = fromJson(toJson(document));
        ASSERT_TRUE(read);
        EXPECT_TRUE(*read == document) << kind;
    }
}

TEST(DocumentJsonTest, readsBackARealHandout) {
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    ASSERT_TRUE(catalogue);
    const casebook::Casebook book(hand_made::records(), *catalogue, hand_made::today);
    HandoutOptions options;
    options.week = hand_made::monday;
    const Document document = familyHandout(book, options);
    const Result<Document> read = fromJson(toJson(document));
    ASSERT_TRUE(read) << qPrintable(read.error().place);
    EXPECT_TRUE(*read == document);
}

TEST(DocumentJsonTest, readsTheFirstFormatAsItWasWritten) {
    // A handout kept before letterheads and label sheets, as the program wrote it then.
    const QByteArray kept =
        R"({"author":"A practice","cards":[{"blocks":[{"block":"table","header":["x"],)"
        R"("rows":[[{"strong":true,"text":"1 cup","tick_box":true}]],"weights":[1]},)"
        R"({"block":"paragraph","quiet":false,"text":"p"}],"kind":"week","starts_page":false,)"
        R"("title":"The week"}],"footer":"f","format":1,"large_print":true,"paper":"a4",)"
        R"("printed_on":"4 November 2026","title":"t"})";
    const Result<Document> read = fromJson(QJsonDocument::fromJson(kept).object());
    ASSERT_TRUE(read) << qPrintable(read.error().place);
    ASSERT_EQ(read->cards.size(), 1);
    const Table expected{
        {QStringLiteral("x")}, {{{QStringLiteral("1 cup"), true, true}}}, {1.0}, 0};
    EXPECT_TRUE(std::get<Table>(read->cards[0].blocks[0]) == expected);
    EXPECT_EQ(read->paper, people::Paper::A4);
    EXPECT_TRUE(read->largePrint);
}

TEST(DocumentJsonTest, refusesWhatIsNoDocumentAndNamesThePlace) {
    QJsonObject noTitle = toJson(oneOfEach());
    noTitle.remove(QLatin1String("title"));
    QJsonObject unknownKey = toJson(oneOfEach());
    unknownKey.insert(QLatin1String("colour"), 1);
    QJsonObject newer = toJson(oneOfEach());
    newer.insert(QLatin1String("format"), 3);
    QJsonObject paper = toJson(oneOfEach());
    paper.insert(QLatin1String("paper"), QLatin1String("legal"));
    QJsonObject cards = toJson(oneOfEach());
    cards.insert(QLatin1String("cards"), QJsonArray{7});
    const QLatin1String block("block");
    const struct {
        QJsonObject object;
        QString place;
    } cases[] = {
        {{}, QStringLiteral("format")},
        {noTitle, QStringLiteral("title")},
        {unknownKey, QStringLiteral("colour")},
        {newer, QStringLiteral("format")},
        {paper, QStringLiteral("paper")},
        {cards, QStringLiteral("cards[0]")},
        {withBlock({{block, QLatin1String("video")}}), QStringLiteral("cards[0].blocks[0].block")},
        {withBlock({{block, QLatin1String("heading")}}), QStringLiteral("cards[0].blocks[0].text")},
        {withBlock({{block, QLatin1String("facts")},
                    {QLatin1String("pairs"), QJsonArray{QJsonArray{QLatin1String("k")}}}}),
         QStringLiteral("cards[0].blocks[0].pairs[0]")},
        {withBlock({{block, QLatin1String("lines")},
                    {QLatin1String("sign"), QLatin1String("dot")},
                    {QLatin1String("items"), QJsonArray{QLatin1String("a"), 2}}}),
         QStringLiteral("cards[0].blocks[0].items[1]")},
        {withBlock({{block, QLatin1String("table")},
                    {QLatin1String("header"), QJsonArray()},
                    {QLatin1String("rows"), QJsonArray{QJsonArray{3}}},
                    {QLatin1String("weights"), QJsonArray()}}),
         QStringLiteral("cards[0].blocks[0].rows[0][0]")},
        {withBlock({{block, QLatin1String("table")},
                    {QLatin1String("header"), QJsonArray()},
                    {QLatin1String("rows"), QJsonArray()},
                    {QLatin1String("weights"), QJsonArray{-1}}}),
         QStringLiteral("cards[0].blocks[0].weights[0]")},
    };
    for (const auto& [object, place] : cases) {
        const Result<Document> read = fromJson(object);
        ASSERT_FALSE(read) << qPrintable(place);
        EXPECT_EQ(read.error().kind, Problem::Kind::BadInput);
        EXPECT_EQ(read.error().place, place);
        EXPECT_FALSE(read.error().sentence.isEmpty());
    }
}

TEST(DocumentJsonTest, refusesLabelSheetsThatNoPageHolds) {
    const auto labels = [](const char* key, const QJsonValue& value) {
        Document document;
        document.cards = {Card{Card::Kind::JarLabels, {}, {oneLabelSheet()}, true}};
        QJsonObject object = toJson(document);
        QJsonArray cards = object.value(QLatin1String("cards")).toArray();
        QJsonObject card = cards.at(0).toObject();
        QJsonArray blocks = card.value(QLatin1String("blocks")).toArray();
        QJsonObject sheet = blocks.at(0).toObject();
        QJsonObject stock = sheet.value(QLatin1String("stock")).toObject();
        stock.insert(QLatin1String(key), value);
        sheet.insert(QLatin1String("stock"), stock);
        blocks.replace(0, sheet);
        card.insert(QLatin1String("blocks"), blocks);
        cards.replace(0, card);
        object.insert(QLatin1String("cards"), cards);
        return object;
    };
    for (const auto& [key, value] :
         {std::pair{"columns", QJsonValue(0)}, std::pair{"label_width_mm", QJsonValue(-1)},
          std::pair{"rows", QJsonValue(21)}, std::pair{"top_mm", QJsonValue(QLatin1String("x"))}}) {
        const Result<Document> read = fromJson(labels(key, value));
        ASSERT_FALSE(read) << key;
        EXPECT_EQ(read.error().place,
                  QStringLiteral("cards[0].blocks[0].stock.") + QString::fromLatin1(key));
    }
}
