#pragma once

#include "foundation/clock.h"
#include "foundation/result.h"
#include "kitchen/catalogue.h"

#include <memory>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::exchange {

/// How large an invented practice is to be.
struct InventedSize {
    int families = 40; ///< 1 to 2,000
    int years = 1;     ///< of daily log for each family; 1 to 30
    quint64 seed = 1;
};

/// Makes a new workbook at `path` with a practice that nobody has: families of every shape with
/// members, cautions, tolerance notes, pots, batches, lots, weeks, notes and a daily log that the
/// ladder machine has led, ending yesterday. The same size, seed and day give the same records.
/// One transaction; the file appears whole or not at all. BadInput for a size out of range.
Result<std::unique_ptr<store::Workbook>> createInventedPractice(const QString& path,
                                                                const InventedSize& size,
                                                                const kitchen::Catalogue& catalogue,
                                                                const Clock& clock);

} // namespace ladlework::exchange
