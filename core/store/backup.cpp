#include "store/backup.h"

#include "store/action_boundary.h"
#include "store/database.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryFile>
#include <filesystem>
#include <sqlite3.h>

namespace ladlework::store {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Backup)
};

tl::unexpected<Problem> exists(const QString& path) {
    return problem(Problem::Kind::Refused,
                   Words::tr("There is a file \"%1\" already; choose another name.")
                       .arg(QFileInfo(path).fileName()),
                   path);
}

void copyPages(Database& from, Database& to) {
    sqlite3_backup* backup = sqlite3_backup_init(to.handle(), "main", from.handle(), "main");
    if (backup == nullptr)
        to.fail(QStringLiteral("backup"));
    constexpr int allPages = -1;
    sqlite3_backup_step(backup, allPages);
    if (sqlite3_backup_finish(backup) != SQLITE_OK)
        to.fail(QStringLiteral("backup"));
}

Outcome fillAndCheck(Database& source, const QString& path) {
    Database copy(path, Database::Access::ReadWrite);
    copyPages(source, copy);
    const QString found = copy.single(QStringLiteral("PRAGMA integrity_check"));
    if (found != QStringLiteral("ok"))
        return problem(Problem::Kind::Damaged,
                       Words::tr("The copy of the workbook is not sound, so it was not kept. Check "
                                 "the disk and try again."),
                       path, found);
    return {};
}

/// Makes an empty file of mode 0600 next to `path`; its path.
Result<QString> makeFileBeside(const QString& path) {
    const QFileInfo info(path);
    QTemporaryFile file(info.absoluteDir().filePath(QStringLiteral(".ladlework-XXXXXX.part")));
    file.setAutoRemove(false);
    if (!file.open())
        return problem(Problem::Kind::Unavailable,
                       Words::tr("No file can be made in the folder \"%1\". Check that it exists "
                                 "and may be written.")
                           .arg(info.absolutePath()),
                       path, file.errorString());
    return file.fileName();
}

/// Gives a finished file its name without ever replacing another one.
Outcome renameWithoutReplacing(const QString& from, const QString& to) {
    // A second name for the file is refused by the system itself when the name is taken; a rename
    // would replace silently. Disks without second names get a rename after a look.
    std::error_code error;
    std::filesystem::create_hard_link(from.toStdString(), to.toStdString(), error);
    if (!error) {
        QFile::remove(from);
        return {};
    }
    if (error == std::errc::file_exists || QFileInfo::exists(to))
        return exists(to);
    if (!QFile::rename(from, to))
        return problem(Problem::Kind::Unavailable,
                       Words::tr("The file \"%1\" could not be made. Check that the folder may be "
                                 "written.")
                           .arg(QFileInfo(to).fileName()),
                       to, QString::fromStdString(error.message()));
    return {};
}

} // namespace

Outcome backUp(Database& source, const QString& path) {
    if (QFileInfo::exists(path))
        return exists(path);
    return makeWhole(path, [&](const QString& part) { return fillAndCheck(source, part); });
}

Outcome makeWhole(const QString& path, const std::function<Outcome(const QString& part)>& fill) {
    const Result<QString> part = makeFileBeside(path);
    if (!part)
        return passOn(part);
    Outcome outcome = atBoundary([&] { return fill(*part); });
    if (outcome)
        outcome = renameWithoutReplacing(*part, path);
    if (!outcome) {
        QFile::remove(*part);
        QFile::remove(*part + QStringLiteral("-journal"));
    }
    return outcome;
}

} // namespace ladlework::store
