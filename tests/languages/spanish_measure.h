#pragma once

#include <QString>
#include <QStringList>

namespace spanish_measure {

/// The syllables of a Spanish word: each of a, e, o, and an accented i or u, is the heart of one;
/// an i or u without accent joins its neighbour (Real Academia Española, Ortografía 2010, II 3.4).
int syllablesOf(const QString& word);

/// The perspicuity of Szigriszt Pazos, "Sistemas predictivos de legilibilidad del mensaje escrito",
/// 1993: 206.835 - 62.3 x syllables a word - words a sentence. Barrio-Cantalejo and others,
/// "Validación de la Escala INFLESZ", 2008, read it for what patients are given: below 40 very
/// hard, to 55 rather hard, to 65 normal, to 80 fairly easy, above very easy. Each line is at least
/// a sentence.
double perspicuity(const QStringList& lines);

} // namespace spanish_measure
