#pragma once

#include "week/linear_program.h"
#include "week/week_problem.h"

#include <vector>

namespace ladlework::week {

/// The week as a mixed-integer program, in litres and kilograms.
///
/// It is small because what nobody can tell apart is one thing: pots and lots that the same people
/// may drink are one *kind* of stock, drinkers who may drink the same kinds are one *table*, and
/// all batches of a kind cooked on one day are one *source*. serving_plan.h takes them apart again,
/// which is always possible: each of them keeps as long and goes to the same people.
struct WeekModel {
    struct Kind {
        std::vector<bool> may; ///< by drinker
        std::vector<std::size_t> pots;
        std::vector<std::size_t> frozenLots;
    };
    struct Table {
        std::vector<std::size_t> drinkers;
        std::vector<bool> may;               ///< by kind
        std::vector<double> wanted;          ///< litres by day, spill included
        std::vector<int> shortBy;            ///< column by day; -1 when nothing is wanted
        std::vector<std::vector<int>> given; ///< column by kind and day; -1
    };
    /// Stock of one kind that stands in the refrigerator from one day to another.
    struct Source {
        enum class From { Cooking, Lot, Thaw };
        From from = From::Cooking;
        std::size_t kind = 0;
        int start = 0; ///< cooked or moved on this day; 0 for lots
        int last = 0;  ///< may run past the horizon
        std::vector<std::size_t> lots;
        int frozen = -1;         ///< column: what of a cooking goes into the freezer
        int thawed = -1;         ///< column: how much was moved, of a thaw
        std::vector<int> served; ///< column by day from `start`; -1
        std::vector<int> left;   ///< column by day from `start`: what stands at its end
    };
    struct MeatSource {
        int start = 0;
        int last = 0;
        std::vector<std::size_t> onHand; ///< of WeekProblem::meat; empty: the cookings of a day
        std::vector<int> eaten;
        std::vector<int> left;
    };
    /// The levels in the order of WeekObjective; `overRoom` only where something can be over.
    enum class Level { OverRoom, Short, Spoilt, SpoiltMeat, Cookings, HandsOn, Cost, Spread };

    LinearProgram program;
    std::vector<Level> levelNames;
    std::vector<LinearLevel> levels;
    /// Among equal plans: short late rather than early, as little as can be in and out of the
    /// freezer, and what spoils first drunk first. For a program whose cookings are fixed.
    LinearLevel tidy;
    std::vector<std::vector<int>> cook; ///< column by day and pot; -1 when it cannot be cooked then
    std::vector<Kind> kinds;
    std::vector<Table> tables;
    std::vector<Source> sources;
    std::vector<MeatSource> meat;
    std::vector<std::vector<int>> freezer; ///< column by kind and day: what stands at its end; -1
    std::vector<int> overFridge;           ///< column by day; empty when nothing can be over
    std::vector<int> overFreezer;
    std::vector<int> moreCookings; ///< what an Elastic lets grow: columns by day; empty without
    int moreFridge = -1;
    int moreFreezer = -1;
    std::vector<int> moreOfAnimal;
};

/// What may be more than the problem gives, to find out how much more would help.
struct Elastic {
    bool cookings = false; ///< cookings beyond the free time, as long as any pot needs
    bool fridge = false;
    bool freezer = false;
    bool animals = false; ///< cookings of one animal beyond the limit
};

/// `problem` must pass check().
WeekModel makeWeekModel(const WeekProblem& problem, const Elastic& elastic = {});

} // namespace ladlework::week
