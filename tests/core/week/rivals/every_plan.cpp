#include "core/week/rivals/every_plan.h"

#include "core/week/rivals/linear_model.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>

namespace ladlework::week::rivals {

using rules::Levels;

namespace {
/// A choice of cookings: pots by day, each pot as often as it stands there.
using DayChoice = std::vector<std::size_t>;
using Choice = std::vector<DayChoice>;

/// All pots that can be on together on a day, as sorted lists.
std::set<DayChoice> choicesOfDay(const WeekProblem& problem, int day) {
    std::set<DayChoice> choices{{}};
    for (const CookingSlot& slot : problem.freeTimes) {
        if (slot.day != day)
            continue;
        for (int place = 0; place < slot.pots; ++place) {
            const std::set<DayChoice> before = choices;
            for (const DayChoice& choice : before) {
                for (std::size_t pot = 0; pot < problem.pots.size(); ++pot) {
                    if (problem.pots[pot].total > slot.length)
                        continue;
                    DayChoice more = choice;
                    more.insert(std::ranges::upper_bound(more, pot), pot);
                    choices.insert(more);
                }
            }
        }
    }
    return choices;
}

/// Stock that came into the refrigerator together, as the linear problem sees it.
struct Cohort {
    int column = 0;    ///< how much came in
    int cameOn = 0;    ///< it stands there from the end of this day on
    int drunkFrom = 0; ///< the first day it may be drunk
    int lastDay = 0;
    const std::vector<bool>* may = nullptr;
};

/// The serving of given cookings: stock handed on from day to day.
class Serving {
public:
    Serving(const WeekProblem& problem, const Choice& choice) : m_problem(problem) {
        const auto days = static_cast<std::size_t>(problem.days);
        m_inFridge.resize(days);
        m_onIce.resize(days);
        m_toDrinker.resize(days, std::vector<Terms>(problem.drinkers.size()));
        for (int day = 0; day < problem.days; ++day) {
            const DayChoice& chosen = choice[static_cast<std::size_t>(day)];
            std::size_t place = 0; // settled ones come first
            for (const SettledCooking& settled : problem.settled) {
                if (settled.day == day)
                    addCooking(problem.pots[chosen[place++]], day, settled.stock);
            }
            for (; place < chosen.size(); ++place)
                addCooking(problem.pots[chosen[place]], day, {});
        }
        for (const LotOnHand& lot : problem.lots)
            addLot(lot);
        addLimits();
    }

    /// overRoom, shortBy and spoilt, the first of the levels; nothing further once they are worse
    /// than `best`.
    std::optional<std::vector<double>> least(const std::optional<Levels>& best) {
        std::vector<double> values;
        const Terms* const sums[] = {&m_over, &m_short, &m_spoilt};
        for (std::size_t level = 0; level < std::size(sums); ++level) {
            const std::optional<double> value = m_model.minimise(*sums[level]);
            if (!value)
                throw std::runtime_error("a serving that cannot be");
            values.push_back(*value);
            if (best && *value > (*best)[level] + rules::tolerances[level])
                return std::nullopt;
            if (best && *value < (*best)[level] - rules::tolerances[level]) {
                // Better here: what comes after must be solved, whatever it is.
                return rest(values, sums, std::size(sums));
            }
            m_model.addRow(-unbounded, *value + held * (1 + *value), *sums[level]);
        }
        return values;
    }

private:
    static constexpr double held = 1e-7;

    std::vector<double> rest(std::vector<double> values, const Terms* const* sums,
                             std::size_t count) {
        for (std::size_t level = values.size(); level < count; ++level) {
            m_model.addRow(-unbounded, values.back() + held * (1 + values.back()),
                           *sums[level - 1]);
            values.push_back(m_model.minimise(*sums[level]).value());
        }
        return values;
    }

    void addCooking(const PotChoice& pot, int day, std::optional<quantity::Volume> measured) {
        const double stock = measured.value_or(pot.stock).toMillilitres();
        const int fresh = m_model.addColumn(0, stock);
        const int frozen = m_model.addColumn(0, stock);
        m_model.addRow(stock, stock, {{fresh, 1}, {frozen, 1}});
        addCohort({fresh, day, day, day + m_problem.fridgeDays, &pot.may});
        addIce(frozen, day, pot.may);
    }

    void addLot(const LotOnHand& lot) {
        const double stock = lot.volume.toMillilitres();
        if (lot.place == kitchen::Lot::Place::Freezer)
            addIce(m_model.addColumn(stock, stock), 0, lot.may);
        else if (lot.useByDay >= 0)
            addCohort({m_model.addColumn(stock, stock), 0, 0, lot.useByDay, &lot.may});
    }

    /// From one evening to the next: what stood there less what is thawed.
    void addIce(int amount, int from, const std::vector<bool>& may) {
        int before = amount;
        for (int day = from; day < m_problem.days; ++day) {
            const int thawed = m_model.addColumn(0);
            const int after = m_model.addColumn(0);
            m_model.addRow(0, 0, {{before, 1}, {thawed, -1}, {after, -1}});
            m_onIce[static_cast<std::size_t>(day)].push_back({after, 1});
            addCohort({thawed, day, day + 1, day + 2, &may});
            before = after;
        }
    }

    void addCohort(const Cohort& cohort) {
        int before = cohort.column;
        for (int day = cohort.cameOn; day <= std::min(cohort.lastDay, m_problem.days - 1); ++day) {
            const auto index = static_cast<std::size_t>(day);
            const int after = m_model.addColumn(0);
            Terms balance{{before, 1}, {after, -1}};
            for (std::size_t who = 0; who < cohort.may->size() && day >= cohort.drunkFrom; ++who) {
                if (!(*cohort.may)[who])
                    continue;
                const int drunk = m_model.addColumn(0);
                balance.push_back({drunk, -1});
                m_toDrinker[index][who].push_back({drunk, 1});
            }
            m_model.addRow(0, 0, balance);
            m_inFridge[index].push_back({after, 1});
            if (day == cohort.lastDay)
                m_spoilt.push_back({after, 1});
            before = after;
        }
    }

    void addLimits() {
        for (std::size_t day = 0; day < m_inFridge.size(); ++day) {
            addRoom(m_inFridge[day], m_problem.fridgeRoom.toMillilitres());
            addRoom(m_onIce[day], m_problem.freezerRoom.toMillilitres());
            for (std::size_t who = 0; who < m_problem.drinkers.size(); ++who) {
                const double wanted =
                    m_problem.drinkers[who].perDay[day].toMillilitres() * (1 + m_problem.spill);
                const int missing = m_model.addColumn(0, wanted);
                m_short.push_back({missing, 1});
                Terms sum = m_toDrinker[day][who];
                sum.push_back({missing, 1});
                m_model.addRow(wanted, wanted, sum);
            }
        }
    }

    void addRoom(Terms standing, double room) {
        if (standing.empty())
            return;
        const int over = m_model.addColumn(0);
        m_over.push_back({over, 1});
        standing.push_back({over, -1});
        m_model.addRow(-unbounded, room, standing);
    }

    const WeekProblem& m_problem;
    LinearModel m_model;
    std::vector<Terms> m_inFridge;
    std::vector<Terms> m_onIce;
    std::vector<std::vector<Terms>> m_toDrinker;
    Terms m_over, m_short, m_spoilt;
};

double spoiltMeat(const WeekProblem& problem, const Choice& choice) {
    std::multimap<int, double> larder; // by last day
    for (const MeatOnHand& meat : problem.meat) {
        if (meat.useByDay >= 0)
            larder.emplace(meat.useByDay, meat.mass.toGrams());
    }
    double spoilt = 0;
    for (int day = 0; day < problem.days; ++day) {
        for (const std::size_t pot : choice[static_cast<std::size_t>(day)])
            larder.emplace(day + problem.fridgeDays, problem.pots[pot].meat.toGrams());
        double appetite = problem.meatPerDay.toGrams();
        for (auto& [lastDay, mass] : larder) {
            const double eaten = std::min(appetite, mass);
            mass -= eaten;
            appetite -= eaten;
        }
        while (!larder.empty() && larder.begin()->first == day) {
            spoilt += larder.begin()->second;
            larder.erase(larder.begin());
        }
    }
    return spoilt;
}

/// Goes through all choices with the settled cookings added to each.
class Search {
public:
    explicit Search(const WeekProblem& problem) : m_problem(problem) {
        m_choice.resize(static_cast<std::size_t>(problem.days));
        for (const SettledCooking& settled : problem.settled) {
            m_choice[static_cast<std::size_t>(settled.day)].push_back(settled.pot);
            ++m_ofAnimal[problem.pots[settled.pot].animal];
        }
    }

    void from(int day) {
        if (day == m_problem.days) {
            look();
            return;
        }
        DayChoice& here = m_choice[static_cast<std::size_t>(day)];
        for (const DayChoice& chosen : choicesOfDay(m_problem, day)) {
            const std::map<QString, int> before = m_ofAnimal;
            if (allows(chosen)) {
                here.insert(here.end(), chosen.begin(), chosen.end());
                from(day + 1);
                here.resize(here.size() - chosen.size());
            }
            m_ofAnimal = before;
        }
    }

    /// Takes the choice as it stands.
    void look() {
        const auto served = Serving(m_problem, m_choice).least(m_best);
        if (!served)
            return;
        Levels levels{(*served)[0], (*served)[1], (*served)[2], spoiltMeat(m_problem, m_choice)};
        for (const DayChoice& day : m_choice) {
            for (const std::size_t pot : day) {
                levels[4] += 1;
                levels[5] += m_problem.pots[pot].handsOn.toMinutes();
                levels[6] += m_problem.pots[pot].cost;
            }
        }
        const int order = m_best ? rules::compare(levels, *m_best) : -1;
        int most = 0;
        for (const auto& [animal, count] : m_ofAnimal)
            most = std::max(most, count);
        if (order < 0)
            m_best = levels;
        if (order <= 0)
            m_most = order < 0 ? most : std::min(m_most, most);
    }

    [[nodiscard]] EveryPlan best() const { return {m_best.value(), m_most}; }

private:
    bool allows(const DayChoice& chosen) {
        for (const std::size_t pot : chosen) {
            const int count = ++m_ofAnimal[m_problem.pots[pot].animal];
            if (m_problem.mostCookingsPerAnimal > 0 && count > m_problem.mostCookingsPerAnimal)
                return false;
        }
        return true;
    }

    const WeekProblem& m_problem;
    Choice m_choice;
    std::map<QString, int> m_ofAnimal;
    std::optional<Levels> m_best;
    int m_most = 0;
};
} // namespace

std::size_t choicesOf(const WeekProblem& problem) {
    std::size_t choices = 1;
    for (int day = 0; day < problem.days; ++day)
        choices *= choicesOfDay(problem, day).size();
    return choices;
}

EveryPlan everyPlan(const WeekProblem& problem) {
    Search search(problem);
    search.from(0);
    return search.best();
}

Levels settledAlone(const WeekProblem& problem) {
    Search search(problem);
    search.look();
    return search.best().best;
}

} // namespace ladlework::week::rivals
