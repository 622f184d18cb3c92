#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using casebook::Standing;
using namespace hand_made;

namespace {
class StandingTest : public ::testing::Test {
protected:
    StandingTest() : catalogue(*kitchen::Catalogue::load()) {}

    [[nodiscard]] Casebook bookOf(FamilyRecords records) const {
        return {std::move(records), catalogue, today};
    }

    kitchen::Catalogue catalogue;
};

intake::Decision goOn(MemberId member, QDate day, int rung) {
    intake::Decision decision;
    decision.member = member;
    decision.day = day;
    decision.resumeAtRung = rung;
    decision.reason = QStringLiteral("talked it over");
    return decision;
}
} // namespace

TEST_F(StandingTest, standsInTheOrderOfTheRecords) {
    const Casebook book = bookOf(hand_made::records());
    ASSERT_EQ(book.standings().size(), 4U);
    EXPECT_EQ(book.standings()[0].member.id, ana);
    EXPECT_EQ(book.standings()[3].member.id, leo);
    EXPECT_EQ(book.standing(MemberId{99}), nullptr);
    ASSERT_NE(book.standing(ben), nullptr);
    EXPECT_EQ(book.standing(ben)->band, AgeBand::Child);
    EXPECT_EQ(book.standing(leo)->band, AgeBand::InfantUnderSixMonths);
    EXPECT_EQ(book.standing(ana)->phase->name, QStringLiteral("Settled"));
    EXPECT_FALSE(book.standing(leo)->phase);
}

TEST_F(StandingTest, replaysThroughYesterdayAndTodayOnceSomethingIsKnown) {
    FamilyRecords records = hand_made::records();
    const Casebook before = bookOf(records);
    EXPECT_EQ(before.standing(ana)->replay.days.last().day, today.addDays(-1));
    EXPECT_EQ(before.standing(ana)->askedToday, ml(60));
    // A third good day goes up tomorrow; today the first rung is still asked.
    records.entries.append(drank(ana, today, 60));
    const Casebook after = bookOf(records);
    EXPECT_EQ(after.standing(ana)->replay.days.last().day, today);
    EXPECT_EQ(after.standing(ana)->askedToday, ml(60));
    EXPECT_EQ(after.standing(ana)->replay.rung, 1);
    EXPECT_EQ(after.standing(ana)->lastEntry, today);
}

TEST_F(StandingTest, theLatestLadderInForceStartsItsOwnCount) {
    FamilyRecords records = hand_made::records();
    intake::Ladder second = records.ladders.first();
    second.id = LadderId{9};
    second.from = today.addDays(-1);
    second.rungs = {ml(100), ml(200)};
    records.ladders.prepend(second);
    intake::Ladder later = second;
    later.id = LadderId{10};
    later.from = today.addDays(1);
    records.ladders.append(later);
    const Casebook book = bookOf(records);
    const Standing& standing = *book.standing(ana);
    EXPECT_EQ(standing.ladder->id, LadderId{9});
    ASSERT_EQ(standing.replay.days.size(), 1); // only yesterday lies on this ladder
    EXPECT_EQ(standing.replay.days.first().asked, ml(100));
    EXPECT_EQ(standing.askedToday, ml(100));
}

TEST_F(StandingTest, aRedFlagStopsUntilADecision) {
    FamilyRecords records = hand_made::records();
    const Casebook stopped = bookOf(records);
    EXPECT_EQ(stopped.standing(mia)->replay.state, intake::LadderState::Stopped);
    EXPECT_EQ(stopped.standing(mia)->askedToday, ml(0));
    EXPECT_TRUE(hasCode(stopped.standing(mia)->findings, u"ladder-stopped"));
    EXPECT_TRUE(hasCode(stopped.standing(mia)->findings, u"red-flag-call"));
    EXPECT_FALSE(stopped.standing(mia)->targetDate);
    // A decision of today is seen today, although nothing was drunk yet.
    records.decisions = {goOn(mia, today, 1)};
    const Casebook resumed = bookOf(records);
    EXPECT_NE(resumed.standing(mia)->replay.state, intake::LadderState::Stopped);
    EXPECT_EQ(resumed.standing(mia)->askedToday, ml(60));
    EXPECT_FALSE(hasCode(resumed.standing(mia)->findings, u"ladder-stopped"));
}

TEST_F(StandingTest, aStopOutlivesItsLadderUntilADecision) {
    FamilyRecords records = hand_made::records();
    intake::Ladder second = records.ladders.last(); // Mia's, stopped on 30 October
    for (const qint64 daysAgo : {2, 0}) {           // the stop passes through a ladder without days
        second.id = LadderId{20 - daysAgo};
        second.from = today.addDays(-daysAgo);
        records.ladders.append(second);
    }
    const Casebook stopped = bookOf(records);
    const Standing& standing = *stopped.standing(mia);
    EXPECT_EQ(standing.ladder->from, today);
    EXPECT_EQ(standing.replay.state, intake::LadderState::Stopped);
    EXPECT_EQ(standing.stoppedSince, QDate(2026, 10, 30));
    EXPECT_EQ(standing.askedToday, ml(0));
    EXPECT_FALSE(standing.targetDate);
    EXPECT_TRUE(hasCode(standing.findings, u"ladder-stopped"));
    EXPECT_TRUE(hasCode(standing.findings, u"red-flag-call"));
    EXPECT_TRUE(hasCode(stopped.attention(), u"ladder-stopped"));
    for (const quantity::Volume amount : stopped.plannedAmounts(mia, today, 7))
        EXPECT_EQ(amount, ml(0));
    // Decided before the new ladder, or on its first day: it begins on its first rung.
    for (const qint64 daysAgo : {1, 0}) {
        records.decisions = {goOn(mia, today.addDays(-daysAgo), 2)};
        const Casebook resumed = bookOf(records);
        EXPECT_NE(resumed.standing(mia)->replay.state, intake::LadderState::Stopped) << daysAgo;
        EXPECT_EQ(resumed.standing(mia)->askedToday, ml(30)) << daysAgo;
        EXPECT_TRUE(resumed.standing(mia)->stoppedSince.isNull()) << daysAgo;
        EXPECT_EQ(resumed.plannedAmounts(mia, today, 1).first(), ml(30)) << daysAgo;
    }
}

TEST_F(StandingTest, aDecisionOnACarriedStopResumesOnTheNewLadder) {
    FamilyRecords records = hand_made::records();
    intake::Ladder second = records.ladders.last();
    second.id = LadderId{20};
    second.from = today.addDays(-2);
    records.ladders.append(second);
    records.decisions = {goOn(mia, today, 1)};
    const Casebook resumed = bookOf(records);
    EXPECT_EQ(resumed.standing(mia)->askedToday, ml(60));
    // A decision of before the stop answers nothing.
    records.decisions = {goOn(mia, QDate(2026, 10, 29), 1)};
    const Casebook earlier = bookOf(records);
    EXPECT_EQ(earlier.standing(mia)->replay.state, intake::LadderState::Stopped);
}

TEST_F(StandingTest, aStopOfTodayGoesOnTomorrow) {
    FamilyRecords records = hand_made::records();
    intake::Reaction reaction = records.reactions.first();
    reaction.member = ana;
    reaction.day = today;
    records.reactions.append(reaction);
    records.decisions = {goOn(ana, today.addDays(1), 1)};
    const Casebook now = bookOf(records);
    EXPECT_EQ(now.standing(ana)->replay.state, intake::LadderState::Stopped);
    EXPECT_EQ(now.standing(ana)->stoppedSince, today);
    ASSERT_TRUE(now.standing(ana)->goesOn);
    EXPECT_EQ(now.standing(ana)->askedToday, ml(0));
    EXPECT_EQ(now.plannedAmounts(ana, today, 2), (QList<quantity::Volume>{ml(0), ml(120)}));
    const Casebook tomorrow(records, catalogue, today.addDays(1));
    EXPECT_EQ(tomorrow.standing(ana)->replay.state, intake::LadderState::Climbing);
    EXPECT_EQ(tomorrow.standing(ana)->askedToday, ml(120));
}

TEST_F(StandingTest, underSixMonthsThereIsNoLadderWhateverIsStored) {
    FamilyRecords records = hand_made::records();
    intake::Ladder ladder = records.ladders.first();
    ladder.member = leo;
    records.ladders.append(ladder);
    const Casebook book = bookOf(records);
    EXPECT_FALSE(book.standing(leo)->ladder);
    EXPECT_EQ(book.standing(leo)->askedToday, ml(0));
    EXPECT_EQ(worstOf(book.standing(leo)->findings), Finding::Severity::Stop);
    for (const quantity::Volume amount : book.plannedAmounts(leo, monday, 7))
        EXPECT_EQ(amount, ml(0));
}

TEST_F(StandingTest, theLatestNoteOfASubjectCounts) {
    const Casebook book = bookOf(hand_made::records());
    ASSERT_EQ(book.standing(ben)->tolerances.size(), 1);
    EXPECT_EQ(book.standing(ben)->tolerances.first().id, ToleranceId{2});
}

TEST_F(StandingTest, drinkersCarryNotesLimitsAndAmounts) {
    const Casebook book = bookOf(hand_made::records());
    const std::vector<kitchen::Drinker> drinkers = book.drinkers();
    ASSERT_EQ(drinkers.size(), 4U);
    EXPECT_EQ(drinkers[0].perDay, ml(60));
    EXPECT_EQ(drinkers[1].mayNot, QStringList{QStringLiteral("beef")});
    EXPECT_EQ(drinkers[2].sodiumLimitMg, 900);
    EXPECT_EQ(drinkers[2].perDay, ml(0));
    EXPECT_EQ(drinkers[3].band, AgeBand::InfantUnderSixMonths);
}

TEST_F(StandingTest, anAllergyKeepsItsAnimalsAndIngredientsOut) {
    FamilyRecords records = hand_made::records();
    people::Caution allergy;
    allergy.member = ana;
    allergy.kind = QStringLiteral("allergy-celery");
    records.cautions.append(allergy);
    records.pots.first().extras.append({QStringLiteral("celery"), quantity::Mass::fromGrams(40)});
    const Casebook book = bookOf(records);
    EXPECT_FALSE(book.whoMay(*book.standing(ana), *book.pot(legs)).may);
    EXPECT_TRUE(book.whoMay(*book.standing(ana), *book.pot(shank)).may);
}

TEST_F(StandingTest, aShellfishAllergyKeepsFishOut) {
    FamilyRecords records = hand_made::records();
    people::Caution allergy;
    allergy.member = ana;
    allergy.kind = QStringLiteral("allergy-shellfish");
    records.cautions.append(allergy);
    const auto fish = std::ranges::find_if(catalogue.cuts(), [this](const kitchen::Cut& cut) {
        return cut.cookClass == kitchen::CookClass::Fish;
    });
    ASSERT_NE(fish, catalogue.cuts().end());
    records.pots.first().cuts = {{fish->id, quantity::Mass::fromPounds(2), true}};
    const Casebook book = bookOf(records);
    EXPECT_FALSE(book.whoMay(*book.standing(ana), *book.pot(legs)).may);
    EXPECT_TRUE(book.whoMay(*book.standing(ben), *book.pot(legs)).may);
    EXPECT_FALSE(hasCode(book.standing(ana)->findings, u"allergy-bars-nothing"));
}

TEST_F(StandingTest, anAllergyThatBarsNothingAsksForANote) {
    FamilyRecords records = hand_made::records();
    people::Caution allergy;
    allergy.member = ana;
    allergy.kind = QStringLiteral("allergy-other");
    records.cautions.append(allergy);
    const Casebook open = bookOf(records);
    EXPECT_TRUE(hasCode(open.standing(ana)->findings, u"allergy-bars-nothing"));
    people::ToleranceNote note;
    note.id = ToleranceId{9};
    note.member = ana;
    note.subject = {people::Subject::Kind::Ingredient, QStringLiteral("garlic")};
    note.verdict = people::ToleranceNote::Verdict::Avoid;
    note.allergy = true;
    records.tolerances.append(note);
    const Casebook named = bookOf(records);
    EXPECT_FALSE(hasCode(named.standing(ana)->findings, u"allergy-bars-nothing"));
}

TEST_F(StandingTest, everythingThatACautionKeepsOutIsInTheCatalogue) {
    for (const people::CautionKind& kind : people::cautionKinds()) {
        for (const QString& id : kind.keepsOut) {
            const bool isClass = id == kitchen::cookClassId(kitchen::CookClass::Fish);
            EXPECT_TRUE(isClass || catalogue.animal(id) || catalogue.extra(id)) << qPrintable(id);
        }
    }
}

TEST_F(StandingTest, whoMayFollowsNotesAgeAndPhase) {
    const Casebook book = bookOf(hand_made::records());
    EXPECT_TRUE(book.whoMay(*book.standing(ben), *book.pot(legs)).may);
    EXPECT_FALSE(book.whoMay(*book.standing(ben), *book.pot(shank)).may);
    EXPECT_FALSE(book.whoMay(*book.standing(leo), *book.pot(legs)).may);
    EXPECT_TRUE(book.whoMay(*book.standing(ana), *book.pot(broth)).may);
    EXPECT_FALSE(book.whoMay(*book.standing(ben), *book.pot(broth)).may);
}

TEST_F(StandingTest, thePotIsReckonedForThoseWhoDrinkIt) {
    FamilyRecords records = hand_made::records();
    const Casebook book = bookOf(records);
    const kitchen::BrewInput both = book.brewInput(*book.pot(legs));
    EXPECT_TRUE(both.phase.strainHerbs); // Ben is in the opening phase
    EXPECT_FALSE(both.phase.boneBroth);
    // Nobody but Ana drinks beef: Ben may not, Mia is stopped.
    const kitchen::BrewInput anaOnly = book.brewInput(*book.pot(shank));
    EXPECT_FALSE(anaOnly.phase.strainHerbs);
    EXPECT_EQ(both.vessel.id, VesselId{1});
    EXPECT_EQ(both.drinkers.size(), 4U);
    EXPECT_EQ(both.meatPerDay, records.family.meatPerDay);
}

TEST_F(StandingTest, aPotWithoutAVesselTakesTheLargestOrAUsualOne) {
    FamilyRecords records = hand_made::records();
    records.pots.first().vessel = {};
    const Casebook largest = bookOf(records);
    EXPECT_EQ(largest.brewInput(*largest.pot(legs)).vessel.id, VesselId{1});
    records.vessels.clear();
    const Casebook none = bookOf(records);
    const kitchen::Vessel usual = none.brewInput(*none.pot(legs)).vessel;
    EXPECT_FALSE(usual.id.isStored());
    EXPECT_TRUE(kitchen::check(usual));
}

TEST_F(StandingTest, aFamilyWithoutAnythingIsNoTrouble) {
    const Casebook book = bookOf(FamilyRecords());
    EXPECT_TRUE(book.standings().empty());
    EXPECT_TRUE(book.stockOnHand().isEmpty());
    EXPECT_TRUE(book.attention().isEmpty());
    EXPECT_TRUE(book.weekAhead(book.plan(monday)).problem.lots.empty());
}

TEST_F(StandingTest, thePotScreenAndTheHandoutAgreeOnWhoMay) {
    const Casebook book = bookOf(hand_made::records());
    for (const kitchen::Pot& pot : book.records().pots) {
        SCOPED_TRACE(pot.name.toStdString());
        const QList<kitchen::WhoMay> screen =
            kitchen::brew(book.brewInput(pot), book.catalogue()).who;
        ASSERT_EQ(static_cast<size_t>(screen.size()), book.standings().size());
        for (qsizetype index = 0; index < screen.size(); ++index) {
            const kitchen::WhoMay handout =
                book.whoMay(book.standings().at(static_cast<size_t>(index)), pot);
            EXPECT_EQ(screen.at(index).may, handout.may);
            EXPECT_EQ(screen.at(index).why, handout.why);
        }
    }
}

TEST_F(StandingTest, anAllergyStaysUntilALaterNoteDecidesOtherwise) {
    using Verdict = people::ToleranceNote::Verdict;
    struct Row {
        Verdict later;
        int day; ///< of October; the allergy is noted on the 10th
        bool stands;
    };
    const QList<Row> rows{{Verdict::Avoid, 20, true},         {Verdict::TryAgainOn, 20, true},
                          {Verdict::Fine, 20, false},         {Verdict::SmallAmounts, 20, false},
                          {Verdict::Fine, 1, true},           {Verdict::Avoid, 10, true},
                          {Verdict::SmallAmounts, 10, false}, {Verdict::SmallAmounts, 1, true}};
    for (const Row& row : rows) {
        FamilyRecords records = hand_made::records();
        records.tolerances.clear();
        people::ToleranceNote note;
        note.id = ToleranceId{50};
        note.member = ana;
        note.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
        note.allergy = true;
        note.noted = QDate(2026, 10, 10);
        people::ToleranceNote other = note;
        other.id = ToleranceId{51};
        other.allergy = false;
        other.verdict = row.later;
        other.noted = QDate(2026, 10, row.day);
        records.tolerances = {other, note};
        const Casebook book = bookOf(records);
        const auto name = people::verdictName(row.later).toStdString();
        ASSERT_EQ(book.standing(ana)->tolerances.size(), 1);
        EXPECT_EQ(book.standing(ana)->tolerances.first().allergy, row.stands) << name << row.day;
        const std::vector<kitchen::Drinker> drinkers = book.drinkers();
        EXPECT_EQ(drinkers.front().allergicTo.contains(QStringLiteral("beef")), row.stands)
            << name << ' ' << row.day;
        // Another member's note takes nothing back.
        records.tolerances.first().member = ben;
        EXPECT_TRUE(bookOf(records).standing(ana)->tolerances.first().allergy);
    }
}
