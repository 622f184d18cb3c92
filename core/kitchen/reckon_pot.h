#pragma once

#include "foundation/result.h"
#include "kitchen/catalogue.h"

#include <QJsonObject>

namespace ladlework::kitchen {

/// `ladlework reckon pot`: one pot from JSON to JSON, in the keys and units of the command line's
/// help. An unknown or missing key, a wrong type, a negative mass or a not-a-number is BadInput
/// with the JSON path as its place. All keys must be there but `members`, `meat_g_per_day` and
/// `prices`; of a member only `name` must. `phase` is the id of a shipped phase in any case of
/// letters; `prices` holds a price per kilogram by cut or extra id, or "salt". The
/// phase holds for everyone at the table. The figures per 100 mL are null when the pot boils dry.
Result<QJsonObject> reckonPot(const QJsonObject& input, const Catalogue& catalogue);

} // namespace ladlework::kitchen
