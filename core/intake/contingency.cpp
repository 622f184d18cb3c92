#include "intake/contingency.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <vector>

namespace ladlework::intake {

namespace {
/// Two tables count as equally probable when they differ by no more than this: their probabilities
/// come out of different roundings. The same tolerance as in R's fisher.test.
constexpr double tie = 1 + 1e-7;

/// The 97.5 % point of the standard normal distribution.
constexpr double normalPoint = 1.959963984540054;

void refuseNegative(int a, int b, int c, int d) {
    if (std::min({a, b, c, d}) < 0)
        throw std::invalid_argument("a table of counts holds no negative ones");
}

double logChoices(double from, double taken) {
    return std::lgamma(from + 1) - std::lgamma(taken + 1) - std::lgamma(from - taken + 1);
}
} // namespace

double fisherExact(int a, int b, int c, int d) {
    refuseNegative(a, b, c, d);
    const double row = static_cast<double>(a) + b;
    const double otherRow = static_cast<double>(c) + d;
    const double column = static_cast<double>(a) + c;
    const int least = std::max(0, a - d);
    const int most = a + std::min(b, c);
    // Hypergeometric, in logarithms since the choices leave the range of a double. The common
    // divisor is left to the sum at the end, which makes the probabilities add up to 1 whatever
    // the last digits of the logarithms.
    std::vector<double> weights;
    weights.reserve(static_cast<std::size_t>(most - least) + 1);
    for (int k = least; k <= most; ++k)
        weights.push_back(logChoices(row, k) + logChoices(otherRow, column - k));
    const double highest = std::ranges::max(weights);
    for (double& weight : weights)
        weight = std::exp(weight - highest);
    const double seen = weights[static_cast<std::size_t>(a - least)];
    double all = 0;
    double asRare = 0;
    for (double weight : weights) {
        all += weight;
        if (weight <= seen * tie)
            asRare += weight;
    }
    return std::min(1.0, asRare / all);
}

QList<double> benjaminiHochberg(const QList<double>& p) {
    std::vector<qsizetype> order(static_cast<std::size_t>(p.size()));
    std::iota(order.begin(), order.end(), 0);
    std::ranges::stable_sort(order,
                             [&p](qsizetype one, qsizetype other) { return p[one] < p[other]; });
    QList<double> adjusted(p.size(), 1.0);
    double least = 1;
    const auto count = static_cast<double>(p.size());
    for (auto rank = static_cast<qsizetype>(order.size()); rank > 0; --rank) {
        const qsizetype place = order[static_cast<std::size_t>(rank - 1)];
        least = std::min(least, p[place] * count / static_cast<double>(rank));
        adjusted[place] = least;
    }
    return adjusted;
}

RiskRatio riskRatio(int a, int b, int c, int d) {
    refuseNegative(a, b, c, d);
    if (a + b == 0 || c + d == 0)
        throw std::invalid_argument("a risk ratio needs a day on each side");
    const double added = std::min({a, b, c, d}) == 0 ? 0.5 : 0.0;
    const double reacted = a + added;
    const double exposed = reacted + b + added;
    const double otherReacted = c + added;
    const double other = otherReacted + d + added;
    const double ratio = (reacted / exposed) / (otherReacted / other);
    const double width =
        normalPoint * std::sqrt(1 / reacted - 1 / exposed + 1 / otherReacted - 1 / other);
    return {ratio, ratio * std::exp(-width), ratio * std::exp(width)};
}

} // namespace ladlework::intake
