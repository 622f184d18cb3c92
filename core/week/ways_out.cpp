#include "week/in_the_way.h"
#include "week/level_solver.h"
#include "week/week_model.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace ladlework::week {

namespace {

using quantity::Volume;

constexpr int none = -1;
constexpr double noticeable = 1e-3; ///< litres: what is less is no way out of anything
/// How much larger pots are tried.
constexpr double factors[] = {1.1, 1.25, 1.5, 1.75, 2.0};

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Levels up to the shortage: who is short is all that matters here.
std::vector<LinearLevel> shortLevels(const WeekModel& model) {
    std::vector<LinearLevel> levels;
    for (std::size_t index = 0; index < model.levels.size(); ++index)
        if (model.levelNames[index] <= WeekModel::Level::Short)
            levels.push_back(model.levels[index]);
    return levels;
}

LinearLevel sumOf(const std::vector<int>& columns, double grain) {
    LinearLevel level;
    for (const int column : columns)
        if (column != none)
            level.terms.emplace_back(column, 1.0);
    level.grain = grain;
    return level;
}

class Search {
public:
    Search(const WeekProblem& problem, const WeekSolution& solution, const SolveLimits& limits)
        : m_problem(problem), m_solution(solution), m_now(solution.objective.shortBy.toLitres()),
          m_limits(limits) {
        m_limits.progress = {};
    }
    std::vector<WayOut> run();

private:
    [[nodiscard]] bool stopped() const { return m_limits.stop.stop_requested(); }
    /// The shortage of a changed week in litres; what it is now when it could not be solved.
    [[nodiscard]] double shortOf(const WeekProblem& changed) const;
    void keep(WayOut way, double leaves);
    [[nodiscard]] std::vector<std::size_t> shortDrinkers() const;
    void tryElastic(const Elastic& elastic, WayOut::Kind kind);
    void tryLongerSlots();
    void tryBiggerPots();
    void tryAnimals(std::size_t drinker);
    void findMissingPots();

    const WeekProblem& m_problem;
    const WeekSolution& m_solution;
    double m_now;
    SolveLimits m_limits;
    std::vector<WayOut> m_ways;
};

double Search::shortOf(const WeekProblem& changed) const {
    const WeekModel model = makeWeekModel(changed);
    const std::vector<LinearLevel> levels = shortLevels(model);
    const LevelsOutcome outcome = solveLevels(model.program, levels, {}, m_limits);
    return outcome.levels.size() == levels.size() ? outcome.levels.back().value : m_now;
}

void Search::keep(WayOut way, double leaves) {
    if (leaves > m_now - noticeable)
        return;
    way.leavesShort = Volume::fromLitres(leaves > noticeable ? leaves : 0.0);
    m_ways.push_back(std::move(way));
}

std::vector<std::size_t> Search::shortDrinkers() const {
    std::vector<std::size_t> found;
    for (std::size_t drinker = 0; drinker < m_problem.drinkers.size(); ++drinker)
        if (std::ranges::any_of(m_solution.shortBy, [&](const std::vector<Volume>& day) {
                return day[drinker].toLitres() > noticeable;
            }))
            found.push_back(drinker);
    return found;
}

/// What grew, and by how much, in a point of an elastic model.
std::vector<WayOut> grown(const WeekModel& model, const std::vector<double>& point) {
    std::vector<WayOut> parts;
    WayOut cookings;
    cookings.kind = WayOut::Kind::MoreSlots;
    for (std::size_t day = 0; day < model.moreCookings.size(); ++day)
        for (long more = std::lround(point[at(model.moreCookings[day])]); more > 0; --more)
            cookings.days.push_back(static_cast<int>(day));
    if (!cookings.days.empty())
        parts.push_back(cookings);
    const auto room = [&](int column, WayOut::Kind kind) {
        if (column == none || point[at(column)] <= noticeable)
            return;
        WayOut way;
        way.kind = kind;
        way.room = Volume::fromLitres(point[at(column)]);
        parts.push_back(way);
    };
    room(model.moreFridge, WayOut::Kind::FridgeRoom);
    room(model.moreFreezer, WayOut::Kind::FreezerRoom);
    WayOut animal;
    animal.kind = WayOut::Kind::MoreOfAnAnimal;
    for (const int column : model.moreOfAnimal)
        animal.factor += std::round(point[at(column)]);
    animal.factor -= 1;
    if (animal.factor > 0)
        parts.push_back(animal);
    return parts;
}

void Search::tryElastic(const Elastic& elastic, WayOut::Kind kind) {
    const WeekModel model = makeWeekModel(m_problem, elastic);
    std::vector<LinearLevel> levels = shortLevels(model);
    const std::size_t shortLevel = levels.size() - 1;
    levels.push_back(sumOf(model.moreCookings, 1.0));
    levels.push_back(sumOf(model.moreOfAnimal, 1.0));
    levels.push_back(sumOf({model.moreFridge, model.moreFreezer}, 0));
    const LevelsOutcome outcome = solveLevels(model.program, levels, {}, m_limits);
    if (outcome.levels.size() != levels.size())
        return;
    std::vector<WayOut> parts = grown(model, outcome.point);
    if (parts.empty())
        return;
    WayOut way = parts.front();
    if (kind == WayOut::Kind::Several) {
        if (parts.size() < 2)
            return;
        way = WayOut();
        way.kind = kind;
        way.parts = std::move(parts);
    }
    keep(std::move(way), outcome.levels[shortLevel].value);
}

/// Days on which only a longer time is wanted: as few as will do.
void Search::tryLongerSlots() {
    quantity::Duration longest;
    for (const PotChoice& pot : m_problem.pots)
        longest = std::max(longest, pot.total);
    const auto lengthened = [&](const std::set<int>& days) {
        WeekProblem changed = m_problem;
        for (CookingSlot& slot : changed.freeTimes)
            if (days.contains(slot.day))
                slot.length = std::max(slot.length, longest);
        return changed;
    };
    std::set<int> days;
    for (const CookingSlot& slot : m_problem.freeTimes)
        if (slot.length < longest && slot.pots > 0)
            days.insert(slot.day);
    if (days.empty())
        return;
    const double best = shortOf(lengthened(days));
    if (best > m_now - noticeable)
        return;
    for (const int day : std::set<int>(days)) {
        std::set<int> fewer = days;
        fewer.erase(day);
        if (!stopped() && shortOf(lengthened(fewer)) <= best + noticeable)
            days = fewer;
    }
    WayOut way;
    way.kind = WayOut::Kind::LongerSlots;
    way.days.assign(days.begin(), days.end());
    keep(std::move(way), best);
}

void Search::tryBiggerPots() {
    double best = m_now;
    WayOut way;
    way.kind = WayOut::Kind::BiggerPots;
    for (const double factor : factors) {
        if (stopped() || best <= noticeable)
            break;
        WeekProblem changed = m_problem;
        for (PotChoice& pot : changed.pots)
            pot.stock = pot.stock * factor;
        const double leaves = shortOf(changed);
        if (leaves < best - noticeable) {
            best = leaves;
            way.factor = factor;
        }
    }
    keep(std::move(way), best);
}

/// Each animal that this drinker may not have, tried as if they might.
void Search::tryAnimals(std::size_t drinker) {
    std::set<QString> tried;
    for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
        const QString& animal = m_problem.pots[pot].animal;
        const bool could = m_problem.couldTry.empty() || m_problem.couldTry[drinker][pot];
        if (stopped() || !could || m_problem.pots[pot].may[drinker] || tried.contains(animal))
            continue;
        tried.insert(animal);
        WeekProblem changed = m_problem;
        for (std::size_t other = pot; other < changed.pots.size(); ++other)
            if (changed.pots[other].animal == animal &&
                (m_problem.couldTry.empty() || m_problem.couldTry[drinker][other]))
                changed.pots[other].may[drinker] = true;
        WayOut way;
        way.kind = WayOut::Kind::AnotherAnimal;
        way.drinker = drinker;
        way.pot = pot;
        keep(std::move(way), shortOf(changed));
    }
}

void Search::findMissingPots() {
    for (const std::size_t drinker : shortDrinkers()) {
        const bool has = std::ranges::any_of(
            m_problem.pots, [&](const PotChoice& pot) { return pot.may[drinker]; });
        if (has)
            continue;
        WayOut way;
        way.kind = WayOut::Kind::NewPot;
        way.drinker = drinker;
        m_ways.push_back(way);
    }
}

std::vector<WayOut> Search::run() {
    if (m_now <= noticeable)
        return {};
    findMissingPots();
    struct Single {
        WayOut::Kind kind = WayOut::Kind::MoreSlots;
        Elastic elastic;
    };
    const Single singles[] = {{WayOut::Kind::MoreSlots, {.cookings = true}},
                              {WayOut::Kind::FridgeRoom, {.fridge = true}},
                              {WayOut::Kind::FreezerRoom, {.freezer = true}},
                              {WayOut::Kind::MoreOfAnAnimal, {.animals = true}}};
    for (const Single& single : singles)
        if (!stopped())
            tryElastic(single.elastic, single.kind);
    if (!stopped())
        tryLongerSlots();
    if (!stopped())
        tryBiggerPots();
    for (const std::size_t drinker : shortDrinkers())
        tryAnimals(drinker);
    const bool mended = std::ranges::any_of(m_ways, [](const WayOut& way) {
        return way.kind != WayOut::Kind::NewPot && way.leavesShort <= Volume();
    });
    if (!mended && !stopped())
        tryElastic({.cookings = true, .fridge = true, .freezer = true, .animals = true},
                   WayOut::Kind::Several);
    // What mends all comes first, then what leaves least.
    std::ranges::stable_sort(m_ways, {}, [](const WayOut& way) {
        return std::pair(way.kind != WayOut::Kind::NewPot, way.leavesShort);
    });
    return std::move(m_ways);
}

} // namespace

std::vector<WayOut> waysOut(const WeekProblem& problem, const WeekSolution& solution,
                            const SolveLimits& limits) {
    return Search(problem, solution, limits).run();
}

} // namespace ladlework::week
