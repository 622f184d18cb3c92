#pragma once

#include <limits>
#include <utility>
#include <vector>

namespace ladlework::week {

/// A sum of columns with their factors.
using LinearTerms = std::vector<std::pair<int, double>>;

/// Columns within bounds, rows of linear terms within bounds.
struct LinearProgram {
    static constexpr double unbounded = std::numeric_limits<double>::infinity();

    struct Column {
        double lower = 0;
        double upper = unbounded;
        bool whole = false;
        int rank = 0; ///< of whole columns: the search settles those of a lower rank first
    };
    struct Row {
        LinearTerms terms;
        double lower = -unbounded;
        double upper = unbounded;
    };
    std::vector<Column> columns;
    std::vector<Row> rows;

    int addColumn(Column column) {
        columns.push_back(column);
        return static_cast<int>(columns.size()) - 1;
    }
};

/// What one level of an objective makes small, after all levels before it.
struct LinearLevel {
    LinearTerms terms;
    /// Every plan's value is a multiple of this, so that a bound can be rounded up; 0: any value.
    double grain = 0;
    /// How much a later level may give back of this one: rounding, not a trade. Well above the
    /// solver's own tolerance of 1e-7, so that cuts cannot take the best solution for a bad one.
    double slack = 5e-6;
    /// A level that is nothing stays exactly nothing: all its terms are columns of 0 or more.
    bool exact = false;
};

} // namespace ladlework::week
