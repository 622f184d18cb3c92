#pragma once

#include <QList>

namespace ladlework::intake {

/// Fisher's exact test, two-sided: the sum of the probabilities of all tables with the same margins
/// that are no more probable than this one. Counts not negative (else std::invalid_argument).
double fisherExact(int a, int b, int c, int d);

/// Benjamini-Hochberg adjusted values, in the order of `p`; each of `p` within 0 to 1.
QList<double> benjaminiHochberg(const QList<double>& p);

/// A risk ratio with its 95 % interval.
struct RiskRatio {
    double ratio = 1;
    double low = 0;
    double high = 0;
};

/// The share a / (a + b) against c / (c + d), with the log-normal interval
///     exp(ln ratio +- z sqrt(1/a - 1/(a+b) + 1/c - 1/(c+d))), z = 1.959964
/// (Katz, Baptista, Azen & Pike, Biometrics 1978;34:469). When a cell is zero, half is added to
/// each cell, for the ratio as for the interval, so that the one lies inside the other. Counts not
/// negative and a day on each side (else std::invalid_argument).
RiskRatio riskRatio(int a, int b, int c, int d);

} // namespace ladlework::intake
