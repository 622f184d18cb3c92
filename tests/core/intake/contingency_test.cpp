#include "intake/contingency.h"

#include <array>
#include <gtest/gtest.h>
#include <stdexcept>

namespace ladlework::intake {
namespace {

struct Table {
    const char* name;
    int a;
    int b;
    int c;
    int d;
    double p;
    double tolerance; ///< half of the last digit given
};

class ContingencyTest : public ::testing::TestWithParam<Table> {};

TEST_P(ContingencyTest, givesThePublishedValue) {
    const Table& t = GetParam();
    EXPECT_NEAR(fisherExact(t.a, t.b, t.c, t.d), t.p, t.tolerance);
    // Turned, mirrored and both: the same table.
    EXPECT_NEAR(fisherExact(t.c, t.d, t.a, t.b), t.p, t.tolerance);
    EXPECT_NEAR(fisherExact(t.b, t.a, t.d, t.c), t.p, t.tolerance);
    EXPECT_NEAR(fisherExact(t.a, t.c, t.b, t.d), t.p, t.tolerance);
}

INSTANTIATE_TEST_SUITE_P(
    Tables, ContingencyTest,
    ::testing::Values(
        // Fisher's tea tasting (Agresti, Categorical Data Analysis 1990, p. 61, as in R's
        // fisher.test): 34 of the 70 ways.
        Table{"teaTasting", 3, 1, 1, 3, 34.0 / 70, 1e-12},
        // A published run of R's fisher.test prints 0.01655; its digits worked out.
        Table{"publishedRun", 2, 10, 20, 13, 0.0165455, 5e-8},
        // Fisher's convictions of twins (data of R's fisher.test).
        Table{"twins", 2, 15, 10, 3, 0.00053672, 5e-9},
        // The published one-sided 0.01852 is 1711 of the 92,378 ways; the other tail adds 415.
        Table{"bothTails", 2, 7, 8, 2, 2126.0 / 92378, 1e-12},
        Table{"noReactions", 0, 12, 0, 30, 1, 1e-12}, Table{"oneSideOnly", 4, 9, 0, 0, 1, 1e-12},
        Table{"nothing", 0, 0, 0, 0, 1, 1e-12}),
    [](const auto& named) { return std::string(named.param.name); });

/// Ways to choose k of n, in whole numbers.
quint64 ways(int n, int k) {
    quint64 count = 1;
    for (int i = 1; i <= k; ++i)
        count = count * static_cast<quint64>(n - k + i) / static_cast<quint64>(i);
    return count;
}

TEST_F(ContingencyTest, agreesWithCountingAllTablesInWholeNumbers) {
    // Ties are exact in whole numbers, which is what the tolerance has to find again.
    for (int rowA = 1; rowA <= 25; rowA += 3)
        for (int rowB = 1; rowB <= 25; rowB += 4)
            for (int column = 0; column <= rowA + rowB; ++column)
                for (int a = std::max(0, column - rowB); a <= std::min(rowA, column); ++a) {
                    const quint64 seen = ways(rowA, a) * ways(rowB, column - a);
                    quint64 asRare = 0;
                    for (int k = std::max(0, column - rowB); k <= std::min(rowA, column); ++k) {
                        const quint64 count = ways(rowA, k) * ways(rowB, column - k);
                        asRare += count <= seen ? count : 0;
                    }
                    const double p = static_cast<double>(asRare) /
                                     static_cast<double>(ways(rowA + rowB, column));
                    ASSERT_NEAR(fisherExact(a, rowA - a, column - a, rowB - column + a), p,
                                1e-11 * p)
                        << a << ' ' << rowA << ' ' << rowB << ' ' << column;
                }
}

TEST_F(ContingencyTest, staysWithinZeroAndOneForTenYearsOfDays) {
    EXPECT_NEAR(fisherExact(900, 925, 900, 925), 1, 1e-9);
    const double rare = fisherExact(1800, 25, 25, 1800);
    EXPECT_GE(rare, 0);
    EXPECT_LT(rare, 1e-200);
    EXPECT_THROW(fisherExact(-1, 2, 3, 4), std::invalid_argument);
}

TEST_F(ContingencyTest, adjustsTheFifteenValuesOfThePaper) {
    // Benjamini & Hochberg, J R Stat Soc B 1995;57:289, the fifteen values of their example; four
    // hypotheses are rejected at 0.05.
    const QList<double> p{0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344,
                          0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1.000};
    const QList<double> adjusted{0.0015,   0.003,    0.0095,   0.035625, 0.0603,
                                 0.063857, 0.063857, 0.0645,   0.0765,   0.486,
                                 0.581182, 0.714875, 0.753231, 0.813214, 1};
    const QList<double> q = benjaminiHochberg(p);
    ASSERT_EQ(q.size(), p.size());
    for (qsizetype i = 0; i < q.size(); ++i)
        EXPECT_NEAR(q[i], adjusted[i], 5e-7) << i;
    EXPECT_EQ(std::ranges::count_if(q, [](double value) { return value <= 0.05; }), 4);
    EXPECT_LE(q[3], 0.05);
}

TEST_F(ContingencyTest, adjustsInAnyOrder) {
    EXPECT_TRUE(benjaminiHochberg({}).isEmpty());
    EXPECT_EQ(benjaminiHochberg({0.2}), QList<double>{0.2});
    const QList<double> q = benjaminiHochberg({0.9, 0.01, 0.04});
    EXPECT_NEAR(q[0], 0.9, 1e-12);
    EXPECT_NEAR(q[1], 0.03, 1e-12);
    EXPECT_NEAR(q[2], 0.06, 1e-12);
}

TEST_F(ContingencyTest, ratioAndIntervalArePublishedOnes) {
    // Agresti, Categorical Data Analysis, the aspirin study: heart attacks of 189 in 11,034 without
    // and 104 in 11,037 with aspirin; ratio 1.818, interval 1.433 to 2.306.
    const RiskRatio aspirin = riskRatio(189, 11034 - 189, 104, 11037 - 104);
    EXPECT_NEAR(aspirin.ratio, 1.818, 5e-4);
    EXPECT_NEAR(aspirin.low, 1.433, 5e-4);
    EXPECT_NEAR(aspirin.high, 2.306, 5e-4);
}

TEST_F(ContingencyTest, addsHalfToEachCellWhenOneIsZero) {
    // 0 of 10 against 5 of 10, by hand: (0.5 / 11) / (5.5 / 11) = 1 / 11, and a variance of the
    // logarithm of 2 - 1/11 + 2/11 - 1/11 = 2.
    const RiskRatio ratio = riskRatio(0, 10, 5, 5);
    EXPECT_NEAR(ratio.ratio, 1.0 / 11, 1e-12);
    EXPECT_NEAR(ratio.low, std::exp(-1.959963984540054 * std::sqrt(2.0)) / 11, 1e-12);
    EXPECT_NEAR(ratio.high, std::exp(1.959963984540054 * std::sqrt(2.0)) / 11, 1e-12);
    // The same when it is a cell of days without a reaction.
    EXPECT_NEAR(riskRatio(10, 0, 5, 5).ratio, (10.5 / 11) / (5.5 / 11), 1e-12);
    EXPECT_THROW(riskRatio(0, 0, 5, 5), std::invalid_argument);
    EXPECT_THROW(riskRatio(1, -1, 5, 5), std::invalid_argument);
}

} // namespace
} // namespace ladlework::intake
