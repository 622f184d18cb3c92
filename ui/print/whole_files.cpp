#include "ui/print/whole_files.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <memory>
#include <vector>

namespace ladlework::ui {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("PdfWriter", text);
}

/// Refuses a target that printing would destroy: a database (every workbook is one), and anything
/// that is no ordinary file. Follows links, as the writing does.
Outcome mayBeReplaced(const QString& path) {
    const QFileInfo target(path);
    if (!target.exists())
        return {};
    const auto refused = [&](const QString& sentence) {
        return problem(Problem::Kind::Refused, sentence.arg(target.fileName()), path);
    };
    if (!target.isFile())
        return refused(tr("\"%1\" is not an ordinary file, so no pages are written to it. Choose "
                          "another name."));
    // https://www.sqlite.org/fileformat2.html#magic_header_string
    static const QByteArray magic = QByteArrayLiteral("SQLite format 3");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(tr("\"%1\" is there already and cannot be read, so it is not replaced. "
                          "Choose another name."));
    if (file.read(magic.size()) == magic)
        return refused(tr("\"%1\" is a workbook or another database, so it is not replaced by "
                          "printed pages. Choose another name."));
    return {};
}

/// The file with all its bytes in it, not in its place yet.
Result<std::unique_ptr<QSaveFile>> written(const WholeFile& whole) {
    if (const Outcome replaceable = mayBeReplaced(whole.path); !replaceable)
        return passOn(replaceable);
    const QString name = QFileInfo(whole.path).fileName();
    auto file = std::make_unique<QSaveFile>(whole.path);
    if (!file->open(QIODevice::WriteOnly))
        return problem(Problem::Kind::Unavailable,
                       tr("%1 cannot be written. Choose another folder or close the program that "
                          "shows it.")
                           .arg(name),
                       whole.path, file->errorString());
    if (file->write(whole.bytes) != whole.bytes.size() || !file->flush())
        return problem(Problem::Kind::DiskFull,
                       tr("%1 could not be written whole, so it was not written at all. Make room "
                          "on the disk or choose another folder.")
                           .arg(name),
                       whole.path, file->errorString());
    return file;
}

} // namespace

Outcome saveAllWhole(const QList<WholeFile>& files) {
    std::vector<std::unique_ptr<QSaveFile>> ready;
    for (const WholeFile& whole : files) {
        auto file = written(whole);
        if (!file)
            return passOn(file); // those before it are given up with their unfinished files
        ready.push_back(*std::move(file));
    }
    for (const std::unique_ptr<QSaveFile>& file : ready)
        if (!file->commit())
            return problem(Problem::Kind::DiskFull,
                           tr("%1 could not be written whole, so it was not written at all. Make "
                              "room on the disk or choose another folder.")
                               .arg(QFileInfo(file->fileName()).fileName()),
                           file->fileName(), file->errorString());
    return {};
}

Outcome saveWhole(const QByteArray& bytes, const QString& path) {
    return saveAllWhole({WholeFile{path, bytes}});
}

} // namespace ladlework::ui
