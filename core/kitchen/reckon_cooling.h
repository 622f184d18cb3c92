#pragma once

#include "foundation/result.h"

#include <QJsonObject>

namespace ladlework::kitchen {

/// `ladlework reckon cooling`: from JSON to JSON in the keys and units of the command line's help.
/// `fill_depth_cm` is how full one container is; `volume_ml` is all there is to cool.
/// An unknown or missing key, a wrong type, a negative or not-a-number is BadInput with the JSON
/// path as its place.
Result<QJsonObject> reckonCooling(const QJsonObject& input);

} // namespace ladlework::kitchen
