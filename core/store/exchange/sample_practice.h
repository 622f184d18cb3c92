#pragma once

#include "foundation/clock.h"
#include "foundation/result.h"
#include "kitchen/catalogue.h"

#include <memory>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::exchange {

/// Makes a new workbook at `path` and fills it with the invented practice that comes with the
/// program (the folder sample-data, as the resource ":/sample"), moved to this week: see
/// Dates::MovedToThisWeek. The file appears whole or not at all; an existing file is Refused.
Result<std::unique_ptr<store::Workbook>>
createSamplePractice(const QString& path, const kitchen::Catalogue& catalogue, const Clock& clock);

} // namespace ladlework::exchange
