#include "handout/page_language.h"

namespace ladlework::handout {

QString programLanguage() {
    return QStringLiteral("en");
}

QString pageLanguage(const QString& chosen, const QString& ofTheFamily) {
    for (const QString& language : {chosen, ofTheFamily})
        if (isShippedLanguage(language))
            return language;
    return programLanguage();
}

QLocale pageLocale(const QString& language, quantity::MeasureSystem measures) {
    const QLocale ofTheLanguage(language);
    const QLocale ofTheProgram;
    if (ofTheProgram.language() == ofTheLanguage.language())
        return ofTheProgram;
    if (measures == quantity::MeasureSystem::UsCustomary)
        return QLocale(ofTheLanguage.language(), QLocale::UnitedStates);
    return ofTheLanguage.language() == QLocale::English
               ? QLocale(QLocale::English, QLocale::UnitedKingdom)
               : ofTheLanguage;
}

} // namespace ladlework::handout
