#include "core/casebook/hand_made_family.h"
#include "exchange/sample_practice.h"
#include "handout/document_json.h"
#include "handout/family_handout.h"
#include "handout/page_language.h"
#include "handout/plain_lines.h"
#include "store/workbook.h"

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

using namespace ladlework;
using namespace handout;

namespace {
const QString spanish = QStringLiteral("es");
const QString english = QStringLiteral("en");

const kitchen::Catalogue& catalogue() {
    static const kitchen::Catalogue shipped = *kitchen::Catalogue::load();
    return shipped;
}

/// All parts shown.
HandoutOptions optionsIn(const QString& language, QDate week) {
    HandoutOptions options;
    options.week = week;
    options.language = language;
    for (casebook::HandoutSection& section : options.sections)
        section.shown = true;
    return options;
}

Document pagesIn(const QString& language,
                 const casebook::FamilyRecords& records = hand_made::records()) {
    return familyHandout(casebook::Casebook(records, catalogue(), hand_made::today),
                         optionsIn(language, hand_made::monday));
}

QString textOf(const Document& document) {
    return plainLines(document).join(QLatin1Char('\n'));
}

QSet<QString> wordsOf(const QString& text) {
    static const QRegularExpression word(QStringLiteral("\\p{L}{2,}"));
    QSet<QString> words;
    for (auto found = word.globalMatch(text); found.hasNext();)
        words.insert(found.next().captured().toLower());
    return words;
}

/// The words that the English pages are made of and the Spanish ones are not: the stop list.
QSet<QString> englishOnly() {
    QFile file(QStringLiteral(LADLEWORK_SOURCE_DIR "/resources/languages/ladlework_es.ts"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QString sources;
    QString translations;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == u"source")
            sources += QLatin1Char(' ') + xml.readElementText();
        else if (xml.name() == u"numerusform")
            translations += QLatin1Char(' ') + xml.readElementText();
        else if (xml.name() == u"translation")
            translations +=
                QLatin1Char(' ') + xml.readElementText(QXmlStreamReader::IncludeChildElements);
    }
    const QLocale locale(QLocale::English);
    for (int day = 1; day <= 7; ++day)
        sources += QLatin1Char(' ') + locale.dayName(day) + QLatin1Char(' ') +
                   locale.dayName(day, QLocale::ShortFormat);
    for (int month = 1; month <= 12; ++month)
        sources += QLatin1Char(' ') + locale.monthName(month);
    return wordsOf(sources) - wordsOf(translations);
}

/// What people typed, which no page translates.
QStringList typedIn(const casebook::FamilyRecords& records) {
    QStringList typed{records.family.name, records.practice.name, records.practice.practitioner};
    typed += records.practice.contact.split(QLatin1Char('\n'));
    for (const people::Member& member : records.members)
        typed += member.name.split(QLatin1Char(' ')) << member.name;
    for (const kitchen::Pot& pot : records.pots)
        typed << pot.name << pot.note;
    for (const kitchen::Vessel& vessel : records.vessels)
        typed << vessel.name;
    for (const kitchen::Lot& lot : records.lots)
        typed << lot.container;
    for (const week::WeekPlan& plan : records.weeks)
        for (const week::HouseholdExtra& extra : plan.extras)
            typed << extra.text;
    // The columns that an import asks for.
    typed << QStringLiteral("day, member, asked, amount, reaction, strength, note");
    typed.removeAll(QString());
    std::ranges::sort(typed, std::ranges::greater(), &QString::size);
    return typed;
}

QString withoutTyped(QString line, const QStringList& typed) {
    for (const QString& words : typed)
        line.remove(words);
    return line;
}

void expectNoEnglish(const Document& document, const casebook::FamilyRecords& records) {
    static const QSet<QString> stop = englishOnly();
    ASSERT_GT(stop.size(), 400);
    const QStringList typed = typedIn(records);
    for (const QString& line : plainLines(document)) {
        const QSet<QString> left = wordsOf(withoutTyped(line, typed)) & stop;
        EXPECT_TRUE(left.isEmpty())
            << qPrintable(left.values().join(QLatin1Char(' '))) << " in: " << qPrintable(line);
    }
}

/// Every sentence of the English pages reads otherwise in Spanish.
void expectEverySentenceDiffers(const Document& en, const Document& es,
                                const casebook::FamilyRecords& records) {
    const QStringList typed = typedIn(records);
    const QStringList spanishLines = plainLines(es);
    EXPECT_EQ(plainLines(en).size(), spanishLines.size());
    for (const QString& line : plainLines(en)) {
        const bool isSentence = line.endsWith(QLatin1Char('.')) && line.contains(QLatin1Char(' '));
        if (isSentence && !wordsOf(withoutTyped(line, typed)).isEmpty()) {
            EXPECT_FALSE(spanishLines.contains(line)) << qPrintable(line);
        }
    }
}
} // namespace

TEST(SpanishPagesTest, theHandMadeFamilyReadsNoEnglish) {
    const casebook::FamilyRecords records = hand_made::records();
    const Document pages = pagesIn(spanish);
    EXPECT_EQ(pages.language, spanish);
    expectNoEnglish(pages, records);
    expectEverySentenceDiffers(pagesIn(english), pages, records);
}

TEST(SpanishPagesTest, theStopListFindsEnglish) {
    const QSet<QString> stop = englishOnly();
    for (const char* word :
         {"stock", "monday", "november", "chicken", "cups", "strain", "doctor's"})
        EXPECT_FALSE((wordsOf(QString::fromLatin1(word)) & stop).isEmpty()) << word;
    for (const char* word : {"caldo", "no", "lunes", "total"})
        EXPECT_TRUE((wordsOf(QString::fromLatin1(word)) & stop).isEmpty()) << word;
}

TEST(SpanishPagesTest, everyFamilyOfTheSampleReadsNoEnglish) {
    const QTemporaryDir folder;
    const FixedClock clock(QDateTime(QDate(2026, 11, 25), QTime(18, 0), Qt::UTC));
    const auto made =
        exchange::createSamplePractice(folder.filePath(QStringLiteral("w")), catalogue(), clock);
    ASSERT_TRUE(made);
    for (const people::Family& family : (*made)->families().families()) {
        const casebook::FamilyRecords records = (*made)->records(family.id).value();
        const casebook::Casebook book(records, catalogue(), clock.today(family.zone));
        const QDate monday(2026, 11, 23);
        const Document es = familyHandout(book, optionsIn(spanish, monday));
        expectNoEnglish(es, records);
        expectEverySentenceDiffers(familyHandout(book, optionsIn(english, monday)), es, records);
    }
}

TEST(SpanishPagesTest, datesTimesAndDecimalsAreSpanish) {
    const QString text = textOf(pagesIn(spanish));
    for (const char* words :
         {"Semana del lunes 2 de noviembre al 8 de noviembre de 2026", "jueves 5 de noviembre",
          "½ taza", "135 °F (57 °C)", "en no más de 1 hora.", "en no más de 6 horas"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << qPrintable(text);
    casebook::FamilyRecords metric = hand_made::records();
    metric.family.measures = quantity::MeasureSystem::Metric;
    const QString other = textOf(pagesIn(spanish, metric));
    EXPECT_TRUE(other.contains(QStringLiteral("agua: 2,85 L"))) << qPrintable(other);
    EXPECT_FALSE(other.contains(QRegularExpression(QStringLiteral("[0-9]\\.[0-9]+ (L|kg)"))));
}

TEST(SpanishPagesTest, countsOfOneTwoAndManyAgree) {
    const auto rulesWith = [](int holdDays, int back) {
        casebook::FamilyRecords records = hand_made::records();
        for (intake::Ladder& ladder : records.ladders) {
            ladder.rules.holdDays = holdDays;
            ladder.rules.rungsBack = back;
        }
        return textOf(pagesIn(spanish, records));
    };
    EXPECT_TRUE(rulesWith(1, 1).contains(QStringLiteral("baje 1 paso y quédese ahí 1 día.")));
    EXPECT_TRUE(rulesWith(2, 2).contains(QStringLiteral("baje 2 pasos y quédese ahí 2 días.")));
    EXPECT_TRUE(rulesWith(14, 1).contains(QStringLiteral("baje 1 paso y quédese ahí 14 días.")));
}

TEST(SpanishPagesTest, theWiderWordsAndThePracticesPhasesAreSpokenToo) {
    casebook::FamilyRecords records = hand_made::records();
    records.tolerances.first().subject.id = QStringLiteral("poultry");
    records.weeks.first().placements.append({hand_made::monday.addDays(1), hand_made::broth, {}});
    const QString text = textOf(pagesIn(spanish, records));
    EXPECT_TRUE(text.contains(QStringLiteral("Ben no toma: aves."))) << qPrintable(text);
    EXPECT_TRUE(text.contains(QStringLiteral("espera una fase posterior a Inicio")))
        << qPrintable(text);
}

TEST(SpanishPagesTest, theFamilysLanguageHoldsUnlessAnotherIsChosen) {
    casebook::FamilyRecords records = hand_made::records();
    records.family.handoutLanguage = spanish;
    EXPECT_EQ(pagesIn(QString(), records).language, spanish);
    EXPECT_EQ(pagesIn(english, records).language, english);
    EXPECT_EQ(pagesIn(english, records), pagesIn(english));
    EXPECT_EQ(pagesIn(QString()).language, english);
    records.family.handoutLanguage = QStringLiteral("xx");
    EXPECT_EQ(pagesIn(QString(), records).language, english);
}

TEST(SpanishPagesTest, theProgramGoesOnInEnglishAfterwards) {
    const casebook::Casebook book(hand_made::records(), catalogue(), hand_made::today);
    const Document before = familyHandout(book, optionsIn(english, hand_made::monday));
    familyHandout(book, optionsIn(spanish, hand_made::monday));
    EXPECT_EQ(familyHandout(book, optionsIn(english, hand_made::monday)), before);
    EXPECT_EQ(catalogue().nameOf(QStringLiteral("beef")), QStringLiteral("beef"));
    EXPECT_EQ(kitchen::Catalogue::load()->nameOf(QStringLiteral("beef")), QStringLiteral("beef"));
}

TEST(SpanishPagesTest, theLanguageIsKeptWithTheRecordAndOldRecordsAreEnglish) {
    const Document pages = pagesIn(spanish);
    QJsonObject json = toJson(pages);
    EXPECT_EQ(fromJson(json).value(), pages);
    json.remove(QStringLiteral("language"));
    EXPECT_EQ(fromJson(json).value().language, english);
}

TEST(SpanishPagesTest, theLocaleFollowsTheFamilysMeasures) {
    using quantity::MeasureSystem;
    EXPECT_EQ(pageLocale(spanish, MeasureSystem::UsCustomary).name(), QStringLiteral("es_US"));
    EXPECT_EQ(pageLocale(spanish, MeasureSystem::Metric).name(), QStringLiteral("es_ES"));
    // The tests run in en_US: a program that speaks the language keeps its own country.
    EXPECT_EQ(pageLocale(english, MeasureSystem::Metric).name(), QStringLiteral("en_US"));
}
