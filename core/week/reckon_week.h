#pragma once

#include "foundation/result.h"

#include <QJsonObject>

namespace ladlework::week {

/// `ladlework reckon week`: one week planned exactly, from JSON to JSON, in the keys and units of
/// the command line's help. An unknown or missing key, a wrong type, a negative or not-finite
/// number or a day outside the horizon is BadInput with the JSON path as its place. All keys must
/// be there but `most_cookings_per_animal`; `use_by_day` may be null for a lot in the freezer. A
/// week that the rooms cannot hold is `infeasible`, with empty lists and a null objective.
/// `in_the_way` is there when someone is short or nothing holds.
Result<QJsonObject> reckonWeek(const QJsonObject& input);

} // namespace ladlework::week
