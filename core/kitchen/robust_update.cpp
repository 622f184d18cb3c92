#include "kitchen/robust_update.h"

#include <algorithm>
#include <cmath>

namespace ladlework::kitchen {

namespace {
double precisionOf(const Normal& normal) {
    return 1.0 / (normal.deviation * normal.deviation);
}

/// The middle one of prior and measurements: a start that no odd one can move far.
double middle(const Normal& prior, const std::vector<Normal>& measured) {
    std::vector<double> means{prior.mean};
    for (const Normal& one : measured)
        means.push_back(one.mean);
    std::ranges::sort(means);
    const size_t half = means.size() / 2;
    return means.size() % 2 == 1 ? means[half] : (means[half - 1] + means[half]) / 2.0;
}
} // namespace

namespace {
/// The weights with which no measurement counts more than the prior and all others together: the
/// one that nothing stands beside may be the odd one.
std::vector<double> noneAlone(const Normal& prior, const std::vector<Normal>& measured,
                              const std::vector<double>& weights) {
    double all = precisionOf(prior);
    for (size_t index = 0; index < measured.size(); ++index)
        all += weights[index] * precisionOf(measured[index]);
    std::vector<double> held = weights;
    for (size_t index = 0; index < measured.size(); ++index) {
        const double own = precisionOf(measured[index]);
        held[index] = std::min(weights[index], (all - weights[index] * own) / own);
    }
    return held;
}
} // namespace

Normal updated(const Normal& prior, const std::vector<Normal>& measured,
               const std::vector<double>& weights) {
    double precision = precisionOf(prior);
    double weighed = precision * prior.mean;
    for (size_t index = 0; index < measured.size(); ++index) {
        const double own = weights.at(index) * precisionOf(measured[index]);
        precision += own;
        weighed += own * measured[index].mean;
    }
    return {weighed / precision, 1.0 / std::sqrt(precision)};
}

RobustUpdate robustlyUpdated(const Normal& prior, const std::vector<Normal>& measured,
                             double degreesOfFreedom) {
    constexpr int mostTurns = 500;
    constexpr double still = 1e-12;
    RobustUpdate update{{middle(prior, measured), prior.deviation},
                        std::vector<double>(measured.size(), 1.0)};
    for (int turn = 0; turn < mostTurns; ++turn) {
        for (size_t index = 0; index < measured.size(); ++index) {
            const double away =
                (measured[index].mean - update.posterior.mean) / measured[index].deviation;
            update.weights[index] =
                std::min(1.0, (degreesOfFreedom + 1.0) / (degreesOfFreedom + away * away));
        }
        const double before = update.posterior.mean;
        update.posterior = updated(prior, measured, noneAlone(prior, measured, update.weights));
        if (std::abs(update.posterior.mean - before) < still)
            break;
    }
    return update;
}

} // namespace ladlework::kitchen
