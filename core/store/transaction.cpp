#include "store/transaction.h"

#include "store/database.h"

#include <sqlite3.h>

namespace ladlework::store {

Transaction::Transaction(Database& database, Kind kind) : m_database(database) {
    if (kind == Kind::Read && database.inTransaction())
        return;
    m_database.script(kind == Kind::Write ? QStringLiteral("BEGIN IMMEDIATE")
                                          : QStringLiteral("BEGIN"));
    m_open = true;
}

Transaction::~Transaction() {
    if (!m_open)
        return;
    // SQLite has rolled back by itself after some errors; and after a failed write it leaves the
    // journal to the next reader, so this reads. A failure here leaves the journal to the next
    // opening: nothing to be done or thrown.
    sqlite3* const handle = m_database.handle();
    if (m_database.inTransaction())
        sqlite3_exec(handle, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_exec(handle, "SELECT count(*) FROM sqlite_schema", nullptr, nullptr, nullptr);
}

void Transaction::commit() {
    if (!m_open)
        return;
    m_database.script(QStringLiteral("COMMIT"));
    m_open = false;
}

} // namespace ladlework::store
