#pragma once

#include "foundation/result.h"

#include <QString>
#include <functional>

namespace ladlework::store {

class Database;

/// Copies an open workbook to a new file (mode 0600) through SQLite's online backup, checks the
/// copy with integrity_check and only then gives it its name. An existing file is Refused; on any
/// problem nothing is left behind.
Outcome backUp(Database& source, const QString& path);

/// Makes a file whole or not at all: `fill` gets an empty file (mode 0600) beside `path`, which
/// then takes that name without ever replacing another file (Refused). When `fill` gives a Problem
/// or throws, nothing is left behind.
Outcome makeWhole(const QString& path, const std::function<Outcome(const QString& part)>& fill);

} // namespace ladlework::store
