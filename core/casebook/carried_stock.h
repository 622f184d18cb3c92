#pragma once

#include "casebook/casebook.h"
#include "casebook/cooking.h"

#include <QHash>

namespace ladlework::casebook {

/// Turns what a family has and plans to cook into sources of an outlook. Holds what it reckoned, so
/// that a pot that stands in a plan many times is reckoned once.
class CarriedStock {
public:
    explicit CarriedStock(const Casebook& casebook) : m_casebook(casebook) {}

    /// Lots on hand as seen from a horizon that starts on `start`: fridge lots from today to their
    /// use-by, freezer lots from tomorrow (they thaw overnight) and without end, because a freezer
    /// use-by is a matter of taste only. Fridge lots past their use-by are no stock.
    QList<week::Source> lots(QDate start);

    /// Cookings as they were planned, each with the measured yield of its own batch when there is
    /// one; without those whose pot is gone.
    QList<week::Source> planned(const QList<week::Placement>& placements, QDate start);

    /// What there is or will be of cookings (all of a day together). One of today or before counts
    /// less what the log took from it; cookings of one pot and day share that, in their order.
    /// Without those whose lots were stored (they count themselves), that are past their last day,
    /// or whose pot is gone.
    QList<week::Source> cookings(const QList<week::Placement>& placements, QDate start);

    /// What a horizon of `days` days leaves over, as sources of the horizon that follows it.
    static QList<week::Source> leftOver(const week::OutlookInput& before);

private:
    std::optional<week::Source> sourceOf(const Cooking& cooking, QDate start);
    QList<MemberId> whoMay(const kitchen::Pot& pot);
    quantity::Volume expectedStock(const kitchen::Pot& pot);
    [[nodiscard]] quantity::Volume drunkFrom(const week::Placement& placement) const;
    [[nodiscard]] bool lotsStoredOf(const kitchen::Batch& batch) const;

    const Casebook& m_casebook;
    QHash<PotId, quantity::Volume> m_expected;
    QHash<PotId, QList<MemberId>> m_may;
};

} // namespace ladlework::casebook
