#include "casebook/handout_template.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::casebook {
namespace {

/// 3 x 7 on A4 (ISO 216: 210 x 297 mm): 7 + 3 x 63.5 + 2 x 2.5 = 202.5 and 15 + 7 x 38.1 = 281.7.
LabelStock threeBySeven() {
    LabelStock stock;
    stock.name = QStringLiteral("3 x 7 on A4");
    stock.pageWidthMm = 210;
    stock.pageHeightMm = 297;
    stock.columns = 3;
    stock.rows = 7;
    stock.leftMm = 7;
    stock.topMm = 15;
    stock.labelWidthMm = 63.5;
    stock.labelHeightMm = 38.1;
    stock.gapAcrossMm = 2.5;
    stock.gapDownMm = 0;
    return stock;
}

struct StockCase {
    const char* name;
    std::function<void(LabelStock&)> change;
    const char* field; ///< empty: fine
    const char* says = "";
};

class LabelStockTest : public ::testing::TestWithParam<StockCase> {};

TEST_P(LabelStockTest, namesTheFieldAtFault) {
    LabelStock stock = threeBySeven();
    GetParam().change(stock);
    const Outcome outcome = check(stock);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
        EXPECT_TRUE(outcome.error().sentence.contains(QLatin1String(GetParam().says)))
            << outcome.error().sentence.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, LabelStockTest,
    ::testing::Values(
        StockCase{"fine", [](LabelStock&) {}, ""},
        StockCase{"blankName", [](LabelStock& s) { s.name.clear(); }, "name"},
        StockCase{"noColumn", [](LabelStock& s) { s.columns = 0; }, "columns"},
        StockCase{"tooManyColumns", [](LabelStock& s) { s.columns = 21; }, "columns"},
        StockCase{"noRow", [](LabelStock& s) { s.rows = 0; }, "rows"},
        StockCase{"tooManyRows", [](LabelStock& s) { s.rows = 21; }, "rows"},
        StockCase{"tinyPage", [](LabelStock& s) { s.pageWidthMm = 49; }, "pageWidth"},
        StockCase{"hugePage", [](LabelStock& s) { s.pageHeightMm = 501; }, "pageHeight"},
        StockCase{"pageNotANumber",
                  [](LabelStock& s) { s.pageWidthMm = std::numeric_limits<double>::quiet_NaN(); },
                  "pageWidth"},
        StockCase{"tinyLabel", [](LabelStock& s) { s.labelHeightMm = 9.9; }, "labelHeight"},
        StockCase{"negativeGap", [](LabelStock& s) { s.gapDownMm = -1; }, "gapDown"},
        StockCase{"negativeMargin", [](LabelStock& s) { s.leftMm = -0.5; }, "left"},
        // 202.5 + 7.5 = 210: flush with the edge.
        StockCase{"justFits", [](LabelStock& s) { s.leftMm = 14.5; }, ""},
        // 14.5 + 3 x 63.5 + 2 x 5 = 215.
        StockCase{"tooWide",
                  [](LabelStock& s) {
                      s.leftMm = 14.5;
                      s.gapAcrossMm = 5;
                  },
                  "columns", "by 5.0 mm"},
        // 15 + 8 x 38.1 = 319.8.
        StockCase{"tooHigh", [](LabelStock& s) { s.rows = 8; }, "rows", "by 22.8 mm"}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(LabelStockTest, theStockThatAFreshRecordHoldsFitsItsPage) {
    LabelStock stock;
    stock.name = QStringLiteral("2 x 5 on Letter");
    EXPECT_TRUE(check(stock));
}

} // namespace
} // namespace ladlework::casebook
