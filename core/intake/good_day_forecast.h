#pragma once

#include "intake/ladder_machine.h"

#include <optional>

namespace ladlework::intake {

/// What is known of a member's good-day rate: a Beta distribution, its two weights in days.
struct GoodDayRate {
    double good = 0;
    double missed = 0;
};

/// The prior of resources/reference/ladder-figures.csv updated by the replayed days. Every day that
/// was not stopped from the morning on is one trial. It was good when rule 7 or 8 decided it (a
/// hold keeps a good day from counting, not from being good), else missed.
GoodDayRate goodDayRate(const LadderReplay& replay);

/// The share p of good days below which the Beta distribution (a, b) of `rate` lies with a chance
/// of `chance` (0 to 1): its quantile, the root of the regularised incomplete beta function
/// (Boost.Math; Alefeld, Potra and Shi 1995). Both weights above 0, else std::invalid_argument.
double goodDayShare(const GoodDayRate& rate, double chance);

/// How many days pass until `needed` good days have been counted, when every day is good with one
/// unknown chance p and p has the Beta distribution (a, b) of `rate`.
///
/// The machine does not ask for good days in a row: a day short of the amount, a gap and a hold
/// leave the count unchanged. So the missed days before the last good one are negative binomial,
/// given p, and beta-negative-binomial once p is averaged out:
///     P(missed = k) = C(needed + k - 1, k) B(a + needed, b + k) / B(a, b)
/// (Johnson, Kemp & Kotz, Univariate Discrete Distributions, 3rd ed. 2005, section 6.2.3). Its mean
/// is needed b / (a - 1) for a > 1. Steps back that have not happened yet are not foreseen beyond
/// the day that they miss; once they happen the replay shows them and the forecast moves.
class GoodDayForecast {
public:
    /// `needed` at least 1, both weights of the rate above 0; else std::invalid_argument.
    GoodDayForecast(int needed, GoodDayRate rate);

    /// The chance of exactly `missed` missed days (0 or more).
    [[nodiscard]] double chanceOfMissed(int missed) const;

    /// The fewest days within which the good days are reached with a chance of at least `share`
    /// (0 to 1); nothing when that takes more than `mostDays`.
    [[nodiscard]] std::optional<int> daysFor(double share, int mostDays) const;

    /// The mean number of days; nothing when it is infinite (a weight of good days of 1 or less).
    [[nodiscard]] std::optional<double> meanDays() const;

private:
    int m_needed;
    GoodDayRate m_rate;
};

} // namespace ladlework::intake
