#include "intake/log.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::intake {
namespace {

using quantity::Volume;

const QDate today(2024, 3, 1);

IntakeEntry drunk(QDate day, double ml) {
    IntakeEntry entry;
    entry.day = day;
    entry.drunk = Volume::fromMillilitres(ml);
    return entry;
}

Reaction felt(QDate day, int strength, bool redFlag = false) {
    Reaction reaction;
    reaction.day = day;
    reaction.symptom = QStringLiteral("headache");
    reaction.strength = strength;
    reaction.redFlag = redFlag;
    return reaction;
}

std::string placeOf(const Outcome& outcome) {
    return outcome ? std::string() : outcome.error().place.toStdString();
}

TEST(IntakeLogTest, checksAnEntry) {
    EXPECT_EQ(placeOf(check(drunk(today, 0), today)), "");
    EXPECT_EQ(placeOf(check(drunk(today, 6000), today)), "");
    EXPECT_EQ(placeOf(check(drunk(today, 6001), today)), "drunk");
    EXPECT_EQ(placeOf(check(drunk(today, -1), today)), "drunk");
    EXPECT_EQ(placeOf(check(drunk(today, std::numeric_limits<double>::quiet_NaN()), today)),
              "drunk");
    EXPECT_EQ(placeOf(check(drunk(today.addDays(1), 5), today)), "day");
    EXPECT_EQ(placeOf(check(drunk(QDate(), 5), today)), "day");
}

TEST(IntakeLogTest, checksAReaction) {
    EXPECT_EQ(placeOf(check(felt(today, 0), today)), "");
    EXPECT_EQ(placeOf(check(felt(today, 10), today)), "");
    EXPECT_EQ(placeOf(check(felt(today, 11), today)), "strength");
    EXPECT_EQ(placeOf(check(felt(today, -1), today)), "strength");
    EXPECT_EQ(placeOf(check(felt(today.addDays(1), 1), today)), "day");
    Reaction reaction = felt(today, 1);
    reaction.symptom = QStringLiteral("  ");
    EXPECT_EQ(placeOf(check(reaction, today)), "symptom");
    reaction = felt(today, 1);
    reaction.startMinute = 1439;
    reaction.minutes = 0;
    EXPECT_EQ(placeOf(check(reaction, today)), "");
    reaction.startMinute = 1440;
    EXPECT_EQ(placeOf(check(reaction, today)), "startMinute");
    reaction.startMinute.reset();
    reaction.minutes = -1;
    EXPECT_EQ(placeOf(check(reaction, today)), "minutes");
}

TEST(IntakeLogTest, mergesTheDayInAnyOrder) {
    QList<IntakeEntry> entries{drunk(today, 0.1), drunk(today.addDays(-2), 30), drunk(today, 0.2),
                               drunk(today, 0.3), drunk(today.addDays(-9), 30)};
    QList<Reaction> reactions{felt(today, 2), felt(today.addDays(-1), 0, true), felt(today, 4),
                              felt(today, 1)};
    const QList<LogDay> days = logDays(entries, reactions, today.addDays(-2));
    ASSERT_EQ(days.size(), 3);
    EXPECT_EQ(days[0].day, today.addDays(-2));
    EXPECT_FALSE(days[0].worstReaction.has_value());
    EXPECT_EQ(days[1].drunk, Volume());
    EXPECT_TRUE(days[1].redFlag);
    EXPECT_EQ(days[1].worstReaction, 0);
    EXPECT_NEAR(days[2].drunk.toMillilitres(), 0.6, 1e-12);
    EXPECT_EQ(days[2].worstReaction, 4);
    EXPECT_FALSE(days[2].redFlag);

    // 0.1 + 0.2 + 0.3 differs from 0.3 + 0.2 + 0.1 in the last digit; here it must not.
    std::ranges::reverse(entries);
    std::ranges::reverse(reactions);
    EXPECT_EQ(logDays(entries, reactions, today.addDays(-2)), days);
}

TEST(IntakeLogTest, anInvalidStartLeavesNothingOut) {
    EXPECT_EQ(logDays({drunk(today.addDays(-400), 1)}, {}, QDate()).size(), 1);
    EXPECT_TRUE(logDays({drunk(QDate(), 1)}, {}, QDate()).isEmpty());
    EXPECT_TRUE(logDays({}, {}, today).isEmpty());
}

} // namespace
} // namespace ladlework::intake
