#pragma once

#include "store/values.h"

#include <QLatin1StringView>
#include <QList>

namespace ladlework::store {

class Database;

/// One column and what is written into it.
struct Field {
    template <class Value>
    Field(QLatin1StringView name, const Value& written) : column(name), value(toColumn(written)) {}

    QLatin1StringView column;
    QVariant value;
};
using Fields = QList<Field>;

/// Inserts a row under the next id and gives that id.
qint64 insertRow(Database& database, QLatin1StringView table, const Fields& fields);
/// False when there is no row with this id.
bool updateRow(Database& database, QLatin1StringView table, qint64 id, const Fields& fields);
bool deleteRow(Database& database, QLatin1StringView table, qint64 id);
bool hasRow(Database& database, QLatin1StringView table, qint64 id);

} // namespace ladlework::store
