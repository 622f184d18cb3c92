#include "week/free_hours.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::week {
namespace {

struct HoursCase {
    const char* name;
    std::function<void(UsualHours&)> change;
    const char* field; ///< empty: fine
};

class FreeHoursTest : public ::testing::TestWithParam<HoursCase> {};

UsualHours saturdayMorning() {
    return {6, {QTime(9, 0), quantity::Duration::fromHours(6), 2}};
}

TEST_P(FreeHoursTest, namesTheFieldAtFault) {
    UsualHours usual = saturdayMorning();
    GetParam().change(usual);
    const Outcome outcome = check(usual);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(outcome.error().sentence.endsWith(QLatin1Char('.')));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, FreeHoursTest,
    ::testing::Values(
        HoursCase{"fine", [](UsualHours&) {}, ""},
        HoursCase{"startNotTold", [](UsualHours& u) { u.hours.from = QTime(); }, ""},
        HoursCase{"monday", [](UsualHours& u) { u.weekday = 1; }, ""},
        HoursCase{"sunday", [](UsualHours& u) { u.weekday = 7; }, ""},
        HoursCase{"dayNought", [](UsualHours& u) { u.weekday = 0; }, "weekday"},
        HoursCase{"dayEight", [](UsualHours& u) { u.weekday = 8; }, "weekday"},
        HoursCase{"wholeDay",
                  [](UsualHours& u) { u.hours.length = quantity::Duration::fromHours(24); }, ""},
        HoursCase{"overADay",
                  [](UsualHours& u) { u.hours.length = quantity::Duration::fromMinutes(1441); },
                  "length"},
        HoursCase{"noTime", [](UsualHours& u) { u.hours.length = quantity::Duration(); }, "length"},
        HoursCase{"lengthNotANumber",
                  [](UsualHours& u) {
                      u.hours.length =
                          quantity::Duration::fromHours(std::numeric_limits<double>::quiet_NaN());
                  },
                  "length"},
        HoursCase{"sixPots", [](UsualHours& u) { u.hours.pots = 6; }, ""},
        HoursCase{"sevenPots", [](UsualHours& u) { u.hours.pots = 7; }, "pots"},
        HoursCase{"noPot", [](UsualHours& u) { u.hours.pots = 0; }, "pots"}),
    [](const auto& named) { return std::string(named.param.name); });

} // namespace
} // namespace ladlework::week
