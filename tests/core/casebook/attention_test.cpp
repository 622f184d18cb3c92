#include "casebook/casebook.h"

#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using casebook::Casebook;
using casebook::FamilyRecords;
using namespace hand_made;

namespace {
class AttentionTest : public ::testing::Test {
protected:
    AttentionTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Findings attention() const {
        return Casebook(records, catalogue, today).attention();
    }
    /// The family without Mia's red flag: nothing to say of it.
    void calm() {
        records.reactions.clear();
        records.ladders.removeIf([](const intake::Ladder& ladder) { return ladder.member == mia; });
    }

    kitchen::Catalogue catalogue;
    FamilyRecords records;
};

Finding found(const Findings& findings, const QString& code) {
    const auto at = std::ranges::find(findings, code, &Finding::code);
    return at == findings.end() ? Finding() : *at;
}
} // namespace

TEST_F(AttentionTest, isEmptyWhenAllIsWell) {
    calm();
    EXPECT_TRUE(attention().isEmpty());
}

TEST_F(AttentionTest, aStoppedLadderComesFirstAndNamesTheMember) {
    records.family.reviewOn = today;
    const Findings findings = attention();
    ASSERT_GE(findings.size(), 2);
    EXPECT_EQ(findings.first().code, QStringLiteral("ladder-stopped"));
    EXPECT_EQ(findings.first().severity, Finding::Severity::Stop);
    EXPECT_TRUE(findings.first().text.contains(QStringLiteral("Mia Hartley")));
    EXPECT_TRUE(findings.first().text.contains(QStringLiteral("30 October 2026")));
    // The stop tells of the red flag; it is not told twice.
    EXPECT_FALSE(hasCode(findings, u"red-flag"));
    EXPECT_TRUE(std::ranges::is_sorted(findings, std::ranges::greater(), &Finding::severity));
}

TEST_F(AttentionTest, aRedFlagWithoutALadderWaitsForAnAnswer) {
    records.ladders.clear();
    EXPECT_EQ(found(attention(), QStringLiteral("red-flag")).severity, Finding::Severity::Stop);
    casebook::VisitNote note;
    note.day = QDate(2026, 10, 31);
    records.notes = {note};
    EXPECT_FALSE(hasCode(attention(), u"red-flag"));
}

TEST_F(AttentionTest, silenceIsNotedAndThenCautioned) {
    calm();
    records.entries.clear();
    records.ladders.removeIf([](const intake::Ladder& ladder) { return ladder.member == ben; });
    // staleDays is 5: a note from 3 silent days on, a caution from 5; today is not over.
    const struct {
        int lastEntryDaysAgo = 0;
        std::optional<Finding::Severity> severity;
    } cases[] = {{1, {}}, {3, {}}, {4, Finding::Severity::Note}, {6, Finding::Severity::Caution}};
    for (const auto& [ago, severity] : cases) {
        records.entries = {drank(ana, today.addDays(-ago), 60)};
        const Findings findings = attention();
        if (!severity) {
            EXPECT_TRUE(findings.isEmpty()) << ago;
            continue;
        }
        const Finding finding = found(findings, QStringLiteral("no-entry"));
        EXPECT_EQ(finding.severity, *severity) << ago;
        EXPECT_EQ(finding.value, ago - 1);
        EXPECT_TRUE(finding.text.contains(QStringLiteral("Ana Hartley")));
    }
    records.family.status = people::Family::Status::Resting;
    EXPECT_TRUE(attention().isEmpty());
}

TEST_F(AttentionTest, aReviewIsDueUntilANoteIsWritten) {
    calm();
    records.family.reviewOn = today.addDays(1);
    EXPECT_TRUE(attention().isEmpty());
    records.family.reviewOn = today;
    EXPECT_EQ(found(attention(), QStringLiteral("review-due")).severity, Finding::Severity::Note);
    records.family.reviewOn = today.addDays(-3);
    EXPECT_EQ(found(attention(), QStringLiteral("review-due")).severity,
              Finding::Severity::Caution);
    casebook::VisitNote note;
    note.day = today.addDays(-2);
    records.notes = {note};
    EXPECT_TRUE(attention().isEmpty());
    records.notes.first().reviewOn = today;
    EXPECT_TRUE(hasCode(attention(), u"review-due"));
}

TEST_F(AttentionTest, aRetryIsDueOnItsDayButNeverOfAnAllergy) {
    calm();
    people::ToleranceNote& note = records.tolerances.first();
    note.verdict = people::ToleranceNote::Verdict::TryAgainOn;
    note.tryAgainOn = today.addDays(1);
    EXPECT_TRUE(attention().isEmpty());
    note.tryAgainOn = today;
    const Finding due = found(attention(), QStringLiteral("retry-due"));
    EXPECT_EQ(due.severity, Finding::Severity::Note);
    EXPECT_TRUE(due.text.contains(QStringLiteral("Ben Hartley")));
    EXPECT_TRUE(due.text.contains(QStringLiteral("beef")));
    note.allergy = true;
    EXPECT_TRUE(attention().isEmpty());
}

TEST_F(AttentionTest, stockPastItsUseByIsThrownAway) {
    calm();
    kitchen::Batch batch;
    batch.id = BatchId{1};
    batch.pot = legs;
    batch.day = monday;
    kitchen::Lot lot;
    lot.id = LotId{1};
    lot.batch = batch.id;
    lot.volume = quantity::Volume::fromCups(2);
    lot.useBy = today.addDays(-1);
    records.batches = {batch};
    records.lots = {lot};
    const Finding past = found(attention(), QStringLiteral("stock-past-use"));
    EXPECT_EQ(past.severity, Finding::Severity::Caution);
    EXPECT_TRUE(past.text.contains(QStringLiteral("2 cups of Chicken legs")))
        << qPrintable(past.text);
    records.lots.first().goneOn = today;
    EXPECT_TRUE(attention().isEmpty());
}

// American Family Physician 2014;89:718: a loss of more than 5 % in 6 to 12 months is looked into;
// for a child any loss is passed on.
TEST_F(AttentionTest, weightLostIsToldWithTheName) {
    calm();
    const auto weigh = [this](MemberId member, QDate day, double kilograms) {
        people::Observation observation;
        observation.id = ObservationId{records.observations.size() + 1};
        observation.member = member;
        observation.day = day;
        observation.kind = people::weightKind();
        observation.value = kilograms;
        observation.unit = QStringLiteral("kg");
        records.observations.append(observation);
    };
    weigh(ana, today.addDays(-90), 60.0);
    weigh(ana, today.addDays(-2), 57.1); // 4.8 %
    weigh(ben, today.addDays(-90), 30.0);
    weigh(ben, today.addDays(-2), 30.4);
    EXPECT_TRUE(attention().isEmpty());
    weigh(ana, today.addDays(-1), 56.9); // 5.2 %
    const Finding adult = found(attention(), QStringLiteral("weight-loss"));
    EXPECT_EQ(adult.severity, Finding::Severity::Caution);
    EXPECT_TRUE(adult.text.startsWith(QStringLiteral("Ana Hartley: "))) << qPrintable(adult.text);
    EXPECT_FALSE(hasCode(attention(), u"weight-loss-child"));
    weigh(ben, today.addDays(-1), 29.8);
    const Finding child = found(attention(), QStringLiteral("weight-loss-child"));
    EXPECT_TRUE(child.text.startsWith(QStringLiteral("Ben Hartley: ")));
    const Casebook book(records, catalogue, today);
    EXPECT_TRUE(hasCode(book.standing(ana)->findings, u"weight-loss"));
    EXPECT_TRUE(hasCode(book.standing(ben)->findings, u"weight-loss-child"));
}

TEST_F(AttentionTest, aFinishedFamilyAsksForNothing) {
    records.family.status = people::Family::Status::Finished;
    EXPECT_TRUE(attention().isEmpty());
}
