#include "casebook/retry_findings.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using people::RetryPlan;
using people::ToleranceNote;
using namespace hand_made;

namespace {
/// Ben avoids beef since October; a plan to try it again begins today.
class RetryFindingsTest : public ::testing::Test {
protected:
    RetryFindingsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        RetryPlan plan;
        plan.id = RetryPlanId{1};
        plan.member = ben;
        plan.subject = {people::Subject::Kind::Animal, QStringLiteral("beef")};
        plan.start = today;
        plan.watchDays = 2;
        plan.steps = {quantity::Volume::fromTeaspoons(1), quantity::Volume::fromTablespoons(1)};
        records.retryPlans = {plan};
    }

    [[nodiscard]] Findings findings() const {
        const Casebook book(records, catalogue, today);
        return casebook::retryFindings(*book.standing(ben), book);
    }
    [[nodiscard]] QStringList codes() const {
        QStringList codes;
        for (const Finding& finding : findings())
            codes.append(finding.code);
        return codes;
    }
    RetryPlan& plan() { return records.retryPlans.first(); }
    ToleranceNote& note() { return records.tolerances.first(); }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

const QStringList none;
const QStringList step{QStringLiteral("retry-step-due")};
const QStringList outcomeIsDue{QStringLiteral("retry-outcome-due")};
const QStringList barred{QStringLiteral("retry-barred")};
const QStringList noted{QStringLiteral("retry-due")};
} // namespace

TEST_F(RetryFindingsTest, aStepIsDueOnItsDayAndTheOutcomeAfterTheLastDayToWatch) {
    // Steps on days 0 and 3, each watched for 2 days: over after day 5.
    const QList<QStringList> byDay{step, none, none, step, none, none, outcomeIsDue, outcomeIsDue};
    for (qsizetype day = 0; day < byDay.size(); ++day) {
        plan().start = today.addDays(-day);
        EXPECT_EQ(codes(), byDay[day]) << day;
    }
    plan().start = today.addDays(1);
    EXPECT_EQ(codes(), none);
}

TEST_F(RetryFindingsTest, theSentenceSaysWhoWhichStepOfWhatAndHowMuch) {
    plan().start = today.addDays(-3);
    const Finding finding = findings().first();
    EXPECT_EQ(finding.severity, Finding::Severity::Note);
    EXPECT_EQ(finding.text,
              QStringLiteral("Ben Hartley: step 2 of 2 of the new try of beef is today: 1 tbsp."));
}

TEST_F(RetryFindingsTest, aClosedPlanAsksForNothing) {
    for (const auto ending :
         {RetryPlan::Ending::Borne, RetryPlan::Ending::NotBorne, RetryPlan::Ending::GivenUp}) {
        plan().outcome = ending;
        plan().closed = today;
        EXPECT_EQ(codes(), none);
    }
}

TEST_F(RetryFindingsTest, anAllergyBarsAnOpenPlan) {
    // Old notes count, as do those of a cut of the animal, and a caution.
    ToleranceNote old;
    old.id = ToleranceId{50};
    old.member = ben;
    old.subject = {people::Subject::Kind::Cut, QStringLiteral("beef-shank")};
    old.allergy = true;
    old.reason = QStringLiteral("hives");
    old.noted = QDate(2025, 1, 1);
    records.tolerances.append(old);
    EXPECT_EQ(codes(), barred);
    EXPECT_EQ(findings().first().severity, Finding::Severity::Stop);
    EXPECT_TRUE(findings().first().text.contains(QStringLiteral("clinician")));
    records.tolerances.last().member = ana;
    EXPECT_EQ(codes(), step);
}

TEST_F(RetryFindingsTest, anAllergyRecordedAsACautionBarsToo) {
    plan().subject = {people::Subject::Kind::Animal, QStringLiteral("cod")};
    people::Caution caution;
    caution.member = ben;
    caution.kind = QStringLiteral("allergy-fish");
    records.cautions.append(caution);
    EXPECT_EQ(codes(), barred);
}

TEST_F(RetryFindingsTest, noStepIsDueWhileTheLadderIsStopped) {
    intake::Reaction reaction = records.reactions.first();
    reaction.id = ReactionId{9};
    reaction.member = ben;
    reaction.day = today;
    records.reactions.append(reaction);
    EXPECT_EQ(codes(), none);
    plan().start = today.addDays(-10);
    EXPECT_EQ(codes(), outcomeIsDue);
}

TEST_F(RetryFindingsTest, aNotedTryIsOfferedUntilAPlanTakesItUp) {
    note().verdict = ToleranceNote::Verdict::TryAgainOn;
    note().tryAgainOn = today;
    plan().start = today.addDays(2);
    EXPECT_EQ(codes(), none); // taken up
    plan().subject.id = QStringLiteral("lamb");
    EXPECT_EQ(codes(), noted);
    plan().subject.id = QStringLiteral("beef");
    plan().outcome = RetryPlan::Ending::GivenUp;
    plan().closed = today;
    EXPECT_EQ(codes(), noted);
    note().tryAgainOn = today.addDays(1);
    EXPECT_EQ(codes(), none);
}

TEST_F(RetryFindingsTest, aNotedTryIsNeverOfferedOfAnAllergy) {
    records.retryPlans.clear();
    note().verdict = ToleranceNote::Verdict::TryAgainOn;
    note().tryAgainOn = today;
    EXPECT_EQ(codes(), noted);
    ToleranceNote old;
    old.id = ToleranceId{50};
    old.member = ben;
    old.subject = note().subject;
    old.allergy = true;
    old.noted = QDate(2025, 1, 1);
    records.tolerances.append(old);
    EXPECT_EQ(codes(), none);
}

TEST_F(RetryFindingsTest, attentionHoldsThem) {
    records.ladders.clear();
    records.reactions.clear();
    const Casebook book(records, catalogue, today);
    ASSERT_EQ(book.attention().size(), 1);
    EXPECT_EQ(book.attention().first().code, QStringLiteral("retry-step-due"));
}
