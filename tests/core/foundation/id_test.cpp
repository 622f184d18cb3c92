#include "foundation/id.h"

#include <QSet>
#include <type_traits>

#include <gtest/gtest.h>

namespace ladlework {
namespace {

TEST(IdTest, IsStoredFromOneUp) {
    EXPECT_FALSE(FamilyId{}.isStored());
    EXPECT_FALSE(FamilyId{-1}.isStored());
    EXPECT_TRUE(FamilyId{1}.isStored());
}

TEST(IdTest, ComparesByValue) {
    EXPECT_EQ(PotId{3}, PotId{3});
    EXPECT_LT(PotId{3}, PotId{4});
    EXPECT_EQ((QSet<PotId>{{3}, {4}, {3}}).size(), 2);
    EXPECT_TRUE((QSet<PotId>{{3}}).contains(PotId{3}));
}

TEST(IdTest, IsNotMistakenForAnotherTable) {
    EXPECT_FALSE((std::is_convertible_v<PotId, FamilyId>));
    EXPECT_FALSE((std::is_constructible_v<PotId, FamilyId>));
    EXPECT_FALSE((std::is_convertible_v<PotId, qint64>));
}

} // namespace
} // namespace ladlework
