#include "ui/print/pdf_writer.h"

#include "ui/print/pdf_outline.h"
#include "ui/print/pdf_tools.h"
#include "ui/print/sample_document.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <gtest/gtest.h>

namespace ladlework::ui {

namespace {

using handout::Card;
using handout::Document;

struct PrintCase {
    const char* what;
    int members;
    int pots;
    people::Paper paper;
    bool largePrint;
};

/// Half an inch: what office printers can reach everywhere (common practice), and then some.
constexpr double marginPoints = 36;

Document documentOf(const PrintCase& given) {
    Document document = sampleDocument(given.members, given.pots);
    document.paper = given.paper;
    document.largePrint = given.largePrint;
    return document;
}

Document nameDocument(const QString& name) {
    Document document = sampleDocument(2, 1);
    document.title = name;
    document.footer = name;
    handout::Card card{handout::Card::Kind::Ladder, name, {}, false};
    handout::Table table;
    table.header = {QStringLiteral("Who"), QStringLiteral("Drink"), QStringLiteral("Notes")};
    table.rows = {{handout::Cell{name, true}, {QStringLiteral("2 tbsp"), false, true}, {}}};
    card.blocks << handout::Facts{{{name, name}, {name, QStringLiteral("1 cup")}}} << table
                << handout::Warning{QStringLiteral("Caution"), name};
    document.cards << card;
    return document;
}

bool isArabic(const PdfWord& word) {
    return !word.text.isEmpty() && word.text.front().script() == QChar::Script_Arabic;
}

void expectCleanPages(const QByteArray& pdf, QSizeF sheet) {
    const QRectF inside = QRectF(QPointF(0, 0), sheet)
                              .adjusted(marginPoints, marginPoints, -marginPoints, -marginPoints);
    const QList<PdfWord> words = wordsOfPdf(pdf);
    EXPECT_FALSE(words.isEmpty());
    for (qsizetype i = 0; i < words.size(); ++i) {
        EXPECT_TRUE(inside.contains(words.at(i).box))
            << words.at(i).text.toStdString() << " at " << words.at(i).box.left() << ' '
            << words.at(i).box.top() << " to " << words.at(i).box.right() << ' '
            << words.at(i).box.bottom();
        for (qsizetype j = i + 1; j < words.size(); ++j) {
            if (words.at(i).page != words.at(j).page)
                continue;
            // Letters of a cursive script reach into each other; poppler gives them one by one.
            if (isArabic(words.at(i)) && isArabic(words.at(j)))
                continue;
            const QRectF both = words.at(i).box.intersected(words.at(j).box);
            EXPECT_FALSE(both.width() > 0.5 && both.height() > 0.5)
                << words.at(i).text.toStdString() << " on " << words.at(j).text.toStdString();
        }
    }
}

QSizeF sheetOf(people::Paper paper) {
    return paper == people::Paper::A4 ? QSizeF(595, 842) : QSizeF(612, 792);
}

class PdfWriterTest : public ::testing::TestWithParam<PrintCase> {};

} // namespace

TEST_P(PdfWriterTest, EveryTextIsReadBackByPoppler) {
    const Document document = documentOf(GetParam());
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    const QString letters = lettersOfPdf(*pdf);
    for (const QString& text : textsOf(document)) {
        // In large print the week is too wide for a page: its rows are written below one another,
        // each headed by its first cell alone.
        if (document.largePrint && text == QStringLiteral("Who"))
            continue;
        EXPECT_TRUE(letters.contains(lettersOf(text))) << text.toStdString();
    }
    EXPECT_EQ(letters.count(lettersOf(document.footer)),
              runOnPdf(QStringLiteral("pdfinfo"), {}, *pdf)
                  .section(QStringLiteral("Pages:"), 1)
                  .trimmed()
                  .section(QLatin1Char('\n'), 0, 0)
                  .toInt())
        << "a footer on each page";
}

TEST_P(PdfWriterTest, NoWordOutsideTheMarginsOrOnAnother) {
    const Result<QByteArray> pdf = pdfOf(documentOf(GetParam()));
    ASSERT_TRUE(pdf);
    expectCleanPages(*pdf, sheetOf(GetParam().paper));
}

TEST_P(PdfWriterTest, FontsAreEmbeddedAndTheFileIsClean) {
    const Result<QByteArray> pdf = pdfOf(documentOf(GetParam()));
    ASSERT_TRUE(pdf);
    const QStringList fonts =
        runOnPdf(QStringLiteral("pdffonts"), {}, *pdf).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GT(fonts.size(), 2) << "two lines of heading, then a line a font";
    // Columns from the right: emb sub uni object-ID (two numbers).
    const QRegularExpression embedded(QStringLiteral("\\byes +(yes|no) +yes +\\d+ +\\d+$"));
    for (qsizetype i = 2; i < fonts.size(); ++i) {
        EXPECT_TRUE(embedded.match(fonts.at(i)).hasMatch()) << fonts.at(i).toStdString();
        EXPECT_TRUE(fonts.at(i).contains(QStringLiteral("Lato"))) << fonts.at(i).toStdString();
    }
    int status = -1;
    const QString check =
        runOnPdf(QStringLiteral("qpdf"), {QStringLiteral("--check")}, *pdf, &status);
    EXPECT_EQ(status, 0) << check.toStdString();
}

TEST_P(PdfWriterTest, SheetIsOfThePaperAsked) {
    const Result<QByteArray> pdf = pdfOf(documentOf(GetParam()));
    ASSERT_TRUE(pdf);
    const QString info = runOnPdf(QStringLiteral("pdfinfo"), {}, *pdf);
    const QString size = GetParam().paper == people::Paper::A4
                             ? QStringLiteral("595 x 842 pts (A4)")
                             : QStringLiteral("612 x 792 pts (letter)");
    EXPECT_TRUE(info.contains(size)) << info.toStdString();
}

INSTANTIATE_TEST_SUITE_P(
    Cases, PdfWriterTest,
    ::testing::Values(PrintCase{"small", 1, 0, people::Paper::Letter, false},
                      PrintCase{"usual", 4, 2, people::Paper::A4, false},
                      PrintCase{"large print", 3, 2, people::Paper::Letter, true},
                      PrintCase{"large print on A4", 3, 1, people::Paper::A4, true},
                      PrintCase{"twelve members, seven pots", 12, 7, people::Paper::Letter, false},
                      PrintCase{"the same in large print", 12, 7, people::Paper::A4, true}),
    [](const auto& given) {
        return QString::fromLatin1(given.param.what)
            .remove(QRegularExpression(QStringLiteral("[^a-zA-Z0-9]")))
            .toStdString();
    });

TEST_F(PdfWriterTest, TitleAuthorAndCreatorAreInTheFile) {
    const Result<QByteArray> pdf = pdfOf(sampleDocument(1, 1));
    ASSERT_TRUE(pdf);
    const QString info = runOnPdf(QStringLiteral("pdfinfo"), {}, *pdf);
    EXPECT_TRUE(info.contains(QStringLiteral("Okonjo-Lindqvist - week of 2 November 2026")));
    EXPECT_TRUE(info.contains(QStringLiteral("Ladlework")));
    const QString metadata = runOnPdf(QStringLiteral("pdfinfo"), {QStringLiteral("-meta")}, *pdf);
    EXPECT_TRUE(metadata.contains(QStringLiteral("<rdf:li>Harbour Lane Nutrition</rdf:li>")))
        << metadata.toStdString();
}

TEST_F(PdfWriterTest, TheOutlineLeadsToEachCard) {
    if (!canWriteOutlines())
        GTEST_SKIP() << "built without libqpdf";
    const Document document = sampleDocument(2, 1);
    const Result<QByteArray> pdf = pdfOf(document);
    ASSERT_TRUE(pdf);
    const QString info = runOnPdf(QStringLiteral("pdfinfo"), {}, *pdf);
    EXPECT_TRUE(
        info.contains(QRegularExpression(QStringLiteral("Author: +Harbour Lane Nutrition"))))
        << info.toStdString();
    // The qpdf program, in its own words: title and page of each entry.
    const QString json =
        runOnPdf(QStringLiteral("qpdf"),
                 {QStringLiteral("--json"), QStringLiteral("--json-key=outlines")}, *pdf);
    const QJsonArray entries =
        QJsonDocument::fromJson(json.toUtf8()).object().value(QStringLiteral("outlines")).toArray();
    QList<Card> cards = document.cards;
    ASSERT_EQ(entries.size(), cards.size());
    const QList<PdfWord> words = wordsOfPdf(*pdf);
    for (qsizetype i = 0; i < entries.size(); ++i) {
        const QJsonObject entry = entries.at(i).toObject();
        EXPECT_EQ(entry.value(QStringLiteral("title")).toString(), cards.at(i).title);
        const int page = entry.value(QStringLiteral("destpageposfrom1")).toInt();
        const QString first = cards.at(i).title.section(QLatin1Char(' '), 0, 0);
        EXPECT_TRUE(std::any_of(words.cbegin(), words.cend(), [&](const PdfWord& word) {
            return word.page == page && word.text == first;
        })) << cards.at(i).title.toStdString();
    }
}

TEST_F(PdfWriterTest, WhatIsNoPdfComesBackAsItWas) {
    const QByteArray bytes = QByteArrayLiteral("no PDF at all");
    EXPECT_EQ(withOutline(bytes, layOut(Document()), Document()), bytes);
}

TEST_F(PdfWriterTest, EmptyDocumentIsAWholeFile) {
    const Result<QByteArray> pdf = pdfOf(Document());
    ASSERT_TRUE(pdf);
    EXPECT_TRUE(lettersOfPdf(*pdf).contains(QStringLiteral("page1of1")));
    int status = -1;
    runOnPdf(QStringLiteral("qpdf"), {QStringLiteral("--check")}, *pdf, &status);
    EXPECT_EQ(status, 0);
}

TEST_F(PdfWriterTest, LongAndForeignNamesStayInside) {
    const QStringList names{
        QStringLiteral("Maximiliana Featherstonehaugh-Cholmondeley ").repeated(4).trimmed(),
        QStringLiteral("Donaudampfschifffahrtsgesellschaftskapitaenswitwe").repeated(4),
        QString::fromUtf8("Þórbjörg Władysława Đặng Thị Ngọc Ánh"),
        QString::fromUtf8("Αικατερίνη Екатерина"),
        QString::fromUtf8("נועה בן דוד"),
    };
    for (const QString& name : names)
        for (const bool largePrint : {false, true}) {
            Document document = nameDocument(name);
            document.largePrint = largePrint;
            const Result<QByteArray> pdf = pdfOf(document);
            ASSERT_TRUE(pdf);
            expectCleanPages(*pdf, sheetOf(people::Paper::Letter));
            EXPECT_TRUE(lettersOfPdf(*pdf).contains(lettersOf(name))) << name.toStdString();
        }
}

TEST_F(PdfWriterTest, ArabicNameIsDrawnWithAnEmbeddedFont) {
    const Result<QByteArray> pdf = pdfOf(nameDocument(QString::fromUtf8("ليلى عبد الرحمن")));
    ASSERT_TRUE(pdf);
    expectCleanPages(*pdf, sheetOf(people::Paper::Letter));
    const QStringList fonts =
        runOnPdf(QStringLiteral("pdffonts"), {}, *pdf).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    EXPECT_EQ(fonts.size() - 2,
              fonts.filter(QRegularExpression(QStringLiteral("\\byes +(yes|no) +yes +\\d+ +\\d+$")))
                  .size());
}

TEST_F(PdfWriterTest, FileAppearsWholeOrNotAtAll) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("handout.pdf"));
    ASSERT_TRUE(writePdf(sampleDocument(1, 1), path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1) << "no leftovers";

    const Outcome nowhere =
        writePdf(sampleDocument(1, 1), folder.filePath(QStringLiteral("missing/handout.pdf")));
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().kind, Problem::Kind::Unavailable);
    EXPECT_TRUE(nowhere.error().sentence.contains(QStringLiteral("handout.pdf")));
}

TEST_F(PdfWriterTest, FolderOfThatNameIsLeftAlone) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("handout.pdf"));
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("handout.pdf")));
    const Outcome outcome = saveWhole(QByteArrayLiteral("%PDF-"), path);
    ASSERT_FALSE(outcome);
    EXPECT_TRUE(QDir(path).exists());
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 0);
}

TEST_F(PdfWriterTest, ADatabaseIsNeverReplacedAlsoThroughALink) {
    const QTemporaryDir folder;
    const QString workbook = folder.filePath(QStringLiteral("practice.ladlework"));
    const QString link = folder.filePath(QStringLiteral("handout.pdf"));
    // https://www.sqlite.org/fileformat2.html#magic_header_string
    const QByteArray bytes("SQLite format 3\0and so on", 25);
    QFile file(workbook);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
    file.close();
    ASSERT_TRUE(QFile::link(workbook, link));
    for (const QString& path : {workbook, link}) {
        const Outcome outcome = saveWhole(QByteArrayLiteral("%PDF-"), path);
        ASSERT_FALSE(outcome);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::Refused);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_EQ(file.readAll(), bytes);
        file.close();
    }
    EXPECT_TRUE(QFileInfo(link).isSymLink());
}

TEST_F(PdfWriterTest, AnOlderHandoutIsReplaced) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("handout.pdf"));
    ASSERT_TRUE(saveWhole(QByteArrayLiteral("%PDF-old"), path));
    ASSERT_TRUE(saveWhole(QByteArrayLiteral("%PDF-new"), path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), QByteArrayLiteral("%PDF-new"));
}

} // namespace ladlework::ui
