#pragma once

#include "foundation/result.h"
#include "store/migrations.h"

#include <QString>

namespace ladlework::store {

/// What the outside of a file says about it; read without SQLite, so that not a byte is touched.
struct FileHeader {
    int version = 0;         ///< of the schema
    bool unfinished = false; ///< a program died while writing: a journal waits beside the file
    bool writeAhead = false; ///< another program has put it into write-ahead mode (unfinished too)
};

/// Unavailable when the file cannot be read, Foreign when it is no workbook of this program, Newer
/// when a later version wrote it, Damaged when it is shorter than it says.
Result<FileHeader> readHeader(const QString& path, int newestVersion);

/// Looks inside without writing: Damaged unless SQLite's quick_check passes and the tables are
/// those of the file's version. An unfinished file is looked at in a private copy, in which the
/// journal is played back, so that a file that is refused stays as it is. `header` is then
/// what the file will be once the journal is played back.
Outcome lookInside(const QString& path, FileHeader& header, const QList<Migration>& migrations);

/// A sentence per kind of refusal, with the file's name in it.
Problem damagedFile(const QString& path, const QString& detail);

} // namespace ladlework::store
