#include "people/phase.h"

#include <gtest/gtest.h>

namespace ladlework::people {
namespace {

TEST(PhaseTest, checksNameAndPosition) {
    Phase phase;
    EXPECT_EQ(check(phase).error().place.toStdString(), "name");
    phase.name = QStringLiteral("Opening");
    EXPECT_TRUE(check(phase).has_value());
    phase.position = -1;
    EXPECT_EQ(check(phase).error().place.toStdString(), "position");
}

} // namespace
} // namespace ladlework::people
