#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"
#include "store/backup.h"

#include <QDir>
#include <csignal>
#include <sys/resource.h>

namespace ladlework::store {
namespace {

/// While it lives, no file can grow beyond a size (setrlimit(2), RLIMIT_FSIZE): what a full disk
/// does to a program, without filling one.
class SizeLimit {
public:
    explicit SizeLimit(qint64 bytes) : m_handler(std::signal(SIGXFSZ, SIG_IGN)) {
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit limit = m_before;
        limit.rlim_cur = static_cast<rlim_t>(bytes);
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~SizeLimit() {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    SizeLimit(const SizeLimit&) = delete;
    SizeLimit& operator=(const SizeLimit&) = delete;

private:
    void (*m_handler)(int);
    rlimit m_before{};
};

class FullDiskTest : public StoreFixture {
protected:
    Outcome addNote(Workbook& workbook, FamilyId family, qsizetype letters) {
        return workbook.act(QStringLiteral("Wrote a note"), [&](Action& action) {
            casebook::VisitNote note = sampleNote(family);
            note.text = QString(letters, u'n');
            return outcome(workbook.notes().addNote(action, note));
        });
    }

    FamilyId addFamily(Workbook& workbook) {
        return added<FamilyId>(workbook, [&](Action& action) {
            return workbook.families().addFamily(action, sampleFamily());
        });
    }

    [[nodiscard]] qint64 fileSize() const { return QFileInfo(workbookPath()).size(); }

    [[nodiscard]] QStringList files() const {
        return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden);
    }
};

TEST_F(FullDiskTest, NothingIsLostAndTheWorkGoesOnOnceThereIsRoom) {
    std::unique_ptr<Workbook> workbook = make();
    const FamilyId family = addFamily(*workbook);
    qsizetype written = 0;
    Outcome last;
    QByteArray before;
    {
        const SizeLimit limit(fileSize() + 100000);
        while (true) {
            before = logicalDump(workbookPath());
            last = addNote(*workbook, family, 3000);
            if (!last || written > 100)
                break;
            ++written;
        }
    }
    ASSERT_FALSE(last);
    EXPECT_EQ(last.error().kind, Problem::Kind::DiskFull) << last.error().detail.toStdString();
    EXPECT_TRUE(last.error().sentence.contains(QStringLiteral("no room")));
    EXPECT_GT(written, 2);
    EXPECT_EQ(logicalDump(workbookPath()), before);
    EXPECT_EQ(workbook->notes().notes(family).size(), written);
    EXPECT_EQ(workbook->history().latest(1000).size(), written + 1);
    EXPECT_TRUE(workbook->verify().isEmpty());

    ASSERT_TRUE(addNote(*workbook, family, 3000));
    ASSERT_TRUE(workbook->undo());
    workbook.reset();
    workbook = reopen();
    EXPECT_EQ(workbook->notes().notes(family).size(), written);
    EXPECT_TRUE(workbook->verify().isEmpty());
}

TEST_F(FullDiskTest, AnActionLargerThanTheRoomLeavesEverythingAsItWas) {
    const std::unique_ptr<Workbook> workbook = make();
    const FamilyId family = addFamily(*workbook);
    const QByteArray before = logicalDump(workbookPath());
    {
        const SizeLimit limit(fileSize() + 10000);
        // Larger than SQLite's page cache of 2 MB, so that pages are written before the commit.
        const Outcome tried = addNote(*workbook, family, 5'000'000);
        ASSERT_FALSE(tried);
        EXPECT_EQ(tried.error().kind, Problem::Kind::DiskFull);
    }
    EXPECT_EQ(logicalDump(workbookPath()), before);
    EXPECT_TRUE(workbook->verify().isEmpty());
}

TEST_F(FullDiskTest, UndoThatFindsNoRoomChangesNothing) {
    const std::unique_ptr<Workbook> workbook = make();
    const FamilyId family = addFamily(*workbook);
    ASSERT_TRUE(addNote(*workbook, family, 50000));
    doIt(*workbook,
         [&](Action& action) { return workbook->families().removeFamily(action, family); });
    const QByteArray before = logicalDump(workbookPath());
    {
        // Not even the journal has room.
        const SizeLimit limit(1000);
        const Outcome tried = workbook->undo();
        ASSERT_FALSE(tried);
        EXPECT_EQ(tried.error().kind, Problem::Kind::DiskFull);
    }
    EXPECT_EQ(logicalDump(workbookPath()), before);
    ASSERT_TRUE(workbook->undo());
    EXPECT_EQ(workbook->notes().notes(family).size(), 1);
}

TEST_F(FullDiskTest, AWorkbookThatFindsNoRoomIsNotMade) {
    for (const qint64 room : {0, 5000, 60000}) {
        const SizeLimit limit(room);
        const auto made = Workbook::create(workbookPath(), m_clock);
        ASSERT_FALSE(made);
        EXPECT_EQ(made.error().kind, Problem::Kind::DiskFull);
        EXPECT_TRUE(files().isEmpty()) << files().first().toStdString();
    }
}

TEST_F(FullDiskTest, ABackupThatFindsNoRoomIsNotKept) {
    make();
    Database database(workbookPath(), Database::Access::ReadOnly);
    const SizeLimit limit(fileSize() / 2);
    const Outcome tried = backUp(database, pathOf(QStringLiteral("backup.ladlework")));
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().kind, Problem::Kind::DiskFull);
    EXPECT_EQ(files(), QStringList({QStringLiteral("practice.ladlework")}));
}

} // namespace
} // namespace ladlework::store
