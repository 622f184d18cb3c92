#include "store/store_error.h"

#include <QCoreApplication>
#include <cerrno>
#include <sqlite3.h>

namespace ladlework::store {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(StoreError)
};

constexpr int primaryMask = 0xff;

/// No room shows as SQLITE_FULL only for ENOSPC; a quota and a size limit come as plain input and
/// output errors.
bool isNoRoom(int primaryCode, int systemError) {
    return primaryCode == SQLITE_FULL ||
           (primaryCode == SQLITE_IOERR &&
            (systemError == ENOSPC || systemError == EDQUOT || systemError == EFBIG));
}
} // namespace

StoreError::StoreError(int code, int systemError, const QString& message, const QString& sql)
    : m_code(code), m_systemError(systemError), m_sql(sql),
      m_what(QStringLiteral("%1 (SQLite %2, system %3) in: %4")
                 .arg(message)
                 .arg(code)
                 .arg(systemError)
                 .arg(sql.simplified())
                 .toUtf8()) {}

int StoreError::primaryCode() const {
    return m_code & primaryMask;
}

Problem StoreError::toProblem() const {
    const QString detail = QString::fromUtf8(m_what);
    if (isNoRoom(primaryCode(), m_systemError))
        return {Problem::Kind::DiskFull,
                Words::tr("There is no room left on the disk, so nothing was saved. Make room and "
                          "try again."),
                detail,
                {}};
    switch (primaryCode()) {
    case SQLITE_READONLY:
        return {Problem::Kind::ReadOnly,
                Words::tr("The workbook cannot be written, so nothing was saved. Check that its "
                          "file and folder may be written."),
                detail,
                {}};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {Problem::Kind::Damaged,
                Words::tr("The workbook's file is damaged. Close it and go back to a backup."),
                detail,
                {}};
    case SQLITE_CONSTRAINT:
        return {Problem::Kind::Refused,
                Words::tr("This does not fit the other records of the workbook or lies outside "
                          "what it can hold, so nothing was saved."),
                detail,
                {}};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {Problem::Kind::Unavailable,
                Words::tr("Another program is using the workbook's file just now. Try again in a "
                          "moment."),
                detail,
                {}};
    default:
        return {Problem::Kind::Unavailable,
                Words::tr("The workbook's file could not be read or written. Check that the disk "
                          "is connected and try again."),
                detail,
                {}};
    }
}

int systemErrorOf(sqlite3* handle) {
    if (const int kept = sqlite3_system_errno(handle); kept != 0)
        return kept;
    // A failing commit loses it; the files themselves still know.
    int last = 0;
    if (sqlite3_file_control(handle, "main", SQLITE_FCNTL_LAST_ERRNO, &last) == SQLITE_OK &&
        last != 0)
        return last;
    sqlite3_file* journal = nullptr;
    if (sqlite3_file_control(handle, "main", SQLITE_FCNTL_JOURNAL_POINTER, &journal) == SQLITE_OK &&
        journal != nullptr && journal->pMethods != nullptr)
        journal->pMethods->xFileControl(journal, SQLITE_FCNTL_LAST_ERRNO, &last);
    return last;
}

} // namespace ladlework::store
