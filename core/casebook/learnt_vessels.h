#pragma once

#include "casebook/family_records.h"
#include "kitchen/calibration.h"

#include <QHash>

namespace ladlework::casebook {

/// What each vessel's measured batches say of its evaporation, for vessels with at least one that
/// counts. A batch is left out when it was not measured, its vessel or pot is gone or unknown, or
/// its pot has a cut or extra that this catalogue does not know. Of many the latest count: a
/// kitchen's burner and habits change, and each costs a full reckoning of its pot.
QHash<VesselId, kitchen::Calibration> learnVessels(const FamilyRecords& records,
                                                   const kitchen::Catalogue& catalogue);

} // namespace ladlework::casebook
