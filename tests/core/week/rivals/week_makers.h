#pragma once

#include "week/week_problem.h"

#include <QString>

#include <vector>

// Short ways to write a week down in a test. Amounts in mL, g, min.
namespace ladlework::week::samples {

inline quantity::Volume ml(double amount) {
    return quantity::Volume::fromMillilitres(amount);
}
inline quantity::Mass grams(double amount) {
    return quantity::Mass::fromGrams(amount);
}
inline quantity::Duration minutes(double amount) {
    return quantity::Duration::fromMinutes(amount);
}

/// A horizon of rooms that never fill, nothing spilt, any amount of meat eaten.
inline WeekProblem emptyWeek(int days) {
    WeekProblem problem;
    problem.days = days;
    problem.fridgeRoom = ml(100000);
    problem.freezerRoom = ml(100000);
    problem.meatPerDay = grams(100000);
    problem.spill = 0;
    return problem;
}

/// To be called before pots and lots are added.
inline void addDrinker(WeekProblem& problem, double perDay) {
    problem.drinkers.push_back(
        {QStringLiteral("drinker"),
         std::vector<quantity::Volume>(static_cast<std::size_t>(problem.days), ml(perDay))});
}

/// Two hours of work, six in all, for everyone.
inline PotChoice& addPot(WeekProblem& problem, double stock, double meat = 0,
                         const QString& animal = QStringLiteral("chicken")) {
    PotChoice pot;
    pot.name = animal;
    pot.animal = animal;
    pot.stock = ml(stock);
    pot.meat = grams(meat);
    pot.handsOn = minutes(120);
    pot.total = minutes(360);
    pot.cost = 10;
    pot.may.assign(problem.drinkers.size(), true);
    return problem.pots.emplace_back(pot);
}

inline void addSlot(WeekProblem& problem, int day, double length = 360, int pots = 1) {
    problem.freeTimes.push_back({day, minutes(length), pots});
}

inline LotOnHand& addLot(WeekProblem& problem, double amount, kitchen::Lot::Place place,
                         int useByDay = 0) {
    return problem.lots.emplace_back(LotOnHand{QStringLiteral("lot"), ml(amount), place, useByDay,
                                               std::vector<bool>(problem.drinkers.size(), true)});
}

} // namespace ladlework::week::samples
