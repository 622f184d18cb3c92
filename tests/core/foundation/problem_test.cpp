#include "foundation/problem.h"

#include "foundation/result.h"

#include <gtest/gtest.h>

namespace ladlework {
namespace {

Result<int> failing() {
    return problem(Problem::Kind::NotFound, QStringLiteral("It is not here."),
                   QStringLiteral("cuts[1]"), QStringLiteral("errno 2"));
}

TEST(ProblemTest, PutsThePlaceBeforeTheSentence) {
    EXPECT_EQ(toLine({Problem::Kind::BadInput, QStringLiteral("Mend it."), {}, {}}),
              QStringLiteral("Mend it."));
    EXPECT_EQ(toLine(failing().error()), QStringLiteral("cuts[1]: It is not here."));
}

TEST(ProblemTest, IsPassedOnWhole) {
    const Result<QString> passed = passOn(failing());
    ASSERT_FALSE(passed.has_value());
    EXPECT_EQ(passed.error().kind, Problem::Kind::NotFound);
    EXPECT_EQ(passed.error().sentence, QStringLiteral("It is not here."));
    EXPECT_EQ(passed.error().place, QStringLiteral("cuts[1]"));
    EXPECT_EQ(passed.error().detail, QStringLiteral("errno 2"));
}

TEST(ProblemTest, IsABrokenInvariantInWhatShips) {
    EXPECT_EQ(valueOrThrow(Result<int>(3)), 3);
    EXPECT_THROW(valueOrThrow(failing()), std::runtime_error);
}

} // namespace
} // namespace ladlework
