#pragma once

#include "foundation/result.h"

#include <QJsonObject>

namespace ladlework::intake {

/// `ladlework reckon patterns`: exposures against reactions from JSON to JSON, in the keys of the
/// command line's help. An unknown or missing key, a wrong type, a count out of range or a blank
/// exposure is BadInput with the JSON path as its place. A `worst_reaction` of null means none.
Result<QJsonObject> reckonPatterns(const QJsonObject& input);

} // namespace ladlework::intake
