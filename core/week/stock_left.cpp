#include "week/stock_left.h"

#include "week/cooking_time.h"

#include <algorithm>
#include <deque>
#include <map>

namespace ladlework::week {

namespace {
using quantity::Volume;
using Place = kitchen::Lot::Place;

/// What came of one lot or cooking, followed through the plan.
struct Followed {
    Volume fresh; ///< in the refrigerator and never frozen
    int lastDay = 0;
    Volume frozen;
    std::deque<std::pair<int, Volume>> thawed; ///< by the last day it may be drunk, oldest first
};

std::map<StockSource, Followed> begin(const WeekProblem& problem, const WeekSolution& solution) {
    std::map<StockSource, Followed> all;
    for (std::size_t index = 0; index < problem.lots.size(); ++index) {
        const LotOnHand& lot = problem.lots[index];
        Followed& followed = all[{StockSource::Kind::Lot, index}];
        followed.lastDay = lot.useByDay;
        (lot.place == Place::Freezer ? followed.frozen : followed.fresh) = lot.volume;
    }
    for (std::size_t index = 0; index < solution.cookings.size(); ++index) {
        Followed& followed = all[{StockSource::Kind::Cooking, index}];
        followed.fresh = solution.cookings[index].stock;
        followed.lastDay = solution.cookings[index].day + problem.fridgeDays;
    }
    return all;
}

/// Thawed stock goes off first, so it is drunk first.
void drink(Followed& followed, int day, Volume volume) {
    for (auto& [last, left] : followed.thawed) {
        if (last < day || last - thawKeepsDays() >= day)
            continue;
        const Volume drunk = std::min(left, volume);
        left -= drunk;
        volume -= drunk;
    }
    followed.fresh -= volume;
}
} // namespace

std::vector<StockLeft> stockLeft(const WeekProblem& problem, const WeekSolution& solution) {
    std::map<StockSource, Followed> all = begin(problem, solution);
    for (int day = 0; day < problem.days; ++day) {
        for (const StockMove& move : solution.freezing) {
            if (move.day != day)
                continue;
            all[move.from].fresh -= move.volume;
            all[move.from].frozen += move.volume;
        }
        for (const StockMove& move : solution.thawing) {
            if (move.day != day)
                continue;
            all[move.from].frozen -= move.volume;
            all[move.from].thawed.emplace_back(day + thawKeepsDays(), move.volume);
        }
        for (const PlannedServing& serving : solution.servings)
            if (serving.day == day)
                drink(all[serving.from], day, serving.volume);
    }
    std::vector<StockLeft> left;
    const auto add = [&](const StockSource& from, Place place, int lastDay, Volume volume) {
        if (volume > Volume::fromDrops(1) && (place == Place::Freezer || lastDay >= problem.days))
            left.push_back({from, place, lastDay, volume});
    };
    for (const auto& [from, followed] : all) {
        add(from, Place::Fridge, followed.lastDay, followed.fresh);
        for (const auto& [last, volume] : followed.thawed)
            add(from, Place::Fridge, last, volume);
        add(from, Place::Freezer, 0, followed.frozen);
    }
    return left;
}

} // namespace ladlework::week
