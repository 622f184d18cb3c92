#pragma once

#include <QString>
#include <optional>

namespace ladlework::week {

/// Where in a shop something is found, in the order of the list.
enum class ShopSection { Meat, Fish, Vegetables, Herbs, Dry, Household };

QString shopSectionId(ShopSection section); ///< "meat", "fish", ..., "household"
std::optional<ShopSection> shopSectionFromId(QStringView id);

} // namespace ladlework::week
