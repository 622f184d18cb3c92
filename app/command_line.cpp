#include "app/command_line.h"

#include "app/command.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QJsonDocument>
#include <algorithm>
#include <exception>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

const Command* commandNamed(const QString& name) {
    const QList<Command>& all = commands();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&name](const Command& one) { return one.name == name; });
    return found == all.end() ? nullptr : &*found;
}

QString commandNames() {
    QStringList names;
    for (const Command& command : commands())
        names.append(command.name);
    return names.join(QStringLiteral(", "));
}

bool asksForHelp(const QString& word) {
    return word == QStringLiteral("--help") || word == QStringLiteral("-h");
}

bool asksForVersion(const QString& word) {
    return word == QStringLiteral("--version") || word == QStringLiteral("-v");
}

CommandResult tell(const QString& text) {
    return {text.toUtf8(), {}, Done};
}

/// One line, whatever the problem holds.
QByteArray lineOf(const Problem& problem) {
    QString line = QStringLiteral("ladlework: ");
    line += toLine(problem);
    return line.simplified().toUtf8() + '\n';
}

int statusOf(Problem::Kind kind) {
    switch (kind) {
    case Problem::Kind::BadInput:
    case Problem::Kind::NotFound:
    case Problem::Kind::Refused:
    case Problem::Kind::Foreign:
    case Problem::Kind::Newer:
    case Problem::Kind::Damaged:
        return BadInput;
    case Problem::Kind::ReadOnly:
    case Problem::Kind::DiskFull:
    case Problem::Kind::Unavailable:
        return Failed;
    }
    return Failed;
}

CommandResult complain(const Problem& problem) {
    return {{}, lineOf(problem), statusOf(problem.kind)};
}

CommandResult refuse(const QString& sentence, const QString& place = {}) {
    return complain({Problem::Kind::BadInput, sentence, {}, place});
}

QString helpText() {
    QString text = say("Ladlework, a kitchen-and-client workbook for a nutrition practitioner.\n\n"
                       "Usage:\n"
                       "  ladlework [WORKBOOK]\n"
                       "      Opens the window.\n");
    for (const Command& command : commands())
        text += QStringLiteral("  ladlework %1\n      %2\n")
                    .arg(command.usage, command.detail.section(QLatin1Char('\n'), 0, 0));
    text += say("  ladlework --version | --help | COMMAND --help\n\n"
                "Exit status: 0 done; 2 the input is wrong, with one line on standard error that\n"
                "names the file, the place in it and what is wrong; 1 anything else. Nothing is\n"
                "written on 1 or 2.\n");
    return text;
}

QString helpText(const Command& command) {
    return QStringLiteral("Usage: ladlework %1\n\n%2\n").arg(command.usage, command.detail);
}

CommandResult run(const Command& command, const QStringList& arguments, const Outside& outside) {
    if (std::any_of(arguments.begin(), arguments.end(), asksForHelp))
        return tell(helpText(command));
    const Result<Words> words =
        Words::from(arguments, command.positional, command.options, command.usage);
    if (!words)
        return complain(words.error());
    const Result<Answer> answer = command.run(*words, outside);
    if (!answer)
        return complain(answer.error());
    CommandResult result = answer->problem ? complain(*answer->problem) : CommandResult{};
    result.output = QJsonDocument(answer->json).toJson(QJsonDocument::Indented);
    return result;
}

CommandResult openWindow(const QStringList& arguments, const Outside& outside) {
    const QString path = arguments.value(0);
    if (path.startsWith(QLatin1Char('-')))
        return refuse(say("\"%1\" is not known; see ladlework --help.").arg(path));
    if (!path.isEmpty() && !QFileInfo(path).isFile())
        return refuse(say("There is no such file, and no command of that name; the commands are "
                          "%1.")
                          .arg(commandNames()),
                      path);
    if (arguments.size() > 1)
        return refuse(
            say("\"%1\" is one word too many; the window opens one workbook.").arg(arguments[1]));
    return {{}, {}, outside.openWindow(path)};
}

CommandResult dispatch(const QStringList& arguments, const Outside& outside) {
    const QString first = arguments.value(0);
    if (asksForHelp(first))
        return tell(helpText());
    if (asksForVersion(first))
        return tell(QStringLiteral("Ladlework " LADLEWORK_VERSION "\n"));
    if (const Command* command = commandNamed(first))
        return run(*command, arguments.sliced(1), outside);
    return openWindow(arguments, outside);
}

} // namespace

Face faceOf(const QStringList& arguments) {
    const QString first = arguments.value(0);
    if (first == QStringLiteral("handout"))
        return Face::Pages;
    const bool terminal = first.startsWith(QStringLiteral("--")) || asksForHelp(first) ||
                          asksForVersion(first) || commandNamed(first) != nullptr;
    return terminal ? Face::Terminal : Face::Window;
}

CommandResult runCommandLine(const QStringList& arguments, const Outside& outside) {
    try {
        return dispatch(arguments, outside);
    } catch (const std::exception& broken) {
        return complain({Problem::Kind::Unavailable,
                         say("Something went wrong inside the program: %1.")
                             .arg(QString::fromUtf8(broken.what())),
                         {},
                         arguments.value(0)});
    }
}

} // namespace ladlework::app
