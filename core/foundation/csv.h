#pragma once

#include "foundation/result.h"

#include <QList>
#include <QString>
#include <QStringList>

namespace ladlework {

/// A record of a CSV text and the line it starts on (from 1).
struct CsvRecord {
    QStringList fields;
    int line = 0;
};

/// Reads RFC 4180 CSV: quoted fields with doubled quotes, separators and line breaks inside them;
/// CRLF, LF or CR; a byte order mark is skipped; blank lines are left out. A quotation mark inside
/// a field that does not start with one is taken as it stands. An unclosed quote or text after a
/// closing quote is BadInput that names the line.
Result<QList<CsvRecord>> readCsv(const QString& text, QChar separator = QLatin1Char(','));

/// One record, quoted where RFC 4180 asks for it, ended by CRLF; readCsv gives the same fields
/// back. (A lone empty field is quoted too, because a blank line is no record.)
QString writeCsvRecord(const QStringList& fields, QChar separator = QLatin1Char(','));

} // namespace ladlework
