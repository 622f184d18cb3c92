#pragma once

#include <algorithm>
#include <cstddef>
#include <limits>
#include <vector>

/// The most that can be served, found without any flow: by the max-flow min-cut theorem (Ford and
/// Fulkerson 1956) it is the least, over all sets of members, of what the others want plus what
/// stands in all sources that someone of the set may drink.
inline double cutCapacity(const std::vector<double>& left, const std::vector<double>& wanted,
                          const std::vector<std::vector<bool>>& may) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t set = 0; set < (std::size_t{1} << wanted.size()); ++set) {
        double capacity = 0;
        std::vector<bool> reached(left.size());
        for (std::size_t member = 0; member < wanted.size(); ++member) {
            if ((set >> member & 1U) == 0) {
                capacity += wanted[member];
                continue;
            }
            for (std::size_t source = 0; source < left.size(); ++source)
                reached[source] = reached[source] || may[member][source];
        }
        for (std::size_t source = 0; source < left.size(); ++source)
            capacity += reached[source] ? left[source] : 0;
        least = std::min(least, capacity);
    }
    return least;
}
