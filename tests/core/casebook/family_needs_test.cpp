// What the list of families shows must be the same from an excerpt as from the whole records.
#include "casebook/family_needs.h"
#include "casebook/standing_maker.h"
#include "core/casebook/hand_made_family.h"

#include <gtest/gtest.h>
#include <random>

namespace ladlework::casebook {
namespace {

using hand_made::today;

/// The excerpt that a store would read: no log, but where it has led.
FamilyExcerpt excerptOf(const FamilyRecords& records) {
    FamilyExcerpt excerpt;
    excerpt.records = records;
    excerpt.records.entries.clear();
    excerpt.records.reactions.removeIf(
        [](const intake::Reaction& reaction) { return !reaction.redFlag; });
    for (const people::Member& member : records.members) {
        // Seen by an adult's eyes: what is kept does not know how old the member is.
        people::Member grown = member;
        grown.birth = QDate(1980, 1, 1);
        excerpt.climbs.insert(member.id, climbSoFar(memberLog(records, grown, today)));
    }
    return excerpt;
}

class FamilyNeedsTest : public ::testing::Test {
protected:
    FamilyNeedsTest() : catalogue(kitchen::Catalogue::load().value()) {}

    [[nodiscard]] FamilyNeeds whole(const FamilyRecords& records, QDate day) const {
        return needsOf(Casebook(records, catalogue, day));
    }

    kitchen::Catalogue catalogue;
};

/// Logs over several ladders with stops, decisions, gaps and an end some days before today.
class RandomFamilies {
public:
    explicit RandomFamilies(unsigned seed) : m_engine(seed) {}

    FamilyRecords next() {
        FamilyRecords records = hand_made::records();
        records.entries.clear();
        records.reactions.clear();
        records.decisions.clear();
        records.ladders.clear();
        for (const people::Member& member : std::as_const(records.members))
            live(records, member.id);
        return records;
    }

private:
    int below(int limit) { return static_cast<int>(m_engine() % static_cast<unsigned>(limit)); }

    void live(FamilyRecords& records, MemberId member) {
        const QDate first = today.addDays(-20 - below(60));
        const QDate last = today.addDays(-below(12));
        const int ladders = below(4);
        for (int i = 0; i < ladders; ++i)
            addLadder(records, member, first.addDays(below(90) - 5));
        for (QDate day = first; day <= last; day = day.addDays(1))
            if (below(10) > 1)
                liveDay(records, member, day);
        if (below(5) == 0)
            addDecision(records, member, today.addDays(1));
        if (below(5) == 0)
            addDecision(records, member, today);
        intake::Target target = records.targets.first();
        target.id = TargetId{100 + member.value};
        target.member = member;
        target.from = first;
        if (below(3) == 0)
            target.easeOffFrom = today.addDays(-below(60));
        records.targets.append(target);
    }

    void liveDay(FamilyRecords& records, MemberId member, QDate day) {
        records.entries.append(hand_made::drank(member, day, 20.0 * below(40)));
        if (below(12) == 0) {
            intake::Reaction reaction;
            reaction.id = ReactionId{records.reactions.size() + 1};
            reaction.member = member;
            reaction.day = day;
            reaction.symptom = QStringLiteral("rash");
            reaction.strength = below(11);
            reaction.redFlag = below(6) == 0;
            records.reactions.append(reaction);
        }
        if (below(15) == 0)
            addDecision(records, member, day);
    }

    void addLadder(FamilyRecords& records, MemberId member, QDate from) {
        intake::Ladder ladder;
        ladder.id = LadderId{records.ladders.size() + 1};
        ladder.member = member;
        ladder.from = from;
        for (int rung = 1; rung <= 2 + below(6); ++rung)
            ladder.rungs.append(hand_made::ml(50.0 * rung));
        ladder.rules.holdTargetDays = 1 + below(20);
        ladder.rules.daysToAdvance = 1 + below(3);
        records.ladders.append(ladder);
    }

    void addDecision(FamilyRecords& records, MemberId member, QDate day) {
        intake::Decision decision;
        decision.id = DecisionId{records.decisions.size() + 1};
        decision.member = member;
        decision.day = day;
        decision.resumeAtRung = below(3);
        decision.reason = QStringLiteral("spoken with the clinician");
        records.decisions.append(decision);
    }

    std::mt19937 m_engine;
};

TEST_F(FamilyNeedsTest, anExcerptSaysWhatTheWholeRecordsSay) {
    const FamilyRecords records = hand_made::records();
    for (const int later : {0, 1, 2, 3, 5, 8, 20}) {
        const QDate day = today.addDays(later);
        const auto needs = needsOf(excerptOf(records), catalogue, day);
        ASSERT_TRUE(needs) << later;
        EXPECT_EQ(*needs, whole(records, day)) << later;
    }
    EXPECT_TRUE(hasCode(whole(records, today).attention, u"ladder-stopped"));
    EXPECT_FALSE(whole(records, today).openCookings.isEmpty());
}

TEST_F(FamilyNeedsTest, randomLogsOverSeveralLaddersSayTheSame) {
    RandomFamilies families(4);
    int told = 0;
    int silent = 0;
    int earlierStops = 0;
    QSet<QString> codes;
    for (int i = 0; i < 400; ++i) {
        const FamilyRecords records = families.next();
        const FamilyExcerpt excerpt = excerptOf(records);
        for (const ClimbSoFar& climb : excerpt.climbs)
            earlierStops += climb.earlier ? 1 : 0;
        for (const int later : {0, 1, 2, 6, 30}) {
            const QDate day = today.addDays(later);
            const auto needs = needsOf(excerpt, catalogue, day);
            if (!needs) {
                ++silent;
                continue;
            }
            ++told;
            ASSERT_EQ(*needs, whole(records, day)) << i << " " << later;
            for (const Finding& finding : needs->attention)
                codes.insert(finding.code);
        }
    }
    // Only a ladder that began after the last entry makes an excerpt say nothing.
    EXPECT_GT(told, silent);
    EXPECT_GT(silent, 0);
    EXPECT_GT(earlierStops, 10);
    for (const char* code : {"ladder-stopped", "red-flag", "no-entry", "target-held",
                             "ladder-stuck", "target-reached"})
        EXPECT_TRUE(codes.contains(QString::fromLatin1(code))) << code;
}

TEST_F(FamilyNeedsTest, anExcerptThatDoesNotTellSaysSo) {
    const FamilyRecords records = hand_made::records();
    FamilyExcerpt excerpt = excerptOf(records);
    excerpt.climbs.remove(hand_made::ana);
    EXPECT_FALSE(needsOf(excerpt, catalogue, today)) << "nothing is kept of a member";

    const QDate beforeTheLog = records.ladders.first().from;
    EXPECT_FALSE(needsOf(excerptOf(records), catalogue, beforeTheLog))
        << "the log goes on after it";

    excerpt = excerptOf(records);
    excerpt.climbs[hand_made::ana].state.rung = 1000;
    EXPECT_FALSE(needsOf(excerpt, catalogue, today)) << "a rung that there is not";
}

} // namespace
} // namespace ladlework::casebook
