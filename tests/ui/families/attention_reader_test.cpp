#include "ui/families/attention_reader.h"

#include "store/database.h"
#include "ui/shared/workbook_fixture.h"

#include <QSignalSpy>

namespace ladlework::ui {

class AttentionReaderTest : public WorkbookFixture {};

TEST_F(AttentionReaderTest, namesAreThereAtOnceAndTheRestFollows) {
    const FamilyId quiet = addFamily(QStringLiteral("Birch"));
    const FamilyId silent = addFamily(QStringLiteral("Ash"));
    addLadder(addMember(silent, QStringLiteral("Ana")));
    AttentionReader reader(*m_context, nullptr);
    ASSERT_EQ(reader.summaries().size(), 2);
    EXPECT_EQ(reader.summaries().first().family.name, QStringLiteral("Ash"));
    EXPECT_FALSE(reader.summary(silent)->known);
    EXPECT_FALSE(reader.isFinished());

    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    EXPECT_TRUE(reader.summary(silent)->known);
    EXPECT_TRUE(hasCode(reader.summary(silent)->attention, u"no-entry"));
    EXPECT_TRUE(reader.summary(quiet)->known);
    EXPECT_FALSE(reader.summary(quiet)->worst());
    EXPECT_EQ(reader.summary(FamilyId{99}), nullptr);
}

TEST_F(AttentionReaderTest, aChangeOfOneFamilyIsReadAgain) {
    const FamilyId family = addFamily(QStringLiteral("Ash"));
    const MemberId member = addMember(family, QStringLiteral("Ana"));
    addLadder(member);
    AttentionReader reader(*m_context, nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    ASSERT_TRUE(reader.summary(family)->worst());
    for (int back = 1; back <= 9; ++back)
        drink(member, m_today.addDays(-back), quantity::Volume::fromCups(1));
    const QSignalSpy changed(&reader, &AttentionReader::changed);
    reader.refresh(family);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    EXPECT_FALSE(reader.summary(family)->worst());
    EXPECT_GE(changed.count(), 2);
}

TEST_F(AttentionReaderTest, familiesComeAndGo) {
    const FamilyId first = addFamily(QStringLiteral("Ash"));
    AttentionReader reader(*m_context, nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    const FamilyId second = addFamily(QStringLiteral("Birch"));
    reader.refresh({});
    EXPECT_NE(reader.summary(second), nullptr);
    EXPECT_TRUE(reader.summary(first)->known) << "what was known stays known";
    act([&](store::Action& action) { return m_workbook->families().removeFamily(action, first); });
    reader.refresh(first);
    EXPECT_EQ(reader.summary(first), nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    EXPECT_EQ(reader.summaries().size(), 1);
}

TEST_F(AttentionReaderTest, aFamilyOfWhoseClimbNothingIsKeptIsReadWhole) {
    const FamilyId kept = addFamily(QStringLiteral("Ash"));
    const FamilyId missing = addFamily(QStringLiteral("Birch"));
    for (const FamilyId family : {kept, missing}) {
        const MemberId member = addMember(family, QStringLiteral("Ana"));
        addLadder(member);
        drink(member, m_today.addDays(-9), quantity::Volume::fromCups(1));
    }
    {
        store::Database other(path(), store::Database::Access::ReadWrite);
        other.script(QStringLiteral("DELETE FROM climb_so_far WHERE member_id = 2"));
    }
    AttentionReader reader(*m_context, nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    for (const FamilyId family : {kept, missing}) {
        const casebook::Casebook book(m_workbook->records(family).value(), *m_catalogue, m_today);
        EXPECT_FALSE(book.attention().isEmpty());
        EXPECT_EQ(reader.summary(family)->attention, book.attention());
    }
}

TEST_F(AttentionReaderTest, anActionWhileFamiliesWaitIsSeen) {
    const FamilyId family = addFamily(QStringLiteral("Ash"));
    const MemberId member = addMember(family, QStringLiteral("Ana"));
    addLadder(member);
    AttentionReader reader(*m_context, nullptr);
    // Before and after the excerpts have been read.
    for (const int back : {1, 2}) {
        drink(member, m_today.addDays(-back), quantity::Volume::fromCups(1));
        reader.refresh(family);
        ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
        EXPECT_FALSE(reader.summary(family)->worst()) << back;
        reader.refreshAll();
    }
}

TEST_F(AttentionReaderTest, reviewsAndOpenCookingsAreKnown) {
    const FamilyId family =
        addFamily(QStringLiteral("Ash"), people::Family::Status::Active, m_today.addDays(3));
    PotId pot;
    kitchen::Pot legs;
    legs.family = family;
    legs.name = QStringLiteral("Chicken legs");
    legs.water = quantity::Volume::fromQuarts(3);
    legs.simmer = quantity::Duration::fromHours(2);
    legs.cuts << kitchen::CutInPot{m_catalogue->cuts().front().id, quantity::Mass::fromPounds(3),
                                   true};
    act([&](store::Action& action) {
        return m_workbook->pots().addPot(action, legs).map([&](PotId id) { pot = id; });
    });
    week::WeekPlan plan;
    plan.family = family;
    plan.start = week::weekStart(m_today);
    plan.placements << week::Placement{m_today.addDays(-1), pot, QTime(14, 0)}
                    << week::Placement{m_today.addDays(-2), pot, QTime(14, 0)}
                    << week::Placement{m_today, pot, QTime(14, 0)};
    act([&](store::Action& action) {
        return m_workbook->weeks().setPlan(action, plan).map([](WeekPlanId) {});
    });
    kitchen::Batch cooked;
    cooked.family = family;
    cooked.pot = pot;
    cooked.day = m_today.addDays(-2);
    cooked.cooked.water = quantity::Volume::fromQuarts(3);
    cooked.cooked.simmer = quantity::Duration::fromHours(2);
    act([&](store::Action& action) {
        return m_workbook->pots().addBatch(action, cooked).map([](BatchId) {});
    });

    AttentionReader reader(*m_context, nullptr);
    ASSERT_TRUE(waitFor([&] { return reader.isFinished(); }));
    const FamilySummary& summary = *reader.summary(family);
    EXPECT_EQ(summary.nextReview, m_today.addDays(3));
    ASSERT_EQ(summary.openCookings.size(), 1) << "today is not over; the other has its batch";
    EXPECT_EQ(summary.openCookings.first().day, m_today.addDays(-1));
    EXPECT_EQ(summary.openCookings.first().pot, QStringLiteral("Chicken legs"));
}

} // namespace ladlework::ui
