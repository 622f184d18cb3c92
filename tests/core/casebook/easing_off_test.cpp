#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using casebook::Standing;
using namespace hand_made;

namespace {
/// Ana stands at her target: the ladder has one climbed rung left to count, 30 days are enough.
class EasingOffTest : public ::testing::Test {
protected:
    EasingOffTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        intake::Ladder& ladder = records.ladders.first();
        ladder.from = today.addDays(-100);
        ladder.rules.daysToAdvance = 1;
        ladder.rules.holdTargetDays = 30;
        records.targets.first().from = ladder.from;
        for (int ago = 100; ago > 0; --ago)
            records.entries.append(drank(ana, today.addDays(-ago), 960));
        // Nothing is to be said of the others.
        records.reactions.clear();
        records.ladders.removeIf([](const auto& one) { return one.member != ana; });
    }

    [[nodiscard]] Casebook book() const { return {records, catalogue, today}; }
    intake::Target& target() { return records.targets.first(); }
    [[nodiscard]] QList<double> planned(QDate start, int days) const {
        QList<double> amounts;
        for (const quantity::Volume volume : book().plannedAmounts(ana, start, days))
            amounts.append(volume.toMillilitres());
        return amounts;
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};
} // namespace

TEST_F(EasingOffTest, aTargetHeldLongEnoughAsksForADay) {
    ASSERT_EQ(book().standing(ana)->replay.state, intake::LadderState::EasingOff);
    const Findings findings = book().attention();
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings.first().code, QStringLiteral("target-held"));
    EXPECT_EQ(findings.first().severity, Finding::Severity::Note);
    EXPECT_EQ(findings.first().limit, 30);
    EXPECT_TRUE(findings.first().text.startsWith(QStringLiteral("Ana Hartley has held")));
    target().easeOffFrom = today.addDays(40);
    EXPECT_TRUE(book().attention().isEmpty());
    // Before that day nothing changes.
    EXPECT_EQ(book().standing(ana)->askedToday, ml(960));
    EXPECT_FALSE(book().standing(ana)->easedToday);
}

TEST_F(EasingOffTest, aRungLessEverySoManyDaysDownToNothing) {
    target().easeOffFrom = today.addDays(-1);
    target().easeEveryDays = 3;
    // Rungs 60, 120, 240, 480, 960; the first step down is on the day itself.
    EXPECT_EQ(planned(today.addDays(-3), 16), (QList<double>{960, 960, 480, 480, 480, 240, 240, 240,
                                                             120, 120, 120, 60, 60, 60, 0, 0}));
    const Casebook casebook = book();
    EXPECT_EQ(casebook.standing(ana)->askedToday, ml(480));
    EXPECT_EQ(casebook.standing(ana)->easedToday, ml(480));
    EXPECT_EQ(casebook.drinkers().front().perDay, ml(480));
}

TEST_F(EasingOffTest, whatIsToStayStays) {
    target().easeOffFrom = today;
    target().easeEveryDays = 1;
    target().easeTo = ml(200); // the lowest rung that is at least that is 240
    EXPECT_EQ(planned(today, 5), (QList<double>{480, 240, 240, 240, 240}));
}

TEST_F(EasingOffTest, theWeekAsksForTheEasedAmounts) {
    target().easeOffFrom = today;
    target().easeEveryDays = 2;
    week::WeekPlan next;
    next.start = monday.addDays(7);
    const casebook::WeekAhead week = book().weekAhead(next);
    ASSERT_FALSE(week.members.empty());
    ASSERT_EQ(week.members.front(), ana);
    // Today is Wednesday: 480 to Thursday, 240 to Saturday, 120 to Monday, 60 to Wednesday.
    EXPECT_EQ(week.problem.drinkers.front().perDay,
              (std::vector{ml(120), ml(60), ml(60), ml(0), ml(0), ml(0), ml(0)}));
}

TEST_F(EasingOffTest, asksNoMoreThanTheLadderDoes) {
    target().easeOffFrom = today.addDays(-1);
    intake::Reaction reaction;
    reaction.member = ana;
    reaction.day = today.addDays(-1);
    reaction.symptom = QStringLiteral("bloating");
    reaction.strength = 6;
    records.reactions = {reaction};
    records.ladders.first().rules.rungsBack = 3; // to 120, while easing off leaves 480
    EXPECT_EQ(book().standing(ana)->askedToday, ml(120));
    EXPECT_EQ(book().standing(ana)->easedToday, ml(480));
}

TEST_F(EasingOffTest, aStoppedLadderAsksNothing) {
    target().easeOffFrom = today.addDays(-1);
    target().easeTo = ml(480);
    intake::Reaction reaction;
    reaction.member = ana;
    reaction.day = today.addDays(-1);
    reaction.symptom = QStringLiteral("bloating");
    reaction.strength = 9;
    records.reactions = {reaction};
    EXPECT_EQ(book().standing(ana)->askedToday, quantity::Volume());
    EXPECT_EQ(planned(today, 3), (QList<double>{0, 0, 0}));
}

TEST_F(EasingOffTest, whoIsEasedOffToNothingIsNotAskedWhyNothingWasEntered) {
    target().easeOffFrom = today.addDays(-60);
    target().easeEveryDays = 5; // nothing from day 20 on
    records.entries.removeIf(
        [](const intake::IntakeEntry& entry) { return entry.day > today.addDays(-40); });
    EXPECT_FALSE(hasCode(book().attention(), u"no-entry"));
    EXPECT_EQ(book().standing(ana)->askedToday, quantity::Volume());
    target().easeTo = ml(60);
    EXPECT_TRUE(hasCode(book().attention(), u"no-entry"));
}

TEST_F(EasingOffTest, theTargetInForceOnTheDayCounts) {
    target().easeOffFrom = today.addDays(1);
    intake::Target later = target();
    later.id = TargetId{99};
    later.from = today.addDays(3);
    later.easeOffFrom = QDate();
    records.targets.append(later);
    EXPECT_EQ(planned(today, 5), (QList<double>{960, 480, 480, 960, 960}));
}
