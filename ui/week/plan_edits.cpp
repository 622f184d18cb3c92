#include "ui/week/plan_edits.h"

#include <algorithm>

namespace ladlework::ui {

namespace {

bool has(const week::WeekPlan& plan, qsizetype index) {
    return index >= 0 && index < plan.placements.size();
}

} // namespace

week::WeekPlan withPot(week::WeekPlan plan, PotId pot, QDate day) {
    week::Placement placement{day, pot, QTime()};
    for (const week::Placement& other : std::as_const(plan.placements))
        if (other.pot == pot && other.start.isValid())
            placement.start = other.start;
    plan.placements << placement;
    return plan;
}

week::WeekPlan withoutPlacement(week::WeekPlan plan, qsizetype index) {
    if (has(plan, index))
        plan.placements.removeAt(index);
    return plan;
}

week::WeekPlan withMove(week::WeekPlan plan, qsizetype index, QDate day) {
    if (has(plan, index))
        plan.placements[index].day = day;
    return plan;
}

week::WeekPlan withStart(week::WeekPlan plan, qsizetype index, QTime start) {
    if (has(plan, index))
        plan.placements[index].start = start;
    return plan;
}

week::WeekPlan withCopyOf(week::WeekPlan plan, const week::WeekPlan& other) {
    plan.placements.clear();
    for (week::Placement placement : other.placements) {
        placement.day = plan.start.addDays(other.start.daysTo(placement.day));
        plan.placements << placement;
    }
    return plan;
}

week::WeekPlan withAtHome(week::WeekPlan plan, const QString& item, quantity::Mass mass) {
    plan.atHome.removeIf([&item](const week::AtHome& atHome) { return atHome.item == item; });
    if (mass > quantity::Mass())
        plan.atHome << week::AtHome{item, mass};
    return plan;
}

week::WeekPlan withExtra(week::WeekPlan plan, const week::HouseholdExtra& extra) {
    plan.extras << extra;
    return plan;
}

week::WeekPlan withoutExtra(week::WeekPlan plan, const week::HouseholdExtra& extra) {
    if (const qsizetype index = plan.extras.lastIndexOf(extra); index >= 0)
        plan.extras.removeAt(index);
    return plan;
}

QList<qsizetype> placementsOn(const week::WeekPlan& plan, QDate day) {
    QList<qsizetype> found;
    for (qsizetype i = 0; i < plan.placements.size(); ++i)
        if (plan.placements.at(i).day == day)
            found << i;
    std::stable_sort(found.begin(), found.end(), [&plan](qsizetype a, qsizetype b) {
        const QTime first = plan.placements.at(a).start;
        const QTime second = plan.placements.at(b).start;
        if (first.isValid() != second.isValid())
            return first.isValid();
        return first.isValid() && first < second;
    });
    return found;
}

} // namespace ladlework::ui
