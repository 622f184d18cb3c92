#include "foundation/language_scope.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QThread>
#include <stdexcept>

namespace ladlework {

namespace {
const QLatin1String english("en");
/// A translation file gives here the name of its own language.
constexpr const char* ownName = QT_TRANSLATE_NOOP("Language", "English");

/// Of each thread, so that a scope changes nothing for the others.
thread_local const LanguageScope* innermost = nullptr;

/// Asked by Qt for every text; has no words of its own, so that installing it changes nothing and
/// sends no event.
class ScopeTranslator final : public QTranslator {
public:
    using QTranslator::QTranslator;

    [[nodiscard]] QString translate(const char* context, const char* text,
                                    const char* disambiguation, int count) const override {
        const LanguageScope* scope = LanguageScope::current();
        return scope != nullptr ? scope->words().translate(context, text, disambiguation, count)
                                : QString();
    }
};

/// The application owns the one that is installed.
void installOnce(QCoreApplication& application) {
    const QString name = QStringLiteral("ladlework::LanguageScope");
    if (application.findChild<QTranslator*>(name, Qt::FindDirectChildrenOnly) != nullptr)
        return;
    auto* translator = new ScopeTranslator(&application);
    translator->setObjectName(name);
    QCoreApplication::installTranslator(translator);
}

QString fileOf(const QString& language) {
    return QStringLiteral(":/languages/ladlework_%1.qm").arg(language);
}

QString nameOf(const QString& language) {
    QTranslator words;
    if (!words.load(fileOf(language)))
        return language;
    const QString name = words.translate("Language", ownName);
    return name.isEmpty() ? QString::fromUtf8(ownName) : name;
}
} // namespace

QList<Language> shippedLanguages() {
    const QStringList files =
        QDir(QStringLiteral(":/languages"))
            .entryList({QStringLiteral("ladlework_*.qm")}, QDir::Files, QDir::Name);
    QList<Language> languages;
    for (const QString& file : files) {
        const QString id = file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
        const Language language{id, nameOf(id)};
        if (id == english)
            languages.prepend(language);
        else
            languages.append(language);
    }
    return languages;
}

bool isShippedLanguage(const QString& id) {
    return !id.isEmpty() && QFile::exists(fileOf(id));
}

LanguageScope::LanguageScope(const QString& language, const QLocale& locale)
    : m_locale(locale), m_outer(innermost) {
    QCoreApplication* application = QCoreApplication::instance();
    if (application == nullptr || application->thread() != QThread::currentThread())
        throw std::logic_error("a language scope belongs to the application's thread");
    installOnce(*application);
    // What is not there says nothing: the words of the code remain.
    (void)m_words.load(fileOf(language));
    innermost = this;
}

LanguageScope::~LanguageScope() {
    innermost = m_outer;
}

const LanguageScope* LanguageScope::current() {
    return innermost;
}

QLocale wordsLocale() {
    return innermost != nullptr ? innermost->locale() : QLocale();
}

} // namespace ladlework
