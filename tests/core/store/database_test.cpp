#include "core/store/store_fixture.h"
#include "store/changeset.h"
#include "store/database.h"
#include "store/store_error.h"
#include "store/transaction.h"

#include <QSqlDatabase>
#include <sqlite3.h>

namespace ladlework::store {
namespace {

using namespace Qt::Literals::StringLiterals;

class DatabaseTest : public StoreFixture {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        m_database.script(QStringLiteral(
            "CREATE TABLE thing (id INTEGER PRIMARY KEY, a ANY, b ANY, c ANY, d ANY) STRICT"));
    }

    QString typeOf(const auto& value) {
        m_database.statement(QStringLiteral("DELETE FROM thing")).run();
        m_database.statement(QStringLiteral("INSERT INTO thing (a) VALUES (?)")).with(value).run();
        return m_database.single(QStringLiteral("SELECT typeof(a) || ' ' || quote(a) FROM thing"));
    }

    Database m_database;
};

TEST_F(DatabaseTest, EachTypeIsStoredInItsOwnForm) {
    EXPECT_EQ(typeOf(true), QStringLiteral("integer 1"));
    EXPECT_EQ(typeOf(-7), QStringLiteral("integer -7"));
    EXPECT_EQ(typeOf(qint64{1} << 40), QStringLiteral("integer 1099511627776"));
    EXPECT_EQ(typeOf(2.0), QStringLiteral("real 2.0"));
    EXPECT_EQ(typeOf(QString()), QStringLiteral("text ''"));
    EXPECT_EQ(typeOf(QStringLiteral("it's")), QStringLiteral("text 'it''s'"));
    EXPECT_EQ(typeOf(QByteArray()), QStringLiteral("blob X''"));
    EXPECT_EQ(typeOf(QByteArray("\0\1", 2)), QStringLiteral("blob X'0001'"));
    EXPECT_EQ(typeOf(QDate(2024, 2, 29)), QStringLiteral("text '2024-02-29'"));
    EXPECT_EQ(typeOf(QDate()), QStringLiteral("null NULL"));
    EXPECT_EQ(typeOf(testNow), QStringLiteral("text '2024-03-15T12:00:00.000Z'"));
    // A moment of another zone is stored in UTC.
    EXPECT_EQ(typeOf(testNow.toTimeZone(QTimeZone("Pacific/Auckland"))),
              QStringLiteral("text '2024-03-15T12:00:00.000Z'"));
    EXPECT_EQ(typeOf(FamilyId{}), QStringLiteral("null NULL"));
    EXPECT_EQ(typeOf(FamilyId{5}), QStringLiteral("integer 5"));
    EXPECT_EQ(typeOf(std::optional<double>()), QStringLiteral("null NULL"));
    EXPECT_EQ(typeOf(std::optional<int>(3)), QStringLiteral("integer 3"));
}

TEST_F(DatabaseTest, WhatARecordMayNotHoldIsThrownWhenRead) {
    m_database.script(
        QStringLiteral("INSERT INTO thing (a, b, c, d) VALUES (NULL, '2024-02-30', 'x', 9e99)"));
    Statement row = m_database.statement(QStringLiteral("SELECT * FROM thing"));
    ASSERT_TRUE(row.next());
    EXPECT_THROW((void)row.integer("a"_L1), StoreError);
    EXPECT_THROW((void)row.text("a"_L1), StoreError);
    EXPECT_THROW((void)row.day("b"_L1), StoreError);
    EXPECT_THROW((void)row.real("c"_L1), StoreError);
    EXPECT_THROW((void)row.integer("d"_L1), StoreError);
    EXPECT_THROW((void)row.text("e"_L1), StoreError);
    EXPECT_FALSE(row.day("a"_L1).isValid());
    EXPECT_EQ(row.optionalInteger("a"_L1), std::nullopt);
    EXPECT_FALSE(row.next());
}

TEST_F(DatabaseTest, AnErrorCarriesTheSqlAndTheCode) {
    try {
        m_database.statement(QStringLiteral("SELECT nothing FROM nowhere"));
        FAIL();
    } catch (const StoreError& error) {
        EXPECT_EQ(error.sql(), QStringLiteral("SELECT nothing FROM nowhere"));
        EXPECT_EQ(error.primaryCode(), SQLITE_ERROR);
        EXPECT_TRUE(QByteArray(error.what()).contains("nowhere"));
    }
    m_database.script(QStringLiteral("INSERT INTO thing (id) VALUES (1)"));
    try {
        m_database.statement(QStringLiteral("INSERT INTO thing (id) VALUES (?)")).with(1).run();
        FAIL();
    } catch (const StoreError& error) {
        EXPECT_EQ(error.primaryCode(), SQLITE_CONSTRAINT);
        EXPECT_EQ(error.toProblem().kind, Problem::Kind::Refused);
    }
}

TEST_F(DatabaseTest, EachFailureOfTheDiskHasItsKindOfProblem) {
    const auto kindOf = [](int code, int system) {
        return StoreError(code, system, {}, {}).toProblem().kind;
    };
    EXPECT_EQ(kindOf(SQLITE_FULL, 0), Problem::Kind::DiskFull);
    EXPECT_EQ(kindOf(SQLITE_IOERR_WRITE, EDQUOT), Problem::Kind::DiskFull);
    EXPECT_EQ(kindOf(SQLITE_IOERR_WRITE, EIO), Problem::Kind::Unavailable);
    EXPECT_EQ(kindOf(SQLITE_READONLY_DBMOVED, 0), Problem::Kind::ReadOnly);
    EXPECT_EQ(kindOf(SQLITE_CORRUPT_VTAB, 0), Problem::Kind::Damaged);
    EXPECT_EQ(kindOf(SQLITE_NOTADB, 0), Problem::Kind::Damaged);
    EXPECT_EQ(kindOf(SQLITE_BUSY, 0), Problem::Kind::Unavailable);
    EXPECT_EQ(kindOf(SQLITE_CANTOPEN, 0), Problem::Kind::Unavailable);
}

TEST_F(DatabaseTest, ATransactionThatIsNotCommittedIsRolledBack) {
    {
        const Transaction transaction(m_database, Transaction::Kind::Write);
        m_database.script(QStringLiteral("INSERT INTO thing (id) VALUES (1)"));
        const Transaction inner(m_database, Transaction::Kind::Read);
        EXPECT_TRUE(m_database.inTransaction());
    }
    EXPECT_FALSE(m_database.inTransaction());
    EXPECT_EQ(m_database.single(QStringLiteral("SELECT count(*) FROM thing")), QStringLiteral("0"));
}

TEST_F(DatabaseTest, AStatementInUseCannotBeUsedTwice) {
    const QString sql = QStringLiteral("SELECT id FROM thing");
    const Statement first = m_database.statement(sql);
    EXPECT_THROW((void)m_database.statement(sql), StoreError);
}

TEST_F(DatabaseTest, AConnectionIsSetUpToKeepWhatItIsGiven) {
    make();
    Database database(workbookPath(), Database::Access::ReadWrite);
    const auto pragma = [&](const QString& name) {
        return database.single(QStringLiteral("PRAGMA %1").arg(name));
    };
    EXPECT_EQ(pragma(QStringLiteral("foreign_keys")), QStringLiteral("1"));
    EXPECT_EQ(pragma(QStringLiteral("synchronous")), QStringLiteral("2")); // FULL
    EXPECT_EQ(pragma(QStringLiteral("journal_mode")), QStringLiteral("delete"));
    EXPECT_EQ(pragma(QStringLiteral("trusted_schema")), QStringLiteral("0"));
    EXPECT_EQ(pragma(QStringLiteral("secure_delete")), QStringLiteral("1"));
}

TEST_F(DatabaseTest, AReadingConnectionCannotWriteAndAMissingFileIsNotMade) {
    make();
    Database database(workbookPath(), Database::Access::ReadOnly);
    EXPECT_THROW(database.script(QStringLiteral("DELETE FROM phase")), StoreError);
    EXPECT_THROW(Database(pathOf(QStringLiteral("none")), Database::Access::ReadWrite), StoreError);
    EXPECT_FALSE(QFile::exists(pathOf(QStringLiteral("none"))));
}

TEST_F(DatabaseTest, EveryTableButTheHistoryIsRecorded) {
    make();
    Database database(workbookPath(), Database::Access::ReadWrite);
    const QStringList tables = recordedTables(database);
    EXPECT_EQ(tables.size(), 42);
    EXPECT_FALSE(tables.contains(QStringLiteral("history")));
    database.script(QStringLiteral("CREATE VIRTUAL TABLE word USING fts5(text)"));
    EXPECT_EQ(recordedTables(database), tables);
    // The session extension sees only tables with a primary key.
    for (const QString& table : tables)
        EXPECT_NE(database.single(
                      QStringLiteral("SELECT max(pk) FROM pragma_table_info('%1')").arg(table)),
                  QStringLiteral("0"))
            << table.toStdString();
}

} // namespace
} // namespace ladlework::store
