#pragma once

#include "foundation/finding.h"
#include "kitchen/batch.h"

#include <optional>

namespace ladlework::kitchen {

/// A lot of which something goes elsewhere on a day. When all that is left of a lot goes that
/// nobody has drunk from, it is the same lot afterwards; else the lot stays with what was drunk and
/// what is left in it (gone, when that is nothing), and a new lot of the same batch holds the rest.
/// So the volumes of a batch's lots add up to what was stored of it, before and after.
struct LotMove {
    std::optional<Lot> stays; ///< the lot as it is afterwards; nothing when all of it went
    Lot moved;                ///< without an id when it is a new lot

    /// A lot of its own comes into being.
    [[nodiscard]] bool splits() const { return stays.has_value(); }
};

// Of each: `left` is what the log has left in the lot, `amount` what goes, more than nothing and no
// more than `left` (a drop too much is the rounding of a measure, and is taken for all of it).
// Refused for a lot that is gone already or not in the place it has to leave.

/// Into the freezer, while the stock is in date: its use-by there counts from the day it is frozen
/// (resources/reference/keeping.csv, stock-freezer-least).
Result<LotMove> freeze(const Lot& lot, quantity::Volume left, quantity::Volume amount, QDate today);

/// Out of the freezer into the refrigerator, where it thaws overnight: to be drunk by two days
/// after the day it is taken out (keeping.csv, thawed-stock), or sooner when the practice lets
/// nothing stand in the refrigerator for so long (`fridgeDays`).
Result<LotMove> thaw(const Lot& lot, quantity::Volume left, quantity::Volume amount, QDate today,
                     int fridgeDays);

/// Thrown or given away: from today on it is no stock any more.
Result<LotMove> throwAway(const Lot& lot, quantity::Volume left, quantity::Volume amount,
                          QDate today);

/// What there is to say before a lot is frozen: that it was not frozen on the day it was cooked, or
/// was frozen before. `cooked` is the day of its batch.
Findings freezeFindings(const Lot& lot, QDate cooked, QDate today);

/// The last day on which stock may be drunk that is taken out of the freezer today.
QDate thawedUseBy(QDate today, int fridgeDays);

} // namespace ladlework::kitchen
