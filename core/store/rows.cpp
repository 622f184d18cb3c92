#include "store/rows.h"

#include "store/database.h"

#include <QStringList>

namespace ladlework::store {

namespace {
void bindAll(Statement& statement, const Fields& fields) {
    for (const Field& field : fields)
        statement.bind(field.value);
}
} // namespace

qint64 insertRow(Database& database, QLatin1StringView table, const Fields& fields) {
    QStringList columns;
    QStringList marks;
    for (const Field& field : fields) {
        columns.append(field.column);
        marks.append(QStringLiteral("?"));
    }
    Statement insert = database.statement(
        QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
            .arg(table, columns.join(QStringLiteral(", ")), marks.join(QStringLiteral(", "))));
    bindAll(insert, fields);
    insert.run();
    return database.lastInsertId();
}

bool updateRow(Database& database, QLatin1StringView table, qint64 id, const Fields& fields) {
    QStringList settings;
    for (const Field& field : fields)
        settings.append(field.column + QStringLiteral(" = ?"));
    Statement update = database.statement(QStringLiteral("UPDATE %1 SET %2 WHERE id = ?")
                                              .arg(table, settings.join(QStringLiteral(", "))));
    bindAll(update, fields);
    update.with(id).run();
    return database.changedRows() > 0;
}

bool deleteRow(Database& database, QLatin1StringView table, qint64 id) {
    database.statement(QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(table)).with(id).run();
    return database.changedRows() > 0;
}

bool hasRow(Database& database, QLatin1StringView table, qint64 id) {
    return database.statement(QStringLiteral("SELECT 1 FROM %1 WHERE id = ?").arg(table))
        .with(id)
        .next();
}

} // namespace ladlework::store
