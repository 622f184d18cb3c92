#pragma once

#include "exchange/log_csv.h"
#include "foundation/csv.h"

#include <QHash>

namespace ladlework::exchange {

/// What every line of one log is read against.
struct LogContext {
    const LogNames& names;
    const casebook::FamilyRecords& records;
    const LogDays& days;
    QHash<QString, qsizetype> columns; ///< column name -> place in the record
};

/// Reads one line of a log; it is checked as the workbook would check it. Gives an addition more,
/// with the same line, for each further reaction in the cell ("hives 3; wheezing 2").
tl::expected<QList<LogAddition>, LogRefusal> readLogLine(const CsvRecord& record,
                                                         const LogContext& context);

/// The day a line is of, shifted; an invalid one when it cannot be read.
QDate dayOfLine(const CsvRecord& record, const LogContext& context);

} // namespace ladlework::exchange
