#include "core/week/week_rules.h"

#include "core/week/sentence.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace ladlework::week::rules {

using quantity::Mass;
using quantity::Volume;

namespace {
/// What a solver's rounding may leave, in mL or g.
constexpr double crumb = 1e-3;

/// Stock or meat of one source that arrived together and spoils together.
struct Pile {
    double left = 0;
    int firstDay = 0;
    int lastDay = 0;
};

/// How much of a source is left to spoil, by its last day.
using LeftToSpoil = std::map<int, double>;

/// Stock of one source.
struct Standing {
    std::vector<Pile> fridge;
    LeftToSpoil leftToSpoil;
    double ice = 0;
    int cookedOn = -1; ///< -1 for a lot on hand
    const std::vector<bool>* may = nullptr;
};

std::string nameOf(StockSource source) {
    return sentence(source.kind == StockSource::Kind::Lot ? "lot " : "cooking ", source.index);
}

/// Takes from the piles that are good on the day, the one that spoils first in front; what is left
/// to spoil is touched last of all. Returns what could not be had.
double take(std::vector<Pile>& piles, int day, double amount, LeftToSpoil left = {}) {
    std::ranges::sort(piles, {}, &Pile::lastDay);
    for (const bool isLast : {false, true}) {
        for (Pile& pile : piles) {
            if (day < pile.firstDay || day > pile.lastDay)
                continue;
            const double kept = isLast ? 0 : std::min(left[pile.lastDay], pile.left);
            left[pile.lastDay] -= kept;
            const double taken = std::min(amount, pile.left - kept);
            pile.left -= taken;
            amount -= taken;
        }
    }
    return amount;
}

/// What spoils at the end of the day goes out; returns how much it was.
double throwAway(std::vector<Pile>& piles, int day) {
    double spoilt = 0;
    for (const Pile& pile : piles)
        spoilt += pile.lastDay == day ? pile.left : 0;
    std::erase_if(piles, [&](const Pile& pile) { return pile.lastDay <= day; });
    return spoilt;
}

class Replay {
public:
    Replay(const WeekProblem& problem, const WeekSolution& plan)
        : m_problem(problem), m_plan(plan) {}

    Replayed run() {
        lookAtCookings();
        layOut();
        for (int day = 0; day < m_problem.days; ++day)
            live(day);
        lookAtDaysOutside();
        eatMeat();
        return std::move(m_out);
    }

private:
    template <class... Part>
    void breach(const Part&... parts) {
        m_out.breaches.push_back(sentence(parts...));
    }
    [[nodiscard]] const PotChoice& potOf(const PlannedCooking& cooking) const {
        return m_problem.pots[cooking.pot];
    }
    [[nodiscard]] bool known(const PlannedCooking& cooking) const {
        return cooking.pot < m_problem.pots.size() && cooking.day >= 0 &&
               cooking.day < m_problem.days;
    }

    void lookAtCookings();
    void lookAtSettled();
    void lookAtAnimals();
    void lookAtSlots(int day);
    void layOut();
    void live(int day);
    void freeze(int day);
    void thaw(int day);
    void drink(int day);
    void endOfDay(int day);
    void lookAtDaysOutside();
    void eatMeat();
    /// Days, amounts and sources that make no sense are a breach, and the move is left out.
    bool sane(const char* what, int day, double amount);
    Standing* standing(const char* what, int day, StockSource source);

    const WeekProblem& m_problem;
    const WeekSolution& m_plan;
    Replayed m_out;
    std::map<StockSource, Standing> m_stock;
};

void Replay::lookAtCookings() {
    int last = 0;
    for (const PlannedCooking& cooking : m_plan.cookings) {
        if (!known(cooking)) {
            breach("a cooking of pot ", cooking.pot, " on day ", cooking.day, ": there is none");
            continue;
        }
        if (cooking.day < last)
            breach("cookings are not by day");
        last = cooking.day;
        ++m_out.objective.cookings;
        m_out.objective.handsOn += potOf(cooking).handsOn;
        m_out.objective.cost += potOf(cooking).cost;
    }
    lookAtSettled();
    lookAtAnimals();
    for (int day = 0; day < m_problem.days; ++day)
        lookAtSlots(day);
}

/// Each settled cooking is there once, with what it was measured to give; every other gives what
/// its pot gives.
void Replay::lookAtSettled() {
    std::vector<SettledCooking> missing = m_problem.settled;
    for (std::size_t index = 0; index < m_plan.cookings.size(); ++index) {
        const PlannedCooking& cooking = m_plan.cookings[index];
        if (!known(cooking))
            continue;
        const double said = cooking.stock.toMillilitres();
        if (!cooking.settled) {
            const double gives = potOf(cooking).stock.toMillilitres();
            if (!(std::abs(said - gives) <= crumb))
                breach("cooking ", index, " is said to give ", said, " mL and gives ", gives);
            continue;
        }
        const auto same = std::ranges::find_if(missing, [&](const SettledCooking& settled) {
            const double gives = settled.stock.value_or(potOf(cooking).stock).toMillilitres();
            return settled.day == cooking.day && settled.pot == cooking.pot &&
                   std::abs(said - gives) <= crumb;
        });
        if (same == missing.end())
            breach("pot ", cooking.pot, " settled on day ", cooking.day, " with ", said,
                   " mL, which it is not");
        else
            missing.erase(same);
    }
    for (const SettledCooking& settled : missing)
        breach("pot ", settled.pot, " settled on day ", settled.day, " is left out");
}

/// Settled cookings count too, but are never too many by themselves.
void Replay::lookAtAnimals() {
    if (m_problem.mostCookingsPerAnimal <= 0)
        return;
    std::map<QString, int> all;
    std::map<QString, int> chosen;
    for (const PlannedCooking& cooking : m_plan.cookings) {
        if (!known(cooking))
            continue;
        ++all[potOf(cooking).animal];
        chosen[potOf(cooking).animal] += cooking.settled ? 0 : 1;
    }
    for (const auto& [animal, count] : all) {
        if (count > m_problem.mostCookingsPerAnimal && chosen[animal] > 0)
            breach(animal.toStdString(), " is cooked ", count, " times");
    }
}

/// The longest cooking takes the longest place, and so on: if that does not fit, nothing does.
void Replay::lookAtSlots(int day) {
    std::vector<double> places;
    for (const CookingSlot& slot : m_problem.freeTimes) {
        if (slot.day == day)
            places.insert(places.end(), static_cast<std::size_t>(slot.pots),
                          slot.length.toMinutes());
    }
    std::vector<double> cookings;
    for (const PlannedCooking& cooking : m_plan.cookings) {
        if (known(cooking) && cooking.day == day && !cooking.settled)
            cookings.push_back(potOf(cooking).total.toMinutes());
    }
    std::ranges::sort(places, std::greater());
    std::ranges::sort(cookings, std::greater());
    if (cookings.size() > places.size()) {
        breach("day ", day, " has ", cookings.size(), " cookings and room for ", places.size());
        return;
    }
    for (std::size_t index = 0; index < cookings.size(); ++index) {
        if (cookings[index] > places[index])
            breach("day ", day, " has a cooking of ", cookings[index], " min for which there are ",
                   places[index], " min");
    }
}

/// The stock on hand, and a place for what each cooking will give.
void Replay::layOut() {
    m_out.shortBy.assign(static_cast<std::size_t>(m_problem.days),
                         std::vector<Volume>(m_problem.drinkers.size()));
    for (std::size_t index = 0; index < m_problem.lots.size(); ++index) {
        const LotOnHand& lot = m_problem.lots[index];
        Standing& here = m_stock[{StockSource::Kind::Lot, index}];
        here.may = &lot.may;
        if (lot.place == kitchen::Lot::Place::Freezer)
            here.ice = lot.volume.toMillilitres();
        else if (lot.useByDay >= 0)
            here.fridge.push_back({lot.volume.toMillilitres(), 0, lot.useByDay});
    }
    for (std::size_t index = 0; index < m_plan.cookings.size(); ++index) {
        const PlannedCooking& cooking = m_plan.cookings[index];
        if (!known(cooking))
            continue;
        Standing& here = m_stock[{StockSource::Kind::Cooking, index}];
        here.cookedOn = cooking.day;
        here.may = &potOf(cooking).may;
    }
    for (const Spoiling& spoiling : m_plan.spoiling) {
        const auto here = m_stock.find(spoiling.from);
        if (here != m_stock.end())
            here->second.leftToSpoil[spoiling.day] += spoiling.volume.toMillilitres();
    }
}

void Replay::live(int day) {
    for (auto& [source, here] : m_stock) {
        if (here.cookedOn == day)
            here.fridge.push_back({m_plan.cookings[source.index].stock.toMillilitres(), day,
                                   day + m_problem.fridgeDays});
    }
    freeze(day);
    thaw(day);
    drink(day);
    endOfDay(day);
}

bool Replay::sane(const char* what, int day, double amount) {
    const bool isSane = std::isfinite(amount) && amount >= -crumb && day >= 0;
    if (!isSane)
        breach(what, " of ", amount, " on day ", day);
    return isSane;
}

Standing* Replay::standing(const char* what, int day, StockSource source) {
    const auto place = m_stock.find(source);
    if (place == m_stock.end()) {
        breach(what, " on day ", day, " from ", nameOf(source), ", which is not there");
        return nullptr;
    }
    return &place->second;
}

void Replay::freeze(int day) {
    for (const StockMove& move : m_plan.freezing) {
        const double amount = move.volume.toMillilitres();
        if (move.day != day || !sane("freezing", day, amount))
            continue;
        Standing* here = standing("freezing", day, move.from);
        if (here == nullptr)
            continue;
        if (here->cookedOn != day) {
            breach(nameOf(move.from), " is frozen on day ", day, ", not the day it is cooked");
            continue;
        }
        const double missing = take(here->fridge, day, amount);
        if (missing > crumb)
            breach(missing, " mL more of ", nameOf(move.from), " are frozen than there are");
        here->ice += amount - missing;
    }
}

void Replay::thaw(int day) {
    for (const StockMove& move : m_plan.thawing) {
        const double amount = move.volume.toMillilitres();
        if (move.day != day || !sane("thawing", day, amount))
            continue;
        Standing* here = standing("thawing", day, move.from);
        if (here == nullptr)
            continue;
        const double moved = std::min(amount, here->ice);
        if (amount - moved > crumb)
            breach(amount - moved, " mL more of ", nameOf(move.from), " are thawed on day ", day,
                   " than are frozen");
        here->ice -= moved;
        here->fridge.push_back({moved, day + 1, day + 2});
    }
}

void Replay::drink(int day) {
    std::vector<double> drunk(m_problem.drinkers.size(), 0.0);
    for (const PlannedServing& serving : m_plan.servings) {
        const double amount = serving.volume.toMillilitres();
        if (serving.day != day || !sane("serving", day, amount))
            continue;
        Standing* here = standing("serving", day, serving.from);
        if (here == nullptr)
            continue;
        if (serving.drinker >= drunk.size()) {
            breach("drinker ", serving.drinker, " is served: there is none");
            continue;
        }
        if (!(*here->may)[serving.drinker])
            breach("drinker ", serving.drinker, " may not drink of ", nameOf(serving.from));
        const double missing = take(here->fridge, day, amount, here->leftToSpoil);
        if (missing > crumb)
            breach(missing, " mL more of ", nameOf(serving.from), " are served on day ", day,
                   " than can be drunk then");
        drunk[serving.drinker] += amount - missing;
    }
    StoreDay& store = m_out.stores.emplace_back();
    for (std::size_t who = 0; who < drunk.size(); ++who) {
        const double wanted =
            m_problem.drinkers[who].perDay[static_cast<std::size_t>(day)].toMillilitres() *
            (1 + m_problem.spill);
        if (drunk[who] > wanted + crumb)
            breach("drinker ", who, " is served ", drunk[who], " mL on day ", day, " and wants ",
                   wanted);
        const Volume missing = Volume::fromMillilitres(std::max(0.0, wanted - drunk[who]));
        store.wanted += Volume::fromMillilitres(wanted);
        store.served += Volume::fromMillilitres(drunk[who]);
        m_out.shortBy[static_cast<std::size_t>(day)][who] = missing;
        m_out.objective.shortBy += missing;
    }
}

void Replay::endOfDay(int day) {
    double fridge = 0;
    double freezer = 0;
    for (auto& [source, here] : m_stock) {
        for (const Pile& pile : here.fridge)
            fridge += pile.left;
        freezer += here.ice;
        const Volume spoilt = Volume::fromMillilitres(throwAway(here.fridge, day));
        m_out.objective.spoilt += spoilt;
        if (spoilt.toMillilitres() > 0)
            m_out.spoiling.push_back({day, source, spoilt, {}});
    }
    const double fridgeOver = fridge - m_problem.fridgeRoom.toMillilitres();
    const double freezerOver = freezer - m_problem.freezerRoom.toMillilitres();
    const bool mayBeOver = m_plan.status == WeekSolution::Status::Infeasible;
    if (fridgeOver > crumb && !mayBeOver)
        breach("the refrigerator holds ", fridgeOver, " mL too much at the end of day ", day);
    if (freezerOver > crumb && !mayBeOver)
        breach("the freezer holds ", freezerOver, " mL too much at the end of day ", day);
    m_out.objective.overRoom +=
        Volume::fromMillilitres(std::max(0.0, fridgeOver) + std::max(0.0, freezerOver));
    m_out.stores.back().fridge = Volume::fromMillilitres(fridge);
    m_out.stores.back().freezer = Volume::fromMillilitres(freezer);
}

void Replay::lookAtDaysOutside() {
    const auto look = [this](const char* what, const auto& moves) {
        for (const auto& move : moves) {
            if (move.day < 0 || move.day >= m_problem.days)
                breach(what, " on day ", move.day, ", outside the horizon");
        }
    };
    look("serving", m_plan.servings);
    look("freezing", m_plan.freezing);
    look("thawing", m_plan.thawing);
    look("meat eaten", m_plan.meat);
}

void Replay::eatMeat() {
    std::map<StockSource, std::vector<Pile>> larder;
    for (std::size_t index = 0; index < m_problem.meat.size(); ++index) {
        const MeatOnHand& meat = m_problem.meat[index];
        if (meat.useByDay >= 0)
            larder[{StockSource::Kind::Lot, index}] = {{meat.mass.toGrams(), 0, meat.useByDay}};
    }
    for (std::size_t index = 0; index < m_plan.cookings.size(); ++index) {
        const PlannedCooking& cooking = m_plan.cookings[index];
        if (known(cooking))
            larder[{StockSource::Kind::Cooking, index}] = {
                {potOf(cooking).meat.toGrams(), cooking.day, cooking.day + m_problem.fridgeDays}};
    }
    for (int day = 0; day < m_problem.days; ++day) {
        double eaten = 0;
        for (const PlannedMeat& meal : m_plan.meat) {
            const double amount = meal.mass.toGrams();
            if (meal.day != day || !sane("meat", day, amount))
                continue;
            eaten += amount;
            if (take(larder[meal.from], day, amount) > crumb)
                breach("more meat of ", nameOf(meal.from), " is eaten on day ", day,
                       " than can be eaten then");
        }
        if (eaten > m_problem.meatPerDay.toGrams() + crumb)
            breach(eaten, " g of meat are eaten on day ", day);
        for (auto& [source, piles] : larder) {
            const Mass spoilt = Mass::fromGrams(throwAway(piles, day));
            m_out.objective.spoiltMeat += spoilt;
            if (spoilt.toGrams() > 0)
                m_out.spoiling.push_back({day, source, {}, spoilt});
        }
    }
}
} // namespace

Replayed replay(const WeekProblem& problem, const WeekSolution& plan) {
    return Replay(problem, plan).run();
}

} // namespace ladlework::week::rules
