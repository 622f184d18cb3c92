#include "casebook/planned_week.h"

#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Place {
    week::FreeHours hours;
    int taken = 0;
};

/// Starts for pots of one day: `pots` by length, the longest first, each in the shortest hours that
/// still hold it, so that a short pot leaves long hours to long ones.
QTime startFor(std::vector<Place>& places, quantity::Duration length) {
    Place* best = nullptr;
    for (Place& place : places) {
        if (place.hours.length < length || place.taken >= place.hours.pots)
            continue;
        if (best == nullptr || place.hours.length < best->hours.length)
            best = &place;
    }
    if (best == nullptr)
        return {};
    ++best->taken;
    return best->hours.from;
}
} // namespace

week::WeekPlan plannedWeek(const Casebook& casebook, const week::WeekPlan& plan,
                           const WeekAhead& ahead, const week::WeekSolution& solution) {
    week::WeekPlan planned = plan;
    planned.placements.clear();
    for (qsizetype index = 0; index < plan.placements.size(); ++index) {
        const bool settled = std::ranges::find(ahead.placements, index) != ahead.placements.end();
        // A day that is over stays as it was; so does a pot whose jars are on hand already.
        const week::Placement& placement = plan.placements[index];
        const bool cooked = std::ranges::any_of(
            casebook.records().batches, [&placement](const kitchen::Batch& batch) {
                return batch.pot == placement.pot && batch.day == placement.day;
            });
        if (settled || cooked || placement.day < ahead.start)
            planned.placements.append(placement);
    }
    for (int day = 0; day < ahead.problem.days; ++day) {
        std::vector<std::size_t> pots;
        for (const week::PlannedCooking& cooking : solution.cookings)
            if (cooking.day == day && !cooking.settled)
                pots.push_back(cooking.pot);
        std::ranges::stable_sort(pots, [&ahead](std::size_t a, std::size_t b) {
            return ahead.problem.pots[a].total > ahead.problem.pots[b].total;
        });
        const QDate date = ahead.start.addDays(day);
        std::vector<Place> places;
        for (const week::FreeHours& hours :
             week::hoursOn(plan, casebook.records().usualHours, date))
            places.push_back({hours, 0});
        for (const std::size_t pot : pots)
            planned.placements.append(
                {date, ahead.pots[pot], startFor(places, ahead.problem.pots[pot].total)});
    }
    return planned;
}

} // namespace ladlework::casebook
