#pragma once

#include <QString>
#include <QStringList>

namespace ladlework::intake {

/// What was felt, one reaction each: "hives 3, trouble breathing 6" gives two. A comma, a
/// semicolon, "and" or "+" parts them only where a strength (with its "at 14:30" or "for 2 h")
/// stands before it and words come after it; never inside one of the `known` names. Trimmed; a
/// single item for text that is one reaction, none for blank text.
QStringList feltItems(const QString& typed, const QStringList& known);

/// A reaction and the strength written behind it.
struct FeltWords {
    QString words;    ///< "hives" of "hives: 3"
    QString strength; ///< the digits, as they were written; empty when there are none
};

/// Takes the strength off the end.
FeltWords feltWords(const QString& item);

} // namespace ladlework::intake
