#include "ui/print/table_layout.h"

#include "ui/print/print_font.h"

#include <gtest/gtest.h>
#include <numeric>

namespace ladlework::ui {

namespace {

struct ShareCase {
    const char* what;
    QList<double> weights;
    QList<double> needs;
    double width;
    QList<double> shares;
};

class TableLayoutTest : public ::testing::TestWithParam<ShareCase> {};

handout::Table daysTable() {
    handout::Table table;
    table.header = {QStringLiteral("Who"),      QStringLiteral("Wednesday"),
                    QStringLiteral("Thursday"), QStringLiteral("Friday"),
                    QStringLiteral("Saturday"), QStringLiteral("Sunday")};
    QList<handout::Cell> row;
    for (qsizetype i = 0; i < table.header.size(); ++i)
        row << handout::Cell{QStringLiteral("2 tbsp"), false, i > 0};
    table.rows = {row, row};
    return table;
}

} // namespace

TEST_P(TableLayoutTest, SharesTheWidth) {
    const ShareCase& given = GetParam();
    const QList<double> widths = shareWidth(given.weights, given.needs, given.width);
    ASSERT_EQ(widths.size(), given.shares.size());
    for (qsizetype i = 0; i < widths.size(); ++i)
        EXPECT_NEAR(widths.at(i), given.shares.at(i), 1e-9) << given.what << " column " << i;
}

INSTANTIATE_TEST_SUITE_P(
    Cases, TableLayoutTest,
    ::testing::Values(
        ShareCase{"by weight", {1, 3}, {10, 10}, 400, {100, 300}},
        ShareCase{"a need above the share", {1, 1}, {150, 10}, 200, {150, 50}},
        ShareCase{
            "one need pushes the next below its own", {1, 1, 1}, {160, 65, 10}, 300, {160, 70, 70}},
        ShareCase{"and then that one is fixed too", {1, 1, 2}, {160, 65, 10}, 300, {160, 65, 75}},
        ShareCase{"exactly enough", {1, 1}, {120, 80}, 200, {120, 80}},
        ShareCase{"too narrow", {1, 1}, {120, 81}, 200, {}},
        ShareCase{"no columns", {}, {}, 200, {}}));

TEST_F(TableLayoutTest, HeaderIsRepeatedAboveEachRow) {
    const PrintStyle style = printStyle(false);
    const QList<Strip> strips = layOutTable(daysTable(), style, 5000, 6000);
    ASSERT_EQ(strips.size(), 3);
    EXPECT_TRUE(strips.at(0).keepWithNext);
    EXPECT_FALSE(strips.at(0).repeated);
    EXPECT_TRUE(strips.at(1).repeated);
    EXPECT_EQ(strips.at(2).drawing.boxes.size(), 5) << "a box to tick on each day";
}

TEST_F(TableLayoutTest, RowsAreStackedWhenWordsDoNotFit) {
    const PrintStyle style = printStyle(true);
    const QList<Strip> strips = layOutTable(daysTable(), style, 3000, 6000);
    ASSERT_EQ(strips.size(), 12) << "a line for each cell of two rows";
    qsizetype boxes = 0;
    for (const Strip& strip : strips) {
        boxes += strip.drawing.boxes.size();
        for (const TextItem& text : strip.drawing.texts)
            EXPECT_EQ(text.layout->lineCount(), 1);
    }
    EXPECT_EQ(boxes, 10);
    EXPECT_EQ(strips.at(1).drawing.texts.first().layout->text(),
              QStringLiteral("Wednesday: 2 tbsp"));
}

TEST_F(TableLayoutTest, FieldsToWriteInStayFieldsWhenRowsAreStacked) {
    handout::Table table = daysTable();
    table.header << QStringLiteral("Reaction");
    for (QList<handout::Cell>& row : table.rows)
        row << handout::Cell();
    const QList<Strip> strips = layOutTable(table, printStyle(true), 3000, 6000);
    ASSERT_EQ(strips.size(), 14);
    const Strip& field = strips.at(6);
    EXPECT_EQ(field.drawing.texts.first().layout->text(), QStringLiteral("Reaction:"));
    ASSERT_FALSE(field.drawing.rules.isEmpty());
    EXPECT_GT(field.drawing.rules.first().to.x() - field.drawing.rules.first().from.x(), 1000)
        << "a line for the pen";
}

TEST_F(TableLayoutTest, NoHeaderRowWithoutHeaders) {
    handout::Table table = daysTable();
    table.header.clear();
    EXPECT_EQ(layOutTable(table, printStyle(false), 5000, 6000).size(), 2);
    EXPECT_TRUE(layOutTable(handout::Table(), printStyle(false), 5000, 6000).isEmpty());
}

TEST_F(TableLayoutTest, RowHigherThanAPageIsCut) {
    handout::Table table;
    table.header = {QStringLiteral("Remark")};
    table.rows = {{handout::Cell{QStringLiteral("word ").repeated(4000)}}};
    const QList<Strip> strips = layOutTable(table, printStyle(false), 2000, 3000);
    ASSERT_GT(strips.size(), 3);
    int lines = 0;
    for (qsizetype i = 1; i < strips.size(); ++i) {
        EXPECT_LE(strips.at(i).height + strips.at(0).height, 3000);
        const TextItem& text = strips.at(i).drawing.texts.first();
        EXPECT_EQ(text.firstLine, lines) << "no line is lost or drawn twice";
        lines = text.lastLine;
    }
    EXPECT_EQ(lines, strips.last().drawing.texts.first().layout->lineCount());
}

} // namespace ladlework::ui
