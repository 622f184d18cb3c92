#pragma once

#include "casebook/casebook.h"
#include "casebook/cooking.h"
#include "casebook/week_ahead.h"

#include <QHash>

namespace ladlework::casebook {

/// Makes the planner's view of a week out of what a family has, drinks and plans to cook. Holds
/// what it reckoned, so that the weeks before are not reckoned pot by pot again.
class WeekAheadMaker {
public:
    explicit WeekAheadMaker(const Casebook& casebook) : m_casebook(casebook) {}

    /// `weeksBack`: how many weeks of plans before it are followed for what they leave over.
    WeekAhead make(const week::WeekPlan& plan, Settled settled, int weeksBack);

private:
    struct PotFacts {
        week::PotChoice choice;
        std::vector<bool> couldTry;
        QString unfit; ///< why it is not offered; empty when it is
    };
    const PotFacts& facts(const kitchen::Pot& pot);
    void addDrinkers(WeekAhead& week) const;
    /// The place of a pot in the problem, which is added when it is not there.
    std::size_t placeOf(WeekAhead& week, const kitchen::Pot& pot);
    void addLotsOnHand(WeekAhead& week);
    void addLot(WeekAhead& week, const kitchen::Pot* pot, week::LotOnHand lot, LotId id) const;
    /// What the plans left standing in the kitchen on the first day: cookings of today and before.
    void addCooked(WeekAhead& week, const QList<week::Placement>& placements);
    void addMeat(WeekAhead& week, const kitchen::Pot& pot, QDate cooked);
    void addLeftOver(WeekAhead& week, const WeekAhead& before) const;
    void addSettled(WeekAhead& week, const week::WeekPlan& plan, Settled settled, bool isOver);
    void addSlots(WeekAhead& week, const week::WeekPlan& plan) const;
    void addPots(WeekAhead& week);
    void keepToTheTried(WeekAhead& week) const;
    [[nodiscard]] std::vector<bool> whoMay(const kitchen::Pot& pot) const;
    [[nodiscard]] quantity::Volume drunkFrom(const week::Placement& placement) const;
    [[nodiscard]] bool lotsStoredOf(const kitchen::Batch& batch) const;
    [[nodiscard]] QList<week::Placement> cookedBefore(QDate start) const;

    const Casebook& m_casebook;
    QHash<PotId, PotFacts> m_facts;
};

} // namespace ladlework::casebook
