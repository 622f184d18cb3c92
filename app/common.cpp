#include "app/command.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

QString nameAFile() {
    return say("This is a folder; name a file.");
}

/// That a file to read is there, and a file.
Outcome checkThere(const QString& path) {
    const QFileInfo file(path);
    if (file.isDir())
        return problem(Problem::Kind::BadInput, nameAFile(), path);
    if (!file.isFile())
        return problem(Problem::Kind::NotFound, say("There is no such file."), path);
    return {};
}

} // namespace

tl::unexpected<Problem> inFile(const QString& path, Problem problem) {
    const QString names = QStringLiteral(": ");
    if (problem.place.isEmpty())
        problem.place = path;
    else if (problem.place != path && !problem.place.startsWith(QString(path + names)))
        problem.place = path + names + problem.place;
    return tl::unexpected<Problem>(std::move(problem));
}

Result<QByteArray> readInput(const QString& path) {
    if (const Outcome there = checkThere(path); !there)
        return passOn(there);
    QFile file(path);
    QByteArray bytes;
    if (file.open(QIODevice::ReadOnly))
        bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return problem(Problem::Kind::Unavailable,
                       say("The file cannot be read: %1.").arg(file.errorString()), path);
    return bytes;
}

Outcome checkFolder(const QString& path) {
    const QFileInfo file(path);
    if (file.isDir())
        return problem(Problem::Kind::BadInput, nameAFile(), path);
    if (!file.absoluteDir().exists())
        return problem(Problem::Kind::BadInput, say("There is no such folder to write to."), path);
    return {};
}

Outcome checkTarget(const QString& out, const QString& workbook) {
    const QString target = QFileInfo(out).canonicalFilePath();
    if (!target.isEmpty() && target == QFileInfo(workbook).canonicalFilePath())
        return problem(Problem::Kind::Refused,
                       say("This is the workbook itself; name another file."), out);
    return checkFolder(out);
}

tl::unexpected<Problem> badOption(const QString& option, const QString& mustBe) {
    return problem(Problem::Kind::BadInput, say("This must be %1.").arg(mustBe),
                   QStringLiteral("--") + option);
}

Result<casebook::Names> namesFrom(const Words& words) {
    const QString option = QStringLiteral("names");
    const QString names = words.value(option);
    if (!words.has(option) || names == QStringLiteral("first"))
        return casebook::Names::First;
    if (names == QStringLiteral("full"))
        return casebook::Names::Full;
    if (names == QStringLiteral("none"))
        return casebook::Names::None;
    return badOption(option, say("full, first or none"));
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

Result<std::unique_ptr<store::Workbook>> openWorkbook(const QString& path, store::Opening opening,
                                                      const Outside& outside) {
    if (const Outcome there = checkThere(path); !there)
        return passOn(there);
    auto workbook = store::Workbook::open(path, outside.clock, opening);
    if (!workbook)
        return inFile(path, workbook.error());
    return workbook;
}

Result<OpenFamily> openFamily(const Words& words, store::Opening opening, const Outside& outside) {
    const auto name = words.needed(QStringLiteral("family"));
    if (!name)
        return passOn(name);
    auto workbook = openWorkbook(words.at(0), opening, outside);
    if (!workbook)
        return passOn(workbook);
    const auto id = familyNamed(**workbook, *name);
    if (!id)
        return passOn(id);
    auto records = (*workbook)->records(*id);
    if (!records)
        return inFile(words.at(0), records.error());
    return OpenFamily{*std::move(workbook), *std::move(records)};
}

} // namespace ladlework::app
