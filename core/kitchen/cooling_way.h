#pragma once

#include <QString>
#include <optional>

namespace ladlework::kitchen {

/// How stock is cooled once it is strained.
enum class CoolingWay {
    Refrigerator, ///< straight into the refrigerator
    IceBath,      ///< stirred in an ice bath first, then into the refrigerator
    Counter,      ///< on the counter as long as the home rule allows, then into the refrigerator
};

QString coolingWayId(CoolingWay way); ///< "refrigerator", "ice-bath", "counter"
std::optional<CoolingWay> coolingWayFromId(QStringView id);
QString coolingWayName(CoolingWay way); ///< for people, translated

} // namespace ladlework::kitchen
