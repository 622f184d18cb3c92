#include "quantity/kitchen_marks.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

namespace ladlework::quantity {
namespace {

struct Scale {
    const char* name;
    std::span<const Marks> marks;
    MeasureSystem system;
};

std::vector<Scale> allScales() {
    std::vector<Scale> scales;
    for (const MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::Metric}) {
        scales.push_back({"volume", volumeMarks(system), system});
        scales.push_back({"mass", massMarks(system), system});
        scales.push_back({"length", lengthMarks(system), system});
    }
    return scales;
}

/// Amounts a tenth of a percent apart, from far below the smallest mark to 200 kg or L or 10 km.
std::vector<double> sweep() {
    std::vector<double> amounts;
    for (double amount = 1e-3; amount < 1.1e6; amount *= 1.001)
        amounts.push_back(amount);
    return amounts;
}

TEST(KitchenMarksTest, NeverGivesALargerAmountASmallerMark) {
    for (const Scale& scale : allScales()) {
        SCOPED_TRACE(scale.name);
        double last = 0.0;
        for (const double amount : sweep()) {
            const double size = nearestMark(amount, scale.marks, scale.system).size;
            ASSERT_GE(size, last) << amount;
            ASSERT_GT(size, 0.0) << amount;
            last = size;
        }
    }
}

/// All marks of a scale up to a size, one by one, without the arithmetic of nearestMark.
std::vector<double> everyMark(const Scale& scale, double upTo) {
    std::vector<double> sizes;
    for (const Marks& marks : scale.marks) {
        const double unit = sizeOf(marks.unit, scale.system);
        for (int place = 0; place * marks.step / marks.steps <= marks.last + 1e-9; ++place) {
            const double count = place * marks.step / marks.steps;
            if (count * unit > upTo)
                break;
            if (count >= marks.first - 1e-9)
                sizes.push_back(count * unit);
        }
    }
    return sizes;
}

TEST(KitchenMarksTest, GivesTheNearestOfAllMarks) {
    for (const Scale& scale : allScales()) {
        SCOPED_TRACE(scale.name);
        const std::vector<double> marks = everyMark(scale, 20000);
        for (double amount = 1e-3; amount < 10000; amount *= 1.01) {
            double best = std::numeric_limits<double>::infinity();
            for (const double mark : marks)
                best = std::min(best, std::abs(mark - amount));
            const double size = nearestMark(amount, scale.marks, scale.system).size;
            ASSERT_NEAR(std::abs(size - amount), best, 1e-9 * amount) << amount;
        }
    }
}

TEST(KitchenMarksTest, LeavesAMarkWhereItIs) {
    for (const Scale& scale : allScales()) {
        SCOPED_TRACE(scale.name);
        for (const double mark : everyMark(scale, 20000))
            ASSERT_NEAR(nearestMark(mark, scale.marks, scale.system).size, mark, 1e-9 * mark);
    }
}

TEST(KitchenMarksTest, NeighboursAreTheMarksNextToIt) {
    for (const Scale& scale : allScales()) {
        SCOPED_TRACE(scale.name);
        std::vector<double> marks = everyMark(scale, 20000);
        std::sort(marks.begin(), marks.end());
        for (double amount = 1e-3; amount < 10000; amount *= 1.01) {
            const auto above = std::upper_bound(marks.begin(), marks.end(), amount * (1 + 1e-9));
            const auto larger = neighbourMark(amount, scale.marks, scale.system, true);
            ASSERT_TRUE(larger) << amount;
            ASSERT_NEAR(larger->size, *above, 1e-9 * *above) << amount;
            const auto from = std::lower_bound(marks.begin(), marks.end(), amount * (1 - 1e-9));
            const auto smaller = neighbourMark(amount, scale.marks, scale.system, false);
            ASSERT_EQ(smaller.has_value(), from != marks.begin()) << amount;
            if (smaller) {
                ASSERT_NEAR(smaller->size, *std::prev(from), 1e-9 * amount) << amount;
            }
        }
        // On a mark the neighbour is the next one, never the mark itself.
        for (const double mark : marks) {
            if (mark < 10000) {
                ASSERT_GT(neighbourMark(mark, scale.marks, scale.system, true)->size,
                          mark * (1 + 1e-9));
            }
        }
    }
}

/// From a teaspoon up no spoon or cup is further off than a fifth: the marks leave no hole.
TEST(KitchenMarksTest, LeavesNoHoles) {
    for (const MeasureSystem system : {MeasureSystem::UsCustomary, MeasureSystem::Metric}) {
        for (double amount = 4.9; amount < 200000; amount *= 1.001) {
            const double size = nearestMark(amount, volumeMarks(system), system).size;
            ASSERT_LE(std::abs(size - amount), 0.2 * amount) << amount;
        }
    }
}

} // namespace
} // namespace ladlework::quantity
