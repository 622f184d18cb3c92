#pragma once

#include "foundation/clock.h"
#include "foundation/result.h"
#include "handout/document.h"

#include <QString>
#include <QStringList>
#include <functional>

namespace ladlework::app {

/// What the command line needs of the world outside: passed in, so that the command line itself
/// links no window and a test can take the place of each.
struct Outside {
    const Clock& clock;
    /// Prints a handout to a file, and where a folder is named each page as a picture into it:
    /// whole or not at all. Gives the paths of the pictures.
    std::function<Result<QStringList>(const handout::Document&, const QString& path,
                                      const QString& picturesFolder)>
        writePages;
    /// Opens the window, on a workbook when the path is not empty; gives the exit status.
    std::function<int(const QString& workbook)> openWindow;
};

} // namespace ladlework::app
