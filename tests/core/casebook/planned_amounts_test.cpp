#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {
class PlannedAmountsTest : public ::testing::Test {
protected:
    PlannedAmountsTest() : catalogue(*kitchen::Catalogue::load()) {}

    [[nodiscard]] QList<double> planned(const FamilyRecords& records, MemberId member, QDate start,
                                        int days) const {
        const Casebook book(records, catalogue, today);
        QList<double> amounts;
        for (const quantity::Volume volume : book.plannedAmounts(member, start, days))
            amounts.append(volume.toMillilitres());
        return amounts;
    }

    kitchen::Catalogue catalogue;
};
} // namespace

TEST_F(PlannedAmountsTest, goesUpAsWhenEveryDayIsAGoodDay) {
    // Ana had good days on 2 and 3 November. By the rules (3 good days to go up) today is the third
    // on 60 mL; then three days each on 120 and 240.
    EXPECT_EQ(planned(hand_made::records(), ana, monday, 10),
              (QList<double>{60, 60, 60, 120, 120, 120, 240, 240, 240, 480}));
}

TEST_F(PlannedAmountsTest, neverGoesAboveTheLadder) {
    const QList<double> amounts = planned(hand_made::records(), ana, today, 200);
    EXPECT_EQ(*std::max_element(amounts.begin(), amounts.end()), 960);
    EXPECT_EQ(amounts.last(), 960);
}

TEST_F(PlannedAmountsTest, beginsOnTheFirstRungOnTheLaddersFirstDay) {
    EXPECT_EQ(planned(hand_made::records(), ben, monday, 7),
              (QList<double>{0, 0, 5, 5, 5, 15, 15}));
}

TEST_F(PlannedAmountsTest, isNothingWhileStopped) {
    // The red flag came on 30 October: that day was asked for, the days after it are not.
    EXPECT_EQ(planned(hand_made::records(), mia, QDate(2026, 10, 29), 10),
              (QList<double>{30, 30, 0, 0, 0, 0, 0, 0, 0, 0}));
}

TEST_F(PlannedAmountsTest, isNothingOnTheDayOfAStopThatIsToday) {
    FamilyRecords records = hand_made::records();
    intake::Reaction reaction = records.reactions.first();
    reaction.member = ana;
    reaction.day = today;
    records.reactions.append(reaction);
    EXPECT_EQ(planned(records, ana, today, 3), (QList<double>{0, 0, 0}));
}

TEST_F(PlannedAmountsTest, waitsOutAHold) {
    FamilyRecords records = hand_made::records();
    intake::Reaction reaction;
    reaction.member = ana;
    reaction.day = today.addDays(-1);
    reaction.symptom = QStringLiteral("bloating");
    reaction.strength = 6; // above moderate: back a rung and hold three days
    records.reactions.append(reaction);
    EXPECT_EQ(planned(records, ana, today, 8), (QList<double>{60, 60, 60, 60, 60, 60, 120, 120}));
}

TEST_F(PlannedAmountsTest, showsThePastAsItWasInForceThen) {
    FamilyRecords records = hand_made::records();
    intake::Ladder second = records.ladders.first();
    second.id = LadderId{9};
    second.from = today;
    second.rungs = {ml(500)};
    records.ladders.append(second);
    EXPECT_EQ(planned(records, ana, monday, 4), (QList<double>{60, 60, 500, 500}));
}

TEST_F(PlannedAmountsTest, aLadderOfTheFutureTakesOverOnItsDay) {
    FamilyRecords records = hand_made::records();
    intake::Ladder second = records.ladders.first();
    second.id = LadderId{9};
    second.from = today.addDays(2);
    second.rungs = {ml(90), ml(180)};
    records.ladders.prepend(second);
    EXPECT_EQ(planned(records, ana, today, 6), (QList<double>{60, 120, 90, 90, 90, 180}));
}

TEST_F(PlannedAmountsTest, oddQuestionsGetEmptyAnswers) {
    EXPECT_EQ(planned(hand_made::records(), MemberId{99}, monday, 2), (QList<double>{0, 0}));
    EXPECT_TRUE(planned(hand_made::records(), ana, monday, 0).isEmpty());
    EXPECT_TRUE(planned(hand_made::records(), ana, monday, -3).isEmpty());
    EXPECT_EQ(planned(hand_made::records(), ana, QDate(), 1), (QList<double>{0}));
}

TEST_F(PlannedAmountsTest, isBoundedAndAsksNothingInAnAgeToCome) {
    EXPECT_EQ(planned(hand_made::records(), ana, QDate(9999, 12, 27), 3), (QList<double>{0, 0, 0}));
}
