#include "casebook/climb_findings.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {

/// Ana on a ladder of 60, 120 and 240 mL from 5 October, three good days a rung. The rungs and days
/// are reckoned by hand from the rules of the machine.
class ClimbFindingsTest : public ::testing::Test {
protected:
    ClimbFindingsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        records.reactions.clear();
        records.entries.clear();
        records.notes.clear();
        records.targets.clear();
        intake::Ladder ladder;
        ladder.id = LadderId{70};
        ladder.member = ana;
        ladder.from = QDate(2026, 10, 5);
        ladder.rungs = {ml(60), ml(120), ml(240)};
        records.ladders = {ladder};
    }
    void drink(QDate from, QDate to, double millilitres) {
        for (QDate day = from; day <= to; day = day.addDays(1))
            records.entries.append(drank(ana, day, millilitres));
    }
    [[nodiscard]] Findings findings() const {
        const Casebook book(records, catalogue, today);
        return casebook::climbFindings(*book.standing(ana), book.records(), today);
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

} // namespace

TEST_F(ClimbFindingsTest, ARungThatIsNotLeftIsStuck) {
    // Three good days to the second rung on 8 October; from then on too little every day.
    drink(QDate(2026, 10, 5), QDate(2026, 10, 7), 60);
    drink(QDate(2026, 10, 8), QDate(2026, 11, 3), 60);
    const Findings found = findings();
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found.first().code, QStringLiteral("ladder-stuck"));
    EXPECT_EQ(found.first().severity, Finding::Severity::Caution);
    EXPECT_EQ(found.first().value, 27.0) << "8 October to 4 November";
    EXPECT_TRUE(found.first().text.contains(QStringLiteral("27 days")));
}

TEST_F(ClimbFindingsTest, AShortStandIsNotStuck) {
    // Four times the three days of the rule are twelve.
    records.ladders.first().from = today.addDays(-11);
    drink(today.addDays(-11), today.addDays(-1), 30);
    EXPECT_TRUE(findings().isEmpty());
    records.ladders.first().from = today.addDays(-12);
    drink(today.addDays(-12), today.addDays(-12), 30);
    EXPECT_TRUE(hasCode(findings(), u"ladder-stuck"));
}

TEST_F(ClimbFindingsTest, SilenceAndAStopAreToldElsewhere) {
    drink(QDate(2026, 10, 5), QDate(2026, 10, 25), 30);
    EXPECT_TRUE(findings().isEmpty()) << "nothing entered for ten days";
    drink(QDate(2026, 10, 26), QDate(2026, 11, 3), 30);
    ASSERT_TRUE(hasCode(findings(), u"ladder-stuck"));
    intake::Reaction reaction;
    reaction.member = ana;
    reaction.day = QDate(2026, 11, 2);
    reaction.symptom = QStringLiteral("fainting");
    reaction.strength = 10;
    reaction.redFlag = true;
    records.reactions = {reaction};
    EXPECT_TRUE(findings().isEmpty());
}

TEST_F(ClimbFindingsTest, AReachedTargetIsToldForAWeekOrUntilANote) {
    // Rungs on 29 October, 1 and 4 November: the last is in force from today.
    records.ladders.first().from = QDate(2026, 10, 29);
    drink(QDate(2026, 10, 29), QDate(2026, 11, 4), 240);
    const Findings found = findings();
    ASSERT_EQ(found.size(), 1);
    EXPECT_EQ(found.first().code, QStringLiteral("target-reached"));
    EXPECT_EQ(found.first().severity, Finding::Severity::Note);
    EXPECT_TRUE(found.first().text.contains(QStringLiteral("4 November 2026")));
    casebook::VisitNote note;
    note.day = today;
    records.notes = {note};
    EXPECT_TRUE(findings().isEmpty());
    records.notes.clear();
    // Reached on 26 October, more than a week ago.
    records.ladders.first().from = QDate(2026, 10, 20);
    drink(QDate(2026, 10, 20), QDate(2026, 10, 28), 240);
    EXPECT_TRUE(findings().isEmpty());
}

TEST_F(ClimbFindingsTest, ALadderThatBeganAtTheTargetReachedNothing) {
    records.ladders.first().rungs = {ml(240)};
    records.ladders.first().from = today.addDays(-3);
    drink(today.addDays(-3), today, 240);
    EXPECT_TRUE(findings().isEmpty());
}
