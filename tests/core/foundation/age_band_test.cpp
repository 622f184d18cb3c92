#include "foundation/age_band.h"

#include "foundation/clock.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace ladlework {
namespace {

struct AgeCase {
    QDate birth;
    QDate day;
    int months = 0;
    AgeBand band = AgeBand::Adult;
};

/// By the calendar, counted by hand.
const AgeCase ageCases[] = {
    {{2024, 1, 15}, {2024, 1, 15}, 0, AgeBand::InfantUnderSixMonths},
    {{2024, 1, 15}, {2024, 2, 14}, 0, AgeBand::InfantUnderSixMonths},
    {{2024, 1, 15}, {2024, 2, 15}, 1, AgeBand::InfantUnderSixMonths},
    {{2024, 1, 15}, {2024, 7, 14}, 5, AgeBand::InfantUnderSixMonths},
    {{2024, 1, 15}, {2024, 7, 15}, 6, AgeBand::InfantStartingSolids},
    {{2024, 1, 15}, {2025, 1, 14}, 11, AgeBand::InfantStartingSolids},
    {{2024, 1, 15}, {2025, 1, 15}, 12, AgeBand::Child},
    {{2024, 1, 15}, {2037, 1, 14}, 155, AgeBand::Child},
    {{2024, 1, 15}, {2037, 1, 15}, 156, AgeBand::Adult},
    {{1934, 5, 1}, {2024, 5, 1}, 1080, AgeBand::Adult},
    // Across the end of a year.
    {{2023, 12, 31}, {2024, 6, 30}, 5, AgeBand::InfantUnderSixMonths},
    {{2023, 12, 31}, {2024, 7, 1}, 6, AgeBand::InfantStartingSolids},
    // Born on a 31st or 30th: a month without that day completes on the first of the next.
    {{2024, 1, 31}, {2024, 2, 29}, 0, AgeBand::InfantUnderSixMonths},
    {{2024, 1, 31}, {2024, 3, 1}, 1, AgeBand::InfantUnderSixMonths},
    {{2023, 8, 30}, {2024, 2, 29}, 5, AgeBand::InfantUnderSixMonths},
    {{2023, 8, 30}, {2024, 3, 1}, 6, AgeBand::InfantStartingSolids},
    // Born on the leap day: 1 March in a common year, 29 February in a leap year.
    {{2024, 2, 29}, {2025, 2, 28}, 11, AgeBand::InfantStartingSolids},
    {{2024, 2, 29}, {2025, 3, 1}, 12, AgeBand::Child},
    {{2024, 2, 29}, {2028, 2, 28}, 47, AgeBand::Child},
    {{2024, 2, 29}, {2028, 2, 29}, 48, AgeBand::Child},
    {{2024, 2, 29}, {2037, 2, 28}, 155, AgeBand::Child},
    {{2024, 2, 29}, {2037, 3, 1}, 156, AgeBand::Adult},
    // 1900 had no leap day, 2000 had one.
    {{1896, 2, 29}, {1900, 2, 28}, 47, AgeBand::Child},
    {{1896, 2, 29}, {1900, 3, 1}, 48, AgeBand::Child},
    {{1999, 2, 28}, {2000, 2, 28}, 12, AgeBand::Child},
};

TEST(AgeBandTest, CountsMonthsAndBandsByTheCalendar) {
    for (const AgeCase& c : ageCases) {
        SCOPED_TRACE(c.birth.toString(Qt::ISODate).toStdString() + " on " +
                     c.day.toString(Qt::ISODate).toStdString());
        EXPECT_EQ(monthsBetween(c.birth, c.day), c.months);
        EXPECT_EQ(ageBandOn(c.birth, c.day), c.band);
    }
}

TEST(AgeBandTest, HasNoBandForInvalidOrReversedDays) {
    const QDate day(2024, 5, 1);
    EXPECT_EQ(ageBandOn(QDate(), day), std::nullopt);
    EXPECT_EQ(ageBandOn(day, QDate()), std::nullopt);
    EXPECT_EQ(ageBandOn(QDate(2023, 2, 29), day), std::nullopt);
    EXPECT_EQ(ageBandOn(day.addDays(1), day), std::nullopt);
    EXPECT_EQ(monthsBetween(day.addDays(1), day), 0);
    EXPECT_EQ(monthsBetween(QDate(), day), 0);
}

/// The day on which the k-th month is complete, said the other way round: the same day of the
/// month k months on, or the first of the next month when there is no such day.
QDate monthCompletes(QDate birth, int k) {
    const QDate month = QDate(birth.year(), birth.month(), 1).addMonths(k);
    return birth.day() <= month.daysInMonth() ? month.addDays(birth.day() - 1) : month.addMonths(1);
}

TEST(AgeBandTest, CompletesEachMonthOnItsDayAndNotBefore) {
    for (QDate birth(2023, 1, 1); birth < QDate(2025, 1, 1); birth = birth.addDays(1)) {
        for (int k = 1; k <= 160; k += 3) {
            const QDate day = monthCompletes(birth, k);
            ASSERT_GE(monthsBetween(birth, day), k) << birth.toString().toStdString();
            ASSERT_LT(monthsBetween(birth, day.addDays(-1)), k) << birth.toString().toStdString();
        }
    }
}

TEST(AgeBandTest, NeverGrowsYounger) {
    const QDate birth(2024, 2, 29);
    int last = 0;
    AgeBand lastBand = AgeBand::InfantUnderSixMonths;
    for (QDate day = birth; day < birth.addYears(14); day = day.addDays(1)) {
        ASSERT_GE(monthsBetween(birth, day), last);
        const std::optional<AgeBand> band = ageBandOn(birth, day);
        ASSERT_TRUE(band.has_value());
        ASSERT_GE(*band, lastBand);
        last = monthsBetween(birth, day);
        lastBand = *band;
    }
    EXPECT_EQ(lastBand, AgeBand::Adult);
}

struct MidnightCase {
    const char* zone = nullptr;
    QDate day;
    AgeBand band = AgeBand::Adult;
};

/// One instant, 2024-03-10 04:30 UTC, twenty minutes to six hours from midnight in each place;
/// offsets by the IANA time zone database: -5 h, -8 h, 0, +13 h, +5:45.
TEST(AgeBandTest, FollowsTheFamilysMidnight) {
    const FixedClock clock(QDateTime(QDate(2024, 3, 10), QTime(4, 30), Qt::UTC));
    const QDate birth(2023, 3, 10);
    const MidnightCase cases[] = {
        {"America/New_York", {2024, 3, 9}, AgeBand::InfantStartingSolids},
        {"America/Los_Angeles", {2024, 3, 9}, AgeBand::InfantStartingSolids},
        {"UTC", {2024, 3, 10}, AgeBand::Child},
        {"Pacific/Auckland", {2024, 3, 10}, AgeBand::Child},
        {"Asia/Kathmandu", {2024, 3, 10}, AgeBand::Child},
    };
    for (const MidnightCase& c : cases) {
        SCOPED_TRACE(c.zone);
        const QTimeZone zone{QByteArray(c.zone)};
        ASSERT_TRUE(zone.isValid());
        EXPECT_EQ(clock.today(zone), c.day);
        EXPECT_EQ(ageBandOn(birth, clock.today(zone)), c.band);
    }
}

TEST(AgeBandTest, ReadsItsOwnIds) {
    const std::pair<AgeBand, QString> ids[] = {
        {AgeBand::InfantUnderSixMonths, QStringLiteral("infant-under-6-months")},
        {AgeBand::InfantStartingSolids, QStringLiteral("infant-starting-solids")},
        {AgeBand::Child, QStringLiteral("child")},
        {AgeBand::Adult, QStringLiteral("adult")},
    };
    for (const auto& [band, id] : ids) {
        EXPECT_EQ(ageBandId(band), id);
        EXPECT_EQ(ageBandFromId(id), band);
    }
    for (const QString& id :
         {QString(), QStringLiteral("Child"), QStringLiteral("adult "), QStringLiteral("elder")})
        EXPECT_EQ(ageBandFromId(id), std::nullopt) << id.toStdString();
}

TEST(AgeBandTest, NamesBandsInWords) {
    EXPECT_EQ(ageBandName(AgeBand::InfantUnderSixMonths), QStringLiteral("infant under 6 months"));
    EXPECT_EQ(ageBandName(AgeBand::InfantStartingSolids), QStringLiteral("infant starting solids"));
    EXPECT_EQ(ageBandName(AgeBand::Child), QStringLiteral("child"));
    EXPECT_EQ(ageBandName(AgeBand::Adult), QStringLiteral("adult"));
}

} // namespace
} // namespace ladlework
