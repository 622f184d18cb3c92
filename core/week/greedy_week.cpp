#include "week/greedy_week.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace ladlework::week {

namespace {

constexpr double tiny = 1e-9; ///< litres
/// Of stock that will not be drunk in time, this much counts against a pot.
constexpr double wasteCounts = 0.3;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Some stock, as it is drunk from.
struct Supply {
    const std::vector<bool>* may = nullptr;
    double left = 0;
    int first = 0; ///< the first day it may be drunk
    int last = 0;
    int stands = 0; ///< the day from which it stands in the refrigerator
    bool frozen = false;
};

/// How a set of cookings goes when each day drinks what spoils first.
struct Trial {
    std::vector<std::vector<double>> unmet; ///< [day][drinker], litres
    double over = 0;                        ///< litres more than the refrigerator holds, over days
    [[nodiscard]] double inAll() const {
        double all = 0;
        for (const std::vector<double>& day : unmet)
            all = std::accumulate(day.begin(), day.end(), all);
        return all;
    }
};

class Greedy {
public:
    explicit Greedy(const WeekProblem& problem)
        : m_problem(problem), m_days(problem.days),
          m_cook(at(problem.days), std::vector<int>(problem.pots.size(), 0)) {}
    std::vector<std::vector<int>> run();

private:
    struct Choice {
        double worth = 0;
        int day = 0;
        std::size_t pot = 0;
    };
    [[nodiscard]] Trial tryOut() const;
    [[nodiscard]] std::vector<Supply> supplies() const;
    [[nodiscard]] std::vector<Choice> choices(const Trial& trial, int shortDay) const;
    [[nodiscard]] bool fits(int day, std::size_t pot) const;
    [[nodiscard]] bool animalAllows(std::size_t pot) const;
    bool mend(const Trial& trial, int shortDay);

    const WeekProblem& m_problem;
    int m_days;
    std::vector<std::vector<int>> m_cook;
};

std::vector<Supply> Greedy::supplies() const {
    std::vector<Supply> all;
    for (const LotOnHand& lot : m_problem.lots) {
        const bool frozen = lot.place == kitchen::Lot::Place::Freezer;
        if (frozen || lot.useByDay >= 0)
            all.push_back({&lot.may, lot.volume.toLitres(), frozen ? 1 : 0,
                           frozen ? m_days : lot.useByDay, 0, frozen});
    }
    const auto cooked = [&](int day, std::size_t pot, int count) {
        all.push_back({&m_problem.pots[pot].may, m_problem.pots[pot].stock.toLitres() * count, day,
                       day + m_problem.fridgeDays, day, false});
    };
    for (const SettledCooking& settled : m_problem.settled)
        cooked(settled.day, settled.pot, 1);
    for (int day = 0; day < m_days; ++day)
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot)
            if (m_cook[at(day)][pot] > 0)
                cooked(day, pot, m_cook[at(day)][pot]);
    std::ranges::stable_sort(
        all, {}, [](const Supply& supply) { return std::tuple(supply.last, supply.first); });
    return all;
}

Trial Greedy::tryOut() const {
    Trial trial;
    std::vector<Supply> all = supplies();
    std::vector<std::size_t> turn(m_problem.drinkers.size());
    std::iota(turn.begin(), turn.end(), std::size_t{0});
    std::ranges::stable_sort(turn, {}, [&](std::size_t drinker) {
        return std::ranges::count_if(all, [&](const Supply& each) { return (*each.may)[drinker]; });
    });
    std::vector<double> stands(at(m_days), 0.0);
    for (int day = 0; day < m_days; ++day) {
        std::vector<double> unmet(turn.size());
        for (const std::size_t drinker : turn) {
            double wants =
                m_problem.drinkers[drinker].perDay[at(day)].toLitres() * (1.0 + m_problem.spill);
            for (Supply& supply : all) {
                if (wants <= tiny)
                    break;
                if (day < supply.first || day > supply.last || !(*supply.may)[drinker])
                    continue;
                const double drunk = std::min(wants, supply.left);
                supply.left -= drunk;
                wants -= drunk;
                if (supply.frozen)
                    stands[at(day - 1)] += drunk;
            }
            unmet[drinker] = std::max(0.0, wants);
        }
        trial.unmet.push_back(std::move(unmet));
        for (const Supply& supply : all)
            if (!supply.frozen && day >= supply.stands && day <= supply.last)
                stands[at(day)] += supply.left;
    }
    for (const double litres : stands)
        trial.over += std::max(0.0, litres - m_problem.fridgeRoom.toLitres());
    return trial;
}

/// One more of a pot on a day: for each length, what needs at least so long has places enough.
bool Greedy::fits(int day, std::size_t pot) const {
    for (std::size_t each = 0; each < m_problem.pots.size(); ++each) {
        const quantity::Duration length = m_problem.pots[each].total;
        if (length > m_problem.pots[pot].total)
            continue;
        int places = 0;
        for (const CookingSlot& slot : m_problem.freeTimes)
            if (slot.day == day && slot.length >= length)
                places += slot.pots;
        int needed = 1;
        for (std::size_t other = 0; other < m_problem.pots.size(); ++other)
            if (m_problem.pots[other].total >= length)
                needed += m_cook[at(day)][other];
        if (needed > places)
            return false;
    }
    return true;
}

bool Greedy::animalAllows(std::size_t pot) const {
    if (m_problem.mostCookingsPerAnimal <= 0)
        return true;
    const QString& animal = m_problem.pots[pot].animal;
    int cooked = 0;
    for (const SettledCooking& settled : m_problem.settled)
        cooked += m_problem.pots[settled.pot].animal == animal ? 1 : 0;
    for (const std::vector<int>& day : m_cook)
        for (std::size_t other = 0; other < day.size(); ++other)
            cooked += m_problem.pots[other].animal == animal ? day[other] : 0;
    return cooked < m_problem.mostCookingsPerAnimal;
}

/// Cookings that serve someone who is short on a day, the worthiest first.
std::vector<Greedy::Choice> Greedy::choices(const Trial& trial, int shortDay) const {
    std::vector<Choice> found;
    for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
        const PotChoice& choice = m_problem.pots[pot];
        const auto missingOn = [&](int day) {
            double litres = 0;
            for (std::size_t drinker = 0; drinker < choice.may.size(); ++drinker)
                litres += choice.may[drinker] ? trial.unmet[at(day)][drinker] : 0.0;
            return litres;
        };
        if (missingOn(shortDay) <= tiny || !animalAllows(pot))
            continue;
        for (int day = std::max(0, shortDay - m_problem.fridgeDays); day <= shortDay; ++day) {
            if (!fits(day, pot))
                continue;
            const int last = day + m_problem.fridgeDays;
            double missing = 0;
            for (int later = day; later <= std::min(last, m_days - 1); ++later)
                missing += missingOn(later);
            const double litres = choice.stock.toLitres();
            const double drunk = std::min(litres, missing);
            const double waste = last < m_days ? litres - drunk : 0.0;
            found.push_back({drunk - wasteCounts * waste, day, pot});
        }
    }
    std::ranges::stable_sort(found, [&](const Choice& a, const Choice& b) {
        return std::tuple(-a.worth, -a.day, m_problem.pots[a.pot].handsOn) <
               std::tuple(-b.worth, -b.day, m_problem.pots[b.pot].handsOn);
    });
    return found;
}

bool Greedy::mend(const Trial& trial, int shortDay) {
    for (const Choice& choice : choices(trial, shortDay)) {
        ++m_cook[at(choice.day)][choice.pot];
        const Trial after = tryOut();
        if (after.inAll() < trial.inAll() - tiny && after.over <= trial.over + tiny)
            return true;
        --m_cook[at(choice.day)][choice.pot];
    }
    return false;
}

std::vector<std::vector<int>> Greedy::run() {
    for (int day = 0; day < m_days;) {
        const Trial trial = tryOut();
        const std::vector<double>& unmet = trial.unmet[at(day)];
        const bool isShort =
            std::ranges::any_of(unmet, [](double litres) { return litres > tiny; });
        if (!isShort || !mend(trial, day))
            ++day;
    }
    return m_cook;
}

} // namespace

std::vector<std::vector<int>> greedyCookings(const WeekProblem& problem) {
    return Greedy(problem).run();
}

} // namespace ladlework::week
