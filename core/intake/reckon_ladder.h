#pragma once

#include "foundation/result.h"

#include <QJsonObject>

namespace ladlework::intake {

/// `ladlework reckon ladder`: the ladder machine and the projection from JSON to JSON, in the keys
/// and units of the command line's help. An unknown or missing key, a wrong type, a negative
/// amount or a not-a-number is BadInput with the JSON path as its place; so is a start of less than
/// a drop, or, when no rungs are given, one above the low end of the target.
Result<QJsonObject> reckonLadder(const QJsonObject& input);

} // namespace ladlework::intake
