#pragma once

#include <QDateTime>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::store {

class Database;

/// One user action as it was recorded.
struct HistoryEntry {
    qint64 id = 0;
    QDateTime atUtc;
    QString sentence;
    bool undone = false;
};

/// The recorded actions, newest first, and what Undo and Redo would do now.
class History {
public:
    explicit History(Database& database) : m_database(database) {}

    [[nodiscard]] QList<HistoryEntry> latest(int count) const;
    [[nodiscard]] std::optional<HistoryEntry> nextUndo() const;
    [[nodiscard]] std::optional<HistoryEntry> nextRedo() const;

private:
    Database& m_database;
};

} // namespace ladlework::store
