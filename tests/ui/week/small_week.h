#pragma once

#include "casebook/week_ahead.h"

namespace ladlework::ui {

/// A week with one drinker of two cups a day and a pot of two quarts (eight cups) that anyone may
/// drink, two hours free on each day, and room for two quarts in the refrigerator.
inline casebook::WeekAhead smallWeek() {
    using quantity::Volume;
    casebook::WeekAhead ahead;
    ahead.start = QDate(2026, 11, 2);
    week::WeekProblem& problem = ahead.problem;
    problem.spill = 0;
    problem.fridgeDays = 3;
    problem.fridgeRoom = Volume::fromQuarts(2);
    problem.drinkers = {{QStringLiteral("Ana"), std::vector<Volume>(7, Volume::fromCups(2))}};
    week::PotChoice pot;
    pot.name = QStringLiteral("Chicken legs");
    pot.animal = QStringLiteral("chicken");
    pot.stock = Volume::fromQuarts(2);
    pot.handsOn = quantity::Duration::fromMinutes(40);
    pot.total = quantity::Duration::fromHours(2);
    pot.may = {true};
    problem.pots = {pot};
    for (int day = 0; day < problem.days; ++day)
        problem.freeTimes.push_back({day, quantity::Duration::fromHours(2), 1});
    problem.couldTry = {{true}};
    ahead.members = {MemberId{1}};
    ahead.pots = {PotId{1}};
    return ahead;
}

/// A week that takes the solver long: many drinkers, animals and pots, four weeks, and too little
/// room and time, so that the levels are hard to prove.
inline casebook::WeekAhead longWeek() {
    using quantity::Volume;
    casebook::WeekAhead ahead = smallWeek();
    week::WeekProblem& problem = ahead.problem;
    constexpr std::size_t drinkers = 12;
    constexpr std::size_t pots = 16;
    problem.days = week::mostDaysPlanned;
    problem.drinkers.clear();
    problem.pots.clear();
    problem.freeTimes.clear();
    problem.couldTry.clear();
    problem.freezerRoom = Volume::fromQuarts(3);
    problem.meatPerDay = quantity::Mass::fromGrams(450);
    problem.mostCookingsPerAnimal = 3;
    problem.spreadAnimals = true;
    for (std::size_t who = 0; who < drinkers; ++who) {
        week::Drinking drinker;
        drinker.name = QStringLiteral("Drinker %1").arg(who);
        for (int day = 0; day < problem.days; ++day)
            drinker.perDay.push_back(
                Volume::fromMillilitres(90.0 + 13.0 * static_cast<double>(who) + 7.0 * (day % 5)));
        problem.drinkers.push_back(std::move(drinker));
    }
    for (std::size_t which = 0; which < pots; ++which) {
        week::PotChoice pot;
        const auto number = static_cast<double>(which);
        pot.name = QStringLiteral("Pot %1").arg(which);
        pot.animal = QStringLiteral("Animal %1").arg(which / 2);
        pot.stock = Volume::fromMillilitres(1900.0 + 173.0 * number);
        pot.meat = quantity::Mass::fromGrams(700.0 + 61.0 * number);
        pot.handsOn = quantity::Duration::fromMinutes(31.0 + 3.0 * number);
        pot.total = quantity::Duration::fromHours(2.0 + 0.5 * number);
        pot.cost = 7.0 + 1.3 * number;
        for (std::size_t who = 0; who < drinkers; ++who)
            pot.may.push_back((who * 7 + which * 3) % 5 != 0);
        problem.pots.push_back(std::move(pot));
    }
    for (int day = 0; day < problem.days; ++day)
        if (day % 7 != 2)
            problem.freeTimes.push_back({day, quantity::Duration::fromHours(4.0 + day % 5), 2});
    return ahead;
}

} // namespace ladlework::ui
