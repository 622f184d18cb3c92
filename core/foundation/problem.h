#pragma once

#include <QString>

namespace ladlework {

/// Why something a person asked for could not be done.
/// `sentence` says what is wrong and what to do, ready to be shown; `detail` is for a log or a
/// bug report (SQL, errno); `place` names where in the input it was found: a JSON path, a CSV
/// line, a field.
struct Problem {
    enum class Kind {
        BadInput,    ///< what was typed or read does not make sense; mend it and try again
        NotFound,    ///< the thing named does not exist
        Refused,     ///< a rule of the program forbids it
        Foreign,     ///< the file is of another program
        Newer,       ///< the file is of a newer Ladlework
        Damaged,     ///< the file cannot be trusted
        ReadOnly,    ///< the file or the disk cannot be written
        DiskFull,    ///< no room left
        Unavailable, ///< the system refused (missing file, no rights, busy)
    };
    Kind kind = Kind::BadInput;
    QString sentence;
    QString detail;
    QString place;
};

/// One line for a terminal: "place: sentence".
QString toLine(const Problem& problem);

} // namespace ladlework
