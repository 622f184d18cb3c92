#include "store/file_look.h"

#include "store/database.h"
#include "store/store_error.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QtEndian>
#include <array>
#include <sqlite3.h>

namespace ladlework::store {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(FileLook)
};

// The database header: https://www.sqlite.org/fileformat2.html#the_database_header
constexpr qint64 headerSize = 100;
constexpr QByteArrayView magic("SQLite format 3\0", 16);
constexpr qsizetype pageSizeAt = 16;
constexpr qsizetype writeVersionAt = 18;
constexpr qsizetype changeCounterAt = 24;
constexpr qsizetype pageCountAt = 28;
constexpr qsizetype userVersionAt = 60;
constexpr qsizetype applicationIdAt = 68;
constexpr qsizetype countValidForAt = 92;
constexpr quint32 largestPage = 65536;
constexpr char writeAheadLog = 2;

const std::array sidecarEndings{QStringLiteral("-journal"), QStringLiteral("-wal")};

quint32 wordAt(const QByteArray& header, qsizetype at) {
    return qFromBigEndian<quint32>(header.constData() + at);
}

QString nameOf(const QString& path) {
    return QFileInfo(path).fileName();
}

tl::unexpected<Problem> foreign(const QString& path) {
    return problem(
        Problem::Kind::Foreign,
        Words::tr("\"%1\" is not a Ladlework workbook; choose another file.").arg(nameOf(path)),
        path);
}

tl::unexpected<Problem> newer(const QString& path) {
    return problem(Problem::Kind::Newer,
                   Words::tr("\"%1\" was written by a newer version of Ladlework; open it with "
                             "that version.")
                       .arg(nameOf(path)),
                   path);
}

/// The bytes that the header counts; 0 when the count is not to be trusted.
qint64 bytesCounted(const QByteArray& header) {
    const quint32 written = qFromBigEndian<quint16>(header.constData() + pageSizeAt);
    const quint32 pageSize = written == 1 ? largestPage : written;
    if (wordAt(header, changeCounterAt) != wordAt(header, countValidForAt))
        return 0;
    return qint64{pageSize} * wordAt(header, pageCountAt);
}

Outcome inspect(Database& database, const QString& path, FileHeader& header,
                const QList<Migration>& migrations) {
    header.version = versionOf(database);
    if (database.single(QStringLiteral("PRAGMA application_id")).toInt() != applicationId)
        return foreign(path);
    if (header.version > newestVersion(migrations))
        return newer(path);
    if (header.version < 1)
        return tl::unexpected<Problem>(damagedFile(path, QStringLiteral("no schema version")));
    const QString found = database.single(QStringLiteral("PRAGMA quick_check"));
    if (found != QStringLiteral("ok"))
        return tl::unexpected<Problem>(damagedFile(path, found));
    if (schemaOf(database) != expectedSchema(migrations, header.version))
        return tl::unexpected<Problem>(
            damagedFile(path, QStringLiteral("the tables are not those of its version")));
    return {};
}

Outcome inspectCopy(const QString& path, FileHeader& header, const QList<Migration>& migrations) {
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("workbook"));
    bool copied = folder.isValid() && QFile::copy(path, copy);
    for (const QString& ending : sidecarEndings)
        if (copied && QFileInfo::exists(path + ending))
            copied = QFile::copy(path + ending, copy + ending);
    if (!copied)
        return problem(Problem::Kind::Unavailable,
                       Words::tr("\"%1\" was not closed properly, and there is no room to look at "
                                 "a copy of it. Make room on the disk and try again.")
                           .arg(nameOf(path)),
                       path);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    Database database(copy, Database::Access::ReadWrite);
    return inspect(database, path, header, migrations);
}
} // namespace

Problem damagedFile(const QString& path, const QString& detail) {
    return {Problem::Kind::Damaged,
            Words::tr("\"%1\" is damaged and was left as it is; go back to a backup of it.")
                .arg(nameOf(path)),
            detail, path};
}

Result<FileHeader> readHeader(const QString& path, int newestVersion) {
    const QFileInfo info(path);
    if (!info.exists())
        return problem(Problem::Kind::Unavailable,
                       Words::tr("There is no file \"%1\"; it may have been moved or renamed.")
                           .arg(nameOf(path)),
                       path);
    QFile file(path);
    if (!info.isFile() || !file.open(QIODevice::ReadOnly))
        return problem(Problem::Kind::Unavailable,
                       Words::tr("\"%1\" cannot be read. Check that it is a file and that you may "
                                 "read it.")
                           .arg(nameOf(path)),
                       path, file.errorString());
    const QByteArray header = file.read(headerSize);
    if (!header.startsWith(magic))
        return foreign(path);
    if (header.size() < headerSize)
        return tl::unexpected<Problem>(damagedFile(path, QStringLiteral("the header is cut off")));
    if (wordAt(header, applicationIdAt) != quint32{applicationId})
        return foreign(path);

    FileHeader read;
    read.version = static_cast<int>(wordAt(header, userVersionAt));
    read.writeAhead = header.at(writeVersionAt) == writeAheadLog;
    read.unfinished = read.writeAhead;
    for (const QString& ending : sidecarEndings)
        read.unfinished = read.unfinished || QFileInfo(path + ending).size() > 0;
    if (read.unfinished)
        return read;
    if (read.version > newestVersion)
        return newer(path);
    if (info.size() < bytesCounted(header))
        return problem(Problem::Kind::Damaged,
                       Words::tr("The end of \"%1\" is missing: only a part of it was copied. Copy "
                                 "it again, or go back to a backup.")
                           .arg(nameOf(path)),
                       path,
                       QStringLiteral("%1 of %2 bytes").arg(info.size()).arg(bytesCounted(header)));
    return read;
}

Outcome lookInside(const QString& path, FileHeader& header, const QList<Migration>& migrations) {
    try {
        if (header.unfinished)
            return inspectCopy(path, header, migrations);
        Database database(path, Database::Access::ReadOnly);
        return inspect(database, path, header, migrations);
    } catch (const StoreError& error) {
        const int code = error.primaryCode();
        if (code == SQLITE_CORRUPT || code == SQLITE_NOTADB || code == SQLITE_ERROR)
            return tl::unexpected<Problem>(damagedFile(path, QString::fromUtf8(error.what())));
        return tl::unexpected<Problem>(error.toProblem());
    }
}

} // namespace ladlework::store
