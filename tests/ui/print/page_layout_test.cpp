#include "ui/print/page_layout.h"

#include "ui/print/card_layout.h"
#include "ui/print/page_painter.h"
#include "ui/print/print_font.h"
#include "ui/print/sample_document.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using handout::Card;
using handout::Document;

Card textCard(const QString& title, int paragraphs, bool startsPage = false) {
    Card card{Card::Kind::Text, title, {}, startsPage};
    for (int i = 0; i < paragraphs; ++i)
        card.blocks << handout::Paragraph{
            QStringLiteral("%1 line %2").arg(title, QString::number(i))};
    return card;
}

/// The pages on which a text is found.
QList<qsizetype> pagesWith(const PageLayout& layout, const QString& text) {
    QList<qsizetype> pages;
    for (qsizetype page = 0; page < layout.pages.size(); ++page)
        if (wordsOf(layout, page).contains(text))
            pages << page;
    return pages;
}

class PageLayoutTest : public ::testing::TestWithParam<bool> {};

} // namespace

TEST_F(PageLayoutTest, SheetsHaveTheirStandardSizes) {
    // ISO 216: A4 is 210 x 297 mm; ANSI Y14.1: Letter is 8.5 x 11 in. Qt rounds to whole points.
    Document document;
    document.paper = people::Paper::A4;
    const QSizeF a4 = layOut(document).size;
    EXPECT_NEAR(a4.width(), 210 / 25.4 * unitsPerInch, unitsPerPoint);
    EXPECT_NEAR(a4.height(), 297 / 25.4 * unitsPerInch, unitsPerPoint);
    document.paper = people::Paper::Letter;
    EXPECT_EQ(layOut(document).size, QSizeF(8.5 * unitsPerInch, 11.0 * unitsPerInch));
}

TEST_F(PageLayoutTest, EmptyDocumentIsOnePageWithAFooter) {
    Document document;
    document.footer = QStringLiteral("Hartley, week of 2 November 2026");
    const PageLayout layout = layOut(document);
    ASSERT_EQ(layout.pages.size(), 1);
    EXPECT_TRUE(wordsOf(layout, 0).contains(document.footer));
    EXPECT_TRUE(wordsOf(layout, 0).contains(QStringLiteral("page 1 of 1")));
}

TEST_F(PageLayoutTest, CardThatFitsAPageIsNeverBroken) {
    // Every fill of the first page, so that each possible place of the second card is met.
    for (int fill = 1; fill <= 25; ++fill) {
        Document document;
        document.cards << textCard(QStringLiteral("First"), fill)
                       << textCard(QStringLiteral("Second"), 20);
        const PageLayout layout = layOut(document);
        EXPECT_EQ(pagesWith(layout, QStringLiteral("Second")).size(), 1) << fill;
        EXPECT_TRUE(pagesWith(layout, QStringLiteral("continued")).isEmpty()) << fill;
    }
}

TEST_F(PageLayoutTest, CardMayStartAPage) {
    Document document;
    document.cards << textCard(QStringLiteral("One"), 1, true) << textCard(QStringLiteral("Two"), 1)
                   << textCard(QStringLiteral("Three"), 1, true);
    const PageLayout layout = layOut(document);
    ASSERT_EQ(layout.pages.size(), 2) << "no empty page before a first card that starts one";
    EXPECT_EQ(pagesWith(layout, QStringLiteral("Two line 0")), QList<qsizetype>{0});
    EXPECT_EQ(pagesWith(layout, QStringLiteral("Three line 0")), QList<qsizetype>{1});
}

TEST_F(PageLayoutTest, LongTableGoesOnWithTitleAndHeader) {
    Card card{Card::Kind::Shopping, QStringLiteral("To buy"), {}, false};
    handout::Table table;
    table.header = {QStringLiteral("What"), QStringLiteral("How much")};
    for (int i = 0; i < 100; ++i)
        table.rows << QList<handout::Cell>{{QStringLiteral("item-%1.").arg(i)},
                                           {QStringLiteral("1 lb")}};
    card.blocks << table;
    Document document;
    document.cards << textCard(QStringLiteral("First"), 3) << card;
    const PageLayout layout = layOut(document);
    ASSERT_GE(layout.pages.size(), 3);
    EXPECT_EQ(pagesWith(layout, QStringLiteral("To buy")).size(), layout.pages.size())
        << "it starts below the first card";
    EXPECT_EQ(pagesWith(layout, QStringLiteral("How much")).size(), layout.pages.size());
    EXPECT_EQ(pagesWith(layout, QStringLiteral("To buy (continued)")).size(),
              layout.pages.size() - 1);
    for (int i = 0; i < 100; ++i)
        EXPECT_EQ(pagesWith(layout, QStringLiteral("item-%1.").arg(i)).size(), 1) << i;
}

TEST_F(PageLayoutTest, HeadingIsNotLeftAloneAtTheFoot) {
    for (int fill = 30; fill <= 60; ++fill) {
        Card card = textCard(QStringLiteral("Long"), fill);
        card.blocks << handout::Heading{QStringLiteral("Afterwards")};
        for (int i = 0; i < 40; ++i)
            card.blocks << handout::Paragraph{QStringLiteral("below-%1.").arg(i)};
        Document document;
        document.cards << card;
        const PageLayout layout = layOut(document);
        EXPECT_EQ(pagesWith(layout, QStringLiteral("Afterwards")),
                  pagesWith(layout, QStringLiteral("below-0.")))
            << fill;
    }
}

TEST_F(PageLayoutTest, CardIsSetCloserWhenThatSavesAPage) {
    // At some length a card spills a line or two over its page; from there on it is set closer for
    // a while, so that one more line never makes a page of its own at once.
    qsizetype onePage = 0;
    for (int lines = 20; lines <= 60; ++lines) {
        Document document;
        document.cards << textCard(QStringLiteral("Long"), lines);
        if (layOut(document).pages.size() == 1)
            onePage = lines;
    }
    const PrintStyle usual = printStyle(false);
    const double line = usual.bodySize * usual.lineSpacing + usual.blockGap;
    const PageLayout layout = layOut(Document());
    EXPECT_GT(static_cast<double>(onePage), layout.content.height() / line + 3);
    const PrintStyle tight = printStyle(false, Spacing::Tight);
    EXPECT_EQ(tight.body.pixelSize(), usual.body.pixelSize()) << "first the air, then the type";
    EXPECT_EQ(printStyle(true, Spacing::Tightest).body.pixelSize(), 16 * unitsPerPoint)
        << "large print stays large";
}

TEST_F(PageLayoutTest, ShortLinesStandInColumns) {
    const auto stripsOf = [](const QString& item, int count) {
        Card card;
        handout::Lines lines{handout::Lines::Sign::Number, {}};
        for (int i = 0; i < count; ++i)
            lines.items << item;
        card.blocks << lines;
        return layOutCard(card, printStyle(false), 4800, 6000).body.size();
    };
    EXPECT_EQ(stripsOf(QStringLiteral("2 cups"), 12), 4) << "three columns";
    EXPECT_EQ(stripsOf(QStringLiteral("2 cups (this week starts here)"), 12), 6);
    EXPECT_EQ(stripsOf(QStringLiteral("word ").repeated(12), 12), 12);
    EXPECT_EQ(stripsOf(QStringLiteral("2 cups"), 3), 3) << "too few to be worth it";
}

TEST_F(PageLayoutTest, ColumnsOfLinesAreNotBrokenBetweenPages) {
    for (int fill = 20; fill <= 45; ++fill) {
        Card card = textCard(QStringLiteral("Long"), fill);
        handout::Lines lines{handout::Lines::Sign::Number, {}};
        for (int i = 1; i <= 12; ++i)
            lines.items << QStringLiteral("step-%1.").arg(i);
        card.blocks << lines;
        for (int i = 0; i < 40; ++i)
            card.blocks << handout::Paragraph{QStringLiteral("below")};
        Document document;
        document.cards << card;
        const PageLayout layout = layOut(document);
        for (int i = 2; i <= 12; ++i)
            EXPECT_EQ(pagesWith(layout, QStringLiteral("step-%1.").arg(i)),
                      pagesWith(layout, QStringLiteral("step-1.")))
                << fill;
    }
}

TEST_F(PageLayoutTest, RowsThatBelongTogetherStayOnOnePage) {
    Card card{Card::Kind::LogSheet, QStringLiteral("Log"), {}, false};
    handout::Table table;
    table.header = {QStringLiteral("Day"), QStringLiteral("Amount")};
    table.rowsTogether = 5;
    for (int i = 0; i < 35; ++i)
        table.rows << QList<handout::Cell>{{QStringLiteral("day-%1.").arg(i / 5)}, {}};
    card.blocks << table;
    Document document;
    document.cards << card;
    const PageLayout layout = layOut(document);
    ASSERT_GE(layout.pages.size(), 2);
    for (int day = 0; day < 7; ++day) {
        const QString text = QStringLiteral("day-%1.").arg(day);
        ASSERT_EQ(pagesWith(layout, text).size(), 1) << day;
        EXPECT_EQ(wordsOf(layout, pagesWith(layout, text).first()).count(text), 5);
    }
}

TEST_P(PageLayoutTest, AllIsInsideTheContentOrTheFooter) {
    for (const people::Paper paper : {people::Paper::Letter, people::Paper::A4}) {
        Document document = sampleDocument(12, 7);
        document.paper = paper;
        document.largePrint = GetParam();
        const PageLayout layout = layOut(document);
        const double width = printStyle(GetParam()).rule;
        const QRectF content = layout.content.adjusted(-width, -width, width, width);
        for (const Page& page : layout.pages) {
            for (const BoxItem& box : page.boxes)
                EXPECT_TRUE(content.contains(box.rect));
            for (const TextItem& text : page.texts) {
                if (text.layout->text().isEmpty())
                    continue;
                for (int line = text.firstLine; line < text.lastLine; ++line) {
                    const QRectF words =
                        text.layout->lineAt(line).naturalTextRect().translated(text.at);
                    EXPECT_TRUE(content.contains(words) || layout.footer.contains(words))
                        << text.layout->text().toStdString();
                }
            }
        }
    }
}

TEST_P(PageLayoutTest, PageCountKeepsItsInvariants) {
    qsizetype before = 0;
    for (const int members : {1, 2, 5, 12}) {
        Document document = sampleDocument(members, 3);
        document.largePrint = GetParam();
        const PageLayout layout = layOut(document);
        const qsizetype pages = layout.pages.size();
        EXPECT_GE(pages, members + 1) << "each member's card starts a page";
        EXPECT_GT(pages, before);
        before = pages;
        for (qsizetype page = 0; page < pages; ++page)
            EXPECT_TRUE(wordsOf(layout, page)
                            .contains(QStringLiteral("page %1 of %2").arg(page + 1).arg(pages)));
    }
}

INSTANTIATE_TEST_SUITE_P(Print, PageLayoutTest, ::testing::Bool());

} // namespace ladlework::ui
