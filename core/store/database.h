#pragma once

#include "store/statement.h"

#include <QHash>
#include <QSqlDatabase>
#include <QString>
#include <memory>

namespace ladlework::store {

/// One connection to one SQLite file through Qt's driver; the only place that knows both. Throws
/// StoreError. Not copyable, one thread, closed and forgotten by Qt on destruction.
class Database {
public:
    enum class Access {
        ReadOnly,  ///< touches neither the file nor a journal
        ReadWrite, ///< the file must exist (it may be empty)
    };

    /// Opens a file and sets the connection up: foreign keys enforced, rollback journal, every
    /// commit on the disk before it returns, deleted content overwritten, schema not trusted.
    Database(const QString& path, Access access);
    /// A database that lives in memory.
    Database();
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// A statement for one use; compiled at the first call with this text and kept.
    Statement statement(const QString& sql);
    /// Runs a script of any number of statements.
    void script(const QString& sql);
    /// The first column of the first row, as text.
    QString single(const QString& sql);

    [[nodiscard]] qint64 lastInsertId() const;
    /// The number of rows that the last INSERT, UPDATE or DELETE touched.
    [[nodiscard]] int changedRows() const;
    [[nodiscard]] bool inTransaction() const;

    /// For the parts of SQLite that Qt does not reach: session, backup.
    [[nodiscard]] sqlite3* handle() const { return m_handle; }
    /// Throws what SQLite last reported on this connection.
    [[noreturn]] void fail(const QString& doing) const;

private:
    void connect(const QString& name, const QString& options);
    void checkLibrary();
    void setUp(Access access);

    QString m_connectionName;
    QSqlDatabase m_connection;
    sqlite3* m_handle = nullptr;
    QHash<QString, std::shared_ptr<PreparedStatement>> m_prepared;
};

} // namespace ladlework::store
