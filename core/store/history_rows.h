#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>

namespace ladlework::store {

class Database;

// Writing the history, inside the transaction of the action that it records.

/// Adds an action as the latest one; what had been undone cannot be redone after it.
void addHistory(Database& database, const QDateTime& atUtc, const QString& sentence,
                const QByteArray& changeset);
/// False when it is not there or does not match its digest.
bool isSound(Database& database, qint64 entry);
/// Throws StoreError when it is not there or does not match its digest.
QByteArray changesetOf(Database& database, qint64 entry);
void setUndone(Database& database, qint64 entry, bool undone);

} // namespace ladlework::store
