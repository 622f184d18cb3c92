#pragma once

#include <QDate>
#include <QString>

namespace ladlework {

/// A day for a sentence: "4 March 2026", with the month in the language of the locale.
QString dayInWords(QDate day);

} // namespace ladlework
