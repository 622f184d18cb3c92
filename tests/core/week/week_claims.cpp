#include "core/week/rivals/week_levels.h"
#include "core/week/sentence.h"
#include "core/week/week_rules.h"

#include <map>
#include <tuple>

// What a plan says of itself, against what came out when it was acted out.
namespace ladlework::week::rules {

namespace {
/// In mL or g.
constexpr double tolerance = 0.01;

bool differ(double a, double b) {
    return !(std::abs(a - b) <= tolerance);
}

/// By day, source and whether it is meat.
std::map<std::tuple<int, StockSource, bool>, double> amountsOf(const std::vector<Spoiling>& all) {
    std::map<std::tuple<int, StockSource, bool>, double> amounts;
    for (const Spoiling& spoiling : all) {
        amounts[{spoiling.day, spoiling.from, false}] += spoiling.volume.toMillilitres();
        amounts[{spoiling.day, spoiling.from, true}] += spoiling.meat.toGrams();
    }
    return amounts;
}

class Claims {
public:
    Claims(const WeekProblem& problem, const WeekSolution& plan, const Replayed& seen)
        : m_problem(problem), m_plan(plan), m_seen(seen) {}

    std::vector<std::string> wrong() {
        lookAtStores();
        lookAtShortBy();
        lookAtSpoiling();
        lookAtObjective();
        lookAtStatus();
        return std::move(m_wrong);
    }

private:
    template <class... Part>
    void unless(bool holds, const Part&... parts) {
        if (!holds)
            m_wrong.push_back(sentence(parts...));
    }
    void same(const char* what, std::size_t day, quantity::Volume said, quantity::Volume seen) {
        unless(!differ(said.toMillilitres(), seen.toMillilitres()), what, " of day ", day,
               ": said ", said.toMillilitres(), " mL, seen ", seen.toMillilitres());
    }

    void lookAtStores() {
        unless(m_plan.stores.size() == m_seen.stores.size(), "stores are told for ",
               m_plan.stores.size(), " days");
        for (std::size_t day = 0; day < std::min(m_plan.stores.size(), m_seen.stores.size());
             ++day) {
            const StoreDay& said = m_plan.stores[day];
            const StoreDay& seen = m_seen.stores[day];
            same("refrigerator", day, said.fridge, seen.fridge);
            same("freezer", day, said.freezer, seen.freezer);
            same("wanted", day, said.wanted, seen.wanted);
            same("served", day, said.served, seen.served);
        }
    }

    void lookAtShortBy() {
        const auto days = static_cast<std::size_t>(m_problem.days);
        unless(m_plan.shortBy.size() == days, "who is short is told for ", m_plan.shortBy.size(),
               " days");
        for (std::size_t day = 0; day < std::min(m_plan.shortBy.size(), days); ++day) {
            const bool isWhole = m_plan.shortBy[day].size() == m_problem.drinkers.size();
            unless(isWhole, "who is short on day ", day, " is not told for every drinker");
            for (std::size_t who = 0; isWhole && who < m_problem.drinkers.size(); ++who)
                same("what is short", day, m_plan.shortBy[day][who], m_seen.shortBy[day][who]);
        }
    }

    void lookAtSpoiling() {
        auto said = amountsOf(m_plan.spoiling);
        auto seen = amountsOf(m_seen.spoiling);
        for (const auto& [key, amount] : seen)
            said.try_emplace(key, 0.0);
        for (const auto& [key, amount] : said) {
            const auto& [day, source, isMeat] = key;
            unless(!differ(amount, seen[key]), isMeat ? "meat" : "stock", " of ",
                   source.kind == StockSource::Kind::Lot ? "lot " : "cooking ", source.index,
                   " spoilt on day ", day, ": said ", amount, ", seen ", seen[key]);
        }
    }

    void lookAtObjective() {
        const Levels said = levelsOf(m_plan.objective);
        const Levels seen = levelsOf(m_seen.objective);
        for (std::size_t level = 0; level < said.size(); ++level)
            unless(std::abs(said[level] - seen[level]) <= tolerances[level], "level ", level,
                   " of the objective: said ", said[level], ", seen ", seen[level]);
    }

    void lookAtStatus() {
        const bool isOver = m_seen.objective.overRoom.toMillilitres() > tolerance;
        const bool saidOver = m_plan.status == WeekSolution::Status::Infeasible;
        unless(isOver || !saidOver, "said that the rooms are too small, and they are not");
        const bool isProven = m_plan.status == WeekSolution::Status::Optimal;
        unless(!isProven || m_plan.gap == 0, "said to be the best with a gap of ", m_plan.gap);
    }

    const WeekProblem& m_problem;
    const WeekSolution& m_plan;
    const Replayed& m_seen;
    std::vector<std::string> m_wrong;
};
} // namespace

std::vector<std::string> breaches(const WeekProblem& problem, const WeekSolution& plan) {
    const Replayed seen = replay(problem, plan);
    std::vector<std::string> all = seen.breaches;
    const std::vector<std::string> wrong = Claims(problem, plan, seen).wrong();
    all.insert(all.end(), wrong.begin(), wrong.end());
    return all;
}

} // namespace ladlework::week::rules
