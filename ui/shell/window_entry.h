#pragma once

#include <QString>

namespace ladlework::ui {

/// Opens the window, with the workbook when a path is given (else the start page), and runs until
/// it is closed. Returns the exit status: 1 when the program's own reference tables are broken. A
/// workbook that cannot be opened is told in the window, which then shows the start page.
int openWindow(int argc, char** argv, const QString& workbookPath);

} // namespace ladlework::ui
