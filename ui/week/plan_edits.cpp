#include "ui/week/plan_edits.h"

#include <algorithm>

namespace ladlework::ui {

namespace {

bool has(const week::WeekPlan& plan, qsizetype index) {
    return index >= 0 && index < plan.placements.size();
}

/// `placements` in place of the plan's own, but on locked days.
void replacePlacements(week::WeekPlan& plan, const QList<week::Placement>& placements) {
    const auto locked = [&plan](const week::Placement& placement) {
        return plan.lockedDays.contains(placement.day);
    };
    plan.placements.removeIf([&](const week::Placement& own) { return !locked(own); });
    for (const week::Placement& placement : placements)
        if (!locked(placement))
            plan.placements << placement;
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
    QList<week::Placement> placements;
    for (week::Placement placement : other.placements) {
        placement.day = plan.start.addDays(other.start.daysTo(placement.day));
        placements << placement;
    }
    replacePlacements(plan, placements);
    for (const week::HouseholdExtra& extra : other.extras)
        if (!plan.extras.contains(extra))
            plan.extras << extra;
    return plan;
}

week::WeekPlan withKept(week::WeekPlan plan, const week::WeekTemplate& kept) {
    QList<week::Placement> placements;
    for (const week::TemplatePlacement& placement : kept.placements)
        placements << week::Placement{plan.start.addDays(placement.day), placement.pot,
                                      placement.start};
    replacePlacements(plan, placements);
    return plan;
}

week::WeekTemplate keptFrom(const week::WeekPlan& plan, const QString& name) {
    week::WeekTemplate kept;
    kept.family = plan.family;
    kept.name = name;
    for (const week::Placement& placement : plan.placements)
        kept.placements << week::TemplatePlacement{
            static_cast<int>(plan.start.daysTo(placement.day)), placement.pot, placement.start};
    return kept;
}

week::WeekPlan withLock(week::WeekPlan plan, QDate day, bool locked) {
    plan.lockedDays.removeAll(day);
    if (locked)
        plan.lockedDays << day;
    std::ranges::sort(plan.lockedDays);
    return plan;
}

week::WeekPlan withHours(week::WeekPlan plan, QDate day, const QList<week::FreeHours>& hours) {
    plan = withUsualHours(std::move(plan), day);
    plan.hours << week::DayHours{day, hours};
    std::ranges::sort(plan.hours, {}, &week::DayHours::day);
    return plan;
}

week::WeekPlan withUsualHours(week::WeekPlan plan, QDate day) {
    plan.hours.removeIf([day](const week::DayHours& own) { return own.day == day; });
    return plan;
}

bool hasOwnHours(const week::WeekPlan& plan, QDate day) {
    return std::ranges::any_of(plan.hours,
                               [day](const week::DayHours& own) { return own.day == day; });
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
