#include "store/statement.h"

#include "store/store_error.h"

#include <QSqlError>
#include <QSqlRecord>
#include <limits>
#include <sqlite3.h>

namespace ladlework::store {

Statement::Statement(sqlite3* handle, PreparedStatement& prepared)
    : m_handle(handle), m_prepared(prepared) {
    m_prepared.inUse = true;
}

Statement::~Statement() {
    m_prepared.query.finish();
    m_prepared.inUse = false;
}

void Statement::bind(const QVariant& value) {
    m_prepared.query.bindValue(m_bound, value);
    ++m_bound;
}

void Statement::run() {
    if (!m_prepared.query.exec())
        fail();
    m_executed = true;
}

bool Statement::next() {
    if (!m_executed) {
        run();
        if (m_prepared.columns.isEmpty()) {
            const QSqlRecord record = m_prepared.query.record();
            for (int index = 0; index < record.count(); ++index)
                m_prepared.columns.append(record.fieldName(index).toLatin1());
        }
    }
    if (m_prepared.query.next())
        return true;
    // The driver gives false both for the end and for an error on the way there.
    if (m_prepared.query.lastError().isValid())
        fail();
    return false;
}

QVariant Statement::value(QLatin1StringView column) const {
    for (qsizetype index = 0; index < m_prepared.columns.size(); ++index)
        if (QLatin1StringView(m_prepared.columns.at(index)) == column)
            return m_prepared.query.value(static_cast<int>(index));
    throw StoreError(SQLITE_MISUSE, 0, QStringLiteral("no column %1").arg(column), m_prepared.sql);
}

bool Statement::isNull(QLatin1StringView column) const {
    return value(column).isNull();
}

qint64 Statement::whole(QLatin1StringView column) const {
    const QVariant found = value(column);
    if (found.isNull() || found.typeId() != QMetaType::LongLong)
        failUnreadable(column);
    return found.toLongLong();
}

int Statement::integer(QLatin1StringView column) const {
    const qint64 found = whole(column);
    if (found < std::numeric_limits<int>::min() || found > std::numeric_limits<int>::max())
        failUnreadable(column);
    return static_cast<int>(found);
}

bool Statement::flag(QLatin1StringView column) const {
    return whole(column) != 0;
}

double Statement::real(QLatin1StringView column) const {
    const QVariant found = value(column);
    if (found.isNull() || found.typeId() != QMetaType::Double)
        failUnreadable(column);
    return found.toDouble();
}

QString Statement::text(QLatin1StringView column) const {
    const QVariant found = value(column);
    if (found.isNull())
        failUnreadable(column);
    return found.toString();
}

QByteArray Statement::bytes(QLatin1StringView column) const {
    return value(column).toByteArray();
}

QDate Statement::day(QLatin1StringView column) const {
    if (isNull(column))
        return {};
    const QDate found = QDate::fromString(text(column), Qt::ISODate);
    if (!found.isValid())
        failUnreadable(column);
    return found;
}

QDateTime Statement::momentUtc(QLatin1StringView column) const {
    const QDateTime found = QDateTime::fromString(text(column), Qt::ISODateWithMs);
    if (!found.isValid())
        failUnreadable(column);
    return found.toUTC();
}

std::optional<int> Statement::optionalInteger(QLatin1StringView column) const {
    return isNull(column) ? std::nullopt : std::optional(integer(column));
}

std::optional<double> Statement::optionalReal(QLatin1StringView column) const {
    return isNull(column) ? std::nullopt : std::optional(real(column));
}

void Statement::fail() const {
    const QSqlError error = m_prepared.query.lastError();
    const int code = sqlite3_extended_errcode(m_handle);
    const int known =
        code == SQLITE_OK || code == SQLITE_ROW || code == SQLITE_DONE ? SQLITE_ERROR : code;
    throw StoreError(known, systemErrorOf(m_handle), error.text(), m_prepared.sql);
}

void Statement::failUnreadable(QLatin1StringView column) const {
    throw StoreError(SQLITE_CORRUPT, 0,
                     QStringLiteral("column %1 holds what no record may hold").arg(column),
                     m_prepared.sql);
}

} // namespace ladlework::store
