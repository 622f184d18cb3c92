#include "store/workbook_file.h"

#include "store/action_boundary.h"
#include "store/backup.h"
#include "store/file_look.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

namespace ladlework::store {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WorkbookFile)
};

constexpr QFile::Permissions anyWrite = QFile::WriteOwner | QFile::WriteGroup | QFile::WriteOther;

/// A file that its owner has marked read-only is read-only here for everyone, also for a user whom
/// the system would let write.
bool mayWrite(const QFileInfo& info) {
    return info.isWritable() && (info.permissions() & anyWrite) != 0;
}

QString writeProtection(const QString& path) {
    const QFileInfo file(path);
    if (!mayWrite(file))
        return Words::tr("The file \"%1\" is write-protected, so the workbook can only be read.")
            .arg(file.fileName());
    if (!mayWrite(QFileInfo(file.absolutePath())))
        return Words::tr("The folder \"%1\" is write-protected, so the workbook can only be read.")
            .arg(file.absolutePath());
    return {};
}

/// Takes the lock, or gives the sentence that says who has it.
QString takeLock(OpenFile& opened) {
    auto lock = std::make_unique<QLockFile>(opened.path + QStringLiteral(".lock"));
    // A workbook stays open for days: only a program that has ended leaves a stale lock.
    lock->setStaleLockTime(0);
    if (lock->tryLock(0)) {
        opened.lock = std::move(lock);
        return {};
    }
    qint64 process = 0;
    QString host;
    QString program;
    lock->getLockInfo(&process, &host, &program);
    if (lock->error() != QLockFile::LockFailedError)
        return Words::tr("The folder \"%1\" cannot be written, so the workbook can only be read.")
            .arg(QFileInfo(opened.path).absolutePath());
    if (host.isEmpty() || host == QSysInfo::machineHostName())
        return Words::tr("The workbook is open in another window, so it can only be read here.");
    return Words::tr("The workbook is open on the computer \"%1\", so it can only be read here. If "
                     "it is not, delete the file \"%2.lock\" and open the workbook again.")
        .arg(host, QFileInfo(opened.path).fileName());
}

tl::unexpected<Problem> mustBeWritten(const QString& path, const QString& reason,
                                      const FileHeader& header) {
    const QString sentence =
        header.unfinished
            ? Words::tr("\"%1\" was not closed properly and has to be mended first, but it cannot "
                        "be written. Copy it, with all files of that name, to a folder that can.")
            : Words::tr("\"%1\" is of an older version and has to be brought up to date first, but "
                        "it cannot be written. Copy it to a folder that can.");
    return problem(Problem::Kind::ReadOnly, sentence.arg(QFileInfo(path).fileName()), path, reason);
}

tl::unexpected<Problem> windowFirst(const QString& path, const QString& sentence) {
    return problem(Problem::Kind::Refused, sentence.arg(QFileInfo(path).fileName()), path);
}

tl::unexpected<Problem> unfinishedToRead(const QString& path) {
    return windowFirst(path, Words::tr("\"%1\" was not closed properly and has to be mended first; "
                                       "open it in the window once."));
}

/// Only looks: no lock, no mending, no migration.
Result<OpenFile> openToRead(const QString& path, const QList<Migration>& migrations) {
    const int newest = newestVersion(migrations);
    Result<FileHeader> header = readHeader(path, newest);
    if (!header)
        return passOn(header);
    // Even a reader of a file in write-ahead mode makes files beside it.
    if (header->writeAhead)
        return unfinishedToRead(path);
    OpenFile opened;
    opened.path = QFileInfo(path).canonicalFilePath();
    opened.readOnlyReason = Words::tr("The workbook was opened only to be read.");
    // A journal may be that of a window that is just saving. SQLite can tell: it reads past the
    // journal of a living program, and refuses to read past a leftover without playing it back.
    header->unfinished = false;
    if (const Outcome sound = lookInside(opened.path, *header, migrations); !sound)
        return sound.error().kind == Problem::Kind::ReadOnly ? unfinishedToRead(path)
                                                             : passOn(sound);
    if (header->version < newest)
        return windowFirst(path, Words::tr("\"%1\" is of an older version and has to be brought up "
                                           "to date first; open it in the window once."));
    opened.database = std::make_unique<Database>(opened.path, Database::Access::ReadOnly);
    return opened;
}

Outcome bringUpToDate(OpenFile& opened, int version, const QList<Migration>& migrations,
                      const Clock& clock) {
    const QString copy = backupNameBeforeMigration(opened.path, version, clock.nowUtc());
    if (const Outcome backedUp = backUp(*opened.database, copy); !backedUp)
        return backedUp;
    migrate(*opened.database, migrations);
    return {};
}

Result<OpenFile> openToWrite(const QString& path, const QList<Migration>& migrations,
                             const Clock& clock) {
    const int newest = newestVersion(migrations);
    if (const Result<FileHeader> first = readHeader(path, newest); !first)
        return passOn(first);

    OpenFile opened;
    opened.path = QFileInfo(path).canonicalFilePath();
    opened.readOnlyReason = writeProtection(opened.path);
    const bool ours = opened.readOnlyReason.isEmpty();
    if (ours)
        opened.readOnlyReason = takeLock(opened);

    // Read again under the lock: another window may have been at work in between.
    Result<FileHeader> header = readHeader(opened.path, newest);
    if (!header)
        return passOn(header);
    // The journal of a window that is alive is not a leftover; SQLite sees its lock.
    if (ours && !opened.lock)
        header->unfinished = false;
    if (!opened.readOnlyReason.isEmpty() && header->unfinished)
        return mustBeWritten(opened.path, opened.readOnlyReason, *header);
    if (const Outcome sound = lookInside(opened.path, *header, migrations); !sound)
        return passOn(sound);
    const bool older = header->version < newest;
    if (!opened.readOnlyReason.isEmpty() && older)
        return mustBeWritten(opened.path, opened.readOnlyReason, {header->version, false, false});

    opened.database = std::make_unique<Database>(
        opened.path, opened.lock ? Database::Access::ReadWrite : Database::Access::ReadOnly);
    if (older)
        if (const Outcome done = bringUpToDate(opened, header->version, migrations, clock); !done)
            return passOn(done);
    return opened;
}

Outcome layAndFill(const QString& part, const QList<Migration>& migrations,
                   const std::function<Outcome(OpenFile)>& fill) {
    OpenFile file;
    file.path = part;
    file.database = std::make_unique<Database>(part, Database::Access::ReadWrite);
    file.database->script(QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
    migrate(*file.database, migrations);
    return fill(std::move(file));
}
} // namespace

QString backupNameBeforeMigration(const QString& path, int version, const QDateTime& now) {
    const QFileInfo info(path);
    const QString ending = info.suffix().isEmpty() ? QString() : QChar(u'.') + info.suffix();
    return info.absoluteDir().filePath(
        QStringLiteral("%1-before-version-%2-%3%4")
            .arg(info.completeBaseName())
            .arg(version + 1)
            .arg(now.toString(QStringLiteral("yyyyMMdd-HHmmss")), ending));
}

Result<OpenFile> openWorkbookFile(const QString& path, const QList<Migration>& migrations,
                                  const Clock& clock, Opening opening) {
    Result<OpenFile> opened;
    if (const Outcome done = atBoundary([&]() -> Outcome {
            opened = opening == Opening::ToRead ? openToRead(path, migrations)
                                                : openToWrite(path, migrations, clock);
            return {};
        });
        !done)
        return passOn(done);
    return opened;
}

Outcome createWorkbookFile(const QString& path, const QList<Migration>& migrations,
                           const std::function<Outcome(OpenFile)>& fill) {
    if (QFileInfo::exists(path))
        return problem(Problem::Kind::Refused,
                       Words::tr("There is a file \"%1\" already; choose another name, or open it.")
                           .arg(QFileInfo(path).fileName()),
                       path);
    return makeWhole(path, [&](const QString& part) { return layAndFill(part, migrations, fill); });
}

} // namespace ladlework::store
