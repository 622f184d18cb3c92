#pragma once

#include "quantity/measure.h"
#include "week/week_problem.h"
#include "week/week_solver.h"

#include <QString>
#include <vector>

namespace ladlework::week {

/// A change that was solved and ends the shortage, or the part of it that any such change can end.
struct WayOut {
    enum class Kind {
        MoreSlots,   ///< cookings more, on these days
        LongerSlots, ///< the free time of these days as long as the longest pot needs
        BiggerPots,  ///< every pot `factor` times as large
        FridgeRoom,  ///< so much more room
        FreezerRoom,
        AnotherAnimal,  ///< this drinker could have this pot
        MoreOfAnAnimal, ///< the limit of cookings of one animal lifted
        NewPot,         ///< a pot that this drinker may have is missing altogether
        Several         ///< several of the above together; its parts are in `parts`
    };
    Kind kind = Kind::MoreSlots;
    std::vector<int> days;
    double factor = 1;
    quantity::Volume room;
    std::size_t drinker = 0;
    std::size_t pot = 0;
    std::vector<WayOut> parts;
    quantity::Volume leavesShort; ///< what stays short with it; 0: it is enough
};

/// What stands in the way of a week in which nobody is short, and the smallest changes that would
/// mend it, each found by solving the week with it. Empty when nobody is short. `solution` is that
/// of the problem.
std::vector<WayOut> waysOut(const WeekProblem& problem, const WeekSolution& solution,
                            const SolveLimits& limits = {});

/// Sentences for a way out: what is in the way, and what would help.
struct InTheWay {
    QString what;
    QString wouldHelp;
};
InTheWay inWords(const WeekProblem& problem, const WayOut& way, quantity::MeasureSystem measures,
                 const std::function<QString(int)>& dayName);

} // namespace ladlework::week
