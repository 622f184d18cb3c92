#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <QCoreApplication>
#include <QDir>
#include <QtEndian>
#include <stdexcept>

namespace ladlework::store {
namespace {

class WorkbookOpenTest : public StoreFixture {
protected:
    /// A closed workbook with some content; its bytes.
    QByteArray closedWorkbook() {
        const std::unique_ptr<Workbook> workbook = make();
        doIt(*workbook, [&](Action& action) -> Outcome {
            people::Family family = sampleFamily();
            family.remarks = QString(60000, u'x');
            return outcome(workbook->families().addFamily(action, family));
        });
        return bytesOf(workbook->path());
    }

    /// Opening gives this kind of problem, and every file of the folder stays as it was.
    Problem expectRefused(const QByteArray& bytes, Problem::Kind kind) {
        write(workbookPath(), bytes);
        const QStringList files = QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden);
        const QDateTime written = QFileInfo(workbookPath()).lastModified();
        const auto opened = Workbook::open(workbookPath(), m_clock);
        EXPECT_FALSE(opened);
        EXPECT_EQ(bytesOf(workbookPath()), bytes);
        EXPECT_EQ(QFileInfo(workbookPath()).lastModified(), written);
        EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden), files);
        if (opened)
            return {};
        EXPECT_EQ(opened.error().kind, kind)
            << opened.error().sentence.toStdString() << " " << opened.error().detail.toStdString();
        EXPECT_TRUE(opened.error().sentence.contains(QStringLiteral("practice.ladlework")));
        return opened.error();
    }

    static void setWord(QByteArray& bytes, qsizetype at, quint32 word) {
        qToBigEndian(word, bytes.data() + at);
    }
};

// Offsets of the database header: https://www.sqlite.org/fileformat2.html#the_database_header
constexpr qsizetype userVersionAt = 60;
constexpr qsizetype applicationIdAt = 68;

TEST_F(WorkbookOpenTest, AFileThatIsNoDatabaseIsForeign) {
    for (const QByteArray& bytes : {QByteArray(), QByteArray("Dear Ana,\n"), QByteArray(5000, 'x'),
                                    QByteArray("SQLite format 2\0 something", 26)}) {
        const Problem refusal = expectRefused(bytes, Problem::Kind::Foreign);
        EXPECT_TRUE(refusal.sentence.contains(QStringLiteral("not a Ladlework workbook")));
    }
}

TEST_F(WorkbookOpenTest, AnotherProgramsDatabaseIsForeign) {
    QByteArray bytes = closedWorkbook();
    setWord(bytes, applicationIdAt, 0x12345678);
    expectRefused(bytes, Problem::Kind::Foreign);
    setWord(bytes, applicationIdAt, 0);
    expectRefused(bytes, Problem::Kind::Foreign);
}

TEST_F(WorkbookOpenTest, AFileOfANewerVersionIsRefused) {
    QByteArray bytes = closedWorkbook();
    setWord(bytes, userVersionAt, 1000);
    const Problem refusal = expectRefused(bytes, Problem::Kind::Newer);
    EXPECT_TRUE(refusal.sentence.contains(QStringLiteral("newer version of Ladlework")));
}

TEST_F(WorkbookOpenTest, AFileWithoutAVersionIsDamaged) {
    QByteArray bytes = closedWorkbook();
    setWord(bytes, userVersionAt, 0);
    expectRefused(bytes, Problem::Kind::Damaged);
}

TEST_F(WorkbookOpenTest, ATruncatedFileIsDamagedWhereverItEnds) {
    const QByteArray bytes = closedWorkbook();
    ASSERT_GT(bytes.size(), 100000);
    for (const qsizetype size :
         {qsizetype{20}, qsizetype{99}, qsizetype{100}, qsizetype{512}, qsizetype{4096},
          qsizetype{20000}, bytes.size() / 2, bytes.size() - 4096, bytes.size() - 1}) {
        SCOPED_TRACE(size);
        expectRefused(bytes.first(size), Problem::Kind::Damaged);
    }
}

TEST_F(WorkbookOpenTest, AnOverwrittenPageIsDamage) {
    const QByteArray bytes = closedWorkbook();
    constexpr qsizetype page = 4096;
    int refusals = 0;
    for (qsizetype at = 0; at + page <= bytes.size(); at += 5 * page) {
        QByteArray broken = bytes;
        broken.replace(at + (at == 0 ? 100 : 0), 600, QByteArray(600, '\xAA'));
        write(workbookPath(), broken);
        const auto opened = Workbook::open(workbookPath(), m_clock);
        // Inside a long text the bytes are just other letters: no structure is broken there.
        if (opened)
            continue;
        ++refusals;
        EXPECT_EQ(opened.error().kind, Problem::Kind::Damaged);
        EXPECT_EQ(bytesOf(workbookPath()), broken);
    }
    EXPECT_GT(refusals, 5);
}

TEST_F(WorkbookOpenTest, TablesThatAreNotTheVersionsAreDamage) {
    closedWorkbook();
    {
        Database database(workbookPath(), Database::Access::ReadWrite);
        database.script(QStringLiteral("CREATE TRIGGER tricky AFTER INSERT ON family "
                                       "BEGIN DELETE FROM member; END"));
    }
    expectRefused(bytesOf(workbookPath()), Problem::Kind::Damaged);
}

TEST_F(WorkbookOpenTest, AMissingFileAndAFolderAreUnavailable) {
    const auto missing = Workbook::open(workbookPath(), m_clock);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().kind, Problem::Kind::Unavailable);
    EXPECT_FALSE(QFile::exists(workbookPath()));
    const auto folder = Workbook::open(m_folder.path(), m_clock);
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().kind, Problem::Kind::Unavailable);
}

TEST_F(WorkbookOpenTest, AWriteProtectedFileOpensToRead) {
    const QByteArray bytes = closedWorkbook();
    ASSERT_TRUE(QFile::setPermissions(workbookPath(), QFile::ReadOwner));
    const std::unique_ptr<Workbook> workbook = reopen();
    EXPECT_TRUE(workbook->readOnlyReason().contains(QStringLiteral("write-protected")));
    EXPECT_EQ(workbook->families().families().size(), 1);
    for (const Outcome& tried :
         {workbook->act(QStringLiteral("Tried"), [](Action&) { return Outcome(); }),
          workbook->undo(), workbook->redo()}) {
        ASSERT_FALSE(tried);
        EXPECT_EQ(tried.error().kind, Problem::Kind::ReadOnly);
        EXPECT_EQ(tried.error().sentence, workbook->readOnlyReason());
    }
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
    EXPECT_FALSE(QFile::exists(workbookPath() + QStringLiteral(".lock")));
}

TEST_F(WorkbookOpenTest, AWorkbookInAWriteProtectedFolderOpensToRead) {
    const QByteArray bytes = closedWorkbook();
    ASSERT_TRUE(QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::ExeOwner));
    {
        const std::unique_ptr<Workbook> workbook = reopen();
        EXPECT_TRUE(workbook->readOnlyReason().contains(QStringLiteral("folder")));
        EXPECT_EQ(workbook->families().families().size(), 1);
    }
    QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
}

TEST_F(WorkbookOpenTest, ASecondWindowReadsAndSaysSo) {
    closedWorkbook();
    std::unique_ptr<Workbook> first = reopen();
    EXPECT_TRUE(first->readOnlyReason().isEmpty());
    const std::unique_ptr<Workbook> second = reopen();
    EXPECT_TRUE(second->readOnlyReason().contains(QStringLiteral("another window")));
    EXPECT_FALSE(second->act(QStringLiteral("Tried"), [](Action&) { return Outcome(); }));
    // It sees what the first one writes.
    ASSERT_TRUE(first->undo());
    EXPECT_TRUE(second->families().families().isEmpty());
    first.reset();
    EXPECT_TRUE(reopen()->readOnlyReason().isEmpty());
}

TEST_F(WorkbookOpenTest, ALockThatADeadProgramLeftIsTakenOver) {
    closedWorkbook();
    // No process has this number: the kernel's largest is 2^22 (proc(5), pid_max).
    write(workbookPath() + QStringLiteral(".lock"),
          "99999999\nladlework\n" + QSysInfo::machineHostName().toUtf8() + "\n");
    EXPECT_TRUE(reopen()->readOnlyReason().isEmpty());
}

TEST_F(WorkbookOpenTest, ALockOfAnotherComputerIsRespectedAndNamed) {
    closedWorkbook();
    write(workbookPath() + QStringLiteral(".lock"), "1\nladlework\nkitchen-laptop\n");
    const std::unique_ptr<Workbook> workbook = reopen();
    EXPECT_TRUE(workbook->readOnlyReason().contains(QStringLiteral("kitchen-laptop")));
    EXPECT_TRUE(workbook->readOnlyReason().contains(QStringLiteral(".lock")));
}

TEST_F(WorkbookOpenTest, AFileLeftInWriteAheadModeIsReadAndPutBack) {
    closedWorkbook();
    {
        Database other(workbookPath(), Database::Access::ReadWrite);
        other.script(QStringLiteral("PRAGMA journal_mode = WAL;"
                                    "UPDATE family SET name = 'Ahead'"));
    }
    const std::unique_ptr<Workbook> workbook = reopen();
    EXPECT_EQ(workbook->families().families().first().name, QStringLiteral("Ahead"));
    EXPECT_FALSE(QFile::exists(workbookPath() + QStringLiteral("-wal")));
}

TEST_F(WorkbookOpenTest, AskedToReadItTouchesNothing) {
    const QByteArray bytes = closedWorkbook();
    const QString lock = workbookPath() + QStringLiteral(".lock");
    {
        const auto workbook = Workbook::open(workbookPath(), m_clock, Opening::ToRead);
        ASSERT_TRUE(workbook);
        EXPECT_FALSE((*workbook)->readOnlyReason().isEmpty());
        EXPECT_EQ((*workbook)->families().families().size(), 1);
        EXPECT_TRUE((*workbook)->verify().isEmpty());
        EXPECT_FALSE((*workbook)->undo());
        EXPECT_FALSE(QFile::exists(lock));
        EXPECT_TRUE(reopen()->readOnlyReason().isEmpty()) << "a window can write meanwhile";
    }
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
}

TEST_F(WorkbookOpenTest, AskedToReadItLeavesWriteAheadModeToTheWindow) {
    closedWorkbook();
    {
        Database other(workbookPath(), Database::Access::ReadWrite);
        other.script(QStringLiteral("PRAGMA journal_mode = WAL"));
    }
    const QByteArray bytes = bytesOf(workbookPath());
    const QStringList files = QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden);
    const auto opened = Workbook::open(workbookPath(), m_clock, Opening::ToRead);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(bytesOf(workbookPath()), bytes);
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden), files);
}

TEST_F(WorkbookOpenTest, AListenerThatThrowsDoesNotUndoWhatIsSaved) {
    const std::unique_ptr<Workbook> workbook = make();
    const auto listening = QObject::connect(workbook.get(), &Workbook::changed, workbook.get(), [] {
        throw std::invalid_argument("cannot show this");
    });
    doIt(*workbook, [&](Action& action) {
        return outcome(workbook->families().addFamily(action, sampleFamily()));
    });
    EXPECT_EQ(workbook->families().families().size(), 1);
    EXPECT_TRUE(workbook->undo());
    EXPECT_TRUE(workbook->redo());
    // It is not lost: the event loop gets it, whose barrier tells of it.
    QObject::disconnect(listening);
    int told = 0;
    for (int turn = 0; turn < 3; ++turn)
        try {
            QCoreApplication::sendPostedEvents(workbook.get());
        } catch (const std::invalid_argument&) {
            ++told;
        }
    EXPECT_EQ(told, 3);
}

TEST_F(WorkbookOpenTest, ANameWithOddLettersOpens) {
    const QString odd = pathOf(QStringLiteral("50% of Ana's? #1 & ü;.ladlework"));
    { EXPECT_TRUE(make(odd)); }
    EXPECT_TRUE(Workbook::open(odd, m_clock));
    EXPECT_TRUE(QFile::exists(odd));
}

} // namespace
} // namespace ladlework::store
