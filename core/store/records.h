#pragma once

#include "store/database.h"

#include <QList>

namespace ladlework::store {

/// Every row that a query gives, through the reader of its record.
template <class Record, class... Values>
QList<Record> readAll(Database& database, const QString& sql, Record (*read)(const Statement&),
                      const Values&... values) {
    QList<Record> records;
    Statement rows = database.statement(sql);
    rows.with(values...);
    while (rows.next())
        records.append(read(rows));
    return records;
}

/// Runs a statement that asks for one number, over and over the same in removals.
template <class... Values>
void run(Database& database, const QString& sql, const Values&... values) {
    database.statement(sql).with(values...).run();
}

} // namespace ladlework::store
