#pragma once

#include <limits>
#include <memory>
#include <optional>
#include <vector>

struct glp_prob;

namespace ladlework::week::rivals {

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// A column of a LinearModel times a number.
struct Term {
    int column = 0;
    double factor = 1;
};
using Terms = std::vector<Term>; ///< their sum; a column may come more than once

/// A linear problem, or one with whole columns, solved by GLPK.
class LinearModel {
public:
    LinearModel();

    int addColumn(double lower, double upper = unbounded);
    int addWholeColumn(double lower, double upper);
    void addRow(double lower, double upper, const Terms& sum);

    /// The least value of a sum, to GLPK's tolerances of 1e-7 relative with whole columns rounded
    /// to whole numbers and the rest solved once more; none when nothing satisfies the rows.
    /// Throws std::runtime_error when GLPK gives up (time, numbers).
    std::optional<double> minimise(const Terms& sum);
    /// Of several sums the first as small as can be, then the second, and so on: each is held to
    /// what it came to, with a slack of 1e-6 + 1e-7 relative, while the next one is solved.
    std::optional<std::vector<double>> minimiseInOrder(const std::vector<Terms>& sums);

    /// Of the last solution.
    [[nodiscard]] double valueOf(int column) const;
    [[nodiscard]] double valueOf(const Terms& sum) const;

    [[nodiscard]] int columns() const;
    [[nodiscard]] int rows() const;
    /// For each minimise(); 0: as long as it takes.
    void setSeconds(double seconds) { m_seconds = seconds; }

private:
    std::optional<double> minimiseWhole();
    bool simplex();
    std::vector<int> wholeColumns() const;

    struct Deleter {
        void operator()(glp_prob* problem) const;
    };
    std::unique_ptr<glp_prob, Deleter> m_problem;
    std::vector<double> m_values; ///< from 1
    double m_seconds = 0;
};

} // namespace ladlework::week::rivals
