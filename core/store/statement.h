#pragma once

#include "foundation/id.h"
#include "store/values.h"

#include <QLatin1StringView>
#include <QList>
#include <QSqlQuery>
#include <QString>
#include <optional>

struct sqlite3;

namespace ladlework::store {

/// A statement as the database keeps it: compiled once, used many times.
struct PreparedStatement {
    QSqlQuery query;
    QString sql;
    QList<QByteArray> columns; ///< names, filled at the first row
    bool inUse = false;
};

/// One use of a prepared statement: bind, then run() or step through the rows with next(). It is
/// reset on destruction, which gives the read lock back. Errors are thrown as StoreError with the
/// SQL. Columns are read by name and type; an unknown name, a NULL in a column that has none and a
/// text that is no day are thrown as well: such a record cannot be trusted.
class Statement {
public:
    Statement(sqlite3* handle, PreparedStatement& prepared);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    /// Binds the values to the question marks, in order.
    template <class... Values>
    Statement& with(const Values&... values) {
        (bind(toColumn(values)), ...);
        return *this;
    }
    void bind(const QVariant& value);

    /// Executes a statement that gives no rows.
    void run();
    /// Executes at the first call; true while there is a row to read.
    bool next();

    [[nodiscard]] bool isNull(QLatin1StringView column) const;
    [[nodiscard]] qint64 whole(QLatin1StringView column) const;
    [[nodiscard]] int integer(QLatin1StringView column) const;
    [[nodiscard]] bool flag(QLatin1StringView column) const;
    [[nodiscard]] double real(QLatin1StringView column) const;
    [[nodiscard]] QString text(QLatin1StringView column) const;
    [[nodiscard]] QByteArray bytes(QLatin1StringView column) const;
    /// Invalid for NULL.
    [[nodiscard]] QDate day(QLatin1StringView column) const;
    [[nodiscard]] QDateTime momentUtc(QLatin1StringView column) const;
    [[nodiscard]] std::optional<int> optionalInteger(QLatin1StringView column) const;
    [[nodiscard]] std::optional<double> optionalReal(QLatin1StringView column) const;
    /// Not stored (0) for NULL.
    template <class IdType>
    [[nodiscard]] IdType id(QLatin1StringView column) const {
        return IdType{isNull(column) ? 0 : whole(column)};
    }
    /// What `fromId` makes of a word; a word that it does not know is thrown as damage.
    template <class FromId>
    [[nodiscard]] auto word(QLatin1StringView column, FromId fromId) const {
        const auto value = fromId(text(column));
        if (!value)
            failUnreadable(column);
        return *value;
    }

private:
    [[nodiscard]] QVariant value(QLatin1StringView column) const;
    [[noreturn]] void fail() const;
    [[noreturn]] void failUnreadable(QLatin1StringView column) const;

    sqlite3* m_handle;
    PreparedStatement& m_prepared;
    int m_bound = 0;
    bool m_executed = false;
};

} // namespace ladlework::store
