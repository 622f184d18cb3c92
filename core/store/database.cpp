#include "store/database.h"

#include "store/store_error.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QUuid>
#include <cstring>
#include <sqlite3.h>

namespace ladlework::store {

namespace {
/// How long a statement waits for another program's lock: short, because the window waits too.
constexpr int busyMilliseconds = 2000;

QString uriOf(const QString& path, Database::Access access) {
    const QString encoded =
        QString::fromLatin1(QUrl::toPercentEncoding(path, QByteArrayLiteral("/")));
    const QString mode =
        access == Database::Access::ReadOnly ? QStringLiteral("ro") : QStringLiteral("rw");
    return QStringLiteral("file:%1?mode=%2").arg(encoded, mode);
}
} // namespace

Database::Database(const QString& path, Access access)
    : m_connectionName(QStringLiteral("ladlework-") + QUuid::createUuid().toString()) {
    try {
        connect(uriOf(path, access),
                QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busyMilliseconds));
        checkLibrary();
        setUp(access);
    } catch (...) {
        m_prepared.clear();
        m_connection = QSqlDatabase();
        QSqlDatabase::removeDatabase(m_connectionName);
        throw;
    }
}

Database::Database()
    : m_connectionName(QStringLiteral("ladlework-") + QUuid::createUuid().toString()) {
    connect(QStringLiteral(":memory:"), {});
    setUp(Access::ReadWrite);
}

Database::~Database() {
    m_prepared.clear();
    m_connection.close();
    m_connection = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_connectionName);
}

void Database::connect(const QString& name, const QString& options) {
    m_connection = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connectionName);
    m_connection.setDatabaseName(name);
    m_connection.setConnectOptions(options);
    if (!m_connection.open()) {
        const QString native = m_connection.lastError().nativeErrorCode();
        const int code = native.isEmpty() ? SQLITE_CANTOPEN : native.toInt();
        throw StoreError(code, 0, m_connection.lastError().text(), QStringLiteral("open"));
    }
    const QVariant handle = m_connection.driver()->handle();
    if (!handle.isValid() || std::strcmp(handle.typeName(), "sqlite3*") != 0)
        throw StoreError(SQLITE_MISUSE, 0, QStringLiteral("Qt's driver gives no SQLite handle"),
                         QStringLiteral("open"));
    m_handle = *static_cast<sqlite3* const*>(handle.constData());
}

/// The handle is only ours to use when Qt's driver runs on the very library that this program is
/// linked with, and that library records sessions.
void Database::checkLibrary() {
    const QString theirs = single(QStringLiteral("SELECT sqlite_source_id()"));
    if (theirs != QString::fromLatin1(sqlite3_sourceid()) ||
        sqlite3_compileoption_used("ENABLE_SESSION") == 0 ||
        sqlite3_compileoption_used("ENABLE_PREUPDATE_HOOK") == 0)
        throw StoreError(
            SQLITE_MISUSE, 0,
            QStringLiteral("Qt's SQL driver uses another SQLite library (%1)").arg(theirs),
            QStringLiteral("SELECT sqlite_source_id()"));
}

void Database::setUp(Access access) {
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    script(QStringLiteral("PRAGMA foreign_keys = ON;"
                          "PRAGMA trusted_schema = OFF;"
                          "PRAGMA cell_size_check = ON;"
                          "PRAGMA temp_store = MEMORY;"));
    if (access == Access::ReadOnly)
        return;
    script(QStringLiteral("PRAGMA secure_delete = ON;"
                          "PRAGMA synchronous = FULL;"
                          "PRAGMA journal_mode = DELETE;"));
}

Statement Database::statement(const QString& sql) {
    std::shared_ptr<PreparedStatement>& kept = m_prepared[sql];
    // A statement that is being stepped through cannot be used a second time meanwhile.
    if (kept && kept->inUse)
        throw StoreError(SQLITE_MISUSE, 0, QStringLiteral("the statement is in use"), sql);
    if (!kept) {
        auto prepared = std::make_shared<PreparedStatement>();
        prepared->query = QSqlQuery(m_connection);
        prepared->query.setForwardOnly(true);
        prepared->sql = sql;
        if (!prepared->query.prepare(sql)) {
            m_prepared.remove(sql);
            fail(sql);
        }
        kept = std::move(prepared);
    }
    return {m_handle, *kept};
}

void Database::script(const QString& sql) {
    if (sqlite3_exec(m_handle, sql.toUtf8().constData(), nullptr, nullptr, nullptr) != SQLITE_OK)
        fail(sql);
}

QString Database::single(const QString& sql) {
    QSqlQuery query(m_connection);
    query.setForwardOnly(true);
    if (!query.exec(sql))
        fail(sql);
    return query.next() ? query.value(0).toString() : QString();
}

qint64 Database::lastInsertId() const {
    return sqlite3_last_insert_rowid(m_handle);
}

int Database::changedRows() const {
    return sqlite3_changes(m_handle);
}

bool Database::inTransaction() const {
    return sqlite3_get_autocommit(m_handle) == 0;
}

void Database::fail(const QString& doing) const {
    const int code = sqlite3_extended_errcode(m_handle);
    throw StoreError(code == SQLITE_OK ? SQLITE_ERROR : code, systemErrorOf(m_handle),
                     QString::fromUtf8(sqlite3_errmsg(m_handle)), doing);
}

} // namespace ladlework::store
