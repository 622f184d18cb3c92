#include "foundation/problem.h"

namespace ladlework {

QString toLine(const Problem& problem) {
    return problem.place.isEmpty()
               ? problem.sentence
               : QString(problem.place + QStringLiteral(": ") + problem.sentence);
}

} // namespace ladlework
