#pragma once

#include "foundation/language_scope.h"
#include "quantity/measure.h"

namespace ladlework::handout {

/// What the words in the code are written in.
QString programLanguage();

/// The first of the two that is shipped, else English.
QString pageLanguage(const QString& chosen, const QString& ofTheFamily);

/// How the pages write days and numbers. The program's own locale when it is one of the language;
/// else that of a country that speaks it and has the family's measures: US customary en_US and
/// es_US (with a decimal point), metric en_GB and es_ES (a decimal comma in Spanish).
QLocale pageLocale(const QString& language, quantity::MeasureSystem measures);

} // namespace ladlework::handout
