#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/batch.h"
#include "quantity/duration.h"
#include "quantity/mass.h"
#include "quantity/volume.h"

#include <QList>
#include <QString>
#include <optional>
#include <vector>

namespace ladlework::week {

/// Days count from 0, the first day of the horizon.
inline constexpr int mostDaysPlanned = 28;

/// Someone who drinks.
struct Drinking {
    QString name;
    std::vector<quantity::Volume> perDay; ///< one for each day, what is spilt not included
};

/// A pot that can be cooked, any number of times.
struct PotChoice {
    QString name;
    QString animal; ///< what most_cookings_per_animal counts by
    quantity::Volume stock;
    quantity::Mass meat;
    quantity::Duration handsOn;
    quantity::Duration total; ///< from the first move to the stock cooled; must fit a slot
    double cost = 0;
    std::vector<bool> may; ///< by drinker: who may drink it
};

/// Time for cooking on a day: up to `pots` pots, each no longer than `length`.
struct CookingSlot {
    int day = 0;
    quantity::Duration length;
    int pots = 1;
};

/// Stock on hand.
struct LotOnHand {
    QString name;
    quantity::Volume volume;
    kitchen::Lot::Place place = kitchen::Lot::Place::Fridge;
    int useByDay = 0; ///< the last day it may be drunk; not looked at in the freezer
    std::vector<bool> may;
};

/// Cooked meat on hand that is still to be eaten.
struct MeatOnHand {
    quantity::Mass mass;
    int useByDay = 0;
};

/// A cooking that is settled: in the plan by hand or on a locked day. It needs no slot.
struct SettledCooking {
    int day = 0;
    std::size_t pot = 0;                        ///< index into WeekProblem::pots
    std::optional<quantity::Volume> stock = {}; ///< measured; else what the pot makes
};

/// What a week is planned from. The meaning of every part is that of `ladlework reckon week`.
struct WeekProblem {
    int days = 7; ///< 1 to mostDaysPlanned
    std::vector<Drinking> drinkers;
    std::vector<PotChoice> pots;
    std::vector<CookingSlot> freeTimes;
    std::vector<LotOnHand> lots;
    std::vector<MeatOnHand> meat;
    std::vector<SettledCooking> settled;
    int fridgeDays = 3; ///< stock and meat keep from the day of cooking to this many days later
    quantity::Volume fridgeRoom;
    quantity::Volume freezerRoom;
    quantity::Mass meatPerDay;
    double spill = 0.10;           ///< share added to what is drunk
    int mostCookingsPerAnimal = 0; ///< in the horizon; 0: as many as it takes
    /// By drinker and pot: may be named as a way out when the week is short. Never someone's
    /// allergy. Empty: any.
    std::vector<std::vector<bool>> couldTry;
    /// As a last level, no animal more often than it must.
    bool spreadAnimals = false;
};

/// Days in range, `may` and `perDay` as long as they must be, nothing negative or not finite,
/// settled cookings of known pots. The place names the part.
Outcome check(const WeekProblem& problem);

/// Where stock comes from.
struct StockSource {
    enum class Kind { Lot, Cooking };
    Kind kind = Kind::Cooking;
    std::size_t index = 0; ///< into WeekProblem::lots, or WeekSolution::cookings
    friend auto operator<=>(const StockSource&, const StockSource&) = default;
};

struct PlannedCooking {
    int day = 0;
    std::size_t pot = 0;
    bool settled = false;
    quantity::Volume stock = {}; ///< what it makes
    friend bool operator==(const PlannedCooking&, const PlannedCooking&) = default;
};
struct PlannedServing {
    int day = 0;
    std::size_t drinker = 0;
    StockSource from;
    quantity::Volume volume;
};
/// Stock moved on a day: from the pot into the freezer, or from the freezer into the refrigerator.
struct StockMove {
    int day = 0;
    StockSource from;
    quantity::Volume volume;
};
struct PlannedMeat {
    int day = 0;
    StockSource from; ///< Lot: index into WeekProblem::meat
    quantity::Mass mass;
};
/// What is poured or thrown away because its last day is over.
struct Spoiling {
    int day = 0; ///< its last day
    StockSource from;
    quantity::Volume volume;
    quantity::Mass meat;
};
/// What stands at the end of a day, before what spoils then is taken out.
struct StoreDay {
    quantity::Volume fridge;
    quantity::Volume freezer;
    quantity::Volume wanted; ///< of the day, with spill
    quantity::Volume served;
};

/// In strict order: a later one counts only among plans that are equal in all before it.
struct WeekObjective {
    quantity::Volume
        overRoom; ///< more than the rooms hold, summed over days; 0 in a plan that can be
    quantity::Volume shortBy;
    quantity::Volume spoilt;
    quantity::Mass spoiltMeat;
    int cookings = 0; ///< settled ones included
    quantity::Duration handsOn;
    double cost = 0;
};

/// A plan with all that happens in it.
struct WeekSolution {
    enum class Status {
        Optimal,   ///< proven in every level
        Feasible,  ///< a plan, not proven the best
        Infeasible ///< the rooms cannot hold what must stand in them; the plan says by how much
    };
    Status status = Status::Feasible;
    /// Relative distance of the first level that is not proven to what was proven of it; 0 when
    /// all are. (value - bound) / max(value, 1e-9).
    double gap = 0;
    WeekObjective objective;
    std::vector<PlannedCooking> cookings; ///< by day
    std::vector<PlannedServing> servings; ///< by day
    std::vector<StockMove> freezing;
    std::vector<StockMove> thawing;
    std::vector<PlannedMeat> meat;
    std::vector<Spoiling> spoiling;
    std::vector<StoreDay> stores;                       ///< one for each day
    std::vector<std::vector<quantity::Volume>> shortBy; ///< [day][drinker]
};

} // namespace ladlework::week
