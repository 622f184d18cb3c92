#include "people/practice.h"

#include <gtest/gtest.h>

namespace ladlework::people {

// FoodSafety.gov cold storage chart, soups and stews: 3-4 days; the older row for broth ends at 2.
TEST(PracticeDaysTest, areThoseOfTheStorageCharts) {
    EXPECT_EQ(leastFridgeDays(), 2);
    EXPECT_EQ(usualFridgeDays(), 3);
    EXPECT_EQ(mostFridgeDays(), 4);
    EXPECT_EQ(Practice().fridgeDays, usualFridgeDays());
}

} // namespace ladlework::people
