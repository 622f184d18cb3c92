#include "core/store/store_fixture.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
QStringList texts(Database& database, const QString& sql) {
    QStringList found;
    Statement rows = database.statement(sql);
    while (rows.next())
        found.append(rows.text("found"_L1));
    return found;
}
} // namespace

QByteArray logicalDump(const QString& path) {
    Database database(path, Database::Access::ReadOnly);
    QStringList lines;
    const QStringList tables =
        texts(database, QStringLiteral("SELECT name AS found FROM sqlite_schema "
                                       "WHERE type = 'table' AND name <> 'history' ORDER BY name"));
    for (const QString& table : tables) {
        QStringList columns;
        for (const QString& column :
             texts(database,
                   QStringLiteral("SELECT name AS found FROM pragma_table_info('%1')").arg(table)))
            columns.append(QStringLiteral("quote(%1)").arg(column));
        for (const QString& row :
             texts(database, QStringLiteral("SELECT %1 AS found FROM %2 ORDER BY 1")
                                 .arg(columns.join(QStringLiteral(" || '|' || ")), table)))
            lines.append(table + u": " + row);
    }
    return lines.join(QChar::LineFeed).toUtf8();
}

} // namespace ladlework::store
