#include "foundation/day_words.h"
#include "foundation/language_scope.h"

#include <QCoreApplication>

namespace ladlework {

QString dayInWords(QDate day) {
    //: A date format of Qt: d, MMMM and yyyy stand for the day, the month and the year.
    const QString format = QCoreApplication::translate("DayWords", "d MMMM yyyy");
    return wordsLocale().toString(day, format);
}

} // namespace ladlework
