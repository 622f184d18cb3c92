#pragma once

#include <vector>

namespace ladlework::kitchen {

/// A normal distribution.
struct Normal {
    double mean = 0;
    double deviation = 1; ///< standard deviation, more than zero
};

/// What is known of a mean after measurements of known spread, each counted by its weight: the
/// precision (one over the variance) is the sum of the weighed precisions, the mean is weighed by
/// them. As many weights as measurements. Source: Gelman et al., Bayesian Data Analysis, 3rd ed.
/// 2013, section 2.5 (all weights 1).
Normal updated(const Normal& prior, const std::vector<Normal>& measured,
               const std::vector<double>& weights);

/// The same with the weights found as well.
struct RobustUpdate {
    Normal posterior;
    std::vector<double> weights; ///< 0-1, in the order of the measurements
};

/// A measurement within its own spread of the mean counts in full; one farther off by the weight
/// that a t distribution with so many degrees of freedom gives it, so that an odd one among many
/// hardly moves the mean. Found by turns, from the median of prior and measurements on. Source of
/// the weight: Lange, Little and Taylor 1989, Journal of the American Statistical Association
/// 84:881.
RobustUpdate robustlyUpdated(const Normal& prior, const std::vector<Normal>& measured,
                             double degreesOfFreedom);

} // namespace ladlework::kitchen
