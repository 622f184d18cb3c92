#include "week/serving_flow.h"

#include "core/week/cut_capacity.h"

#include <gtest/gtest.h>

#include <random>

using ladlework::week::serve;
using ladlework::week::ServingProblem;
using ladlework::week::Servings;

namespace {
constexpr double rounding = 1e-6; // mL: sums of a few hundred doubles of a few thousand mL

ServingProblem randomProblem(std::mt19937& random) {
    std::uniform_int_distribution<std::size_t> size(1, 5);
    std::uniform_int_distribution<int> tenths(0, 12);
    std::bernoulli_distribution allowed(0.5);
    ServingProblem problem;
    problem.left.resize(size(random));
    problem.wanted.resize(size(random));
    for (double& left : problem.left)
        left = tenths(random) * 100.1;
    for (double& wanted : problem.wanted)
        wanted = tenths(random) * 70.3;
    for (std::size_t member = 0; member < problem.wanted.size(); ++member) {
        std::vector<bool>& row = problem.may.emplace_back(problem.left.size());
        for (std::size_t source = 0; source < row.size(); ++source)
            row[source] = allowed(random);
    }
    return problem;
}

double givenBy(const Servings& served, std::size_t source) {
    double total = 0;
    for (const std::vector<double>& row : served)
        total += row[source];
    return total;
}

double takenBy(const Servings& served, std::size_t member) {
    double total = 0;
    for (const double ml : served[member])
        total += ml;
    return total;
}

/// The most that the first `count` sources alone can serve.
double servableByFirst(const ServingProblem& problem, std::size_t count) {
    std::vector<double> left = problem.left;
    std::fill(left.begin() + static_cast<std::ptrdiff_t>(count), left.end(), 0.0);
    return cutCapacity(left, problem.wanted, problem.may);
}

/// The most that the first `count` members alone can be served from.
double servableToFirst(const ServingProblem& problem, std::size_t count) {
    std::vector<double> wanted = problem.wanted;
    std::fill(wanted.begin() + static_cast<std::ptrdiff_t>(count), wanted.end(), 0.0);
    return cutCapacity(problem.left, wanted, problem.may);
}
} // namespace

TEST(ServingFlowTest, theOldestSourceIsTakenFirst) {
    const Servings served = serve({{300, 300}, {200}, {{true, true}}});
    EXPECT_DOUBLE_EQ(served[0][0], 200);
    EXPECT_DOUBLE_EQ(served[0][1], 0);
}

TEST(ServingFlowTest, movesAsideWhoHasAChoice) {
    // The first may drink both, the second only the older: both are served.
    const Servings served = serve({{200, 200}, {200, 200}, {{true, true}, {true, false}}});
    EXPECT_DOUBLE_EQ(served[0][1], 200);
    EXPECT_DOUBLE_EQ(served[1][0], 200);
}

TEST(ServingFlowTest, whenThereIsTooLittleTheFirstMemberIsServedFirst) {
    const Servings served = serve({{250}, {200, 200}, {{true}, {true}}});
    EXPECT_DOUBLE_EQ(served[0][0], 200);
    EXPECT_DOUBLE_EQ(served[1][0], 50);
}

TEST(ServingFlowTest, nothingToServeIsNoTrouble) {
    EXPECT_TRUE(serve({{}, {}, {}}).empty());
    EXPECT_DOUBLE_EQ(serve({{100}, {0}, {{true}}})[0][0], 0);
    EXPECT_TRUE(serve({{}, {100}, {{}}})[0].empty());
}

TEST(ServingFlowTest, equalsTheLeastCutOnRandomCases) {
    std::mt19937 random(20261102);
    for (int round = 0; round < 2000; ++round) {
        const ServingProblem problem = randomProblem(random);
        const Servings served = serve(problem);
        double total = 0;
        for (std::size_t member = 0; member < problem.wanted.size(); ++member) {
            const double taken = takenBy(served, member);
            EXPECT_LE(taken, problem.wanted[member] + rounding);
            total += taken;
            for (std::size_t source = 0; source < problem.left.size(); ++source) {
                EXPECT_GE(served[member][source], 0);
                if (!problem.may[member][source]) {
                    EXPECT_EQ(served[member][source], 0);
                }
            }
        }
        EXPECT_NEAR(total, cutCapacity(problem.left, problem.wanted, problem.may), rounding);
    }
}

TEST(ServingFlowTest, takesTheMostFromEachSourceInTurnOnRandomCases) {
    std::mt19937 random(7);
    for (int round = 0; round < 2000; ++round) {
        const ServingProblem problem = randomProblem(random);
        const Servings served = serve(problem);
        double sources = 0;
        for (std::size_t count = 1; count <= problem.left.size(); ++count) {
            sources += givenBy(served, count - 1);
            EXPECT_NEAR(sources, servableByFirst(problem, count), rounding) << "round " << round;
        }
        double members = 0;
        for (std::size_t count = 1; count <= problem.wanted.size(); ++count) {
            members += takenBy(served, count - 1);
            EXPECT_NEAR(members, servableToFirst(problem, count), rounding) << "round " << round;
        }
    }
}
