#include "casebook/carried_stock.h"
#include "casebook/casebook.h"

#include <algorithm>

namespace ladlework::casebook {

namespace {
/// How many weeks ahead leftovers are followed: further out the amounts are too unsure to matter.
constexpr int weeksFollowed = 4;

quantity::Volume drunkOn(const FamilyRecords& records, MemberId member, QDate day) {
    quantity::Volume drunk;
    for (const intake::IntakeEntry& entry : records.entries) {
        if (entry.member == member && entry.day == day)
            drunk += entry.drunk;
    }
    return drunk;
}

/// What is still to be drunk: in a week that holds today nothing on the days gone, and today what
/// the log has not yet got.
week::Demand demandOf(const Casebook& casebook, const people::Member& member, QDate start) {
    week::Demand demand;
    demand.member = member.id;
    demand.name = member.name;
    demand.perDay = casebook.plannedAmounts(member.id, start, week::daysAWeek);
    const qint64 gone = start.daysTo(casebook.today());
    if (gone < 0 || gone >= week::daysAWeek)
        return demand;
    std::fill(demand.perDay.begin(), demand.perDay.begin() + gone, quantity::Volume());
    quantity::Volume& today = demand.perDay[gone];
    today = std::max(today - drunkOn(casebook.records(), member.id, casebook.today()),
                     quantity::Volume());
    return demand;
}

/// The cookings of earlier plans that still stand in the refrigerator when the week of today
/// starts.
QList<week::Placement> cookedBefore(const Casebook& casebook, QDate start) {
    const FamilyRecords& records = casebook.records();
    const QDate oldest = casebook.today().addDays(-records.practice.fridgeDays);
    QList<week::Placement> placements;
    for (const week::WeekPlan& plan : records.weeks) {
        for (const week::Placement& placement : plan.placements) {
            if (placement.day >= oldest && placement.day < start)
                placements.append(placement);
        }
    }
    return placements;
}

week::OutlookInput inputOf(const Casebook& casebook, const week::WeekPlan& plan, int weeksBack,
                           CarriedStock& stock) {
    const FamilyRecords& records = casebook.records();
    week::OutlookInput input;
    input.start = plan.start;
    input.days = week::daysAWeek;
    input.spill = records.practice.spill;
    input.fridgeRoom = records.family.fridgeRoom;
    input.freezerRoom = records.family.freezerRoom;
    input.measures = records.family.measures;
    for (const people::Member& member : records.members)
        input.demands.append(demandOf(casebook, member, plan.start));
    if (!plan.start.isValid())
        return input;

    QList<week::Placement> placements = plan.placements;
    const QDate last = plan.start.addDays(week::daysAWeek - 1);
    if (plan.start <= casebook.today() && casebook.today() <= last) {
        input.sources = stock.lots(plan.start);
        placements = cookedBefore(casebook, plan.start) + placements;
    } else if (plan.start > casebook.today() && weeksBack > 0) {
        const week::WeekPlan before = casebook.plan(plan.start.addDays(-week::daysAWeek));
        input.sources = CarriedStock::leftOver(inputOf(casebook, before, weeksBack - 1, stock));
    }
    const bool isOver = last < casebook.today();
    input.sources +=
        isOver ? stock.planned(placements, plan.start) : stock.cookings(placements, plan.start);
    return input;
}
} // namespace

week::OutlookInput Casebook::outlookInput(const week::WeekPlan& plan) const {
    CarriedStock stock(*this);
    return inputOf(*this, plan, weeksFollowed, stock);
}

} // namespace ladlework::casebook
