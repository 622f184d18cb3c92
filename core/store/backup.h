#pragma once

#include "foundation/result.h"

#include <QString>

namespace ladlework::store {

class Database;

/// Copies an open workbook to a new file (mode 0600) through SQLite's online backup, checks the
/// copy with integrity_check and only then gives it its name. An existing file is Refused; on any
/// problem nothing is left behind.
Outcome backUp(Database& source, const QString& path);

/// Gives a finished file its name without ever replacing another one: false when there is one.
Outcome renameWithoutReplacing(const QString& from, const QString& to);

/// Makes an empty file of mode 0600 next to `path`, to be filled and renamed; its path.
Result<QString> makeFileBeside(const QString& path);

} // namespace ladlework::store
