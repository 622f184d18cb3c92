#include "app/program.h"

#include <QDate>
#include <QFile>

namespace ladlework::app {
namespace {

class ExportCommandTest : public ProgramTest {
protected:
    void SetUp() override {
        ASSERT_EQ(run({QStringLiteral("sample"), QStringLiteral("w")}).status, 0);
    }
    Ran exported(const char* as, const QStringList& more = {},
                 const QString& out = QStringLiteral("c.ics")) {
        return run(QStringList{QStringLiteral("export"), QStringLiteral("w"),
                               QStringLiteral("--as"), QString::fromLatin1(as),
                               QStringLiteral("--out"), out} +
                   more);
    }
    static QStringList of(const char* family) {
        return {QStringLiteral("--family"), QString::fromLatin1(family)};
    }
    static QString iso(QDate day) { return day.toString(Qt::ISODate); }
    static QByteArray unfolded(QByteArray ics) { return ics.replace("\r\n ", ""); }
    [[nodiscard]] QByteArray calendar() const { return unfolded(bytesOf(QStringLiteral("c.ics"))); }
    const QDate monday = QDate::currentDate().addDays(1 - QDate::currentDate().dayOfWeek());
    const QStringList thisWeek{QStringLiteral("--week"), iso(monday)};
};

TEST_F(ExportCommandTest, WritesAFamilysWeekForItsOwnerAlone) {
    const Ran ran = exported("ics", of("tomasek") + thisWeek);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const QByteArray ics = calendar();
    EXPECT_TRUE(ics.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_EQ(ics.count("BEGIN:VEVENT"), ran.json().value(QStringLiteral("entries")).toInt());
    EXPECT_GT(ics.count("BEGIN:VALARM"), 3);
    EXPECT_EQ(ran.json().value(QStringLiteral("families")).toInt(), 1);
    EXPECT_FALSE(ran.json().contains(QStringLiteral("remark")));
    EXPECT_EQ(QFile::permissions(folder.filePath(QStringLiteral("c.ics"))) &
                  (QFile::ReadGroup | QFile::WriteGroup | QFile::ReadOther | QFile::WriteOther),
              QFile::Permissions());
    EXPECT_EQ(files(), (QStringList{QStringLiteral("c.ics"), QStringLiteral("w")}));
}

TEST_F(ExportCommandTest, ReplacesWhatItWroteWithTheSameEntries) {
    const auto uids = [this] {
        QSet<QByteArray> found;
        for (const QByteArray& line : calendar().split('\n'))
            if (line.startsWith("UID:"))
                found.insert(line);
        return found;
    };
    ASSERT_EQ(exported("ics", thisWeek).status, 0);
    const QSet<QByteArray> before = uids();
    EXPECT_EQ(before.size(), calendar().count("BEGIN:VEVENT")) << "each its own";
    ASSERT_EQ(
        exported("ics", thisWeek + QStringList{QStringLiteral("--names"), QStringLiteral("none")})
            .status,
        0);
    EXPECT_EQ(uids(), before);
}

TEST_F(ExportCommandTest, NamesPeopleAsItIsAskedTo) {
    const QStringList none{QStringLiteral("--names"), QStringLiteral("none")};
    const Ran ran = exported("ics", thisWeek + none);
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_GE(ran.json().value(QStringLiteral("families")).toInt(), 6);
    for (const char* name : {"Tomasek", "Oakes", "Filip", "Maren"}) {
        EXPECT_FALSE(calendar().contains(name)) << name;
        EXPECT_FALSE(ran.output.contains(name)) << name;
    }
    ASSERT_EQ(
        exported("ics", thisWeek + QStringList{QStringLiteral("--names"), QStringLiteral("full")})
            .status,
        0);
    EXPECT_TRUE(calendar().contains("SUMMARY:Tomasek: "));
    ASSERT_EQ(exported("ics", thisWeek + of("Tomasek")).status, 0);
    EXPECT_FALSE(calendar().contains("Oakes")) << "no other family";
}

TEST_F(ExportCommandTest, TakesThisWeekAndTheMondayBefore) {
    const Ran without = exported("ics", of("Tomasek"));
    ASSERT_EQ(without.status, 0) << without.complaint.constData();
    const Ran ran = exported(
        "ics", of("Tomasek") + QStringList{QStringLiteral("--week"), iso(monday.addDays(3))});
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    EXPECT_EQ(ran.json().value(QStringLiteral("week")).toString(), iso(monday));
    EXPECT_TRUE(ran.json().value(QStringLiteral("remark")).toString().contains(iso(monday)));
}

TEST_F(ExportCommandTest, WritesALogThatIsReadAgain) {
    const Ran ran = exported("csv", of("Oakes"), QStringLiteral("log.csv"));
    ASSERT_EQ(ran.status, 0) << ran.complaint.constData();
    const int lines = ran.json().value(QStringLiteral("entries")).toInt() +
                      ran.json().value(QStringLiteral("reactions")).toInt();
    EXPECT_GT(lines, 50);
    const Ran read = run({QStringLiteral("import"), QStringLiteral("w"), QStringLiteral("--family"),
                          QStringLiteral("Oakes"), QStringLiteral("--log"),
                          QStringLiteral("log.csv"), QStringLiteral("--dry-run")});
    ASSERT_EQ(read.status, 0) << read.complaint.constData();
    EXPECT_EQ(read.json().value(QStringLiteral("already_there")).toInt(), lines);
    EXPECT_EQ(read.json().value(QStringLiteral("entries")).toInt(), 0);
}

TEST_F(ExportCommandTest, RefusesAndWritesNothing) {
    EXPECT_TRUE(exported("json").refused({QStringLiteral("--as"), QStringLiteral("json")}));
    EXPECT_TRUE(exported("pdf").refused({QStringLiteral("--as"), QStringLiteral("csv or ics")}));
    EXPECT_TRUE(exported("csv").refused({QStringLiteral("--family")}));
    EXPECT_TRUE(exported("csv", of("Oakes") + thisWeek).refused({QStringLiteral("--week")}));
    EXPECT_TRUE(
        exported("ics", of("Nobody")).refused({QStringLiteral("w: "), QStringLiteral("Nobody")}));
    EXPECT_TRUE(exported("ics", {QStringLiteral("--week"), QStringLiteral("2026-02-30")})
                    .refused({QStringLiteral("--week")}));
    EXPECT_TRUE(exported("ics", {QStringLiteral("--week"), QStringLiteral("9999-12-31")})
                    .refused({QStringLiteral("--week")}));
    EXPECT_TRUE(exported("ics", {QStringLiteral("--week"), iso(monday.addDays(350))})
                    .refused({QStringLiteral("nothing for a calendar")}));
    EXPECT_TRUE(exported("ics", {QStringLiteral("--names"), QStringLiteral("nick")})
                    .refused({QStringLiteral("--names")}));
    EXPECT_TRUE(exported("ics", {}, QStringLiteral("nowhere/c.ics"))
                    .refused({QStringLiteral("nowhere/c.ics")}));
    EXPECT_TRUE(exported("ics", {}, QStringLiteral(".")).refused({QStringLiteral("folder")}));
    EXPECT_TRUE(run({QStringLiteral("export"), QStringLiteral("w")})
                    .refused({QStringLiteral("--as"), QStringLiteral("Usage")}));
    EXPECT_EQ(files(), QStringList(QStringLiteral("w")));
}

TEST_F(ExportCommandTest, NeverReplacesAWorkbook) {
    const QByteArray before = bytesOf(QStringLiteral("w"));
    ASSERT_TRUE(QFile::link(folder.filePath(QStringLiteral("w")),
                            folder.filePath(QStringLiteral("link.ics"))));
    ASSERT_TRUE(QFile::copy(folder.filePath(QStringLiteral("w")),
                            folder.filePath(QStringLiteral("other.ics"))));
    for (const char* out : {"w", "./w", "link.ics", "other.ics"}) {
        const QString name = QString::fromLatin1(out);
        EXPECT_TRUE(exported("ics", thisWeek, name).refused({name, QStringLiteral("workbook")}));
        EXPECT_TRUE(exported("csv", of("Oakes"), name).refused({name}));
        EXPECT_EQ(bytesOf(name), before) << out;
    }
}

} // namespace
} // namespace ladlework::app
