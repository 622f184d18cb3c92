#include "intake/exposure_days.h"

#include <gtest/gtest.h>

namespace ladlework::intake {
namespace {

const QDate day(2024, 3, 1);
const PotId beefPot{1};
const PotId strangePot{9}; // nothing is known of it
const LotId jar{5};

IntakeEntry drunk(int offset, double ml, PotId pot = {}, LotId lot = {}) {
    IntakeEntry entry;
    entry.day = day.addDays(offset);
    entry.drunk = quantity::Volume::fromMillilitres(ml);
    entry.pot = pot;
    entry.lot = lot;
    return entry;
}

Reaction felt(int offset, int strength, bool redFlag = false) {
    Reaction reaction;
    reaction.day = day.addDays(offset);
    reaction.strength = strength;
    reaction.redFlag = redFlag;
    return reaction;
}

QHash<PotId, QStringList> subjects() {
    return {{beefPot, {QStringLiteral("beef"), QStringLiteral("onion")}},
            {PotId{2}, {QStringLiteral("celery"), QStringLiteral("onion")}}};
}

TEST(ExposureDaysTest, namesAnimalsCutsAndExtrasOfAPotOnce) {
    const Result<kitchen::Catalogue> catalogue = kitchen::Catalogue::load();
    ASSERT_TRUE(catalogue.has_value());
    kitchen::Pot pot;
    pot.cuts = {{QStringLiteral("veal-shank"), {}, true},
                {QStringLiteral("beef-shank"), {}, true},
                {QStringLiteral("beef-oxtail"), {}, true}};
    pot.extras = {{QStringLiteral("onion"), {}}, {QStringLiteral("onion"), {}}};
    pot.salt = quantity::Mass::fromGrams(5);
    QStringList found = subjectsOf(pot, *catalogue);
    found.sort();
    QStringList expected{QStringLiteral("beef"),       QStringLiteral("beef-oxtail"),
                         QStringLiteral("beef-shank"), QStringLiteral("onion"),
                         QStringLiteral("veal"),       QStringLiteral("veal-shank")};
    EXPECT_EQ(found, expected);
}

TEST(ExposureDaysTest, joinsDrinksWithReactions) {
    const QList<PatternDay> days =
        exposureDays({drunk(2, 100, PotId{2}), drunk(0, 50, beefPot), drunk(0, 50, {}, jar)},
                     {felt(0, 2), felt(0, 4), felt(3, 1)}, subjects(), {{jar, PotId{2}}});
    ASSERT_EQ(days.size(), 3);
    EXPECT_EQ(days[0].day, day);
    EXPECT_EQ(days[0].exposures, (QStringList{QStringLiteral("beef"), QStringLiteral("onion"),
                                              QStringLiteral("celery")}));
    EXPECT_EQ(days[0].worstReaction, 4);
    EXPECT_EQ(days[1].day, day.addDays(2));
    EXPECT_EQ(days[1].worstReaction, 0);
    EXPECT_EQ(days[2].day, day.addDays(3));
    EXPECT_TRUE(days[2].exposures.isEmpty());
}

TEST(ExposureDaysTest, theEntrysOwnPotComesBeforeThatOfItsContainer) {
    EXPECT_EQ(potOf(drunk(0, 1, beefPot, jar), {{jar, PotId{2}}}), beefPot);
    EXPECT_EQ(potOf(drunk(0, 1, {}, jar), {{jar, PotId{2}}}), PotId{2});
    EXPECT_EQ(potOf(drunk(0, 1), {{jar, PotId{2}}}), PotId{});
}

TEST(ExposureDaysTest, leavesOutADayWithADrinkThatNobodyKnows) {
    const QList<IntakeEntry> entries{drunk(0, 50),          drunk(1, 50, strangePot),
                                     drunk(2, 50, beefPot), drunk(2, 50),
                                     drunk(3, 0),           drunk(4, 50, beefPot)};
    const QList<PatternDay> days = exposureDays(entries, {felt(0, 5)}, subjects(), {});
    ASSERT_EQ(days.size(), 2) << "nothing drunk is known, so is the beef pot";
    EXPECT_EQ(days[0].day, day.addDays(3));
    EXPECT_TRUE(days[0].exposures.isEmpty());
    EXPECT_EQ(days[1].day, day.addDays(4));
}

TEST(ExposureDaysTest, aRedFlagIsAReactionOfTheGreatestStrength) {
    const QList<PatternDay> days = exposureDays({}, {felt(0, 0, true)}, {}, {});
    ASSERT_EQ(days.size(), 1);
    EXPECT_EQ(days[0].worstReaction, 10);
    EXPECT_TRUE(exposureDays({}, {}, {}, {}).isEmpty());
}

} // namespace
} // namespace ladlework::intake
