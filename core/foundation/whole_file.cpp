#include "foundation/whole_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace ladlework {

namespace {
QString tr(const char* text) {
    return QCoreApplication::translate("WholeFile", text);
}

/// https://www.sqlite.org/fileformat2.html#magic_header_string
const QByteArray& databaseMagic() {
    static const QByteArray magic = QByteArrayLiteral("SQLite format 3");
    return magic;
}

/// Follows links, as the writing does.
Outcome mayBeReplaced(const QString& path) {
    const QFileInfo target(path);
    if (!target.exists())
        return {};
    const auto refused = [&](const QString& sentence) {
        return problem(Problem::Kind::Refused, sentence.arg(target.fileName()), path);
    };
    if (!target.isFile())
        return refused(tr("\"%1\" is not an ordinary file, so nothing is written to it. Choose "
                          "another name."));
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(tr("\"%1\" is there already and cannot be read, so it is not replaced. "
                          "Choose another name."));
    if (file.read(databaseMagic().size()) == databaseMagic())
        return refused(tr("\"%1\" is a workbook or another database, so it is not replaced. "
                          "Choose another name."));
    return {};
}
} // namespace

Outcome writeWhole(const QByteArray& bytes, const QString& path) {
    if (const Outcome replaceable = mayBeReplaced(path); !replaceable)
        return replaceable;
    const QString name = QFileInfo(path).fileName();
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner))
        return problem(Problem::Kind::Unavailable,
                       tr("%1 cannot be written. Choose another folder or close the program that "
                          "shows it.")
                           .arg(name),
                       path, file.errorString());
    if (file.write(bytes) != bytes.size() || !file.commit())
        return problem(Problem::Kind::DiskFull,
                       tr("%1 could not be written whole, so it was not written at all. Make room "
                          "on the disk or choose another folder.")
                           .arg(name),
                       path, file.errorString());
    return {};
}

} // namespace ladlework
