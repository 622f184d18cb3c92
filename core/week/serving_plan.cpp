#include "week/serving_plan.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <numeric>
#include <tuple>

namespace ladlework::week {

namespace {

using quantity::Mass;
using quantity::Volume;
using From = WeekModel::Source::From;

constexpr int none = -1;
/// Litres: less than a hundredth of a millilitre is the solver's rounding, which its levels may add
/// up. A drop is five times that.
constexpr double rounding = 1e-5;
constexpr double noise = 1e-9; ///< litres: no amount at all

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Some of one batch or lot.
struct Piece {
    StockSource from;
    double amount = 0;
};
using Pieces = std::deque<Piece>;

/// Takes an amount from the front of a row of pieces and hands each part to `give`.
template <class Give>
double take(Pieces& pieces, double amount, const Give& give) {
    double taken = 0;
    while (!pieces.empty() && amount - taken > 0) {
        Piece& first = pieces.front();
        const double part = std::min(first.amount, amount - taken);
        if (part > 0)
            give(Piece{first.from, part});
        first.amount -= part;
        taken += part;
        if (first.amount > 0)
            break;
        pieces.pop_front();
    }
    return taken;
}

double sum(const Pieces& pieces) {
    return std::accumulate(pieces.begin(), pieces.end(), 0.0,
                           [](double all, const Piece& piece) { return all + piece.amount; });
}

class PlanMaker {
public:
    PlanMaker(const WeekProblem& problem, const WeekModel& model, const std::vector<double>& point)
        : m_problem(problem), m_model(model), m_point(point) {}
    WeekSolution make();

private:
    [[nodiscard]] double value(int column) const {
        return column == none ? 0.0 : std::max(0.0, m_point[at(column)]);
    }
    void listCookings();
    void fill();
    void freeze(int day);
    void thaw(int day);
    void serve(int day);
    void close(int day);
    void serveMeat();
    void countUp();
    [[nodiscard]] Pieces pour(std::size_t kind, int day);

    const WeekProblem& m_problem;
    const WeekModel& m_model;
    const std::vector<double>& m_point;
    WeekSolution m_plan;
    std::vector<Pieces> m_stands; ///< by source: what is left in it
    std::vector<Pieces> m_frozen; ///< by kind, the oldest first
};

void PlanMaker::listCookings() {
    for (int day = 0; day < m_problem.days; ++day) {
        for (const SettledCooking& settled : m_problem.settled)
            if (settled.day == day)
                m_plan.cookings.push_back(
                    {day, settled.pot, true,
                     settled.stock.value_or(m_problem.pots[settled.pot].stock)});
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot)
            for (long count = std::lround(value(m_model.cook[at(day)][pot])); count > 0; --count)
                m_plan.cookings.push_back({day, pot, false, m_problem.pots[pot].stock});
    }
}

void PlanMaker::fill() {
    m_stands.resize(m_model.sources.size());
    for (std::size_t index = 0; index < m_model.sources.size(); ++index) {
        const WeekModel::Source& source = m_model.sources[index];
        for (const std::size_t lot : source.lots)
            m_stands[index].push_back(
                {{StockSource::Kind::Lot, lot}, m_problem.lots[lot].volume.toLitres()});
        if (source.from != From::Cooking)
            continue;
        for (std::size_t cooking = 0; cooking < m_plan.cookings.size(); ++cooking) {
            const PlannedCooking& cooked = m_plan.cookings[cooking];
            const PotChoice& pot = m_problem.pots[cooked.pot];
            if (cooked.day == source.start && pot.may == m_model.kinds[source.kind].may)
                m_stands[index].push_back(
                    {{StockSource::Kind::Cooking, cooking}, cooked.stock.toLitres()});
        }
    }
    for (const WeekModel::Kind& kind : m_model.kinds) {
        Pieces& frozen = m_frozen.emplace_back();
        for (const std::size_t lot : kind.frozenLots)
            frozen.push_back(
                {{StockSource::Kind::Lot, lot}, m_problem.lots[lot].volume.toLitres()});
    }
}

void PlanMaker::freeze(int day) {
    for (std::size_t index = 0; index < m_model.sources.size(); ++index) {
        const WeekModel::Source& source = m_model.sources[index];
        if (source.start != day || value(source.frozen) <= rounding)
            continue;
        take(m_stands[index], value(source.frozen), [&](const Piece& piece) {
            m_frozen[source.kind].push_back(piece);
            m_plan.freezing.push_back({day, piece.from, Volume::fromLitres(piece.amount)});
        });
    }
}

void PlanMaker::thaw(int day) {
    for (std::size_t index = 0; index < m_model.sources.size(); ++index) {
        const WeekModel::Source& source = m_model.sources[index];
        if (source.from != From::Thaw || source.start != day || value(source.thawed) <= rounding)
            continue;
        take(m_frozen[source.kind], value(source.thawed), [&](const Piece& piece) {
            m_stands[index].push_back(piece);
            m_plan.thawing.push_back({day, piece.from, Volume::fromLitres(piece.amount)});
        });
    }
}

/// What is drunk of a kind on a day, out of its sources; what spoils first comes first.
Pieces PlanMaker::pour(std::size_t kind, int day) {
    std::vector<std::size_t> sources;
    for (std::size_t index = 0; index < m_model.sources.size(); ++index) {
        const WeekModel::Source& source = m_model.sources[index];
        if (source.kind == kind && day >= source.start && day <= source.last &&
            source.served[at(day - source.start)] != none)
            sources.push_back(index);
    }
    std::ranges::stable_sort(sources, {}, [this](std::size_t index) {
        const WeekModel::Source& source = m_model.sources[index];
        return std::tuple(source.last, source.start);
    });
    Pieces poured;
    for (const std::size_t index : sources) {
        const WeekModel::Source& source = m_model.sources[index];
        take(m_stands[index], value(source.served[at(day - source.start)]),
             [&poured](const Piece& piece) { poured.push_back(piece); });
    }
    return poured;
}

void PlanMaker::serve(int day) {
    std::vector<Volume>& missing = m_plan.shortBy.emplace_back(m_problem.drinkers.size());
    std::vector<double> wanted;
    for (const Drinking& drinker : m_problem.drinkers)
        wanted.push_back(drinker.perDay[at(day)].toLitres() * (1.0 + m_problem.spill));

    // What each drinker gets in all: of what their table gets, their share.
    std::vector<double> gets(wanted.size());
    for (const WeekModel::Table& table : m_model.tables) {
        if (table.wanted[at(day)] <= 0)
            continue;
        const double share =
            std::clamp(1.0 - value(table.shortBy[at(day)]) / table.wanted[at(day)], 0.0, 1.0);
        for (const std::size_t drinker : table.drinkers)
            gets[drinker] = wanted[drinker] * share;
    }
    std::vector<double> got(wanted.size());
    for (std::size_t kind = 0; kind < m_model.kinds.size(); ++kind) {
        Pieces poured = pour(kind, day);
        for (const WeekModel::Table& table : m_model.tables) {
            double given = value(table.given[kind][at(day)]);
            for (const std::size_t drinker : table.drinkers) {
                const double part = std::min(given, gets[drinker] - got[drinker]);
                if (part <= noise)
                    continue;
                const double taken = take(poured, part, [&](const Piece& piece) {
                    if (piece.amount > noise)
                        m_plan.servings.push_back(
                            {day, drinker, piece.from, Volume::fromLitres(piece.amount)});
                });
                got[drinker] += taken;
                given -= taken;
            }
        }
    }
    double all = 0;
    double served = 0;
    for (std::size_t drinker = 0; drinker < wanted.size(); ++drinker) {
        const double lacks = wanted[drinker] - got[drinker];
        missing[drinker] = Volume::fromLitres(lacks > rounding ? lacks : 0.0);
        all += wanted[drinker];
        served += got[drinker];
    }
    m_plan.stores.push_back(
        {Volume(), Volume(), Volume::fromLitres(all), Volume::fromLitres(served)});
}

void PlanMaker::close(int day) {
    double fridge = 0;
    double freezer = 0;
    for (const Pieces& frozen : m_frozen)
        freezer += sum(frozen);
    for (std::size_t index = 0; index < m_model.sources.size(); ++index) {
        const WeekModel::Source& source = m_model.sources[index];
        if (day < source.start || day > source.last)
            continue;
        fridge += sum(m_stands[index]);
        if (day != source.last)
            continue;
        for (const Piece& piece : m_stands[index])
            if (piece.amount > rounding)
                m_plan.spoiling.push_back(
                    {day, piece.from, Volume::fromLitres(piece.amount), Mass()});
    }
    m_plan.stores.back().fridge = Volume::fromLitres(fridge);
    m_plan.stores.back().freezer = Volume::fromLitres(freezer);
}

/// Meat is one for all: each day eats what goes off first.
void PlanMaker::serveMeat() {
    struct Dish {
        StockSource from;
        int start = 0;
        int last = 0;
        double kilograms = 0;
    };
    std::vector<Dish> dishes;
    for (std::size_t index = 0; index < m_problem.meat.size(); ++index)
        if (m_problem.meat[index].useByDay >= 0)
            dishes.push_back({{StockSource::Kind::Lot, index},
                              0,
                              m_problem.meat[index].useByDay,
                              m_problem.meat[index].mass.toKilograms()});
    for (std::size_t index = 0; index < m_plan.cookings.size(); ++index) {
        const PlannedCooking& cooking = m_plan.cookings[index];
        dishes.push_back({{StockSource::Kind::Cooking, index},
                          cooking.day,
                          cooking.day + m_problem.fridgeDays,
                          m_problem.pots[cooking.pot].meat.toKilograms()});
    }
    std::ranges::stable_sort(dishes, {},
                             [](const Dish& dish) { return std::tuple(dish.last, dish.start); });
    for (int day = 0; day < m_problem.days; ++day) {
        double room = m_problem.meatPerDay.toKilograms();
        for (Dish& dish : dishes) {
            if (day < dish.start || day > dish.last)
                continue;
            const double eaten = std::min(room, dish.kilograms);
            if (eaten > rounding)
                m_plan.meat.push_back({day, dish.from, Mass::fromKilograms(eaten)});
            dish.kilograms -= eaten;
            room -= eaten;
            if (day == dish.last && dish.kilograms > rounding)
                m_plan.spoiling.push_back(
                    {day, dish.from, Volume(), Mass::fromKilograms(dish.kilograms)});
        }
    }
}

void PlanMaker::countUp() {
    WeekObjective& objective = m_plan.objective;
    for (const std::vector<Volume>& day : m_plan.shortBy)
        for (const Volume missing : day)
            objective.shortBy += missing;
    for (const Spoiling& spoiling : m_plan.spoiling) {
        objective.spoilt += spoiling.volume;
        objective.spoiltMeat += spoiling.meat;
    }
    for (const StoreDay& store : m_plan.stores) {
        const auto over = [](Volume stands, Volume room) {
            const Volume more = stands - room;
            return more.toLitres() > rounding ? more : Volume();
        };
        objective.overRoom +=
            over(store.fridge, m_problem.fridgeRoom) + over(store.freezer, m_problem.freezerRoom);
    }
    for (const PlannedCooking& cooking : m_plan.cookings) {
        ++objective.cookings;
        objective.handsOn += m_problem.pots[cooking.pot].handsOn;
        objective.cost += m_problem.pots[cooking.pot].cost;
    }
}

WeekSolution PlanMaker::make() {
    listCookings();
    fill();
    for (int day = 0; day < m_problem.days; ++day) {
        freeze(day);
        thaw(day);
        serve(day);
        close(day);
    }
    serveMeat();
    countUp();
    return std::move(m_plan);
}

} // namespace

WeekSolution servingPlan(const WeekProblem& problem, const WeekModel& model,
                         const std::vector<double>& point) {
    return PlanMaker(problem, model, point).make();
}

} // namespace ladlework::week
