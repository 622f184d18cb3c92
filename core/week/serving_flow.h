#pragma once

#include <QList>
#include <vector>

namespace ladlework::week {

/// One day's serving: sources with what is left in them, members with what they want, and who may
/// drink what. Plain numbers in mL, because this is the graph and not the kitchen.
struct ServingProblem {
    std::vector<double> left;           ///< by source, the oldest first
    std::vector<double> wanted;         ///< by member, the one to be served first in front
    std::vector<std::vector<bool>> may; ///< [member][source]
};

/// Served mL, [member][source].
using Servings = std::vector<std::vector<double>>;

/// A maximum flow from sources to members that, among all maximum flows, takes the most from the
/// first source, then from the second, and so on; and among those serves the most to the first
/// member, then to the second. (Augmenting paths that enter through one source never take from a
/// source that was already used, so adding the sources one by one gives the first order; the same
/// holds from the members' side.) Ford and Fulkerson 1956 with shortest paths, Edmonds and Karp
/// 1972.
Servings serve(const ServingProblem& problem);

} // namespace ladlework::week
