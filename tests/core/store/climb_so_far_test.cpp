// What is kept of each climb beside the records: gone with what it follows from, and made again.
#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"
#include "store/changeset.h"
#include "store/climb_rows.h"

namespace ladlework::store {
namespace {

class ClimbSoFarTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        m_workbook = make();
        ASSERT_TRUE(m_workbook);
        doIt(*m_workbook, [&](Action& action) -> Outcome {
            const FamilyId family =
                m_workbook->families().addFamily(action, sampleFamily()).value();
            for (MemberId* member : {&m_ana, &m_ben}) {
                *member =
                    m_workbook->families().addMember(action, sampleMember(family, {})).value();
                m_ladder = m_workbook->climbs().addLadder(action, sampleLadder(*member)).value();
                EXPECT_TRUE(m_workbook->climbs().addDecision(action, sampleDecision(*member)));
                EXPECT_TRUE(m_workbook->log().addReaction(action, sampleReaction(*member)));
                EXPECT_TRUE(m_workbook->log().addEntry(action, sampleEntry(*member, {}, {})));
            }
            return {};
        });
    }

    [[nodiscard]] QHash<MemberId, casebook::ClimbSoFar> kept() const {
        Database database(workbookPath(), Database::Access::ReadOnly);
        return keptClimbs(database);
    }

    /// Another program writes into the file while no window has it.
    void byOther(const QString& sql) {
        m_workbook.reset();
        Database other(workbookPath(), Database::Access::ReadWrite);
        other.script(QStringLiteral("PRAGMA foreign_keys = OFF"));
        other.script(sql);
    }

    std::unique_ptr<Workbook> m_workbook;
    MemberId m_ana;
    MemberId m_ben;
    LadderId m_ladder; ///< Ben's
};

TEST_F(ClimbSoFarTest, EveryMemberHasARowAfterAnAction) {
    const auto climbs = kept();
    ASSERT_EQ(climbs.size(), 2);
    EXPECT_EQ(climbs.value(m_ben).lastLogged, QDate(2024, 3, 12));
    EXPECT_EQ(climbs.value(m_ben).ladder, m_ladder);
    EXPECT_TRUE(climbs.value(m_ben).state.stopped) << "by the red flag";
    ASSERT_TRUE(climbs.value(m_ben).state.stop);
    EXPECT_EQ(climbs.value(m_ben).state.stop->day, QDate(2024, 3, 12));
}

TEST_F(ClimbSoFarTest, TheHistoryDoesNotSeeIt) {
    Database database(workbookPath(), Database::Access::ReadOnly);
    EXPECT_FALSE(recordedTables(database).contains(QStringLiteral("climb_so_far")));
    EXPECT_TRUE(recordedTables(database).contains(QStringLiteral("intake_entry")));
}

TEST_F(ClimbSoFarTest, EachWriteToWhatItFollowsFromTakesTheRowAway) {
    const QStringList writes{
        QStringLiteral("INSERT INTO intake_entry SELECT NULL, member_id, day, 1.0, NULL, NULL, '', "
                       "entered_at_utc FROM intake_entry WHERE member_id = %1"),
        QStringLiteral("UPDATE intake_entry SET drunk_ml = 5.0 WHERE member_id = %1"),
        QStringLiteral("UPDATE intake_entry SET day = '2024-03-01' WHERE member_id = %1"),
        QStringLiteral("DELETE FROM intake_entry WHERE member_id = %1"),
        QStringLiteral(
            "INSERT INTO reaction SELECT NULL, member_id, day, 'ache', 1, 0, NULL, NULL, "
            "'' FROM reaction WHERE member_id = %1"),
        QStringLiteral("UPDATE reaction SET red_flag = 0 WHERE member_id = %1"),
        QStringLiteral("UPDATE reaction SET strength = 1 WHERE member_id = %1"),
        QStringLiteral("DELETE FROM reaction WHERE member_id = %1"),
        QStringLiteral("INSERT INTO decision VALUES (NULL, %1, '2024-03-13', 0, 'so')"),
        QStringLiteral("UPDATE decision SET resume_at_rung = 0 WHERE member_id = %1"),
        QStringLiteral("DELETE FROM decision WHERE member_id = %1"),
        QStringLiteral("UPDATE ladder SET hold_days = 9 WHERE member_id = %1"),
        QStringLiteral("DELETE FROM ladder WHERE member_id = %1"),
        QStringLiteral("INSERT INTO ladder_rung SELECT id, 9, 900.0 FROM ladder "
                       "WHERE member_id = %1"),
        QStringLiteral("UPDATE ladder_rung SET volume_ml = volume_ml + 1 WHERE ladder_id IN "
                       "(SELECT id FROM ladder WHERE member_id = %1)"),
        QStringLiteral("DELETE FROM ladder_rung WHERE position = 2 AND ladder_id IN "
                       "(SELECT id FROM ladder WHERE member_id = %1)"),
        QStringLiteral("DELETE FROM member WHERE id = %1")};
    m_workbook.reset();
    const QByteArray clean = bytesOf(workbookPath());
    for (const QString& sql : writes) {
        write(workbookPath(), clean);
        byOther(sql.arg(m_ana.value));
        EXPECT_EQ(kept().keys(), QList<MemberId>{m_ben}) << sql.toStdString();
    }
}

TEST_F(ClimbSoFarTest, AnEntryThatGoesToAnotherMemberTakesBothRowsAway) {
    byOther(QStringLiteral("UPDATE intake_entry SET member_id = %1").arg(m_ana.value));
    EXPECT_TRUE(kept().isEmpty());
}

TEST_F(ClimbSoFarTest, OtherWritesLeaveIt) {
    byOther(QStringLiteral("UPDATE intake_entry SET note = 'cold'; UPDATE member SET name = 'Ida';"
                           "UPDATE reaction SET note = 'gone'; UPDATE family SET remarks = 'x'"));
    EXPECT_EQ(kept().size(), 2);
}

TEST_F(ClimbSoFarTest, UndoAndRedoMakeItAnew) {
    const auto before = kept();
    doIt(*m_workbook, [&](Action& action) {
        intake::IntakeEntry entry = sampleEntry(m_ana, {}, {});
        entry.day = testToday;
        return outcome(m_workbook->log().addEntry(action, entry));
    });
    const auto after = kept();
    EXPECT_EQ(after.value(m_ana).lastLogged, testToday);
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(kept(), before);
    ASSERT_TRUE(m_workbook->redo());
    EXPECT_EQ(kept(), after);
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().removeMember(action, m_ana); });
    EXPECT_EQ(kept().keys(), QList<MemberId>{m_ben});
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(kept(), after);
}

TEST_F(ClimbSoFarTest, OpeningMakesWhatIsMissing) {
    const auto before = kept();
    byOther(QStringLiteral("DELETE FROM climb_so_far"));
    {
        auto toRead = Workbook::open(workbookPath(), m_clock, Opening::ToRead);
        ASSERT_TRUE(toRead);
        EXPECT_TRUE(kept().isEmpty()) << "what is opened to be read is left as it is";
        EXPECT_TRUE((*toRead)->verify().isEmpty()) << "a missing row is no harm";
        EXPECT_TRUE((*toRead)->excerpts().begin()->climbs.isEmpty());
    }
    m_workbook = reopen();
    EXPECT_EQ(kept(), before);
}

TEST_F(ClimbSoFarTest, AnUnchangedFileIsOpenedWithoutAWrite) {
    m_workbook.reset();
    const QByteArray before = bytesOf(workbookPath());
    m_workbook = reopen();
    m_workbook.reset();
    EXPECT_EQ(bytesOf(workbookPath()), before);
}

TEST_F(ClimbSoFarTest, VerifyNamesARowThatDoesNotFollowFromTheLog) {
    for (const QString& wrong :
         {QStringLiteral("rung = rung + 1"), QStringLiteral("gap_run = 3"),
          QStringLiteral("stop_rule = 3"), QStringLiteral("last_logged = NULL")}) {
        byOther(QStringLiteral("UPDATE climb_so_far SET %1 WHERE member_id = %2")
                    .arg(wrong)
                    .arg(m_ben.value));
        m_workbook = reopen();
        const Findings findings = m_workbook->verify();
        ASSERT_EQ(findings.size(), 1) << wrong.toStdString();
        EXPECT_EQ(findings.first().code, QStringLiteral("climb-out-of-step"));
        EXPECT_EQ(findings.first().field, QStringLiteral("climb_so_far/%1").arg(m_ben.value));
        // What the finding advises mends it.
        doIt(*m_workbook, [&](Action& action) {
            return outcome(m_workbook->log().addEntry(action, sampleEntry(m_ben, {}, {})));
        });
        EXPECT_TRUE(m_workbook->verify().isEmpty());
    }
}

TEST_F(ClimbSoFarTest, ALadderThatIsNotValidGetsNoRowAndStopsNoAction) {
    byOther(QStringLiteral("UPDATE ladder_rung SET volume_ml = 1.0 WHERE ladder_id = %1")
                .arg(m_ladder.value));
    m_workbook = reopen();
    EXPECT_EQ(kept().keys(), QList<MemberId>{m_ana});
    doIt(*m_workbook, [&](Action& action) {
        return outcome(m_workbook->log().addEntry(action, sampleEntry(m_ana, {}, {})));
    });
    EXPECT_EQ(kept().keys(), QList<MemberId>{m_ana});
}

} // namespace
} // namespace ladlework::store
