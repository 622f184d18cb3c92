#include "core/week/rivals/compact_week.h"

#include "core/week/rivals/linear_model.h"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

namespace ladlework::week::rivals {

namespace {
using May = std::vector<bool>;

/// A sum of columns and a number.
struct Amount {
    Terms terms;
    double fixed = 0;

    void add(const Terms& more, double factor = 1) {
        for (const Term& term : more)
            terms.push_back({term.column, term.factor * factor});
    }
    void add(const Amount& more, double factor = 1) {
        add(more.terms, factor);
        fixed += more.fixed * factor;
    }
    void addColumn(int column, double factor = 1) { terms.push_back({column, factor}); }
};

/// People who may drink the same.
struct Group {
    std::size_t first = 0;      ///< one of them
    std::vector<double> wanted; ///< by day, mL, all together
};

class Model {
public:
    explicit Model(const WeekProblem& problem)
        : m_problem(problem), m_days(static_cast<std::size_t>(problem.days)), m_arrives(m_days),
          m_served(m_days), m_gone(m_days), m_ice(m_days), m_meatArrives(m_days),
          m_meatEaten(m_days) {}

    RivalAnswer solve(double seconds) {
        findKinds();
        findGroups();
        addCookings();
        addAnimalLimits();
        for (const May& kind : m_kinds)
            addKind(kind);
        addDemand();
        addRooms();
        addMeat();
        m_model.setSeconds(seconds);
        const auto least =
            m_model.minimiseInOrder({m_over, m_short, m_spoilt.terms, m_spoiltMeat.terms,
                                     m_cookings.terms, m_handsOn.terms, m_cost.terms});
        if (!least)
            throw std::runtime_error("GLPK finds no week at all");
        RivalAnswer answer{{}, m_model.columns(), m_model.rows()};
        std::ranges::copy(*least, answer.objective.begin());
        answer.objective[4] += m_cookings.fixed;
        answer.objective[5] += m_handsOn.fixed;
        answer.objective[6] += m_cost.fixed;
        return answer;
    }

private:
    void findKinds() {
        std::set<May> kinds;
        for (const PotChoice& pot : m_problem.pots)
            kinds.insert(pot.may);
        for (const LotOnHand& lot : m_problem.lots)
            kinds.insert(lot.may);
        m_kinds.assign(kinds.begin(), kinds.end());
    }

    void findGroups() {
        std::map<May, Group> groups;
        for (std::size_t who = 0; who < m_problem.drinkers.size(); ++who) {
            May drinks;
            for (const May& kind : m_kinds)
                drinks.push_back(kind[who]);
            Group& group = groups.try_emplace(drinks, Group{who, {}}).first->second;
            group.wanted.resize(m_days);
            for (std::size_t day = 0; day < m_days; ++day)
                group.wanted[day] +=
                    m_problem.drinkers[who].perDay[day].toMillilitres() * (1 + m_problem.spill);
        }
        for (const auto& [drinks, group] : groups)
            m_groups.push_back(group);
        m_toGroup.resize(m_groups.size(), std::vector<Terms>(m_days));
    }

    void addCookings();
    void addAnimalLimits();
    void addKind(const May& kind);
    void addCohort(const May& kind, Amount left, std::size_t from, int last);
    void addDemand();
    void addRooms();
    void addMeat();

    const WeekProblem& m_problem;
    std::size_t m_days;
    LinearModel m_model;
    std::vector<May> m_kinds;
    std::vector<Group> m_groups;
    std::map<std::pair<std::size_t, std::size_t>, int> m_counts; ///< by day and pot
    std::vector<Amount> m_arrives; ///< by day, into the refrigerator, less what is frozen at once
    std::vector<Amount> m_served;
    std::vector<Amount> m_gone; ///< spoilt at the end of the day
    std::vector<Amount> m_ice;
    std::vector<Amount> m_meatArrives;
    std::vector<Terms> m_meatEaten;
    std::vector<std::vector<Terms>> m_toGroup; ///< by group and day
    Terms m_over, m_short;
    Amount m_spoilt, m_spoiltMeat, m_cookings, m_handsOn, m_cost;
};

void Model::addCookings() {
    for (const SettledCooking& settled : m_problem.settled) {
        const PotChoice& pot = m_problem.pots[settled.pot];
        m_cookings.fixed += 1;
        m_handsOn.fixed += pot.handsOn.toMinutes();
        m_cost.fixed += pot.cost;
        m_meatArrives[static_cast<std::size_t>(settled.day)].fixed += pot.meat.toGrams();
    }
    for (std::size_t day = 0; day < m_days; ++day) {
        const auto placesFor = [&](quantity::Duration total) {
            int places = 0;
            for (const CookingSlot& slot : m_problem.freeTimes)
                places += slot.day == static_cast<int>(day) && slot.length >= total ? slot.pots : 0;
            return places;
        };
        // Pots at least so long have the slots at least so long; that is enough, because a slot
        // that holds a pot holds every shorter one.
        std::map<quantity::Duration, Terms, std::greater<>> byLength;
        for (std::size_t index = 0; index < m_problem.pots.size(); ++index) {
            const PotChoice& pot = m_problem.pots[index];
            const int places = placesFor(pot.total);
            if (places == 0)
                continue;
            const int count = m_model.addWholeColumn(0, places);
            m_counts[{day, index}] = count;
            byLength[pot.total].push_back({count, 1});
            m_cookings.addColumn(count);
            m_handsOn.addColumn(count, pot.handsOn.toMinutes());
            m_cost.addColumn(count, pot.cost);
            m_meatArrives[day].addColumn(count, pot.meat.toGrams());
        }
        Terms atLeastSoLong;
        for (const auto& [total, counts] : byLength) {
            atLeastSoLong.insert(atLeastSoLong.end(), counts.begin(), counts.end());
            m_model.addRow(-unbounded, placesFor(total), atLeastSoLong);
        }
    }
}

void Model::addAnimalLimits() {
    if (m_problem.mostCookingsPerAnimal <= 0)
        return;
    std::map<QString, Amount> ofAnimal;
    for (const SettledCooking& settled : m_problem.settled)
        ofAnimal[m_problem.pots[settled.pot].animal].fixed += 1;
    for (const auto& [place, count] : m_counts)
        ofAnimal[m_problem.pots[place.second].animal].addColumn(count);
    for (const auto& [animal, amount] : ofAnimal) {
        if (!amount.terms.empty())
            m_model.addRow(-unbounded,
                           std::max(0.0, m_problem.mostCookingsPerAnimal - amount.fixed),
                           amount.terms);
    }
}

/// Stock of one kind: fresh by day of cooking, one store of ice, thawed by day of thawing.
void Model::addKind(const May& kind) {
    double ice = 0;
    for (const LotOnHand& lot : m_problem.lots) {
        if (lot.may != kind)
            continue;
        const double amount = lot.volume.toMillilitres();
        if (lot.place == kitchen::Lot::Place::Freezer) {
            ice += amount;
        } else if (lot.useByDay >= 0) {
            m_arrives[0].fixed += amount;
            addCohort(kind, Amount{{}, amount}, 0, lot.useByDay);
        }
    }
    int iceBefore = m_model.addColumn(ice, ice);
    for (std::size_t day = 0; day < m_days; ++day) {
        Amount fresh;
        for (const SettledCooking& settled : m_problem.settled) {
            const PotChoice& pot = m_problem.pots[settled.pot];
            if (settled.day == static_cast<int>(day) && pot.may == kind)
                fresh.fixed += settled.stock.value_or(pot.stock).toMillilitres();
        }
        for (std::size_t index = 0; index < m_problem.pots.size(); ++index) {
            const auto count = m_counts.find({day, index});
            if (count != m_counts.end() && m_problem.pots[index].may == kind)
                fresh.addColumn(count->second, m_problem.pots[index].stock.toMillilitres());
        }
        const int iceAfter = m_model.addColumn(0);
        const int thawed = m_model.addColumn(0);
        Terms balance{{iceBefore, 1}, {thawed, -1}, {iceAfter, -1}};
        if (!fresh.terms.empty() || fresh.fixed > 0) {
            const int frozen = m_model.addColumn(0);
            balance.push_back({frozen, 1});
            fresh.addColumn(frozen, -1);
            m_arrives[day].add(fresh);
            addCohort(kind, fresh, day, static_cast<int>(day) + m_problem.fridgeDays);
        }
        m_model.addRow(0, 0, balance);
        m_ice[day].addColumn(iceAfter);
        m_arrives[day].addColumn(thawed);
        addCohort(kind, Amount{{{thawed, 1}}, 0}, day + 1, static_cast<int>(day) + 2);
        iceBefore = iceAfter;
    }
}

/// Stock that spoils together after `last`.
void Model::addCohort(const May& kind, Amount left, std::size_t from, int last) {
    for (std::size_t day = from; day < m_days && static_cast<int>(day) <= last; ++day) {
        for (std::size_t group = 0; group < m_groups.size(); ++group) {
            if (!kind[m_groups[group].first])
                continue;
            const int drunk = m_model.addColumn(0);
            left.addColumn(drunk, -1);
            m_toGroup[group][day].push_back({drunk, 1});
        }
    }
    if (last >= static_cast<int>(m_days)) {
        m_model.addRow(-left.fixed, unbounded, left.terms);
        return;
    }
    const int spoilt = m_model.addColumn(0);
    m_spoilt.addColumn(spoilt);
    m_gone[static_cast<std::size_t>(last)].addColumn(spoilt);
    left.addColumn(spoilt, -1);
    m_model.addRow(-left.fixed, -left.fixed, left.terms);
}

void Model::addDemand() {
    for (std::size_t group = 0; group < m_groups.size(); ++group) {
        for (std::size_t day = 0; day < m_days; ++day) {
            const double wanted = m_groups[group].wanted[day];
            const int missing = m_model.addColumn(0, wanted);
            m_short.push_back({missing, 1});
            m_served[day].addColumn(missing, -1);
            m_served[day].fixed += wanted;
            Terms sum = m_toGroup[group][day];
            sum.push_back({missing, 1});
            m_model.addRow(wanted, wanted, sum);
        }
    }
}

/// What stands in the refrigerator is handed on as one number a day.
void Model::addRooms() {
    int before = m_model.addColumn(0, 0);
    for (std::size_t day = 0; day < m_days; ++day) {
        const int standing = m_model.addColumn(0);
        Amount balance;
        balance.addColumn(before);
        if (day > 0)
            balance.add(m_gone[day - 1], -1);
        balance.add(m_arrives[day]);
        balance.add(m_served[day], -1);
        balance.addColumn(standing, -1);
        m_model.addRow(-balance.fixed, -balance.fixed, balance.terms);
        const auto limit = [this](Terms terms, double room) {
            const int over = m_model.addColumn(0);
            m_over.push_back({over, 1});
            terms.push_back({over, -1});
            m_model.addRow(-unbounded, room, terms);
        };
        limit({{standing, 1}}, m_problem.fridgeRoom.toMillilitres());
        limit(m_ice[day].terms, m_problem.freezerRoom.toMillilitres());
        before = standing;
    }
}

void Model::addMeat() {
    const auto addPile = [this](Amount left, std::size_t from, int last) {
        for (std::size_t day = from; day < m_days && static_cast<int>(day) <= last; ++day) {
            const int eaten = m_model.addColumn(0);
            left.addColumn(eaten, -1);
            m_meatEaten[day].push_back({eaten, 1});
        }
        const bool spoils = last < static_cast<int>(m_days);
        if (spoils) {
            const int spoilt = m_model.addColumn(0);
            m_spoiltMeat.addColumn(spoilt);
            left.addColumn(spoilt, -1);
        }
        m_model.addRow(-left.fixed, spoils ? -left.fixed : unbounded, left.terms);
    };
    for (const MeatOnHand& meat : m_problem.meat) {
        if (meat.useByDay >= 0)
            addPile(Amount{{}, meat.mass.toGrams()}, 0, meat.useByDay);
    }
    for (std::size_t day = 0; day < m_days; ++day)
        addPile(m_meatArrives[day], day, static_cast<int>(day) + m_problem.fridgeDays);
    for (const Terms& eaten : m_meatEaten) {
        if (!eaten.empty())
            m_model.addRow(-unbounded, m_problem.meatPerDay.toGrams(), eaten);
    }
}
} // namespace

RivalAnswer compactWeek(const WeekProblem& problem, double secondsALevel) {
    return Model(problem).solve(secondsALevel);
}

} // namespace ladlework::week::rivals
