#pragma once

#include "kitchen/batch.h"
#include "kitchen/catalogue.h"

#include <QList>

namespace ladlework::kitchen {

/// The last day on which stock stored on `stored` may be drunk: `fridgeDays` later in the
/// refrigerator; in the freezer the shorter end of the published two to three months
/// (resources/reference/keeping.csv, stock-freezer-least).
QDate useBy(Lot::Place place, QDate stored, int fridgeDays);

/// The containers that a batch's yield is shared out to evenly: first those for the refrigerator,
/// then those for the freezer, numbered from 1, with their use-by days. None when both counts are
/// 0 or the batch has no yield. The batch's own id is taken over.
QList<Lot> shareOut(const Batch& batch, int inFridge, int inFreezer, int fridgeDays);

/// How long a raw cut keeps in the refrigerator before it is cooked: the shorter and the longer end
/// of the published chart (resources/reference/keeping.csv) in days.
struct RawKeeping {
    int leastDays = 1;
    int mostDays = 2;
    Provenance provenance;
};
RawKeeping rawKeeping(CookClass cookClass);

} // namespace ladlework::kitchen
