#include "week/week_problem.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekProblem)
};

Outcome wrong(const QString& sentence, const QString& place) {
    return problem(Problem::Kind::BadInput, sentence, place);
}

bool isAmount(double value) {
    return std::isfinite(value) && value >= 0;
}

QString placeOf(const char* part, std::size_t index) {
    return QStringLiteral("%1[%2]").arg(QLatin1String(part)).arg(index);
}

Outcome checkDrinkers(const WeekProblem& week) {
    for (std::size_t index = 0; index < week.drinkers.size(); ++index) {
        const Drinking& drinker = week.drinkers[index];
        if (drinker.perDay.size() != static_cast<std::size_t>(week.days))
            return wrong(Words::tr("Give an amount for each of the %1 days.").arg(week.days),
                         placeOf("members", index));
        if (!std::ranges::all_of(drinker.perDay, [](quantity::Volume volume) {
                return isAmount(volume.toMillilitres());
            }))
            return wrong(Words::tr("What someone drinks is 0 or more on each day."),
                         placeOf("members", index));
    }
    return {};
}

Outcome checkPots(const WeekProblem& week) {
    for (std::size_t index = 0; index < week.pots.size(); ++index) {
        const PotChoice& pot = week.pots[index];
        if (!isAmount(pot.stock.toMillilitres()) || !isAmount(pot.meat.toGrams()) ||
            !isAmount(pot.handsOn.toMinutes()) || !isAmount(pot.total.toMinutes()) ||
            !isAmount(pot.cost))
            return wrong(Words::tr("Stock, meat, times and cost of a pot are 0 or more."),
                         placeOf("pots", index));
        if (pot.may.size() != week.drinkers.size())
            return wrong(Words::tr("Say for each member whether they may drink this pot."),
                         placeOf("pots", index));
    }
    return {};
}

Outcome checkStores(const WeekProblem& week) {
    for (std::size_t index = 0; index < week.lots.size(); ++index) {
        const LotOnHand& lot = week.lots[index];
        if (!isAmount(lot.volume.toMillilitres()) || lot.may.size() != week.drinkers.size())
            return wrong(Words::tr("A lot holds 0 or more, and says who may drink it."),
                         placeOf("lots", index));
    }
    for (std::size_t index = 0; index < week.meat.size(); ++index)
        if (!isAmount(week.meat[index].mass.toGrams()))
            return wrong(Words::tr("Meat on hand is 0 or more."), placeOf("meat", index));
    if (!isAmount(week.fridgeRoom.toMillilitres()) || !isAmount(week.freezerRoom.toMillilitres()))
        return wrong(Words::tr("Room in the refrigerator and the freezer is 0 or more."),
                     QStringLiteral("fridge_ml"));
    if (!isAmount(week.meatPerDay.toGrams()))
        return wrong(Words::tr("Meat eaten in a day is 0 or more."),
                     QStringLiteral("meat_g_per_day"));
    return {};
}

Outcome checkCookings(const WeekProblem& week) {
    const auto inside = [&week](int day) {
        return day >= 0 && day < week.days;
    };
    for (std::size_t index = 0; index < week.freeTimes.size(); ++index) {
        const CookingSlot& slot = week.freeTimes[index];
        if (!inside(slot.day) || slot.pots < 0 || !isAmount(slot.length.toMinutes()))
            return wrong(Words::tr("Free time lies on one of the days planned, lasts 0 or more and "
                                   "holds 0 or more pots."),
                         placeOf("slots", index));
    }
    for (std::size_t index = 0; index < week.settled.size(); ++index) {
        const SettledCooking& cooking = week.settled[index];
        if (!inside(cooking.day) || cooking.pot >= week.pots.size())
            return wrong(Words::tr("A cooking that is settled has a pot of the list and a day that "
                                   "is planned."),
                         placeOf("settled", index));
    }
    return {};
}
} // namespace

Outcome check(const WeekProblem& week) {
    if (week.days < 1 || week.days > mostDaysPlanned)
        return wrong(Words::tr("Plan between 1 and %1 days.").arg(mostDaysPlanned),
                     QStringLiteral("days"));
    if (week.fridgeDays < 0)
        return wrong(Words::tr("Stock keeps for 0 or more days."), QStringLiteral("fridge_days"));
    if (!isAmount(week.spill))
        return wrong(Words::tr("The share that is spilt is 0 or more."), QStringLiteral("spill"));
    for (const auto part : {checkDrinkers, checkPots, checkStores, checkCookings})
        if (const Outcome done = part(week); !done)
            return done;
    return {};
}

} // namespace ladlework::week
