#include "store/history.h"

#include "store/history_rows.h"
#include "store/records.h"
#include "store/rows.h"
#include "store/store_error.h"

#include <QCryptographicHash>
#include <sqlite3.h>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
HistoryEntry readEntry(const Statement& row) {
    return {row.whole("id"_L1), row.momentUtc("at_utc"_L1), row.text("sentence"_L1),
            row.flag("undone"_L1)};
}

QByteArray digestOf(const QByteArray& changeset) {
    return QCryptographicHash::hash(changeset, QCryptographicHash::Sha256);
}

std::optional<HistoryEntry> firstOf(const QList<HistoryEntry>& entries) {
    return entries.isEmpty() ? std::nullopt : std::optional(entries.first());
}
} // namespace

QList<HistoryEntry> History::latest(int count) const {
    return readAll(m_database,
                   QStringLiteral("SELECT id, at_utc, sentence, undone FROM history "
                                  "ORDER BY id DESC LIMIT ?"),
                   readEntry, count);
}

std::optional<HistoryEntry> History::nextUndo() const {
    return firstOf(readAll(m_database,
                           QStringLiteral("SELECT id, at_utc, sentence, undone FROM history "
                                          "WHERE undone = 0 ORDER BY id DESC LIMIT 1"),
                           readEntry));
}

std::optional<HistoryEntry> History::nextRedo() const {
    return firstOf(readAll(m_database,
                           QStringLiteral("SELECT id, at_utc, sentence, undone FROM history "
                                          "WHERE undone = 1 ORDER BY id LIMIT 1"),
                           readEntry));
}

void addHistory(Database& database, const QDateTime& atUtc, const QString& sentence,
                const QByteArray& changeset) {
    run(database, QStringLiteral("DELETE FROM history WHERE undone = 1"));
    insertRow(database, "history"_L1,
              {{"at_utc"_L1, atUtc},
               {"sentence"_L1, sentence},
               {"undone"_L1, false},
               {"sha256"_L1, digestOf(changeset)},
               {"changeset"_L1, changeset}});
}

bool isSound(Database& database, qint64 entry) {
    Statement find =
        database.statement(QStringLiteral("SELECT sha256, changeset FROM history WHERE id = ?"));
    return find.with(entry).next() &&
           digestOf(find.bytes("changeset"_L1)) == find.bytes("sha256"_L1);
}

QByteArray changesetOf(Database& database, qint64 entry) {
    const QString sql = QStringLiteral("SELECT changeset FROM history WHERE id = ?");
    if (!isSound(database, entry))
        throw StoreError(SQLITE_CORRUPT, 0, QStringLiteral("a recorded change is damaged"), sql);
    Statement find = database.statement(sql);
    return find.with(entry).next() ? find.bytes("changeset"_L1) : QByteArray();
}

void setUndone(Database& database, qint64 entry, bool undone) {
    updateRow(database, "history"_L1, entry, {{"undone"_L1, undone}});
}

} // namespace ladlework::store
