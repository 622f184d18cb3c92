#include "intake/good_day_forecast.h"

#include "intake/ladder_figures.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <stdexcept>

namespace ladlework::intake {

namespace {
constexpr int stoppedRule = 1;
constexpr int insideHoldRule = 7;
constexpr int goodDayRule = 8;

double logBeta(double a, double b) {
    return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b);
}
} // namespace

GoodDayRate goodDayRate(const LadderReplay& replay) {
    GoodDayRate rate{ladderFigure(QStringLiteral("good-day-prior-good")),
                     ladderFigure(QStringLiteral("good-day-prior-missed"))};
    for (const LadderDay& day : replay.days) {
        if (day.rule == stoppedRule)
            continue;
        const bool good = day.rule == insideHoldRule || day.rule == goodDayRule;
        (good ? rate.good : rate.missed) += 1;
    }
    return rate;
}

double goodDayShare(const GoodDayRate& rate, double chance) {
    if (!(rate.good > 0) || !(rate.missed > 0) || !(chance >= 0 && chance <= 1))
        throw std::invalid_argument("a quantile needs a Beta distribution and a chance");
    if (chance == 0 || chance == 1)
        return chance;
    // A root of the distribution function, and not the library's own inverse: that of Boost 1.74
    // gives up on symmetric distributions.
    constexpr int bits = 48;
    std::uintmax_t steps = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(
        [&rate, chance](double share) {
            return boost::math::ibeta(rate.good, rate.missed, share) - chance;
        },
        0.0, 1.0, -chance, 1 - chance, boost::math::tools::eps_tolerance<double>(bits), steps);
    return (low + high) / 2;
}

GoodDayForecast::GoodDayForecast(int needed, GoodDayRate rate) : m_needed(needed), m_rate(rate) {
    if (needed < 1 || !(rate.good > 0) || !(rate.missed > 0))
        throw std::invalid_argument("a forecast needs a good day to wait for and a Beta prior");
}

double GoodDayForecast::chanceOfMissed(int missed) const {
    if (missed < 0)
        return 0;
    const double n = m_needed;
    const double k = missed;
    // In logarithms, since each factor leaves the range of a double long before their product does.
    const double logChoices = std::lgamma(n + k) - std::lgamma(k + 1) - std::lgamma(n);
    return std::exp(logChoices + logBeta(m_rate.good + n, m_rate.missed + k) -
                    logBeta(m_rate.good, m_rate.missed));
}

std::optional<int> GoodDayForecast::daysFor(double share, int mostDays) const {
    double reached = 0;
    for (int missed = 0; missed <= mostDays - m_needed; ++missed) {
        reached += chanceOfMissed(missed);
        if (reached >= share)
            return m_needed + missed;
    }
    return std::nullopt;
}

std::optional<double> GoodDayForecast::meanDays() const {
    if (m_rate.good <= 1)
        return std::nullopt;
    return m_needed + m_needed * m_rate.missed / (m_rate.good - 1);
}

} // namespace ladlework::intake
