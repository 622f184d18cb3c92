#include "store/migrations.h"

#include "store/database.h"
#include "store/store_error.h"
#include "store/transaction.h"

#include <QDir>
#include <QFile>
#include <sqlite3.h>
#include <stdexcept>

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

namespace {
constexpr qsizetype digits = 3;

void runStep(Database& database, const Migration& step) {
    Transaction transaction(database, Transaction::Kind::Write);
    database.script(step.sql);
    database.script(QStringLiteral("PRAGMA user_version = %1").arg(step.version));
    if (!database.single(QStringLiteral("PRAGMA foreign_key_check")).isNull())
        throw StoreError(SQLITE_CONSTRAINT_FOREIGNKEY, 0,
                         QStringLiteral("a reference is left dangling"), step.name);
    transaction.commit();
}

/// A step may rebuild a table that others refer to, which needs the enforcement off; SQLite takes
/// the switch only outside a transaction.
class ReferencesOff {
public:
    explicit ReferencesOff(Database& database) : m_database(database) {
        m_database.script(QStringLiteral("PRAGMA foreign_keys = OFF"));
    }
    ~ReferencesOff() {
        sqlite3_exec(m_database.handle(), "PRAGMA foreign_keys = ON", nullptr, nullptr, nullptr);
    }
    ReferencesOff(const ReferencesOff&) = delete;
    ReferencesOff& operator=(const ReferencesOff&) = delete;

private:
    Database& m_database;
};
} // namespace

QList<Migration> shippedMigrations() {
    const QDir folder(QStringLiteral(":/schema"));
    QList<Migration> migrations;
    for (const QString& name :
         folder.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            throw std::logic_error("a schema step cannot be read");
        migrations.append({name.first(digits).toInt(), name, QString::fromUtf8(file.readAll())});
        if (migrations.last().version != migrations.size())
            throw std::logic_error("the schema steps are not numbered from 1 without a gap");
    }
    if (migrations.isEmpty())
        throw std::logic_error("the schema is missing from the program");
    return migrations;
}

int newestVersion(const QList<Migration>& migrations) {
    return migrations.last().version;
}

int versionOf(Database& database) {
    return database.single(QStringLiteral("PRAGMA user_version")).toInt();
}

void migrate(Database& database, const QList<Migration>& migrations) {
    const int version = versionOf(database);
    const ReferencesOff off(database);
    for (const Migration& step : migrations)
        if (step.version > version)
            runStep(database, step);
}

QString schemaOf(Database& database) {
    QString schema;
    Statement rows = database.statement(
        QStringLiteral("SELECT type, name, coalesce(sql, '') AS sql FROM sqlite_schema "
                       "WHERE name NOT LIKE 'sqlite\\_stat%' ESCAPE '\\' ORDER BY type, name"));
    while (rows.next())
        schema += QStringList({rows.text("type"_L1), rows.text("name"_L1), rows.text("sql"_L1)})
                      .join(QChar::Space) +
                  QChar::LineFeed;
    return schema;
}

QString expectedSchema(const QList<Migration>& migrations, int version) {
    Database database;
    migrate(database, migrations.first(version));
    return schemaOf(database);
}

} // namespace ladlework::store
