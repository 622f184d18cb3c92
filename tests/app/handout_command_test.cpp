#include "app/program.h"
#include "casebook/handout_template.h"
#include "store/workbook.h"

#include <QDate>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QProcess>

namespace ladlework::app {
namespace {

class HandoutCommandTest : public ProgramTest {
protected:
    void SetUp() override {
        ASSERT_EQ(run({QStringLiteral("sample"), QStringLiteral("w")}).status, 0);
    }
    Ran handout(const char* family, const QString& week, const QStringList& more = {}) {
        return run(QStringList{QStringLiteral("handout"), QStringLiteral("w"),
                               QStringLiteral("--family"), QString::fromLatin1(family),
                               QStringLiteral("--week"), week, QStringLiteral("--out"),
                               QStringLiteral("h.pdf")} +
                   more);
    }
    static QString iso(QDate day) { return day.toString(Qt::ISODate); }
    const QDate monday = QDate::currentDate().addDays(1 - QDate::currentDate().dayOfWeek());
};

TEST_F(HandoutCommandTest, PrintsAWeek) {
    const Ran ran = handout(
        "tomasek", iso(monday),
        {QStringLiteral("--large-print"), QStringLiteral("--names"), QStringLiteral("none")});
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_TRUE(bytesOf(QStringLiteral("h.pdf")).startsWith("%PDF-"));
    EXPECT_GT(ran.json().value(QStringLiteral("cards")).toArray().size(), 3);
    EXPECT_FALSE(ran.json().contains(QStringLiteral("remark")));
    EXPECT_FALSE(ran.output.contains("Filip")) << "no names were asked for";
}

TEST_F(HandoutCommandTest, PrintsInTheLanguageAskedFor) {
    const Ran ran =
        handout("Oakes", iso(monday), {QStringLiteral("--language"), QStringLiteral("es")});
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_EQ(ran.json().value(QStringLiteral("language")).toString(), QStringLiteral("es"));
    EXPECT_TRUE(ran.json()
                    .value(QStringLiteral("title"))
                    .toString()
                    .contains(QStringLiteral("semana del")));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {folder.filePath(QStringLiteral("h.pdf")), QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    for (const char* words :
         {"La semana de un vistazo", "Enfríelo rápido", "A quién llamar", "página 1 de"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words;
    EXPECT_FALSE(text.contains(QStringLiteral("Whom to call")));
    EXPECT_EQ(handout("Oakes", iso(monday)).json().value(QStringLiteral("language")).toString(),
              QStringLiteral("en"))
        << "without the option it is the family's own";
}

TEST_F(HandoutCommandTest, WritesThePagesAsPicturesToo) {
    EXPECT_TRUE(handout("Oakes", iso(monday), {QStringLiteral("--png"), QStringLiteral("pages")})
                    .refused({QStringLiteral("pages"), QStringLiteral("folder")}));
    EXPECT_FALSE(exists(QStringLiteral("h.pdf")));
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("pages")));
    const Ran ran =
        handout("Oakes", iso(monday), {QStringLiteral("--png"), QStringLiteral("pages")});
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonArray pictures = ran.json().value(QStringLiteral("pictures")).toArray();
    ASSERT_GT(pictures.size(), 3);
    for (const QJsonValue& picture : pictures)
        EXPECT_TRUE(bytesOf(picture.toString()).startsWith("\x89PNG"));
}

TEST_F(HandoutCommandTest, TakesThePartsOfATemplate) {
    const QString option = QStringLiteral("--template");
    EXPECT_TRUE(handout("Oakes", iso(monday), {option, QStringLiteral("No such")})
                    .refused({option, QStringLiteral("template")}));
    EXPECT_FALSE(exists(QStringLiteral("h.pdf")));
    {
        const SystemClock clock;
        const auto workbook = store::Workbook::open(folder.filePath(QStringLiteral("w")), clock);
        ASSERT_TRUE(workbook);
        casebook::HandoutTemplate kept;
        kept.name = QStringLiteral("Kitchen only");
        kept.sections = {{casebook::HandoutPart::Shopping, true, {}, QStringLiteral("Be quick.")},
                         {casebook::HandoutPart::Keeping, true, {}, {}}};
        ASSERT_TRUE((*workbook)->act(
            QStringLiteral("Kept a template"), [&](store::Action& action) -> Outcome {
                const auto added = (*workbook)->practice().addHandoutTemplate(action, kept);
                return added ? Outcome() : passOn(added);
            }));
    }
    const Ran ran = handout("Oakes", iso(monday), {option, QStringLiteral("kitchen ONLY")});
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QJsonArray cards = ran.json().value(QStringLiteral("cards")).toArray();
    EXPECT_EQ(cards.last().toString(), QStringLiteral("Cool it and keep it"));
    EXPECT_LE(cards.size(), 2);
    EXPECT_TRUE(handout("Oakes", iso(monday), {option, QStringLiteral("Other")})
                    .refused({QStringLiteral("Kitchen only")}));
}

TEST_F(HandoutCommandTest, TakesTheMondayBeforeAndSaysSo) {
    const Ran ran = handout("Oakes", iso(monday.addDays(3)));
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_EQ(ran.json().value(QStringLiteral("week")).toString(), iso(monday));
    EXPECT_TRUE(ran.json().value(QStringLiteral("remark")).toString().contains(iso(monday)));
}

TEST_F(HandoutCommandTest, RefusesAndWritesNothing) {
    const QString week = iso(monday);
    EXPECT_TRUE(handout("Nobody", week).refused({QStringLiteral("w: "), QStringLiteral("Nobody")}));
    EXPECT_TRUE(handout("Oakes", QStringLiteral("soon")).refused({QStringLiteral("--week")}));
    EXPECT_TRUE(handout("Oakes", QStringLiteral("2026-02-30")).refused({QStringLiteral("--week")}));
    EXPECT_TRUE(handout("Oakes", week, {QStringLiteral("--paper"), QStringLiteral("a5")})
                    .refused({QStringLiteral("--paper")}));
    EXPECT_TRUE(handout("Oakes", week, {QStringLiteral("--language"), QStringLiteral("fr")})
                    .refused({QStringLiteral("--language"), QStringLiteral("en or es")}));
    EXPECT_TRUE(handout("Oakes", week, {QStringLiteral("--names"), QStringLiteral("nick")})
                    .refused({QStringLiteral("--names")}));
    EXPECT_TRUE(run({QStringLiteral("handout"), QStringLiteral("w"), QStringLiteral("--family"),
                     QStringLiteral("Oakes"), QStringLiteral("--week"), week,
                     QStringLiteral("--out"), QStringLiteral("nowhere/h.pdf")})
                    .refused({QStringLiteral("nowhere/h.pdf")}));
    EXPECT_FALSE(exists(QStringLiteral("h.pdf")));
}

TEST_F(HandoutCommandTest, NeverReplacesTheWorkbook) {
    const QByteArray before = bytesOf(QStringLiteral("w"));
    ASSERT_TRUE(QFile::link(folder.filePath(QStringLiteral("w")),
                            folder.filePath(QStringLiteral("link.pdf"))));
    ASSERT_TRUE(QFile::copy(folder.filePath(QStringLiteral("w")),
                            folder.filePath(QStringLiteral("other.pdf"))));
    for (const char* out : {"w", "./w", "link.pdf", "other.pdf"}) {
        const QString name = QString::fromLatin1(out);
        EXPECT_TRUE(run({QStringLiteral("handout"), QStringLiteral("w"), QStringLiteral("--family"),
                         QStringLiteral("Oakes"), QStringLiteral("--week"), iso(monday),
                         QStringLiteral("--out"), name})
                        .refused({name, QStringLiteral("workbook")}));
        EXPECT_EQ(bytesOf(name), before) << out;
    }
}

TEST_F(HandoutCommandTest, RefusesAWeekThatNobodyPlans) {
    for (const QString& week : {QStringLiteral("9999-12-31"), QStringLiteral("1900-01-01"),
                                iso(monday.addYears(2)), iso(monday.addYears(-11))})
        EXPECT_TRUE(handout("Oakes", week).refused({QStringLiteral("--week")}))
            << week.toStdString();
    EXPECT_EQ(handout("Oakes", iso(monday.addDays(350))).status, 0);
}

} // namespace
} // namespace ladlework::app
