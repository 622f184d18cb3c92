#pragma once

#include "foundation/result.h"

#include <QList>
#include <QString>

namespace ladlework::store {

class Database;

/// One step of the schema: a numbered SQL file, "001-first-tables.sql". Never changed once it has
/// been shipped; the next one is added after it.
struct Migration {
    int version = 0;
    QString name;
    QString sql;
};

/// "LdWk", in the header of every workbook.
inline constexpr int applicationId = 0x4c64576b;

/// The shipped steps in order, numbered from 1 without a gap (else throws std::logic_error).
QList<Migration> shippedMigrations();

/// The version after the last step.
int newestVersion(const QList<Migration>& migrations);

/// The schema version of an open file.
int versionOf(Database& database);

/// Runs the steps above the file's version, each in one transaction that ends with the new version
/// number; before each commit no reference may be left dangling. Throws StoreError, and then the
/// file stands at the last step that was done.
void migrate(Database& database, const QList<Migration>& migrations);

/// The tables, indices, triggers and views of a file, as text to compare.
QString schemaOf(Database& database);
/// What schemaOf() gives for a new workbook at this version.
QString expectedSchema(const QList<Migration>& migrations, int version);

} // namespace ladlework::store
