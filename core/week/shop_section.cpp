#include "week/shop_section.h"

#include <algorithm>
#include <array>

namespace ladlework::week {

namespace {
constexpr std::array sections{ShopSection::Meat,  ShopSection::Fish, ShopSection::Vegetables,
                              ShopSection::Herbs, ShopSection::Dry,  ShopSection::Household};
} // namespace

QString shopSectionId(ShopSection section) {
    switch (section) {
    case ShopSection::Meat:
        return QStringLiteral("meat");
    case ShopSection::Fish:
        return QStringLiteral("fish");
    case ShopSection::Vegetables:
        return QStringLiteral("vegetables");
    case ShopSection::Herbs:
        return QStringLiteral("herbs");
    case ShopSection::Dry:
        return QStringLiteral("dry");
    case ShopSection::Household:
        return QStringLiteral("household");
    }
    return {};
}

std::optional<ShopSection> shopSectionFromId(QStringView id) {
    const auto found = std::ranges::find_if(
        sections, [id](ShopSection section) { return id == shopSectionId(section); });
    if (found == sections.end())
        return std::nullopt;
    return *found;
}

} // namespace ladlework::week
