#include "ui/pot/price_text.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

// A pound is 453.59237 g (NIST Handbook 44, Appendix C).
constexpr double poundsAKilogram = 1000 / 453.59237;

const Prices us{{}, QStringLiteral("$"), quantity::MeasureSystem::UsCustomary};
const Prices metric{{}, QStringLiteral("€"), quantity::MeasureSystem::Metric};

} // namespace

TEST(PriceTextTest, PrintsInTheMeasuresOfTheKitchen) {
    EXPECT_EQ(printPrice(2.49 * poundsAKilogram, us), QStringLiteral("$2.49/lb"));
    EXPECT_EQ(printPrice(5.5, metric), QStringLiteral("€5.50/kg"));
    EXPECT_EQ(printMoney(12.346, us), QStringLiteral("$12.35"));
    EXPECT_EQ(printMoney(1, {}), QStringLiteral("1.00")) << "a practice may name no currency";
}

TEST(PriceTextTest, ReadsWhatIsWrittenOnAReceipt) {
    struct Case {
        const char* text;
        const Prices& prices;
        double perKilogram;
    };
    const Case cases[] = {
        {"2.49", us, 2.49 * poundsAKilogram},
        {"$2.49", us, 2.49 * poundsAKilogram},
        {" 2,49/lb ", us, 2.49 * poundsAKilogram},
        {"$ 3 a pound", us, 3 * poundsAKilogram},
        {"5.50/kg", us, 5.5},
        {"5,50", metric, 5.5},
        {"€5.50 per kg", metric, 5.5},
        {"2 /lb", metric, 2 * poundsAKilogram},
        {".99", metric, 0.99},
    };
    for (const Case& c : cases) {
        const Result<double> price = parsePrice(QString::fromUtf8(c.text), c.prices);
        ASSERT_TRUE(price) << c.text;
        EXPECT_NEAR(*price, c.perKilogram, 1e-9) << c.text;
    }
}

TEST(PriceTextTest, RefusesWhatIsNoPrice) {
    for (const char* text : {"", "dear", "0", "-2", "2.499", "1,500", "2 / cup", "2.49.1", "$"}) {
        const Result<double> price = parsePrice(QString::fromUtf8(text), us);
        ASSERT_FALSE(price) << text;
        EXPECT_TRUE(price.error().sentence.contains(QStringLiteral("pound")));
    }
    EXPECT_TRUE(parsePrice({}, metric).error().sentence.contains(QStringLiteral("kilogram")));
}

TEST(PriceTextTest, ReadsBackWhatItPrints) {
    for (const Prices* prices : {&us, &metric})
        for (const double cents : {1.0, 99.0, 249.0, 1250.0, 99999.0}) {
            const QString printed = printPrice(cents / 100 * poundsAKilogram, *prices);
            const Result<double> price = parsePrice(printed.trimmed().remove(u','), *prices);
            ASSERT_TRUE(price) << printed.toStdString();
            EXPECT_EQ(printPrice(*price, *prices), printed);
        }
}

} // namespace ladlework::ui
