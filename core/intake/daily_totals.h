#pragma once

#include "intake/exposure_days.h"
#include "kitchen/brew.h"
#include "people/dietary_reference.h"
#include "quantity/measure.h"

#include <optional>

namespace ladlework::intake {

/// What 100 mL of a pot holds (10, 50 and 90 % of the stated uncertainty).
struct StockFigures {
    kitchen::Range sodiumMgPer100Ml;
    kitchen::Range proteinGPer100Ml;
};

/// What a member took with stock on a day, or on the mean day of a span.
struct DailyTotals {
    int days = 0;                  ///< with an entry, behind these figures
    quantity::Volume stock;        ///< all that was drunk: it is the fluid, too
    quantity::Volume ofUnknownPot; ///< the part of it whose figures nobody knows
    kitchen::Range sodiumMg;       ///< without that part
    kitchen::Range proteinG;       ///< without that part
};

/// The mean day from `from` to `to` (both included) over the days with an entry, nothing drunk
/// included; for one day give it twice. Nothing when there is no entry. The ranges are added up end
/// by end, since the pots of one kitchen are estimated with the same model and err together. The
/// entries are those of one member.
std::optional<DailyTotals> dailyTotals(const QList<IntakeEntry>& entries,
                                       const QHash<PotId, StockFigures>& figures,
                                       const PotOfLot& potOfLot, QDate from, QDate to);

/// A total beside the published reference intake of the life stage.
struct TotalBesideReference {
    enum class What { Sodium, Protein, Fluid };
    What what = What::Sodium;
    kitchen::Range amount;       ///< mg, g, mL
    double referenceLow = 0;     ///< the same unit; the lower of the figures for women and men
    double referenceHigh = 0;    ///< the higher of the two
    std::optional<double> limit; ///< sodium above which less is advised
    QString unit;                ///< "mg", "g", "mL"
    QString text;                ///< one or two sentences of information, no judgement; translated
    QString source;              ///< with its basis
};

/// Sodium, protein and fluid, in this order. No sex is kept, so the reference spans women and men.
QList<TotalBesideReference> besideReferences(const DailyTotals& totals,
                                             const people::DietaryReference& reference,
                                             quantity::MeasureSystem system);

} // namespace ladlework::intake
