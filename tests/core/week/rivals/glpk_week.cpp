#include "core/week/rivals/glpk_week.h"

#include "core/week/rivals/linear_model.h"

#include <map>
#include <stdexcept>

namespace ladlework::week::rivals {

namespace {
/// Where stock comes from: a lot, a settled cooking, or one pot in one slot as often as `count`.
struct Batch {
    int day = 0;     ///< first day it stands somewhere
    int lastDay = 0; ///< in the refrigerator
    bool mayFreeze = false;
    double amount = 0; ///< mL of one
    double onIce = 0;  ///< mL frozen from the start
    double meat = 0;   ///< g of one
    int meatLastDay = 0;
    const std::vector<bool>* may = nullptr;
    const PotChoice* pot = nullptr; ///< of a cooking
    int count = 0;                  ///< column; 0: there is one, settled or on hand
};

class Model {
public:
    explicit Model(const WeekProblem& problem) : m_problem(problem), m_last(problem.days - 1) {
        for (int day = 0; day <= m_last; ++day) {
            m_fridge.emplace_back();
            m_freezer.emplace_back();
            m_meat.emplace_back();
        }
        m_served.resize(problem.drinkers.size(),
                        std::vector<Terms>(static_cast<std::size_t>(problem.days)));
    }

    RivalAnswer solve(double seconds) {
        addCookings();
        addLots();
        for (const Batch& batch : m_batches) {
            addStock(batch);
            addMeat(batch);
        }
        addDemand();
        addRooms();
        m_model.setSeconds(seconds);
        const auto least = m_model.minimiseInOrder(
            {m_overRoom, m_short, m_spoilt, m_spoiltMeat, m_cookings, m_handsOn, m_cost});
        if (!least)
            throw std::runtime_error("GLPK finds no week at all");
        RivalAnswer answer;
        std::ranges::copy(*least, answer.objective.begin());
        for (std::size_t level = 0; level < 7; ++level)
            answer.objective[level] += m_settled[level];
        answer.columns = m_model.columns();
        answer.rows = m_model.rows();
        return answer;
    }

private:
    void addCookings();
    void addAnimalLimits();
    void addLots();
    void addStock(const Batch& batch);
    int addThawing(const Batch& batch, int day);
    void addMeat(const Batch& batch);
    void addDemand();
    void addRooms();

    /// `sum` is at most what the batch holds of something of which one cooking has `each`.
    void atMost(Terms sum, const Batch& batch, double each) {
        if (batch.count == 0) {
            m_model.addRow(-unbounded, each, sum);
            return;
        }
        sum.push_back({batch.count, -each});
        m_model.addRow(-unbounded, 0, sum);
    }
    /// A column that is what the batch holds less `sum`, never below zero.
    int rest(Terms sum, const Batch& batch, double each) {
        const int left = m_model.addColumn(0);
        sum.push_back({left, 1});
        if (batch.count != 0)
            sum.push_back({batch.count, -each});
        const double fixed = batch.count == 0 ? each : 0;
        m_model.addRow(fixed, fixed, sum);
        return left;
    }

    const WeekProblem& m_problem;
    const int m_last;
    LinearModel m_model;
    std::vector<Batch> m_batches;
    std::vector<Terms> m_fridge; ///< by day: what stands there at its end
    std::vector<Terms> m_freezer;
    std::vector<Terms> m_meat;                ///< by day: eaten
    std::vector<std::vector<Terms>> m_served; ///< by drinker and day
    Terms m_overRoom, m_short, m_spoilt, m_spoiltMeat, m_cookings, m_handsOn, m_cost;
    rules::Levels m_settled{}; ///< what settled cookings add to the levels
};

void Model::addCookings() {
    const auto batchOf = [this](int day, const PotChoice& pot, int count) {
        const int last = day + m_problem.fridgeDays;
        return Batch{day,      last, true, pot.stock.toMillilitres(), 0, pot.meat.toGrams(), last,
                     &pot.may, &pot, count};
    };
    for (const SettledCooking& settled : m_problem.settled) {
        const PotChoice& pot = m_problem.pots[settled.pot];
        m_batches.push_back(batchOf(settled.day, pot, 0));
        m_batches.back().amount = settled.stock.value_or(pot.stock).toMillilitres();
        m_settled[4] += 1;
        m_settled[5] += pot.handsOn.toMinutes();
        m_settled[6] += pot.cost;
    }
    for (const CookingSlot& slot : m_problem.freeTimes) {
        Terms inSlot;
        for (const PotChoice& pot : m_problem.pots) {
            if (pot.total > slot.length)
                continue;
            const int count = m_model.addWholeColumn(0, slot.pots);
            m_batches.push_back(batchOf(slot.day, pot, count));
            inSlot.push_back({count, 1});
            m_cookings.push_back({count, 1});
            m_handsOn.push_back({count, pot.handsOn.toMinutes()});
            m_cost.push_back({count, pot.cost});
        }
        if (!inSlot.empty())
            m_model.addRow(-unbounded, slot.pots, inSlot);
    }
    if (m_problem.mostCookingsPerAnimal > 0)
        addAnimalLimits();
}

void Model::addAnimalLimits() {
    std::map<QString, Terms> chosen;
    std::map<QString, int> settled;
    for (const Batch& batch : m_batches) {
        if (batch.count != 0)
            chosen[batch.pot->animal].push_back({batch.count, 1});
        else
            ++settled[batch.pot->animal];
    }
    for (const auto& [animal, cookings] : chosen)
        m_model.addRow(-unbounded, std::max(0, m_problem.mostCookingsPerAnimal - settled[animal]),
                       cookings);
}

void Model::addLots() {
    for (const LotOnHand& lot : m_problem.lots) {
        Batch batch;
        batch.may = &lot.may;
        if (lot.place == kitchen::Lot::Place::Freezer) {
            batch.lastDay = -1;
            batch.onIce = lot.volume.toMillilitres();
        } else {
            if (lot.useByDay < 0)
                continue;
            batch.lastDay = lot.useByDay;
            batch.amount = lot.volume.toMillilitres();
        }
        m_batches.push_back(batch);
    }
    for (const MeatOnHand& meat : m_problem.meat) {
        if (meat.useByDay < 0)
            continue;
        Batch batch;
        batch.lastDay = -1;
        batch.meat = meat.mass.toGrams();
        batch.meatLastDay = meat.useByDay;
        m_batches.push_back(batch);
    }
}

void Model::addStock(const Batch& batch) {
    Terms gone; // from the fresh part, so far
    Terms ice;
    if (batch.mayFreeze) {
        const int frozen = m_model.addColumn(0);
        gone.push_back({frozen, 1});
        ice.push_back({frozen, -1});
    }
    for (int day = batch.day; day <= std::min(batch.lastDay, m_last); ++day) {
        for (std::size_t who = 0; who < m_problem.drinkers.size(); ++who) {
            if (!(*batch.may)[who])
                continue;
            const int drunk = m_model.addColumn(0);
            gone.push_back({drunk, 1});
            m_served[who][static_cast<std::size_t>(day)].push_back({drunk, 1});
        }
        const int left = rest(gone, batch, batch.amount);
        m_fridge[static_cast<std::size_t>(day)].push_back({left, 1});
        if (day == batch.lastDay)
            m_spoilt.push_back({left, 1});
    }
    if (!batch.mayFreeze && batch.onIce <= 0)
        return;
    for (int day = batch.day; day <= m_last; ++day) {
        ice.push_back({addThawing(batch, day), 1});
        const int left = m_model.addColumn(0); // on ice at the end of the day
        Terms balance = ice;
        balance.push_back({left, 1});
        m_model.addRow(batch.onIce, batch.onIce, balance);
        m_freezer[static_cast<std::size_t>(day)].push_back({left, 1});
    }
}

/// What is moved to the refrigerator on a day, and how it is drunk on the next day and the one
/// after.
int Model::addThawing(const Batch& batch, int day) {
    const int thawed = m_model.addColumn(0);
    m_fridge[static_cast<std::size_t>(day)].push_back({thawed, 1});
    Terms drunk;
    for (int later = day + 1; later <= std::min(day + 2, m_last); ++later) {
        for (std::size_t who = 0; who < m_problem.drinkers.size(); ++who) {
            if (!(*batch.may)[who])
                continue;
            const int column = m_model.addColumn(0);
            drunk.push_back({column, 1});
            m_served[who][static_cast<std::size_t>(later)].push_back({column, 1});
        }
        const int left = m_model.addColumn(0);
        Terms balance = drunk;
        balance.push_back({left, 1});
        balance.push_back({thawed, -1});
        m_model.addRow(0, 0, balance);
        m_fridge[static_cast<std::size_t>(later)].push_back({left, 1});
        if (later == day + 2)
            m_spoilt.push_back({left, 1});
    }
    return thawed;
}

void Model::addMeat(const Batch& batch) {
    if (batch.meat <= 0)
        return;
    Terms eaten;
    for (int day = batch.day; day <= std::min(batch.meatLastDay, m_last); ++day) {
        const int column = m_model.addColumn(0);
        eaten.push_back({column, 1});
        m_meat[static_cast<std::size_t>(day)].push_back({column, 1});
    }
    if (batch.meatLastDay <= m_last)
        m_spoiltMeat.push_back({rest(eaten, batch, batch.meat), 1});
    else
        atMost(eaten, batch, batch.meat);
}

void Model::addDemand() {
    for (std::size_t who = 0; who < m_problem.drinkers.size(); ++who) {
        for (std::size_t day = 0; day < m_served[who].size(); ++day) {
            const double wanted =
                m_problem.drinkers[who].perDay[day].toMillilitres() * (1 + m_problem.spill);
            const int missing = m_model.addColumn(0);
            Terms sum = m_served[who][day];
            sum.push_back({missing, 1});
            m_model.addRow(wanted, wanted, sum);
            m_short.push_back({missing, 1});
        }
    }
}

void Model::addRooms() {
    const auto limit = [this](const std::vector<Terms>& days, double room) {
        for (Terms sum : days) {
            const int over = m_model.addColumn(0);
            m_overRoom.push_back({over, 1});
            sum.push_back({over, -1});
            m_model.addRow(-unbounded, room, sum);
        }
    };
    limit(m_fridge, m_problem.fridgeRoom.toMillilitres());
    limit(m_freezer, m_problem.freezerRoom.toMillilitres());
    for (const Terms& eaten : m_meat) {
        if (!eaten.empty())
            m_model.addRow(-unbounded, m_problem.meatPerDay.toGrams(), eaten);
    }
}
} // namespace

RivalAnswer glpkWeek(const WeekProblem& problem, double secondsALevel) {
    return Model(problem).solve(secondsALevel);
}

} // namespace ladlework::week::rivals
