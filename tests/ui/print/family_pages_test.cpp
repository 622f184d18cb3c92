#include "core/casebook/hand_made_family.h"
#include "handout/family_handout.h"
#include "handout/plain_lines.h"
#include "ui/print/page_painter.h"
#include "ui/print/pdf_tools.h"
#include "ui/print/pdf_writer.h"

#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

// The handouts of real records, printed and read back.
namespace ladlework::ui {

namespace {

using casebook::FamilyRecords;

struct FamilyCase {
    const char* what;
    int members;
    int pots;
    bool longNames;
    bool largePrint;
    people::Paper paper;
};

/// The invented family with this many climbers and this many pots in the week.
FamilyRecords recordsOf(const FamilyCase& given) {
    FamilyRecords records = hand_made::records();
    const people::Member pattern = records.members.first();
    const intake::Ladder climb = records.ladders.first();
    const kitchen::Pot pot = records.pots.first();
    records.members.clear();
    records.ladders.clear();
    for (int id = 1; id <= given.members; ++id) {
        people::Member member = pattern;
        member.id = MemberId{id};
        member.name = given.longNames
                          ? QStringLiteral("Maximiliana%1 Featherstonehaugh-Cholmondeley").arg(id)
                          : QStringLiteral("N%1 Hartley").arg(id);
        records.members.append(member);
        intake::Ladder ladder = climb;
        ladder.id = LadderId{id};
        ladder.member = member.id;
        records.ladders.append(ladder);
    }
    records.pots.clear();
    QList<week::Placement> placements;
    for (int i = 0; i < given.pots; ++i) {
        kitchen::Pot one = pot;
        one.id = PotId{100 + i};
        one.name = given.longNames ? QStringLiteral("Chicken legs with a great many roots and "
                                                    "herbs of the garden, number %1")
                                         .arg(i + 1)
                                   : QStringLiteral("Pot of day %1").arg(i + 1);
        records.pots.append(one);
        placements.append({hand_made::monday.addDays(i % 7), one.id, QTime(9, 0)});
    }
    if (placements.isEmpty())
        records.weeks.clear();
    else
        records.weeks.first().placements = placements;
    return records;
}

handout::Document documentOf(const FamilyRecords& records, const FamilyCase& given) {
    static const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    handout::HandoutOptions options;
    options.week = hand_made::monday;
    options.names = given.longNames ? handout::Names::Full : handout::Names::First;
    options.paper = given.paper;
    options.largePrint = given.largePrint;
    for (casebook::HandoutSection& section : options.sections)
        section.shown = true;
    options.labels.stock = handout::usualLabelStock(given.paper);
    return handout::familyHandout(casebook::Casebook(records, catalogue, hand_made::today),
                                  options);
}

QSet<QString> numbersIn(const QString& text) {
    static const QRegularExpression number(
        QStringLiteral("[0-9]+([.,:][0-9]+)*|[\u00bc\u00bd\u00be\u2153\u2154\u215b]"));
    QSet<QString> found;
    for (auto at = number.globalMatch(text); at.hasNext();)
        found << at.next().captured();
    return found;
}

class FamilyPagesTest : public ::testing::TestWithParam<FamilyCase> {};

} // namespace

TEST_P(FamilyPagesTest, EveryWordIsThereInsideTheMarginsAndOnNoOther) {
    const handout::Document document = documentOf(recordsOf(GetParam()), GetParam());
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    const QString letters = lettersOfPdf(*pdf);
    for (const handout::Card& card : document.cards)
        for (const QString& line : handout::plainLines(card)) {
            if (card.kind == handout::Card::Kind::JarLabels && line == card.title)
                continue; // a sheet of labels has no room for a title
            // "What: value" stands below one another, without the colon.
            for (QString word : line.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
                if (word.endsWith(QLatin1Char(':')))
                    word.chop(1);
                EXPECT_TRUE(letters.contains(lettersOf(word))) << word.toStdString();
            }
        }
    const QSizeF sheet =
        GetParam().paper == people::Paper::A4 ? QSizeF(595, 842) : QSizeF(612, 792);
    // Labels go as near to the edge as printers reach, a sixth of an inch; pages half an inch.
    const PageLayout layout = layOut(document);
    const QList<PdfWord> words = wordsOfPdf(*pdf);
    for (qsizetype i = 0; i < words.size(); ++i) {
        const double margin = layout.pages.at(words[i].page - 1).isLabelSheet() ? 12 : 36;
        EXPECT_TRUE(QRectF(QPointF(0, 0), sheet)
                        .adjusted(margin, margin, -margin, -margin)
                        .contains(words[i].box))
            << words[i].text.toStdString() << " on page " << words[i].page;
        for (qsizetype j = i + 1; j < words.size() && words[j].page == words[i].page; ++j) {
            const QRectF both = words[i].box.intersected(words[j].box);
            EXPECT_FALSE(both.width() > 0.5 && both.height() > 0.5)
                << words[i].text.toStdString() << " on " << words[j].text.toStdString();
        }
    }
}

TEST_P(FamilyPagesTest, EveryNumberOnPaperIsOneOfTheDocument) {
    const handout::Document document = documentOf(recordsOf(GetParam()), GetParam());
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    QString known = handout::plainLines(document).join(QLatin1Char('\n')) + QLatin1Char('\n') +
                    document.footer + QLatin1Char('\n') + document.printedOn;
    const PageLayout layout = layOut(document);
    for (int number = 1; number <= layout.pages.size() + 12; ++number) // pages and steps counted
        known += QStringLiteral(" %1").arg(number);
    const QString paper = runOnPdf(QStringLiteral("pdftotext"), {QStringLiteral("-layout")}, *pdf);
    const QSet<QString> strange = numbersIn(paper) - numbersIn(known);
    EXPECT_TRUE(strange.isEmpty()) << QStringList(strange.values()).join(u' ').toStdString();
}

TEST_P(FamilyPagesTest, NoPotAndNoPersonIsSplitWhereAPageHoldsThem) {
    const handout::Document document = documentOf(recordsOf(GetParam()), GetParam());
    const PageLayout layout = layOut(document);
    if (GetParam().largePrint)
        return; // a card in large print is longer than a page; see PageLayoutTest
    for (qsizetype page = 0; page < layout.pages.size(); ++page)
        for (const handout::Card& card : document.cards)
            if (card.kind == handout::Card::Kind::Pot || card.kind == handout::Card::Kind::Ladder) {
                EXPECT_FALSE(wordsOf(layout, page)
                                 .contains(QString(card.title + QStringLiteral(" (continued)"))))
                    << card.title.toStdString();
            }
}

TEST_P(FamilyPagesTest, TheFileIsCleanAndItsFontsAreInIt) {
    const Result<QByteArray> pdf = pdfOf(documentOf(recordsOf(GetParam()), GetParam()));
    ASSERT_TRUE(pdf);
    int status = -1;
    const QString check =
        runOnPdf(QStringLiteral("qpdf"), {QStringLiteral("--check")}, *pdf, &status);
    EXPECT_EQ(status, 0) << check.toStdString();
    const QStringList fonts =
        runOnPdf(QStringLiteral("pdffonts"), {}, *pdf).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    static const QRegularExpression embedded(
        QStringLiteral("Lato.*\\byes +(yes|no) +yes +\\d+ +\\d+$"));
    ASSERT_GT(fonts.size(), 2);
    EXPECT_EQ(fonts.filter(embedded).size(), fonts.size() - 2);
}

INSTANTIATE_TEST_SUITE_P(
    Families, FamilyPagesTest,
    ::testing::Values(FamilyCase{"oneAndOnePot", 1, 1, false, false, people::Paper::Letter},
                      FamilyCase{"noPots", 2, 0, false, false, people::Paper::A4},
                      FamilyCase{"twelveAndSevenPots", 12, 7, false, false, people::Paper::A4},
                      FamilyCase{"longNames", 3, 2, true, false, people::Paper::Letter},
                      FamilyCase{"largePrint", 3, 2, false, true, people::Paper::Letter},
                      FamilyCase{"longNamesInLargePrint", 2, 1, true, true, people::Paper::A4}),
    [](const auto& given) { return std::string(given.param.what); });

TEST_F(FamilyPagesTest, HebrewAndArabicNamesHaveTheirLettersAndFonts) {
    const FamilyCase given{"rtl", 2, 1, false, false, people::Paper::Letter};
    FamilyRecords records = recordsOf(given);
    records.members[0].name = QString::fromUtf8("נועה בן דוד");
    records.members[1].name = QString::fromUtf8("ليلى عبد الرحمن");
    const handout::Document document = documentOf(records, given);
    EXPECT_TRUE(lettersWithoutShape(layOut(document)).isEmpty());
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    const QString fonts = runOnPdf(QStringLiteral("pdffonts"), {}, *pdf);
    EXPECT_TRUE(fonts.contains(QStringLiteral("NotoSansHebrew"))) << fonts.toStdString();
    EXPECT_TRUE(fonts.contains(QStringLiteral("NotoSansArabic"))) << fonts.toStdString();
    // Read back by poppler in the order it is written.
    EXPECT_TRUE(lettersOfPdf(*pdf).contains(lettersOf(QString::fromUtf8("נועה"))));
}

TEST_F(FamilyPagesTest, AnAmountBesideARightToLeftNameKeepsItsOrder) {
    const FamilyCase given{"rtl", 1, 1, false, false, people::Paper::Letter};
    FamilyRecords records = recordsOf(given);
    records.members[0].name = QString::fromUtf8("נועה");
    const Result<QByteArray> pdf = pdfOf(documentOf(records, given));
    ASSERT_TRUE(pdf);
    // Where the words came to lie, from left to right: name, amount, then "on Monday".
    const QList<PdfWord> words = wordsOfPdf(*pdf);
    for (qsizetype i = 0; i + 1 < words.size(); ++i) {
        if (words[i].page != 1 || words[i].text != QStringLiteral("on") ||
            words[i + 1].text != QStringLiteral("Monday."))
            continue;
        QStringList line;
        QList<PdfWord> onIt;
        for (const PdfWord& word : words)
            if (word.page == 1 && std::abs(word.box.center().y() - words[i].box.center().y()) < 4)
                onIt << word;
        std::sort(onIt.begin(), onIt.end(),
                  [](const PdfWord& a, const PdfWord& b) { return a.box.left() < b.box.left(); });
        for (const PdfWord& word : onIt)
            line << word.text;
        const QString text = line.join(QLatin1Char(' '));
        EXPECT_TRUE(text.contains(QStringLiteral("\u00bc cup on Monday."))) << text.toStdString();
        return;
    }
    FAIL() << "the line of the amounts is not there";
}

TEST_F(FamilyPagesTest, LettersThatNoFontHasAreTold) {
    handout::Document document;
    document.cards << handout::Card{
        handout::Card::Kind::Text, QString(QStringLiteral("a") + QChar(0xe123)), {}, false};
    EXPECT_EQ(lettersWithoutShape(layOut(document)), QString(QChar(0xe123)));
}

} // namespace ladlework::ui
