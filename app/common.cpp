#include "app/command.h"
#include "store/workbook.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

} // namespace

tl::unexpected<Problem> inFile(const QString& path, Problem problem) {
    if (problem.place.isEmpty())
        problem.place = path;
    else if (!problem.place.startsWith(path))
        problem.place = path + QStringLiteral(": ") + problem.place;
    return tl::unexpected<Problem>(std::move(problem));
}

Result<QByteArray> readInput(const QString& path) {
    if (!QFileInfo(path).isFile())
        return problem(Problem::Kind::NotFound, say("There is no such file."), path);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return problem(Problem::Kind::Unavailable,
                       say("The file cannot be read: %1.").arg(file.errorString()), path);
    return file.readAll();
}

Outcome checkFolder(const QString& path) {
    const QFileInfo file(path);
    if (file.isDir())
        return problem(Problem::Kind::BadInput, say("This is a folder; name a file."), path);
    if (!file.absoluteDir().exists())
        return problem(Problem::Kind::BadInput, say("There is no such folder to write to."), path);
    return {};
}

Result<std::unique_ptr<store::Workbook>> openWorkbook(const QString& path, const Outside& outside) {
    if (!QFileInfo(path).isFile())
        return problem(Problem::Kind::NotFound, say("There is no such file."), path);
    auto workbook = store::Workbook::open(path, outside.clock);
    if (!workbook)
        return inFile(path, workbook.error());
    return workbook;
}

Result<FamilyId> familyNamed(store::Workbook& workbook, const QString& name) {
    QList<FamilyId> found;
    for (const people::Family& family : workbook.families().families())
        if (family.name.compare(name.trimmed(), Qt::CaseInsensitive) == 0)
            found.append(family.id);
    if (found.isEmpty())
        return problem(Problem::Kind::NotFound,
                       say("The workbook has no family called \"%1\".").arg(name), workbook.path());
    if (found.size() > 1)
        return problem(Problem::Kind::BadInput,
                       say("The workbook has %1 families called \"%2\"; rename one in the window.")
                           .arg(found.size())
                           .arg(name),
                       workbook.path());
    return found.first();
}

} // namespace ladlework::app
