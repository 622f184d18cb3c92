#include "foundation/language_scope.h"

#include "foundation/day_words.h"
#include "quantity/measure.h"

#include <QCoreApplication>
#include <QEvent>
#include <stdexcept>
#include <thread>

#include <gtest/gtest.h>

using namespace ladlework;

namespace {
QString hours(int count) {
    return QCoreApplication::translate("Handout", "%n hour(s)", nullptr, count);
}

class EventCounter final : public QObject {
public:
    bool eventFilter(QObject* /*watched*/, QEvent* event) override {
        count += event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange;
        return false;
    }
    int count = 0;
};
} // namespace

TEST(LanguageScopeTest, shipsEnglishAndSpanishUnderTheirOwnNames) {
    const QList<Language> languages = shippedLanguages();
    ASSERT_EQ(languages.size(), 2);
    EXPECT_EQ(languages[0].id, QStringLiteral("en"));
    EXPECT_EQ(languages[0].name, QStringLiteral("English"));
    EXPECT_EQ(languages[1].id, QStringLiteral("es"));
    EXPECT_EQ(languages[1].name, QStringLiteral("Español"));
    EXPECT_TRUE(isShippedLanguage(QStringLiteral("es")));
    for (const char* other : {"", "fr", "ES", "../es"})
        EXPECT_FALSE(isShippedLanguage(QString::fromLatin1(other))) << other;
}

TEST(LanguageScopeTest, hasThePluralFormsOfEachLanguage) {
    struct Row {
        const char* language;
        int count;
        const char* words;
    };
    for (const Row& row : {Row{"en", 0, "0 hours"}, Row{"en", 1, "1 hour"}, Row{"en", 2, "2 hours"},
                           Row{"en", 24, "24 hours"}, Row{"es", 0, "0 horas"},
                           Row{"es", 1, "1 hora"}, Row{"es", 2, "2 horas"},
                           Row{"es", 24, "24 horas"}, Row{"es", 1'000'000, "1000000 horas"}}) {
        const LanguageScope scope(QString::fromLatin1(row.language));
        EXPECT_EQ(hours(row.count), QString::fromLatin1(row.words));
    }
}

TEST(LanguageScopeTest, measuresAgreeWithTheirNumber) {
    using quantity::MeasureSystem;
    using quantity::Volume;
    const auto print = [](Volume volume) {
        return quantity::printVolume(volume, MeasureSystem::UsCustomary);
    };
    const LanguageScope scope(QStringLiteral("es"), QLocale(QStringLiteral("es_US")));
    EXPECT_EQ(print(Volume::fromDrops(1)), QStringLiteral("1 gota"));
    EXPECT_EQ(print(Volume::fromDrops(3)), QStringLiteral("3 gotas"));
    EXPECT_EQ(print(Volume::fromTeaspoons(1)), QStringLiteral("1 cdta."));
    EXPECT_EQ(print(Volume::fromTeaspoons(1.5)), QStringLiteral("1½ cdtas."));
    EXPECT_EQ(print(Volume::fromCups(0.5)), QStringLiteral("½ taza"));
    EXPECT_EQ(print(Volume::fromCups(1)), QStringLiteral("1 taza"));
    EXPECT_EQ(print(Volume::fromCups(1.5)), QStringLiteral("1½ tazas"));
    EXPECT_EQ(print(Volume::fromCups(5)), QStringLiteral("5 tazas"));
    EXPECT_EQ(print(Volume::fromQuarts(1.75)), QStringLiteral("1¾ cuartos de galón"));
}

TEST(LanguageScopeTest, writesDaysAndDecimalsAsTheLocaleDoes) {
    const auto litres = [] {
        return quantity::printVolume(quantity::Volume::fromLitres(2.4),
                                     quantity::MeasureSystem::Metric);
    };
    // Fundéu and the Real Academia: days and months in small letters, "de" between them. CLDR: a
    // decimal comma in Spain, a point in the United States.
    {
        const LanguageScope scope(QStringLiteral("es"), QLocale(QStringLiteral("es_ES")));
        EXPECT_EQ(dayInWords(QDate(2026, 11, 23)), QStringLiteral("23 de noviembre de 2026"));
        EXPECT_EQ(litres(), QStringLiteral("2,4 L"));
    }
    {
        const LanguageScope scope(QStringLiteral("es"), QLocale(QStringLiteral("es_US")));
        EXPECT_EQ(litres(), QStringLiteral("2.4 L"));
    }
    EXPECT_EQ(dayInWords(QDate(2026, 11, 23)), QStringLiteral("23 November 2026"));
    EXPECT_EQ(litres(), QStringLiteral("2.4 L"));
}

TEST(LanguageScopeTest, theInnermostHoldsAndAllIsAsItWasAfterwards) {
    const QLocale before;
    {
        const LanguageScope outer(QStringLiteral("es"));
        {
            const LanguageScope inner(QStringLiteral("en"));
            EXPECT_EQ(hours(1), QStringLiteral("1 hour"));
        }
        EXPECT_EQ(hours(1), QStringLiteral("1 hora"));
        EXPECT_EQ(QLocale(), before) << "the program's own locale never changes";
    }
    EXPECT_EQ(LanguageScope::current(), nullptr);
    EXPECT_EQ(wordsLocale(), before);
    EXPECT_EQ(hours(1), QStringLiteral("1 hour(s)")) << "no file is asked outside a scope";
}

TEST(LanguageScopeTest, whatIsNotShippedLeavesTheWordsOfTheCode) {
    const LanguageScope scope(QStringLiteral("xx"));
    EXPECT_EQ(QCoreApplication::translate("Handout", "Whom to call"),
              QStringLiteral("Whom to call"));
}

TEST(LanguageScopeTest, anotherThreadGoesOnInTheProgramsLanguage) {
    const LanguageScope scope(QStringLiteral("es"));
    QString there;
    QLocale locale = QLocale::c();
    bool refused = false;
    std::thread([&] {
        there = QCoreApplication::translate("Handout", "Whom to call");
        locale = wordsLocale();
        try {
            const LanguageScope elsewhere(QStringLiteral("es"));
        } catch (const std::logic_error&) {
            refused = true;
        }
    }).join();
    EXPECT_EQ(there, QStringLiteral("Whom to call"));
    EXPECT_EQ(locale, QLocale());
    EXPECT_TRUE(refused) << "a scope belongs to the application's thread";
    EXPECT_EQ(QCoreApplication::translate("Handout", "Whom to call"),
              QStringLiteral("A quién llamar"));
}

TEST(LanguageScopeTest, tellsTheApplicationOfNoChange) {
    EventCounter counter;
    QCoreApplication::instance()->installEventFilter(&counter);
    for (int times = 0; times < 3; ++times)
        const LanguageScope scope(QStringLiteral("es"));
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(counter.count, 0);
}
