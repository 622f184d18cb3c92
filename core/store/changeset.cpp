#include "store/changeset.h"

#include "store/database.h"
#include "store/store_error.h"

#include <limits>
#include <memory>
#include <sqlite3.h>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
void require(int code, const QString& doing) {
    if (code != SQLITE_OK)
        throw StoreError(code, 0, QString::fromUtf8(sqlite3_errstr(code)), doing);
}

/// SQLite's sizes are int; its API takes the bytes as not const, but does not write to them.
int sizeOf(const QByteArray& changeset) {
    if (changeset.size() > std::numeric_limits<int>::max())
        throw StoreError(SQLITE_TOOBIG, 0, QStringLiteral("the change is too large"),
                         QStringLiteral("changeset"));
    return static_cast<int>(changeset.size());
}

void* dataOf(const QByteArray& changeset) {
    return const_cast<char*>(changeset.constData());
}

/// Takes over what SQLite has allocated.
QByteArray taken(void* bytes, int size) {
    const std::unique_ptr<void, decltype(&sqlite3_free)> owner(bytes, &sqlite3_free);
    return {static_cast<const char*>(bytes), size};
}

int columnsOf(Database& database, const QString& table) {
    Statement count =
        database.statement(QStringLiteral("SELECT count(*) AS columns FROM pragma_table_info(?)"));
    count.with(table).next();
    return count.integer("columns"_L1);
}

/// SQLite skips a table that it does not know or that has fewer columns, without a word.
bool tablesFit(Database& database, const QByteArray& changeset) {
    const QStringList known = recordedTables(database);
    sqlite3_changeset_iter* raw = nullptr;
    require(sqlite3changeset_start(&raw, sizeOf(changeset), dataOf(changeset)),
            QStringLiteral("reading a changeset"));
    bool fit = true;
    int step = sqlite3changeset_next(raw);
    QString last;
    while (step == SQLITE_ROW && fit) {
        const char* name = nullptr;
        int columns = 0;
        int operation = 0;
        sqlite3changeset_op(raw, &name, &columns, &operation, nullptr);
        const QString table = QString::fromUtf8(name);
        if (table != last)
            fit = known.contains(table) && columns <= columnsOf(database, table);
        last = table;
        step = sqlite3changeset_next(raw);
    }
    const int end = sqlite3changeset_finalize(raw);
    if (fit)
        require(end, QStringLiteral("reading a changeset"));
    return fit;
}

int abortOnConflict(void* conflict, int, sqlite3_changeset_iter*) {
    *static_cast<bool*>(conflict) = true;
    return SQLITE_CHANGESET_ABORT;
}
} // namespace

QStringList recordedTables(Database& database) {
    QStringList tables;
    Statement rows = database.statement(
        QStringLiteral("SELECT name FROM pragma_table_list WHERE schema = 'main' "
                       "AND type = 'table' AND name NOT IN ('history', 'climb_so_far') "
                       "AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name"));
    while (rows.next())
        tables.append(rows.text("name"_L1));
    return tables;
}

ChangeRecorder::ChangeRecorder(Database& database) : m_database(database) {
    const QStringList tables = recordedTables(database);
    require(sqlite3session_create(database.handle(), "main", &m_session),
            QStringLiteral("recording changes"));
    for (const QString& table : tables) {
        const int code = sqlite3session_attach(m_session, table.toUtf8().constData());
        if (code != SQLITE_OK) {
            sqlite3session_delete(m_session);
            require(code, QStringLiteral("recording changes"));
        }
    }
}

ChangeRecorder::~ChangeRecorder() {
    sqlite3session_delete(m_session);
}

QByteArray ChangeRecorder::changeset() const {
    int size = 0;
    void* bytes = nullptr;
    const int code = sqlite3session_changeset(m_session, &size, &bytes);
    if (code != SQLITE_OK)
        m_database.fail(QStringLiteral("recording changes"));
    return taken(bytes, size);
}

QByteArray inverted(const QByteArray& changeset) {
    int size = 0;
    void* bytes = nullptr;
    require(sqlite3changeset_invert(sizeOf(changeset), dataOf(changeset), &size, &bytes),
            QStringLiteral("inverting a changeset"));
    return taken(bytes, size);
}

bool applyChangeset(Database& database, const QByteArray& changeset) {
    if (!tablesFit(database, changeset))
        return false;
    bool conflict = false;
    const int code = sqlite3changeset_apply(database.handle(), sizeOf(changeset), dataOf(changeset),
                                            nullptr, abortOnConflict, &conflict);
    if (conflict)
        return false;
    if (code != SQLITE_OK)
        throw StoreError(code, systemErrorOf(database.handle()),
                         QString::fromUtf8(sqlite3_errstr(code)),
                         QStringLiteral("applying a changeset"));
    return true;
}

} // namespace ladlework::store
