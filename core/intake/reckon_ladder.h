#pragma once

#include "foundation/result.h"

#include <QJsonObject>

namespace ladlework::intake {

/// `ladlework reckon ladder`: the ladder machine and the projection from JSON to JSON, in the keys
/// and units of the command line's help. An unknown or missing key, a wrong type, a negative
/// amount or a not-a-number is BadInput with the JSON path as its place.
Result<QJsonObject> reckonLadder(const QJsonObject& input);

} // namespace ladlework::intake
