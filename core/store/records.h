#pragma once

#include "store/database.h"

#include <QList>
#include <algorithm>

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

/// True when another record of the list goes by the same name, upper or lower case.
template <class Record>
bool nameIsTaken(const QList<Record>& records, const Record& by) {
    const QString name = by.name.simplified().toCaseFolded();
    return std::ranges::any_of(records, [&](const Record& record) {
        return record.id != by.id && record.name.toCaseFolded() == name;
    });
}

/// By name as people sort; those of one name as they were.
template <class Record>
void sortByName(QList<Record>& records) {
    std::ranges::stable_sort(records, [](const Record& a, const Record& b) {
        return QString::localeAwareCompare(a.name.toCaseFolded(), b.name.toCaseFolded()) < 0;
    });
}

} // namespace ladlework::store
