#pragma once

#include "foundation/result.h"

#include <QByteArray>
#include <QString>

namespace ladlework {

/// Writes a file that only its owner may read (mode 0600), whole or not at all; one that is there
/// is replaced. Refused when the path leads, also through links, to a database (every workbook is
/// one) or to anything that is no ordinary file; else the Problem says what stood in the way. The
/// place is the path.
Outcome writeWhole(const QByteArray& bytes, const QString& path);

} // namespace ladlework
