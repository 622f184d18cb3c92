#include "week/serving_flow.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace ladlework::week {

namespace {
/// Below this (in mL) an arc counts as full: far under a drop, far above rounding.
constexpr double nothing = 1e-9;

/// The bipartite graph with two sides, so that either side can be the one that pushes.
/// givers push `supply` through arcs to takers, who hold up to `room`.
class Transport {
public:
    Transport(std::vector<double> supply, std::vector<double> room,
              std::vector<std::vector<bool>> arcs)
        : m_supply(std::move(supply)), m_room(std::move(room)), m_arcs(std::move(arcs)),
          m_flow(m_supply.size(), std::vector<double>(m_room.size(), 0.0)) {}

    /// Pushes as much as can be from one giver, moving earlier flow aside where that helps.
    void push(std::size_t giver) {
        while (m_supply[giver] > nothing) {
            const std::optional<std::size_t> end = findPath(giver);
            if (!end)
                return;
            augment(giver, *end);
        }
    }

    [[nodiscard]] const std::vector<std::vector<double>>& flow() const { return m_flow; }

private:
    static constexpr std::size_t unseen = std::numeric_limits<std::size_t>::max();

    /// Breadth first from the giver to the first taker with room; fills the ways back.
    std::optional<std::size_t> findPath(std::size_t from) {
        m_giverOf.assign(m_room.size(), unseen);
        m_takerOf.assign(m_supply.size(), unseen);
        std::vector<std::size_t> givers{from};
        for (std::size_t next = 0; next < givers.size(); ++next) {
            const std::size_t giver = givers[next];
            for (std::size_t taker = 0; taker < m_room.size(); ++taker) {
                if (!m_arcs[giver][taker] || m_giverOf[taker] != unseen)
                    continue;
                m_giverOf[taker] = giver;
                if (m_room[taker] > nothing)
                    return taker;
                for (std::size_t other = 0; other < m_supply.size(); ++other) {
                    if (other == from || m_takerOf[other] != unseen ||
                        m_flow[other][taker] <= nothing)
                        continue;
                    m_takerOf[other] = taker;
                    givers.push_back(other);
                }
            }
        }
        return std::nullopt;
    }

    void augment(std::size_t from, std::size_t end) {
        double amount = std::min(m_supply[from], m_room[end]);
        for (std::size_t giver = m_giverOf[end]; giver != from; giver = m_giverOf[m_takerOf[giver]])
            amount = std::min(amount, m_flow[giver][m_takerOf[giver]]);
        std::size_t taker = end;
        for (;;) {
            const std::size_t giver = m_giverOf[taker];
            m_flow[giver][taker] += amount;
            if (giver == from)
                break;
            taker = m_takerOf[giver];
            m_flow[giver][taker] -= amount;
        }
        m_supply[from] -= amount;
        m_room[end] -= amount;
    }

    std::vector<double> m_supply;
    std::vector<double> m_room;
    std::vector<std::vector<bool>> m_arcs;
    std::vector<std::vector<double>> m_flow;
    std::vector<std::size_t> m_giverOf; ///< by taker: the giver the path comes from
    std::vector<std::size_t> m_takerOf; ///< by giver: the taker whose flow the path moves aside
};

std::vector<std::vector<bool>> turned(const std::vector<std::vector<bool>>& table,
                                      std::size_t columns) {
    std::vector<std::vector<bool>> result(columns, std::vector<bool>(table.size()));
    for (std::size_t row = 0; row < table.size(); ++row) {
        for (std::size_t column = 0; column < columns; ++column)
            result[column][row] = table[row][column];
    }
    return result;
}
} // namespace

Servings serve(const ServingProblem& problem) {
    // From the sources' side: how much each source gives, the oldest as much as can be.
    Transport fromSources(problem.left, problem.wanted, turned(problem.may, problem.left.size()));
    for (std::size_t source = 0; source < problem.left.size(); ++source)
        fromSources.push(source);
    std::vector<double> given;
    for (const std::vector<double>& row : fromSources.flow()) {
        double total = 0;
        for (const double amount : row)
            total += amount;
        given.push_back(total);
    }
    // From the members' side, with just that much in each source: who gets it.
    Transport fromMembers(problem.wanted, given, problem.may);
    for (std::size_t member = 0; member < problem.wanted.size(); ++member)
        fromMembers.push(member);
    return fromMembers.flow();
}

} // namespace ladlework::week
