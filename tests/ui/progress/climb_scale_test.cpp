#include "ui/progress/climb_scale.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {
const QRectF plot(50, 10, 300, 120);
const QDate first(2026, 10, 1);
const QDate last(2026, 10, 30);
} // namespace

TEST(ClimbScaleTest, DaysLieAcrossThePlot) {
    const ClimbScale scale(plot, first, last, 4);
    EXPECT_DOUBLE_EQ(scale.dayWidth(), 10.0); // 30 days on 300
    EXPECT_DOUBLE_EQ(scale.xOf(first), 50.0);
    EXPECT_DOUBLE_EQ(scale.xOf(last) + scale.dayWidth(), 350.0);
    EXPECT_DOUBLE_EQ(scale.middleOf(first), 55.0);
}

TEST(ClimbScaleTest, RungsStandAtEqualHeightsFromTheFoot) {
    const ClimbScale scale(plot, first, last, 4);
    EXPECT_DOUBLE_EQ(scale.rungHeight(), 30.0);
    EXPECT_DOUBLE_EQ(scale.yOf(0), 115.0);
    EXPECT_DOUBLE_EQ(scale.yOf(3), 25.0);
}

TEST(ClimbScaleTest, PointGivesItsDay) {
    const ClimbScale scale(plot, first, last, 4);
    for (QDate day = first; day <= last; day = day.addDays(1)) {
        EXPECT_EQ(scale.dayAt(scale.middleOf(day)), day);
        EXPECT_EQ(scale.dayAt(scale.xOf(day) + 0.01), day);
    }
    EXPECT_EQ(scale.dayAt(-1000), first);
    EXPECT_EQ(scale.dayAt(10000), last);
}

TEST(ClimbScaleTest, OddInputStaysFinite) {
    const ClimbScale oneDay(plot, first, first, 0);
    EXPECT_DOUBLE_EQ(oneDay.dayWidth(), 300.0);
    EXPECT_DOUBLE_EQ(oneDay.rungHeight(), 120.0);
    const ClimbScale turned(plot, last, first, 2); // ends before it begins: one day
    EXPECT_DOUBLE_EQ(turned.dayWidth(), 300.0);
}

} // namespace ladlework::ui
