#include "kitchen/cooling_way.h"

#include "kitchen/id_words.h"

#include <QCoreApplication>
#include <array>
#include <utility>

namespace ladlework::kitchen {

namespace {
constexpr std::array wayWords{std::pair{CoolingWay::Refrigerator, "refrigerator"},
                              std::pair{CoolingWay::IceBath, "ice-bath"},
                              std::pair{CoolingWay::Counter, "counter"}};

/// The translation context of the names below.
struct Say {
    Q_DECLARE_TR_FUNCTIONS(CoolingWay)
};
} // namespace

QString coolingWayId(CoolingWay way) {
    return wordOf(wayWords, way);
}

std::optional<CoolingWay> coolingWayFromId(QStringView id) {
    return valueOf<CoolingWay>(wayWords, id);
}

QString coolingWayName(CoolingWay way) {
    switch (way) {
    case CoolingWay::Refrigerator:
        return Say::tr("in the refrigerator");
    case CoolingWay::IceBath:
        return Say::tr("in an ice bath, then refrigerator");
    case CoolingWay::Counter:
        return Say::tr("on the counter, then refrigerator");
    }
    return {};
}

} // namespace ladlework::kitchen
