#include "week/shop_section.h"
#include "week/week_template.h"

#include <gtest/gtest.h>

namespace ladlework::week {
namespace {

WeekTemplate twoPots() {
    WeekTemplate kept;
    kept.name = QStringLiteral("A week with fish");
    kept.placements = {{0, PotId{1}, QTime(9, 30)}, {6, PotId{2}, {}}};
    return kept;
}

std::string placeOf(const WeekTemplate& kept) {
    const Outcome outcome = check(kept);
    return outcome ? std::string() : outcome.error().place.toStdString();
}
} // namespace

TEST(WeekTemplateTest, takesTheFirstAndTheLastDayOfTheWeek) {
    EXPECT_TRUE(check(twoPots()));
}

TEST(WeekTemplateTest, needsANameAPotAndDaysOfTheWeek) {
    WeekTemplate blank = twoPots();
    blank.name = QStringLiteral(" \t");
    EXPECT_EQ(placeOf(blank), "name");
    WeekTemplate bare = twoPots();
    bare.placements.clear();
    EXPECT_EQ(placeOf(bare), "placements");
    for (const int day : {-1, 7}) {
        WeekTemplate outside = twoPots();
        outside.placements[1].day = day;
        EXPECT_EQ(placeOf(outside), "placements[1].day") << day;
    }
}

TEST(WeekTemplateTest, shopSectionsAreReadBackFromTheirIds) {
    // The ids are part of the file, so they are written out here.
    const QList<std::pair<ShopSection, QString>> ids{
        {ShopSection::Meat, QStringLiteral("meat")},
        {ShopSection::Fish, QStringLiteral("fish")},
        {ShopSection::Vegetables, QStringLiteral("vegetables")},
        {ShopSection::Herbs, QStringLiteral("herbs")},
        {ShopSection::Dry, QStringLiteral("dry")},
        {ShopSection::Household, QStringLiteral("household")}};
    for (const auto& [section, id] : ids) {
        EXPECT_EQ(shopSectionId(section), id);
        EXPECT_EQ(shopSectionFromId(id), section);
    }
    EXPECT_FALSE(shopSectionFromId(u"toys"));
    EXPECT_FALSE(shopSectionFromId(u"Meat"));
}

} // namespace ladlework::week
