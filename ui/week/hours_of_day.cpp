#include "ui/week/hours_of_day.h"

#include "ui/week/plan_edits.h"
#include "week/cooking_time.h"

#include <algorithm>
#include <cmath>

namespace ladlework::ui {

namespace {

/// What new free hours begin with where no pot tells how long cooking takes.
constexpr double usualLength = 4;

/// What the longest pot of the family needs, in whole half hours.
quantity::Duration longestPot(const casebook::Casebook& casebook) {
    quantity::Duration longest;
    for (const kitchen::Pot& pot : casebook.records().pots)
        longest = std::max(longest, week::cookingTime(pot).total);
    if (longest <= quantity::Duration())
        return quantity::Duration::fromHours(usualLength);
    return quantity::Duration::fromHours(std::ceil(longest.toHours() * 2) / 2);
}

} // namespace

DayHoursShown hoursOfDay(const casebook::Casebook& casebook, const week::WeekPlan& plan,
                         QDate day) {
    const QList<week::UsualHours>& usual = casebook.records().usualHours;
    DayHoursShown shown;
    shown.day = day;
    shown.hours = week::hoursOn(plan, usual, day);
    shown.own = hasOwnHours(plan, day);
    shown.toldAtAll = !usual.isEmpty();
    shown.past = day < casebook.today();
    shown.longest = longestPot(casebook);
    return shown;
}

} // namespace ladlework::ui
