#include "core/casebook/hand_made_family.h"
#include "handout/family_handout.h"
#include "handout/plain_lines.h"
#include "ui/print/page_layout.h"
#include "ui/print/page_painter.h"
#include "ui/print/pdf_tools.h"
#include "ui/print/pdf_writer.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

struct PrintCase {
    people::Paper paper;
    bool largePrint;
    quantity::MeasureSystem measures;
};

/// Half an inch: what office printers can reach everywhere (common practice).
constexpr double marginPoints = 36;

handout::Document spanishPages(const PrintCase& given) {
    static const kitchen::Catalogue catalogue = *kitchen::Catalogue::load();
    casebook::FamilyRecords records = hand_made::records();
    records.family.measures = given.measures;
    records.family.handoutLanguage = QStringLiteral("es");
    handout::HandoutOptions options;
    options.week = hand_made::monday;
    options.paper = given.paper;
    options.largePrint = given.largePrint;
    return handout::familyHandout(casebook::Casebook(records, catalogue, hand_made::today),
                                  options);
}

QSizeF sheetOf(people::Paper paper) {
    // ISO 216 and ANSI Y14.1, in whole points.
    return paper == people::Paper::A4 ? QSizeF(595, 842) : QSizeF(612, 792);
}

class SpanishPrintTest : public ::testing::TestWithParam<PrintCase> {};

} // namespace

TEST_P(SpanishPrintTest, NothingIsCutOrOverlapsOrLeavesTheMargins) {
    const Result<QByteArray> pdf = pdfOf(spanishPages(GetParam()));
    ASSERT_TRUE(pdf);
    const QRectF inside = QRectF(QPointF(0, 0), sheetOf(GetParam().paper))
                              .adjusted(marginPoints, marginPoints, -marginPoints, -marginPoints);
    const QList<PdfWord> words = wordsOfPdf(*pdf);
    ASSERT_GT(words.size(), 500);
    for (qsizetype i = 0; i < words.size(); ++i) {
        EXPECT_TRUE(inside.contains(words[i].box)) << words[i].text.toStdString();
        for (qsizetype j = i + 1; j < words.size() && words[j].page == words[i].page; ++j) {
            // Boxes of letters are taller than the ink; only a real overlap is wider and higher.
            const QRectF both = words[i].box.intersected(words[j].box);
            EXPECT_FALSE(both.width() > 1 && both.height() > words[i].box.height() / 2)
                << words[i].text.toStdString() << " and " << words[j].text.toStdString();
        }
    }
}

TEST_P(SpanishPrintTest, EveryWordOfTheModelIsRead) {
    const handout::Document document = spanishPages(GetParam());
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    QSet<QString> read;
    for (const PdfWord& word : wordsOfPdf(*pdf))
        read.insert(lettersOf(word.text));
    // The colons between the two halves of a pair are not drawn.
    static const QRegularExpression blanks(QStringLiteral(":?\\s+"),
                                           QRegularExpression::UseUnicodePropertiesOption);
    for (const QString& line : handout::plainLines(document))
        for (const QString& word : line.split(blanks, Qt::SkipEmptyParts))
            EXPECT_TRUE(read.contains(lettersOf(word)) ||
                        read.contains(lettersOf(word) + QLatin1Char(':')))
                << word.toStdString() << " broken or lost in: " << line.toStdString();
}

TEST_P(SpanishPrintTest, TheFooterCountsThePagesInSpanish) {
    const PageLayout layout = layOut(spanishPages(GetParam()));
    const QString first = wordsOf(layout, 0);
    EXPECT_TRUE(first.contains(QStringLiteral("página 1 de %1").arg(layout.pages.size())))
        << first.toStdString();
    EXPECT_TRUE(first.contains(QStringLiteral("impreso el 4 de noviembre de 2026")));
}

INSTANTIATE_TEST_SUITE_P(
    Papers, SpanishPrintTest,
    ::testing::Values(PrintCase{people::Paper::Letter, false, quantity::MeasureSystem::UsCustomary},
                      PrintCase{people::Paper::Letter, true, quantity::MeasureSystem::UsCustomary},
                      PrintCase{people::Paper::A4, false, quantity::MeasureSystem::Metric},
                      PrintCase{people::Paper::A4, true, quantity::MeasureSystem::Metric}));

} // namespace ladlework::ui
