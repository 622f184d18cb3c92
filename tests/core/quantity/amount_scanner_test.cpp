#include "quantity/amount_scanner.h"

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

struct SoundCase {
    const char* text = nullptr;
    QList<AmountPart> parts;
};

void expectParts(const SoundCase& c, CommaBeforeThree comma) {
    SCOPED_TRACE(c.text);
    const auto parts = scanAmount(QString::fromUtf8(c.text), comma);
    ASSERT_TRUE(parts.has_value());
    ASSERT_EQ(parts->size(), c.parts.size());
    for (qsizetype i = 0; i < parts->size(); ++i) {
        EXPECT_DOUBLE_EQ(parts->at(i).number, c.parts.at(i).number);
        EXPECT_EQ(parts->at(i).unit, c.parts.at(i).unit);
    }
}

QString word(const char* text) {
    return QString::fromUtf8(text);
}

TEST(AmountScannerTest, ReadsNumbersAsPeopleWriteThem) {
    const SoundCase cases[] = {
        {"0", {{0, {}}}},           {"12", {{12, {}}}},          {"1.5", {{1.5, {}}}},
        {"1,5", {{1.5, {}}}},       {".5", {{0.5, {}}}},         {"0,250", {{0.25, {}}}},
        {"1.500", {{1.5, {}}}},     {"1,5000", {{1.5, {}}}},     {"3/4", {{0.75, {}}}},
        {"3 / 4", {{0.75, {}}}},    {"3/2", {{1.5, {}}}},        {"1 1/2", {{1.5, {}}}},
        {"1-1/2", {{1.5, {}}}},     {"1\u20131/2", {{1.5, {}}}}, {"1\u00bd", {{1.5, {}}}},
        {"1 \u00bd", {{1.5, {}}}},  {"1-\u00bd", {{1.5, {}}}},   {"\u2153", {{1.0 / 3, {}}}},
        {"2\u215e", {{2.875, {}}}}, {"1\u20442", {{0.5, {}}}},   {"  7\u00a0", {{7, {}}}},
    };
    for (const SoundCase& c : cases)
        expectParts(c, CommaBeforeThree::Refused);
}

TEST(AmountScannerTest, PartsNumbersFromUnits) {
    const SoundCase cases[] = {
        {"350ml", {{350, word("ml")}}},
        {"350 mL", {{350, word("mL")}}},
        {"1\u00bdcups", {{1.5, word("cups")}}},
        {"2 fl. oz.", {{2, word("fl. oz.")}}},
        {"3lb2oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb 2 oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb, 2 oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb,2 oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb and 2 oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb + 2 oz", {{3, word("lb")}, {2, word("oz")}}},
        {"3 lb plus \u00bd oz", {{3, word("lb")}, {0.5, word("oz")}}},
        {"3 lb .5 oz", {{3, word("lb")}, {0.5, word("oz")}}},
        {"2 h 30", {{2, word("h")}, {30, {}}}},
        {"1 cup 1 1/2 tbsp", {{1, word("cup")}, {1.5, word("tbsp")}}},
        {"1 band 2 ands", {{1, word("band")}, {2, word("ands")}}},
    };
    for (const SoundCase& c : cases)
        expectParts(c, CommaBeforeThree::Refused);
}

TEST(AmountScannerTest, ReadsThousandsWhereTheyAreMeant) {
    const SoundCase cases[] = {
        {"5,200 ft", {{5200, word("ft")}}},
        {"1,234,567", {{1234567, {}}}},
        {"5,200.5", {{5200.5, {}}}},
        {"0,250", {{0.25, {}}}},
        {"1,5", {{1.5, {}}}},
        {"1,52", {{1.52, {}}}},
    };
    for (const SoundCase& c : cases)
        expectParts(c, CommaBeforeThree::Thousands);
}

struct FaultCase {
    const char* text;
    AmountFault fault;
};

TEST(AmountScannerTest, RefusesTheRest) {
    const FaultCase cases[] = {
        {"", AmountFault::Blank},
        {" \t\n", AmountFault::Blank},
        {"-1", AmountFault::Negative},
        {"- 1 cup", AmountFault::Negative},
        {"\u22121", AmountFault::Negative},
        {"cup", AmountFault::NotANumber},
        {"a cup", AmountFault::NotANumber},
        {"+1", AmountFault::NotANumber},
        {"/2", AmountFault::NotANumber},
        {"1 1", AmountFault::NotANumber},
        {"1 , 2 oz", AmountFault::NotANumber},
        {"1.2.3", AmountFault::NotANumber},
        {"1..2", AmountFault::NotANumber},
        {"1/2/3", AmountFault::NotANumber},
        {"7..", AmountFault::NotANumber},
        {"1.5 1/2", AmountFault::NotANumber},
        {"\u00bd\u00bd", AmountFault::NotANumber},
        {"1/2 \u00bd", AmountFault::NotANumber},
        {"\u00bd2", AmountFault::NotANumber},
        {"1-2 cups", AmountFault::NotANumber},
        {"\u0661 cup", AmountFault::NotANumber},
        {"nan", AmountFault::NotANumber},
        {"inf", AmountFault::NotANumber},
        {"1,500", AmountFault::EitherComma},
        {"1,500 ml", AmountFault::EitherComma},
        {"12,345,678 g", AmountFault::EitherComma},
    };
    for (const FaultCase& c : cases) {
        SCOPED_TRACE(c.text);
        const auto parts = scanAmount(QString::fromUtf8(c.text), CommaBeforeThree::Refused);
        ASSERT_FALSE(parts.has_value());
        EXPECT_EQ(parts.error(), c.fault);
    }
}

} // namespace
} // namespace ladlework::quantity
