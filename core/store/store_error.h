#pragma once

#include "foundation/problem.h"

#include <QString>
#include <exception>

struct sqlite3;

namespace ladlework::store {

/// The disk, the file or the database failed under the program. Thrown by everything in this
/// folder that talks to SQLite; turned into a Problem once, at the boundary of an action.
class StoreError : public std::exception {
public:
    /// `code` is SQLite's extended result code, `systemError` the errno behind it (0: none), `sql`
    /// what was being done.
    StoreError(int code, int systemError, const QString& message, const QString& sql);

    [[nodiscard]] const char* what() const noexcept override { return m_what.constData(); }
    /// SQLite's primary result code: SQLITE_FULL, SQLITE_CORRUPT, ...
    [[nodiscard]] int primaryCode() const;
    [[nodiscard]] const QString& sql() const { return m_sql; }

    /// The error as a sentence for people: DiskFull, ReadOnly, Damaged, Refused (the change broke
    /// a constraint) or Unavailable; `detail` keeps message and SQL.
    [[nodiscard]] Problem toProblem() const;

private:
    int m_code;
    int m_systemError;
    QString m_sql;
    QByteArray m_what;
};

/// The errno behind the last failure of a connection, as far as SQLite has kept it; 0 else.
int systemErrorOf(sqlite3* handle);

} // namespace ladlework::store
