#pragma once

#include "foundation/clock.h"
#include "foundation/result.h"
#include "store/database.h"
#include "store/migrations.h"
#include "store/opening.h"

#include <QLockFile>
#include <QString>
#include <functional>
#include <memory>

namespace ladlework::store {

/// A workbook's file as it stands open: with the lock that keeps a second window from writing, or
/// with the reason why it can only be read.
struct OpenFile {
    QString path;
    std::unique_ptr<QLockFile> lock;
    std::unique_ptr<Database> database;
    QString readOnlyReason;
};

/// Opens an existing workbook: looks first, and leaves a file that it refuses byte for byte as it
/// was; then migrates an older one, after a backup beside it. Asked to read, an older or unfinished
/// one is Refused instead.
Result<OpenFile> openWorkbookFile(const QString& path, const QList<Migration>& migrations,
                                  const Clock& clock, Opening opening = Opening::ToWrite);

/// Makes a new workbook file: `fill` writes into it after the schema is laid; only when it gives
/// no Problem and throws nothing does the file get its name.
Outcome createWorkbookFile(const QString& path, const QList<Migration>& migrations,
                           const std::function<Outcome(OpenFile)>& fill);

/// The name of the backup that is made before a file of an older schema is migrated.
QString backupNameBeforeMigration(const QString& path, int version, const QDateTime& now);

} // namespace ladlework::store
