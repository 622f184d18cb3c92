#include "calendar/calendar_options.h"

#include <gtest/gtest.h>

namespace ladlework::calendar {
namespace {

CalendarOptions sound() {
    CalendarOptions options;
    options.from = QDate(2026, 11, 2);
    options.thaws = {{QDate(2026, 11, 3), QStringLiteral("Chicken legs, jar 2"),
                      quantity::Volume::fromMillilitres(946)}};
    return options;
}

TEST(CalendarOptionsTest, takesWhatIsSound) {
    EXPECT_TRUE(check(sound()));
    CalendarOptions longest = sound();
    longest.days = mostCalendarDays;
    longest.aheadOfCooking = {};
    EXPECT_TRUE(check(longest));
}

TEST(CalendarOptionsTest, namesTheFieldThatIsNot) {
    struct Case {
        void (*spoil)(CalendarOptions&);
        const char* place;
    };
    const QList<Case> cases{
        {[](CalendarOptions& o) { o.from = {}; }, "from"},
        {[](CalendarOptions& o) { o.days = 0; }, "days"},
        {[](CalendarOptions& o) { o.days = mostCalendarDays + 1; }, "days"},
        {[](CalendarOptions& o) { o.aheadOfCooking = quantity::Duration::fromMinutes(-1); },
         "aheadOfCooking"},
        {[](CalendarOptions& o) { o.aheadOfLimit = quantity::Duration::fromHours(25); },
         "aheadOfLimit"},
        {[](CalendarOptions& o) { o.morning = QTime(); }, "morning"},
        {[](CalendarOptions& o) { o.thaws[0].day = {}; }, "thaws[0].day"},
        {[](CalendarOptions& o) { o.thaws[0].what = QStringLiteral(" "); }, "thaws[0].what"},
        {[](CalendarOptions& o) { o.thaws[0].volume = {}; }, "thaws[0].volume"},
    };
    for (const Case& one : cases) {
        CalendarOptions options = sound();
        one.spoil(options);
        const Outcome checked = check(options);
        ASSERT_FALSE(checked) << one.place;
        EXPECT_EQ(checked.error().place, QLatin1String(one.place));
        EXPECT_FALSE(checked.error().sentence.isEmpty());
    }
}

} // namespace
} // namespace ladlework::calendar
