#pragma once

#include <QByteArray>
#include <QStringList>

struct sqlite3_session;

namespace ladlework::store {

class Database;

/// The tables whose rows make up the practice's records: all but the history itself, what follows
/// from records (climb_so_far), SQLite's own and whatever a full-text index keeps for itself.
QStringList recordedTables(Database& database);

/// Records what is changed in the recorded tables while it lives.
class ChangeRecorder {
public:
    explicit ChangeRecorder(Database& database);
    ~ChangeRecorder();
    ChangeRecorder(const ChangeRecorder&) = delete;
    ChangeRecorder& operator=(const ChangeRecorder&) = delete;

    /// What was changed so far; empty when in the end nothing was.
    [[nodiscard]] QByteArray changeset() const;

private:
    Database& m_database;
    sqlite3_session* m_session = nullptr;
};

/// The changeset that takes back what `changeset` does. Throws StoreError when it is damaged.
QByteArray inverted(const QByteArray& changeset);

/// Applies a changeset inside the running transaction: true when every change of it found exactly
/// the row it was made for, else false, with nothing of it applied. Throws StoreError when it is
/// damaged or the disk fails.
bool applyChangeset(Database& database, const QByteArray& changeset);

} // namespace ladlework::store
