#include "ui/print/label_layout.h"

#include "ui/print/page_painter.h"
#include "ui/print/pdf_tools.h"
#include "ui/print/pdf_writer.h"
#include "ui/print/print_font.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using casebook::LabelStock;
using handout::JarLabel;
using handout::LabelSheet;

constexpr double millimetresPerPoint = 25.4 / 72;

JarLabel label(const QString& title) {
    return {title,
            {{QStringLiteral("Cooked on Mon 2 Nov 2026"), false, false},
             {QStringLiteral("Fridge: use by Thu 5 Nov 2026"), true, true},
             {QStringLiteral("Freezer: use by Sat 2 Jan 2027"), true, true},
             {QStringLiteral("Heat until it boils."), false, false},
             {QStringLiteral("Ana, Ben, Mia"), false, false}}};
}

LabelSheet sheetOf(const LabelStock& stock, int count) {
    LabelSheet sheet;
    sheet.stock = stock;
    for (int i = 0; i < count; ++i)
        sheet.labels << label(QStringLiteral("Pot%1").arg(i + 1));
    return sheet;
}

/// 3 x 10 small labels of an inch by 2 5/8 inches on Letter paper, as many shops sell them.
LabelStock smallLabels() {
    LabelStock stock;
    stock.name = QStringLiteral("small");
    stock.columns = 3;
    stock.rows = 10;
    stock.leftMm = 4.76;
    stock.topMm = 12.7;
    stock.labelWidthMm = 66.675;
    stock.labelHeightMm = 25.4;
    stock.gapAcrossMm = 3.175;
    return stock;
}

handout::Document documentOf(const LabelSheet& sheet) {
    handout::Document document;
    document.title = QStringLiteral("Labels");
    document.cards << handout::Card{
        handout::Card::Kind::JarLabels, QStringLiteral("Jar labels"), {sheet}, true};
    return document;
}

struct StockCase {
    const char* what;
    LabelStock stock;
};

LabelStock toTheEdge() {
    LabelStock stock = smallLabels();
    stock.leftMm = 0;
    stock.topMm = 0;
    stock.labelWidthMm = 71.9;
    stock.labelHeightMm = 27.9;
    stock.gapAcrossMm = 0;
    return stock;
}

LabelStock oddSheet() {
    LabelStock stock;
    stock.name = QStringLiteral("roll");
    stock.pageWidthMm = 105;
    stock.pageHeightMm = 148;
    stock.columns = 1;
    stock.rows = 3;
    stock.leftMm = 10;
    stock.topMm = 10;
    stock.labelWidthMm = 85;
    stock.labelHeightMm = 40;
    stock.gapAcrossMm = 0;
    stock.gapDownMm = 3;
    return stock;
}

class LabelLayoutTest : public ::testing::TestWithParam<StockCase> {};

} // namespace

TEST_P(LabelLayoutTest, EveryWordLiesInItsLabelAndWithinReachOfThePrinter) {
    const LabelStock& stock = GetParam().stock;
    const int places = stock.columns * stock.rows;
    const Result<QByteArray> pdf = pdfOf(documentOf(sheetOf(stock, places + 2)));
    ASSERT_TRUE(pdf);
    // Read back by poppler, in millimetres: where each pot's name came to lie.
    int found = 0;
    for (const PdfWord& word : wordsOfPdf(*pdf)) {
        const QRectF box(word.box.topLeft() * millimetresPerPoint,
                         word.box.size() * millimetresPerPoint);
        const QRectF reach =
            QRectF(0, 0, stock.pageWidthMm, stock.pageHeightMm).adjusted(4.0, 4.0, -4.0, -4.0);
        EXPECT_TRUE(reach.contains(box)) << word.text.toStdString();
        static const QRegularExpression pot(QStringLiteral("^Pot(\\d+)$"));
        const QRegularExpressionMatch match = pot.match(word.text);
        if (!match.hasMatch())
            continue;
        ++found;
        const int index = match.captured(1).toInt() - 1;
        EXPECT_EQ(word.page, index / places + 1);
        // Row by row from the top left, by the measures alone.
        const int column = index % places % stock.columns;
        const int row = index % places / stock.columns;
        const QRectF place(stock.leftMm + column * (stock.labelWidthMm + stock.gapAcrossMm),
                           stock.topMm + row * (stock.labelHeightMm + stock.gapDownMm),
                           stock.labelWidthMm, stock.labelHeightMm);
        EXPECT_TRUE(place.contains(box)) << word.text.toStdString();
    }
    EXPECT_EQ(found, places + 2);
}

TEST_P(LabelLayoutTest, SheetsAreOfTheirOwnSizeToTheMillimetre) {
    const LabelStock& stock = GetParam().stock;
    const Result<QByteArray> pdf = pdfOf(documentOf(sheetOf(stock, 1)));
    ASSERT_TRUE(pdf);
    const QString info = runOnPdf(QStringLiteral("pdfinfo"), {}, *pdf);
    static const QRegularExpression size(QStringLiteral("Page size: +([0-9.]+) x ([0-9.]+) pts"));
    const QRegularExpressionMatch match = size.match(info);
    ASSERT_TRUE(match.hasMatch()) << info.toStdString();
    // The sheet of a PDF by Qt is of whole points, rounded down where it is a paper known by name;
    // a point is 0.35 mm. What is printed on it is measured from its top left and not rounded.
    EXPECT_NEAR(match.captured(1).toDouble() * millimetresPerPoint, stock.pageWidthMm, 0.36);
    EXPECT_NEAR(match.captured(2).toDouble() * millimetresPerPoint, stock.pageHeightMm, 0.36);
    int status = -1;
    runOnPdf(QStringLiteral("qpdf"), {QStringLiteral("--check")}, *pdf, &status);
    EXPECT_EQ(status, 0);
}

INSTANTIATE_TEST_SUITE_P(Stocks, LabelLayoutTest,
                         ::testing::Values(StockCase{"ten", LabelStock()},
                                           StockCase{"thirty", smallLabels()},
                                           StockCase{"edge", toTheEdge()},
                                           StockCase{"odd", oddSheet()}),
                         [](const auto& given) { return std::string(given.param.what); });

TEST_F(LabelLayoutTest, PlacesUsedAreLeftEmpty) {
    LabelSheet sheet = sheetOf(LabelStock(), 4);
    sheet.placesUsed = 8;
    const QList<Page> pages = layOutLabels(sheet);
    ASSERT_EQ(pages.size(), 2);
    PageLayout layout;
    layout.pages = pages;
    EXPECT_TRUE(wordsOf(layout, 0).contains(QStringLiteral("Pot2")));
    EXPECT_FALSE(wordsOf(layout, 0).contains(QStringLiteral("Pot3")));
    // The ninth label of 2 x 5: the last row, on the left.
    const QRectF first = pages[0].labels.at(8);
    EXPECT_TRUE(first.contains(pages[0].texts.first().at + QPointF(1, 1)));
}

TEST_F(LabelLayoutTest, SmallLabelsLeaveOutTheLastLinesAndSaySo) {
    EXPECT_EQ(labelsCutShort(sheetOf(LabelStock(), 3)), 0);
    LabelStock tiny = smallLabels();
    tiny.labelHeightMm = 15;
    const LabelSheet sheet = sheetOf(tiny, 3);
    EXPECT_EQ(labelsCutShort(sheet), 3);
    PageLayout layout;
    layout.pages = layOutLabels(sheet);
    const QString words = wordsOf(layout, 0);
    EXPECT_TRUE(words.contains(QStringLiteral("Pot1")));
    EXPECT_TRUE(words.contains(QStringLiteral("Cooked on Mon 2 Nov 2026")));
    EXPECT_FALSE(words.contains(QStringLiteral("Ana, Ben, Mia")));
}

TEST_F(LabelLayoutTest, TypeIsAsLargeAsTheLabelAllowsAndNeverTooSmallToRead) {
    const auto sizes = [](const LabelStock& stock) {
        QList<int> found;
        const QList<Page> pages = layOutLabels(sheetOf(stock, 1));
        for (const TextItem& text : pages.first().texts)
            found << text.layout->font().pixelSize();
        return found;
    };
    EXPECT_GE(sizes(LabelStock()).last(), 12 * unitsPerPoint);
    LabelStock tiny = smallLabels();
    tiny.labelHeightMm = 10;
    tiny.labelWidthMm = 30;
    for (const int size : sizes(tiny))
        EXPECT_GE(size, 6.5 * unitsPerPoint);
}

TEST_F(LabelLayoutTest, TellsWhichStockReachesIntoThePrintersMargin) {
    EXPECT_TRUE(reachesIntoMargin(toTheEdge()));
    EXPECT_FALSE(reachesIntoMargin(oddSheet()));
}

TEST_F(LabelLayoutTest, LabelSheetsStandApartFromTheOtherPages) {
    handout::Document document = documentOf(sheetOf(oddSheet(), 4));
    document.footer = QStringLiteral("Hartley");
    const handout::Card text{handout::Card::Kind::Text,
                             QStringLiteral("Before"),
                             {handout::Paragraph{QStringLiteral("words")}},
                             false};
    handout::Card after = text;
    after.title = QStringLiteral("After");
    document.cards.prepend(text);
    document.cards.append(after);
    const PageLayout layout = layOut(document);
    ASSERT_EQ(layout.pages.size(), 4);
    EXPECT_TRUE(layout.pages[1].isLabelSheet() && layout.pages[2].isLabelSheet());
    EXPECT_TRUE(wordsOf(layout, 0).contains(QStringLiteral("page 1 of 2")));
    EXPECT_TRUE(wordsOf(layout, 3).contains(QStringLiteral("page 2 of 2")));
    EXPECT_FALSE(wordsOf(layout, 1).contains(QStringLiteral("Hartley")));
    EXPECT_EQ(labelSheetsOf(layout).pages.size(), 2);
    EXPECT_EQ(withoutLabelSheets(layout).pages.size(), 2);
    ASSERT_EQ(layout.outline.size(), 3);
    EXPECT_EQ(layout.outline[1].page, 1);
    EXPECT_EQ(layout.outline[2].page, 3);
}

} // namespace ladlework::ui
