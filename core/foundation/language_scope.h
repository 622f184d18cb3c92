#pragma once

#include <QList>
#include <QLocale>
#include <QString>
#include <QTranslator>

namespace ladlework {

/// A language that pages can be written in.
struct Language {
    QString id;   ///< "en", "es"
    QString name; ///< as its speakers write it: "English", "Español"
};

/// Those in resources/languages, English first.
QList<Language> shippedLanguages();
/// Is there a translation file of this id?
bool isShippedLanguage(const QString& id);

/// While it lives, tr() on this thread speaks another language than the program, and wordsLocale()
/// writes days and decimals as that language does; what is said on other threads, the widgets and
/// QLocale() stay as they are, and no LanguageChange event is sent. Scopes may be nested; the
/// innermost holds. To be made on the application's thread while there is an application (a
/// std::logic_error otherwise). An id that is not shipped leaves the words as they are in the code.
class LanguageScope {
public:
    LanguageScope(const QString& language, const QLocale& locale);
    explicit LanguageScope(const QString& language) : LanguageScope(language, QLocale(language)) {}
    ~LanguageScope();
    LanguageScope(const LanguageScope&) = delete;
    LanguageScope& operator=(const LanguageScope&) = delete;

    [[nodiscard]] const QTranslator& words() const { return m_words; }
    [[nodiscard]] const QLocale& locale() const { return m_locale; }

    /// The innermost of this thread; nullptr when the program speaks for itself.
    [[nodiscard]] static const LanguageScope* current();

private:
    QTranslator m_words;
    QLocale m_locale;
    const LanguageScope* m_outer;
};

/// How the words of this moment write days and numbers: the scope's locale, else the program's.
/// To be used wherever core writes for people, in place of QLocale().
QLocale wordsLocale();

} // namespace ladlework
