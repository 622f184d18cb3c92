#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"
#include "store/backup.h"
#include "store/changeset.h"
#include "store/history_rows.h"
#include "store/migrations.h"
#include "store/workbook_file.h"

#include <QDir>

namespace ladlework::store {
namespace {

/// Steps after the shipped ones, as a later version might bring them.
class MigrationTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const std::unique_ptr<Workbook> workbook = make();
        doIt(*workbook, [&](Action& action) {
            return outcome(workbook->families().addFamily(action, sampleFamily()));
        });
        m_shipped = shippedMigrations();
        m_next = newestVersion(m_shipped) + 1;
    }

    QList<Migration> later(const QStringList& scripts) {
        QList<Migration> migrations = m_shipped;
        for (const QString& sql : scripts)
            migrations.append({newestVersion(migrations) + 1, QStringLiteral("later.sql"), sql});
        return migrations;
    }

    QStringList backups() {
        return QDir(m_folder.path()).entryList({QStringLiteral("*before-version*")}, QDir::Files);
    }

    QList<Migration> m_shipped;
    int m_next = 0;
};

TEST_F(MigrationTest, TheShippedStepsAreNumberedAndLaySoundTables) {
    EXPECT_EQ(m_shipped.first().version, 1);
    EXPECT_EQ(m_shipped.first().name, QStringLiteral("001-first-tables.sql"));
    Database database;
    migrate(database, m_shipped);
    EXPECT_EQ(versionOf(database), newestVersion(m_shipped));
    EXPECT_EQ(database.single(QStringLiteral("PRAGMA integrity_check")), QStringLiteral("ok"));
    EXPECT_EQ(schemaOf(database), expectedSchema(m_shipped, newestVersion(m_shipped)));
    // Nothing is removed behind the recorder's back.
    EXPECT_FALSE(schemaOf(database).contains(QStringLiteral("CASCADE")));
    migrate(database, m_shipped);
    EXPECT_EQ(versionOf(database), newestVersion(m_shipped));
}

TEST_F(MigrationTest, AnOlderFileIsBackedUpAndBroughtUpToDate) {
    const QByteArray before = bytesOf(workbookPath());
    const QByteArray records = logicalDump(workbookPath());
    const QList<Migration> migrations =
        later({QStringLiteral("ALTER TABLE family ADD COLUMN motto TEXT NOT NULL DEFAULT 'Sip'"),
               QStringLiteral("CREATE VIRTUAL TABLE word USING fts5(text)")});
    {
        const Result<OpenFile> opened = openWorkbookFile(workbookPath(), migrations, m_clock);
        ASSERT_TRUE(opened) << opened.error().detail.toStdString();
        EXPECT_EQ(versionOf(*opened->database), m_next + 1);
        EXPECT_EQ(opened->database->single(QStringLiteral("SELECT motto FROM family")),
                  QStringLiteral("Sip"));
        EXPECT_EQ(opened->database->single(QStringLiteral("PRAGMA foreign_keys")),
                  QStringLiteral("1"));
    }
    ASSERT_EQ(backups(),
              QStringList({QStringLiteral("practice-before-version-2-20240315-120000.ladlework")}));
    const QString backup = pathOf(backups().first());
    EXPECT_EQ(QFile::permissions(backup) & ~QFile::Permissions(0xF000),
              QFile::ReadUser | QFile::WriteUser);
    EXPECT_EQ(logicalDump(backup), records);
    EXPECT_TRUE(Workbook::open(backup, m_clock));
    EXPECT_NE(bytesOf(workbookPath()), before);
    // A second opening has nothing to do.
    EXPECT_TRUE(openWorkbookFile(workbookPath(), migrations, m_clock));
    EXPECT_EQ(backups().size(), 1);
    // This version leaves the newer file alone.
    const auto older = Workbook::open(workbookPath(), m_clock);
    ASSERT_FALSE(older);
    EXPECT_EQ(older.error().kind, Problem::Kind::Newer);
}

TEST_F(MigrationTest, AChangeRecordedBeforeAColumnWasAddedCanStillBeUndone) {
    const QList<Migration> migrations =
        later({QStringLiteral("ALTER TABLE family ADD COLUMN motto TEXT NOT NULL DEFAULT 'Sip'")});
    const Result<OpenFile> opened = openWorkbookFile(workbookPath(), migrations, m_clock);
    ASSERT_TRUE(opened);
    Database& database = *opened->database;
    const QByteArray changeset = changesetOf(database, 1);
    EXPECT_TRUE(applyChangeset(database, inverted(changeset)));
    EXPECT_EQ(database.single(QStringLiteral("SELECT count(*) FROM family")), QStringLiteral("0"));
    EXPECT_TRUE(applyChangeset(database, changeset));
    EXPECT_EQ(database.single(QStringLiteral("SELECT motto FROM family")), QStringLiteral("Sip"));
}

TEST_F(MigrationTest, AChangeOfATableThatIsGoneIsNotSkippedInSilence) {
    const QList<Migration> migrations = later({QStringLiteral("DROP TABLE family")});
    Database database;
    migrate(database, migrations);
    Database old(workbookPath(), Database::Access::ReadOnly);
    EXPECT_FALSE(applyChangeset(database, changesetOf(old, 1)));
}

TEST_F(MigrationTest, AStepThatFailsLeavesTheVersionBeforeIt) {
    const QByteArray records = logicalDump(workbookPath());
    for (const QString& bad :
         {QStringLiteral("CREATE TABLE half (id INTEGER PRIMARY KEY); SELECT nonsense"),
          // leaves a reference dangling
          QStringLiteral("CREATE TABLE half (id INTEGER PRIMARY KEY);"
                         "INSERT INTO visit_note (family_id, day, text, agreed) "
                         "VALUES (77, '2024-01-01', 'x', '')")}) {
        const Result<OpenFile> opened = openWorkbookFile(workbookPath(), later({bad}), m_clock);
        ASSERT_FALSE(opened);
        EXPECT_EQ(logicalDump(workbookPath()), records);
        EXPECT_EQ(backups().size(), 1);
        QFile::remove(pathOf(backups().first()));
        EXPECT_TRUE(reopen());
    }
}

TEST_F(MigrationTest, AWriteProtectedOlderFileIsRefusedAndKept) {
    const QByteArray before = bytesOf(workbookPath());
    ASSERT_TRUE(QFile::setPermissions(workbookPath(), QFile::ReadOwner));
    const Result<OpenFile> opened = openWorkbookFile(
        workbookPath(), later({QStringLiteral("CREATE TABLE more (id INTEGER PRIMARY KEY)")}),
        m_clock);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::ReadOnly);
    EXPECT_TRUE(opened.error().sentence.contains(QStringLiteral("older version")));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_TRUE(backups().isEmpty());
}

TEST_F(MigrationTest, AskedToReadAnOlderFileIsLeftToTheWindow) {
    const QByteArray before = bytesOf(workbookPath());
    const Result<OpenFile> opened = openWorkbookFile(
        workbookPath(), later({QStringLiteral("CREATE TABLE more (id INTEGER PRIMARY KEY)")}),
        m_clock, Opening::ToRead);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::Refused);
    EXPECT_TRUE(opened.error().sentence.contains(QStringLiteral("open it in the window")));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_TRUE(backups().isEmpty());
}

TEST_F(MigrationTest, ABackupThatCannotBeMadeStopsTheMigration) {
    const QByteArray before = bytesOf(workbookPath());
    write(backupNameBeforeMigration(workbookPath(), 1, testNow), "in the way");
    const Result<OpenFile> opened = openWorkbookFile(
        workbookPath(), later({QStringLiteral("CREATE TABLE more (id INTEGER PRIMARY KEY)")}),
        m_clock);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(bytesOf(workbookPath()), before);
}

TEST_F(MigrationTest, ABackupIsWholeAndNeverReplacesAFile) {
    Database database(workbookPath(), Database::Access::ReadOnly);
    const QString copy = pathOf(QStringLiteral("copy.ladlework"));
    ASSERT_TRUE(backUp(database, copy));
    EXPECT_EQ(logicalDump(copy), logicalDump(workbookPath()));
    const QByteArray bytes = bytesOf(copy);
    const Outcome again = backUp(database, copy);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, Problem::Kind::Refused);
    EXPECT_EQ(bytesOf(copy), bytes);
    EXPECT_FALSE(backUp(database, pathOf(QStringLiteral("no/where.ladlework"))));
}

} // namespace
} // namespace ladlework::store
