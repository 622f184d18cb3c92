#pragma once

#include "app/outside.h"

#include <QByteArray>
#include <QStringList>

namespace ladlework::app {

/// What the program has to start for a command line: nothing but itself, what draws pages, or the
/// window.
enum class Face { Terminal, Pages, Window };

/// Looks at the arguments (without the program's name) only as far as the question asks. Anything
/// that begins with "--" and is no command is the terminal's, to be refused there.
Face faceOf(const QStringList& arguments);

/// Exit statuses of the command line.
enum ExitStatus { Done = 0, Failed = 1, BadInput = 2 };

/// What goes to standard output, what to standard error, and the exit status.
struct CommandResult {
    QByteArray output;
    QByteArray complaint;
    int status = Done;
};

/// Runs one command line (without the program's name): a command, --help, --version, or the window
/// on a workbook. Status 0 done; 2 the input is wrong, with one line that names the file, the place
/// in it and what is wrong; 1 anything else. Nothing is written to a file on 1 or 2.
CommandResult runCommandLine(const QStringList& arguments, const Outside& outside);

} // namespace ladlework::app
