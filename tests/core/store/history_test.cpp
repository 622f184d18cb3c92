#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <stdexcept>

namespace ladlework::store {
namespace {

class HistoryTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        m_workbook = make();
        m_family = added<FamilyId>(*m_workbook, [&](Action& action) {
            return m_workbook->families().addFamily(action, sampleFamily());
        });
    }

    void rename(const QString& name) {
        people::Family family = m_workbook->families().families().first();
        family.name = name;
        doIt(
            *m_workbook,
            [&](Action& action) { return m_workbook->families().changeFamily(action, family); },
            QStringLiteral("Renamed to %1").arg(name));
    }

    QString name() { return m_workbook->families().families().first().name; }

    std::unique_ptr<Workbook> m_workbook;
    FamilyId m_family;
};

TEST_F(HistoryTest, ANewWorkbookHasNothingToUndo) {
    const auto other = make(pathOf(QStringLiteral("other.ladlework")));
    EXPECT_FALSE(other->history().nextUndo());
    EXPECT_FALSE(other->history().nextRedo());
    const Outcome undone = other->undo();
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(undone.error().sentence, QStringLiteral("There is nothing to undo."));
    EXPECT_EQ(other->redo().error().sentence, QStringLiteral("There is nothing to redo."));
    EXPECT_EQ(other->practice().phases().size(), 3);
}

TEST_F(HistoryTest, EachActionIsOneEntryWithItsSentenceAndItsTime) {
    m_clock.set(testNow.addSecs(60));
    rename(QStringLiteral("Ash"));
    const QList<HistoryEntry> entries = m_workbook->history().latest(10);
    ASSERT_EQ(entries.size(), 2);
    EXPECT_EQ(entries.at(0).sentence, QStringLiteral("Renamed to Ash"));
    EXPECT_EQ(entries.at(0).atUtc, testNow.addSecs(60));
    EXPECT_FALSE(entries.at(0).undone);
    EXPECT_EQ(entries.at(1).atUtc, testNow);
    EXPECT_EQ(m_workbook->history().latest(1).size(), 1);
}

TEST_F(HistoryTest, UndoAndRedoGoBackAndForthAcrossRestarts) {
    const QString first = name();
    rename(QStringLiteral("Ash"));
    rename(QStringLiteral("Birch"));
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(name(), QStringLiteral("Ash"));
    m_workbook.reset();
    m_workbook = reopen();
    EXPECT_EQ(m_workbook->history().nextUndo()->sentence, QStringLiteral("Renamed to Ash"));
    EXPECT_EQ(m_workbook->history().nextRedo()->sentence, QStringLiteral("Renamed to Birch"));
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(name(), first);
    EXPECT_EQ(m_workbook->history().nextRedo()->sentence, QStringLiteral("Renamed to Ash"));
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_TRUE(m_workbook->families().families().isEmpty());
    EXPECT_FALSE(m_workbook->undo());
    m_workbook.reset();
    m_workbook = reopen();
    for (int step = 0; step < 3; ++step)
        ASSERT_TRUE(m_workbook->redo());
    EXPECT_FALSE(m_workbook->redo());
    EXPECT_EQ(name(), QStringLiteral("Birch"));
    EXPECT_EQ(m_workbook->families().families().first().id, m_family);
}

TEST_F(HistoryTest, ANewActionDropsWhatWasUndone) {
    rename(QStringLiteral("Ash"));
    rename(QStringLiteral("Birch"));
    ASSERT_TRUE(m_workbook->undo());
    rename(QStringLiteral("Cedar"));
    EXPECT_FALSE(m_workbook->history().nextRedo());
    EXPECT_FALSE(m_workbook->redo());
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(name(), QStringLiteral("Ash"));
}

TEST_F(HistoryTest, AnActionThatChangesNothingLeavesNoEntryAndKeepsRedo) {
    rename(QStringLiteral("Ash"));
    ASSERT_TRUE(m_workbook->undo());
    const people::Family same = m_workbook->families().families().first();
    doIt(*m_workbook,
         [&](Action& action) { return m_workbook->families().changeFamily(action, same); });
    doIt(*m_workbook, [](Action&) { return Outcome(); });
    EXPECT_EQ(m_workbook->history().latest(10).size(), 2);
    EXPECT_TRUE(m_workbook->history().nextRedo());
}

TEST_F(HistoryTest, ChangedListsThatAreTheSameAgainLeaveNoEntry) {
    const PotId id = added<PotId>(*m_workbook, [&](Action& action) {
        return m_workbook->pots().addPot(action, samplePot(m_family, {}));
    });
    kitchen::Pot pot = samplePot(m_family, {});
    pot.id = id;
    doIt(*m_workbook, [&](Action& action) { return m_workbook->pots().changePot(action, pot); });
    EXPECT_EQ(m_workbook->history().latest(10).size(), 2);
}

TEST_F(HistoryTest, AProblemTakesEverythingBack) {
    const QByteArray before = bytesOf(workbookPath());
    const Outcome tried =
        m_workbook->act(QStringLiteral("Removed"), [&](Action& action) -> Outcome {
            EXPECT_TRUE(m_workbook->families().removeFamily(action, m_family));
            return problem(Problem::Kind::Refused, QStringLiteral("On second thoughts, no."));
        });
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().sentence, QStringLiteral("On second thoughts, no."));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_EQ(m_workbook->families().families().size(), 1);
}

TEST_F(HistoryTest, AnExceptionTakesEverythingBackAndBecomesAProblem) {
    const QByteArray before = bytesOf(workbookPath());
    const Outcome tried =
        m_workbook->act(QStringLiteral("Removed"), [&](Action& action) -> Outcome {
            EXPECT_TRUE(m_workbook->families().removeFamily(action, m_family));
            throw std::runtime_error("the sky fell");
        });
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().kind, Problem::Kind::Unavailable);
    EXPECT_TRUE(tried.error().detail.contains(QStringLiteral("the sky fell")));
    EXPECT_FALSE(tried.error().sentence.contains(QStringLiteral("sky")));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    rename(QStringLiteral("Ash"));
    EXPECT_EQ(name(), QStringLiteral("Ash"));
}

TEST_F(HistoryTest, AnActionInsideAnActionIsAProblem) {
    const Outcome tried = m_workbook->act(QStringLiteral("Outer"), [&](Action&) {
        return m_workbook->act(QStringLiteral("Inner"), [](Action&) { return Outcome(); });
    });
    ASSERT_FALSE(tried);
    EXPECT_TRUE(tried.error().detail.contains(QStringLiteral("action within an action")));
}

TEST_F(HistoryTest, ChangedIsToldAfterEachCommitAndNotAfterAProblem) {
    int told = 0;
    int families = -1;
    QObject::connect(m_workbook.get(), &Workbook::changed, m_workbook.get(), [&] {
        ++told;
        families = static_cast<int>(m_workbook->families().families().size());
    });
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(told, 1);
    EXPECT_EQ(families, 0);
    ASSERT_TRUE(m_workbook->redo());
    EXPECT_EQ(told, 2);
    EXPECT_EQ(families, 1);
    EXPECT_FALSE(m_workbook->act(QStringLiteral("No"), [](Action&) -> Outcome {
        return problem(Problem::Kind::Refused, QStringLiteral("No."));
    }));
    EXPECT_FALSE(m_workbook->redo());
    EXPECT_EQ(told, 2);
}

TEST_F(HistoryTest, ASwapOfTwoUniqueRowsCanBeUndone) {
    const MemberId member = added<MemberId>(*m_workbook, [&](Action& action) {
        return m_workbook->families().addMember(action, sampleMember(m_family, {}));
    });
    const DecisionId first = added<DecisionId>(*m_workbook, [&](Action& action) {
        return m_workbook->climbs().addDecision(action, sampleDecision(member));
    });
    const QByteArray before = logicalDump(workbookPath());
    doIt(*m_workbook, [&](Action& action) -> Outcome {
        intake::Decision again = sampleDecision(member);
        again.reason = QStringLiteral("said more clearly");
        EXPECT_TRUE(m_workbook->climbs().addDecision(action, [&] {
            intake::Decision other = again;
            other.day = QDate(2024, 2, 3);
            return other;
        }()));
        EXPECT_TRUE(m_workbook->climbs().removeDecision(action, first));
        return outcome(m_workbook->climbs().addDecision(action, again));
    });
    const QByteArray after = logicalDump(workbookPath());
    ASSERT_TRUE(m_workbook->undo());
    EXPECT_EQ(logicalDump(workbookPath()), before);
    ASSERT_TRUE(m_workbook->redo());
    EXPECT_EQ(logicalDump(workbookPath()), after);
}

TEST_F(HistoryTest, AChangeFromOutsideMakesUndoAProblemAndChangesNothing) {
    rename(QStringLiteral("Ash"));
    m_workbook.reset();
    {
        Database other(workbookPath(), Database::Access::ReadWrite);
        other.script(QStringLiteral("UPDATE family SET name = 'Meddled'"));
    }
    m_workbook = reopen();
    const QByteArray before = bytesOf(workbookPath());
    const Outcome undone = m_workbook->undo();
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().kind, Problem::Kind::Damaged);
    EXPECT_TRUE(undone.error().sentence.contains(QStringLiteral("Renamed to Ash")));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_EQ(name(), QStringLiteral("Meddled"));
}

TEST_F(HistoryTest, ADamagedChangeIsAProblemAndChangesNothing) {
    for (const QString& bad :
         {QStringLiteral("substr(changeset, 1, length(changeset) / 2)"), QStringLiteral("x'00'"),
          QStringLiteral("x'54ff00'"), QStringLiteral("x''")}) {
        m_workbook.reset();
        {
            Database other(workbookPath(), Database::Access::ReadWrite);
            other.script(QStringLiteral("UPDATE history SET changeset = %1").arg(bad));
        }
        m_workbook = reopen();
        const QByteArray before = bytesOf(workbookPath());
        const Outcome undone = m_workbook->undo();
        ASSERT_FALSE(undone) << bad.toStdString();
        EXPECT_EQ(undone.error().kind, Problem::Kind::Damaged);
        EXPECT_EQ(bytesOf(workbookPath()), before);
        EXPECT_TRUE(hasCode(m_workbook->verify(), u"history-damaged"));
    }
}

TEST_F(HistoryTest, AReferenceThatUndoWouldLeaveDanglingStopsIt) {
    m_workbook.reset();
    {
        Database other(workbookPath(), Database::Access::ReadWrite);
        other.script(QStringLiteral("INSERT INTO visit_note (family_id, day, text, agreed) "
                                    "VALUES (1, '2024-03-01', 'from outside', '')"));
    }
    m_workbook = reopen();
    const QByteArray before = bytesOf(workbookPath());
    const Outcome undone = m_workbook->undo(); // would take the family away under its note
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().kind, Problem::Kind::Damaged);
    EXPECT_EQ(bytesOf(workbookPath()), before);
}

} // namespace
} // namespace ladlework::store
