#pragma once

#include "kitchen/batch.h"
#include "week/week_plan.h"

#include <QList>
#include <vector>

namespace ladlework::casebook {

/// A planned cooking with the batch that came of it.
struct Cooking {
    week::Placement placement;
    const kitchen::Batch* batch = nullptr; ///< null while none is recorded; owned by the records
};

/// Each placement with its own batch of the same pot and day, in the order of the placements. One
/// batch is of one cooking: of several cookings of a pot on one day the earliest start (those
/// without a start last) takes the batch recorded first. `placements` must hold all of a day;
/// `batches` must outlive the result.
std::vector<Cooking> matchBatches(const QList<week::Placement>& placements,
                                  const QList<kitchen::Batch>& batches);

} // namespace ladlework::casebook
