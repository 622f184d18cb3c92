#include "app/program.h"

#include <QDate>
#include <QJsonArray>

namespace ladlework::app {
namespace {

class ImportCommandTest : public ProgramTest {
protected:
    void SetUp() override {
        ASSERT_EQ(run({QStringLiteral("sample"), QStringLiteral("w")}).status, 0);
    }
    Ran import(const QByteArray& csv, const QStringList& more = {}, const char* family = "Oakes") {
        write(QStringLiteral("log.csv"), csv);
        return run(QStringList{QStringLiteral("import"), QStringLiteral("w"),
                               QStringLiteral("--family"), QString::fromLatin1(family),
                               QStringLiteral("--log"), QStringLiteral("log.csv")} +
                   more);
    }
    static int count(const Ran& ran, const char* key) {
        return ran.json().value(QLatin1String(key)).toInt(-1);
    }
    /// A day that every zone has behind it.
    const QByteArray day = QDate::currentDate().addDays(-2).toString(Qt::ISODate).toLatin1();
    const QByteArray good = "day,member,amount,reaction,strength\n" + day + ",Maren,1 cup,,\n" +
                            day + ",Maren,2 tbsp,Headache,3\n";
};

TEST_F(ImportCommandTest, TakesALogInOnce) {
    const QByteArray before = bytesOf(QStringLiteral("w"));
    const Ran dry = import(good, {QStringLiteral("--dry-run")});
    ASSERT_EQ(dry.status, 0) << dry.complaint.constData();
    EXPECT_EQ(count(dry, "entries"), 2);
    EXPECT_EQ(count(dry, "reactions"), 1);
    EXPECT_EQ(dry.json().value(QStringLiteral("lines")).toArray().size(), 2);
    EXPECT_EQ(bytesOf(QStringLiteral("w")), before) << "a dry run changes nothing";

    const Ran taken = import(good);
    ASSERT_EQ(taken.status, 0) << taken.complaint.constData();
    EXPECT_EQ(count(taken, "entries"), 2);
    const Ran again = import(good);
    EXPECT_EQ(count(again, "entries"), 0);
    EXPECT_EQ(count(again, "already_there"), 2);
    EXPECT_EQ(run({QStringLiteral("verify"), QStringLiteral("w")}).status, 0);
}

TEST_F(ImportCommandTest, RefusesABadLogWholly) {
    const QByteArray before = bytesOf(QStringLiteral("w"));
    EXPECT_TRUE(import(good + day + ",Maren,minus one cup,,\n")
                    .refused({QStringLiteral("log.csv"), QStringLiteral("line 4"),
                              QStringLiteral("amount")}));
    EXPECT_TRUE(import(good + day + ",Nobody,1 cup,,\n")
                    .refused({QStringLiteral("log.csv"), QStringLiteral("line 4"),
                              QStringLiteral("member")}));
    EXPECT_TRUE(
        import(good + "2999-01-01,Maren,1 cup,,\n").refused({QStringLiteral("line 4, day")}));
    EXPECT_TRUE(import("day,who\n").refused({QStringLiteral("log.csv"), QStringLiteral("who")}));
    EXPECT_TRUE(import("").refused({QStringLiteral("log.csv"), QStringLiteral("empty")}));
    EXPECT_TRUE(import("day,member,amount\n\"" + day).refused({QStringLiteral("line 2")}));
    EXPECT_TRUE(import(good, {}, "Nobody").refused({QStringLiteral("Nobody")}));
    EXPECT_EQ(bytesOf(QStringLiteral("w")), before);
}

TEST_F(ImportCommandTest, ADryRunListsEveryRefusedLine) {
    const Ran dry = import(good + day + ",Nobody,1 cup,,\n" + day + ",Maren,lots,,\n",
                           {QStringLiteral("--dry-run")});
    EXPECT_EQ(dry.status, 2);
    EXPECT_EQ(dry.complaint.count('\n'), 1);
    const QJsonArray refused = dry.json().value(QStringLiteral("refused")).toArray();
    ASSERT_EQ(refused.size(), 2);
    EXPECT_EQ(refused[0].toObject().value(QStringLiteral("line")).toInt(), 4);
    EXPECT_EQ(refused[1].toObject().value(QStringLiteral("column")).toString(),
              QStringLiteral("amount"));
}

} // namespace
} // namespace ladlework::app
