#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <csignal>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

namespace ladlework::store {
namespace {

constexpr int notesInOneAction = 5;

/// Runs `work` in a process of its own; its number.
pid_t inChild(const std::function<void()>& work) {
    const pid_t child = fork();
    if (child == 0) {
        work();
        _exit(0);
    }
    return child;
}

class KilledProgramTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const std::unique_ptr<Workbook> workbook = make();
        m_family = added<FamilyId>(*workbook, [&](Action& action) {
            return workbook->families().addFamily(action, sampleFamily());
        });
    }

    /// Adds notes in actions of five for ever, and says so on the pipe after each.
    void writeForEver(int pipe) const {
        const auto workbook = Workbook::open(workbookPath(), m_clock);
        if (!workbook)
            _exit(1);
        while (true) {
            const Outcome done =
                (*workbook)->act(QStringLiteral("Wrote five"), [&](Action& action) -> Outcome {
                    for (int count = 0; count < notesInOneAction; ++count) {
                        casebook::VisitNote note = sampleNote(m_family);
                        note.text = QString(700, u'n');
                        if (const auto one = (*workbook)->notes().addNote(action, note); !one)
                            return passOn(one);
                    }
                    return {};
                });
            if (!done || ::write(pipe, "x", 1) != 1)
                _exit(1);
        }
    }

    /// Leaves the file with changed pages in it and the journal to take them back, as a power cut
    /// in the middle of a large transaction would.
    void dieWhileWriting() const {
        const pid_t child = inChild([this] {
            Database database(workbookPath(), Database::Access::ReadWrite);
            database.script(QStringLiteral("PRAGMA cache_size = 5; BEGIN IMMEDIATE;"
                                           "UPDATE family SET name = 'Half done';"));
            for (int count = 0; count < 200; ++count)
                database.script(QStringLiteral("INSERT INTO visit_note (family_id, day, text, "
                                               "agreed) VALUES (1, '2024-03-01', "
                                               "hex(randomblob(2000)), '')"));
            _exit(0);
        });
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(QFile::exists(workbookPath() + QStringLiteral("-journal")));
    }

    FamilyId m_family;
};

TEST_F(KilledProgramTest, EveryActionIsThereWholeOrNotAtAllAfterAKill) {
    std::mt19937 random(20240315);
    qsizetype before = 0;
    int killedWhileWriting = 0;
    for (int round = 0; round < 12; ++round) {
        int ends[2];
        ASSERT_EQ(pipe(ends), 0);
        const pid_t child = inChild([&] { writeForEver(ends[1]); });
        close(ends[1]);
        // Let it come into its stride, then kill it somewhere in the middle.
        char sign = 0;
        qsizetype told = 0;
        for (int count = 0; count < 3; ++count)
            told += read(ends[0], &sign, 1);
        usleep(std::uniform_int_distribution<useconds_t>(0, 30000)(random));
        ASSERT_EQ(kill(child, SIGKILL), 0);
        while (read(ends[0], &sign, 1) == 1)
            ++told;
        close(ends[0]);
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status));
        killedWhileWriting += QFile::exists(workbookPath() + QStringLiteral("-journal")) ? 1 : 0;

        const std::unique_ptr<Workbook> workbook = reopen();
        ASSERT_TRUE(workbook);
        EXPECT_TRUE(workbook->readOnlyReason().isEmpty());
        const qsizetype notes = workbook->notes().notes(m_family).size();
        EXPECT_EQ(notes % notesInOneAction, 0);
        // What it said it had done is there; one more may have been finished without a word.
        const qsizetype actions = (notes - before) / notesInOneAction;
        EXPECT_GE(actions, told);
        EXPECT_LE(actions, told + 1);
        EXPECT_EQ(workbook->history().latest(100000).size(), notes / notesInOneAction + 1);
        EXPECT_TRUE(workbook->verify().isEmpty());
        before = notes;
    }
    // Else the kills all fell between two actions and the test shows little.
    EXPECT_GT(killedWhileWriting, 0);
}

TEST_F(KilledProgramTest, AHalfWrittenTransactionIsTakenBackAtOpening) {
    const QByteArray before = logicalDump(workbookPath());
    dieWhileWriting();
    {
        const std::unique_ptr<Workbook> workbook = reopen();
        EXPECT_EQ(workbook->families().families().first().name, sampleFamily().name);
        EXPECT_TRUE(workbook->verify().isEmpty());
    }
    EXPECT_EQ(logicalDump(workbookPath()), before);
    EXPECT_FALSE(QFile::exists(workbookPath() + QStringLiteral("-journal")));
}

TEST_F(KilledProgramTest, AHalfWrittenFileThatCannotBeWrittenIsRefusedAndKept) {
    dieWhileWriting();
    const QString journal = workbookPath() + QStringLiteral("-journal");
    const QByteArray bytes = bytesOf(workbookPath());
    const QByteArray journalBytes = bytesOf(journal);
    ASSERT_TRUE(QFile::setPermissions(workbookPath(), QFile::ReadOwner));
    const auto opened = Workbook::open(workbookPath(), m_clock);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::ReadOnly);
    EXPECT_TRUE(opened.error().sentence.contains(QStringLiteral("not closed properly")));
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
    EXPECT_EQ(bytesOf(journal), journalBytes);
}

TEST_F(KilledProgramTest, AHalfWrittenFileIsNotMendedWhenItIsOnlyToBeRead) {
    dieWhileWriting();
    const QString journal = workbookPath() + QStringLiteral("-journal");
    const QByteArray bytes = bytesOf(workbookPath());
    const QByteArray journalBytes = bytesOf(journal);
    const auto opened = Workbook::open(workbookPath(), m_clock, Opening::ToRead);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::Refused) << opened.error().detail.toStdString();
    EXPECT_TRUE(opened.error().sentence.contains(QStringLiteral("open it in the window")));
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
    EXPECT_EQ(bytesOf(journal), journalBytes);
}

TEST_F(KilledProgramTest, AHalfWrittenFileThatIsRefusedKeepsItsJournal) {
    {
        Database database(workbookPath(), Database::Access::ReadWrite);
        database.script(QStringLiteral("PRAGMA user_version = 1000"));
    }
    dieWhileWriting();
    const QString journal = workbookPath() + QStringLiteral("-journal");
    const QByteArray bytes = bytesOf(workbookPath());
    const QByteArray journalBytes = bytesOf(journal);
    const auto opened = Workbook::open(workbookPath(), m_clock);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::Newer);
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
    EXPECT_EQ(bytesOf(journal), journalBytes);
}

} // namespace
} // namespace ladlework::store
