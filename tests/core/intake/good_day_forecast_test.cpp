#include "core/intake/random_ladders.h"
#include "intake/good_day_forecast.h"
#include "intake/ladder_figures.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <stdexcept>

namespace ladlework::intake {
namespace {

/// A Beta so narrow that the rate is known: the plain negative binomial. What is left of its width
/// changes a chance by less than 1 in 100,000.
GoodDayRate known(double chance) {
    constexpr double weight = 4e6;
    return {chance * weight, (1 - chance) * weight};
}

double meanMissed(const GoodDayForecast& forecast, int most) {
    double mean = 0;
    for (int k = 0; k <= most; ++k)
        mean += k * forecast.chanceOfMissed(k);
    return mean;
}

TEST(GoodDayForecastTest, isTheNegativeBinomialWhenTheRateIsKnown) {
    // R documentation of NegBinomial: mean n(1-p)/p, variance n(1-p)/p^2; n = 3, p = 0.4 worked out
    // by hand: mean 4.5, variance 11.25, P(0) = 0.4^3 = 0.064, P(2) = C(4,2) 0.4^3 0.6^2 = 0.13824.
    const GoodDayForecast forecast(3, known(0.4));
    EXPECT_NEAR(forecast.chanceOfMissed(0), 0.064, 1e-5);
    EXPECT_NEAR(forecast.chanceOfMissed(2), 0.13824, 1e-5);
    EXPECT_EQ(forecast.chanceOfMissed(-1), 0);
    EXPECT_NEAR(meanMissed(forecast, 400), 4.5, 1e-4);
    EXPECT_NEAR(*forecast.meanDays(), 3 + 4.5, 1e-4);
    double square = 0;
    for (int k = 0; k <= 400; ++k)
        square += k * k * forecast.chanceOfMissed(k);
    EXPECT_NEAR(square - 4.5 * 4.5, 11.25, 1e-3);
}

TEST(GoodDayForecastTest, isExactForARateThatIsUniform) {
    // With Beta(1, 1) and one good day needed, P(k) is the integral of p (1-p)^k: 1 / ((k+1)(k+2)).
    const GoodDayForecast forecast(1, {1, 1});
    for (int k : {0, 1, 2, 5, 50})
        EXPECT_NEAR(forecast.chanceOfMissed(k), 1.0 / ((k + 1) * (k + 2)), 1e-12);
    // P(missed <= k) = (k+1)/(k+2): half after one day, nine tenths after nine days, and a mean
    // without end.
    EXPECT_EQ(forecast.daysFor(0.49, 100), 1);
    EXPECT_EQ(forecast.daysFor(0.89, 100), 9);
    EXPECT_FALSE(forecast.meanDays().has_value());
}

TEST(GoodDayForecastTest, givesNothingBeyondTheHorizon) {
    const GoodDayForecast forecast(30, {4, 40});
    EXPECT_FALSE(forecast.daysFor(0.9, 29).has_value());
    EXPECT_FALSE(forecast.daysFor(0.9, 100).has_value());
    EXPECT_TRUE(forecast.daysFor(0.9, 3000).has_value());
}

TEST(GoodDayForecastTest, chancesAddUpToOneAlsoFarOut) {
    for (int needed : {1, 7, 120, 900}) {
        const GoodDayForecast forecast(needed, {54, 22});
        double sum = 0;
        for (int k = 0; k <= 20'000; ++k)
            sum += forecast.chanceOfMissed(k);
        EXPECT_NEAR(sum, 1, 1e-8) << needed;
    }
}

TEST(GoodDayForecastTest, agreesWithASimulation) {
    // Each member has a rate of her own, drawn from the Beta (as a ratio of gammas), then days
    // follow.
    const GoodDayRate rate{9, 4};
    constexpr int needed = 12;
    constexpr int runs = 200'000;
    std::mt19937_64 engine(77);
    std::gamma_distribution<double> good(rate.good);
    std::gamma_distribution<double> missed(rate.missed);
    std::vector<int> days;
    double sum = 0;
    for (int run = 0; run < runs; ++run) {
        const double g = good(engine);
        const double chance = g / (g + missed(engine));
        std::geometric_distribution<int> untilGood(chance);
        int total = needed;
        for (int i = 0; i < needed; ++i)
            total += untilGood(engine);
        days.push_back(total);
        sum += total;
    }
    const GoodDayForecast forecast(needed, rate);
    // Variance of the missed days: n(a+n-1) b (a+b-1) / ((a-2)(a-1)^2).
    const double variance = needed * (rate.good + needed - 1) * rate.missed *
                            (rate.good + rate.missed - 1) /
                            ((rate.good - 2) * (rate.good - 1) * (rate.good - 1));
    const double error = std::sqrt(variance / runs);
    EXPECT_NEAR(sum / runs, *forecast.meanDays(), 4 * error);
    // The share of runs done within each quantile, against the chance that the closed form gives
    // it: four standard errors of a share near 0.5 are 4 x 0.5 / sqrt(runs).
    for (double share : {0.1, 0.5, 0.9}) {
        const int within = *forecast.daysFor(share, 3650);
        double chance = 0;
        for (int k = 0; k <= within - needed; ++k)
            chance += forecast.chanceOfMissed(k);
        const auto done = std::ranges::count_if(days, [within](int d) { return d <= within; });
        EXPECT_NEAR(static_cast<double>(done) / runs, chance, 2 / std::sqrt(double(runs)));
        EXPECT_GE(chance, share);
        EXPECT_LT(chance - forecast.chanceOfMissed(within - needed), share);
    }
}

TEST(GoodDayForecastTest, theMachineNeedsJustTheseDays) {
    // Logs of days that are good or short at a known rate, through the machine itself: the days
    // until the last rung comes into force are those of the closed form.
    constexpr int runs = 3000;
    constexpr double chance = 0.7;
    Ladder ladder;
    for (int i = 1; i <= 5; ++i)
        ladder.rungs.append(quantity::Volume::fromMillilitres(10.0 * i));
    const int needed = 4 * ladder.rules.daysToAdvance;
    std::mt19937_64 engine(5);
    std::bernoulli_distribution isGood(chance);
    double sum = 0;
    for (int run = 0; run < runs; ++run) {
        QList<LogDay> log;
        const QDate first(2024, 1, 1);
        for (int d = 0; d < 80; ++d)
            log.append({first.addDays(d),
                        quantity::Volume::fromMillilitres(isGood(engine) ? 50 : 0),
                        {},
                        false});
        const LadderReplay replayed = replay(ladder, log, {}, first.addDays(79));
        const auto top = std::ranges::find(replayed.days, 4, &LadderDay::rung);
        ASSERT_NE(top, replayed.days.end());
        sum += static_cast<double>(first.daysTo(top->day));
    }
    const double error = std::sqrt(needed * (1 - chance) / (chance * chance) / runs);
    EXPECT_NEAR(sum / runs, *GoodDayForecast(needed, known(chance)).meanDays(), 4 * error);
}

TEST(GoodDayForecastTest, learnsTheRateFromTheReplayedDays) {
    const double good = ladderFigure(QStringLiteral("good-day-prior-good"));
    const double missed = ladderFigure(QStringLiteral("good-day-prior-missed"));
    LadderReplay replayed;
    // Rules 7 and 8 were good days; 2 to 6 were not; 1 was no trial.
    for (int rule : {8, 8, 7, 6, 5, 4, 3, 2, 1, 1, 1}) {
        LadderDay day;
        day.rule = rule;
        replayed.days.append(day);
    }
    EXPECT_EQ(goodDayRate(replayed).good, good + 3);
    EXPECT_EQ(goodDayRate(replayed).missed, missed + 5);
    EXPECT_GT(good, 1); // so that the mean exists from the first day on
}

TEST(GoodDayForecastTest, quantilesOfTheRateArePublishedOnes) {
    // Newcombe, Stat Med 1998;17:857, table I, method 5: the exact 95 % interval of x good days in
    // n lies between the quantiles 2.5 % of Beta(x, n - x + 1) and 97.5 % of Beta(x + 1, n - x).
    struct Published {
        int good;
        int days;
        double low;
        double high;
    };
    for (const Published& p :
         {Published{81, 263, 0.2527, 0.3676}, {15, 148, 0.0578, 0.1617}, {1, 29, 0.0009, 0.1776}}) {
        const double good = p.good;
        const double missed = p.days - p.good;
        EXPECT_NEAR(goodDayShare({good, missed + 1}, 0.025), p.low, 5e-5) << p.days;
        EXPECT_NEAR(goodDayShare({good + 1, missed}, 0.975), p.high, 5e-5) << p.days;
    }
    EXPECT_NEAR(goodDayShare({1, 20}, 0.975), 0.1684, 5e-5) << "0 of 20";
    // In closed form: Beta(1, n) and Beta(n, 1).
    EXPECT_NEAR(goodDayShare({1, 7}, 0.9), 1 - std::pow(0.1, 1.0 / 7), 1e-12);
    EXPECT_NEAR(goodDayShare({7, 1}, 0.1), std::pow(0.1, 1.0 / 7), 1e-12);
    EXPECT_NEAR(goodDayShare({5, 5}, 0.5), 0.5, 1e-12);
    EXPECT_THROW(goodDayShare({0, 1}, 0.5), std::invalid_argument);
    EXPECT_THROW(goodDayShare({1, 1}, 1.5), std::invalid_argument);
}

TEST(GoodDayForecastTest, refusesWhatIsNoForecast) {
    EXPECT_THROW(GoodDayForecast(0, {1, 1}), std::invalid_argument);
    EXPECT_THROW(GoodDayForecast(1, {0, 1}), std::invalid_argument);
    EXPECT_THROW(GoodDayForecast(1, {1, -1}), std::invalid_argument);
    EXPECT_THROW(ladderFigure(QStringLiteral("no-such-figure")), std::runtime_error);
}

} // namespace
} // namespace ladlework::intake
