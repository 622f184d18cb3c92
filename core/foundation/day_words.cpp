#include "foundation/day_words.h"

#include <QLocale>

namespace ladlework {

QString dayInWords(QDate day) {
    return QLocale().toString(day, QStringLiteral("d MMMM yyyy"));
}

} // namespace ladlework
