#include "exchange/log_csv.h"

#include "core/exchange/exchange_ground.h"
#include "exchange/sample_practice.h"
#include "store/workbook.h"

namespace ladlework::exchange {
namespace {

const QString header = QStringLiteral("day,member,amount,pot,lot,reaction,strength,red_flag,start,"
                                      "length,note\n");

/// Two people called Ana, a pot, and two jars with one name on different days.
casebook::FamilyRecords smallFamily() {
    casebook::FamilyRecords records;
    records.family.name = QStringLiteral("Vale");
    const auto member = [&](qint64 id, const char* name) {
        people::Member one;
        one.id = MemberId{id};
        one.name = QString::fromLatin1(name);
        records.members.append(one);
    };
    member(1, "Ana Vale");
    member(2, "Ana Moor");
    member(3, "Bo Vale");
    kitchen::Pot pot;
    pot.id = PotId{7};
    pot.name = QStringLiteral("Chicken legs");
    records.pots.append(pot);
    for (qint64 id = 1; id <= 2; ++id) {
        kitchen::Batch batch;
        batch.id = BatchId{id};
        batch.pot = PotId{7};
        batch.day = QDate(2026, 11, 5 + 10 * int(id));
        records.batches.append(batch);
        kitchen::Lot lot;
        lot.id = LotId{id};
        lot.batch = batch.id;
        lot.container = QStringLiteral("jar 1");
        lot.stored = batch.day;
        lot.goneOn = id == 1 ? QDate(2026, 11, 20) : QDate();
        records.lots.append(lot);
    }
    for (qint64 id = 3; id <= 4; ++id) { // two boxes with one name on the same days
        kitchen::Lot box = records.lots.first();
        box.id = LotId{id};
        box.container = QStringLiteral("box");
        records.lots.append(box);
    }
    return records;
}

class LogCsvTest : public ExchangeGround {
protected:
    Result<LogReport> read(const QString& csv) {
        const LogNames names = LogNames::of(records);
        return readLog(csv, names, records, LogDays{QDate(2026, 11, 25), 0, false});
    }

    casebook::FamilyRecords records = smallFamily();
};

TEST_F(LogCsvTest, ReadsAmountsAsAKitchenSaysThem) {
    // US measures: NIST Handbook 44, Appendix C.
    const QList<std::pair<QString, double>> cases{
        {QStringLiteral("1 1/2 cups"), 354.88235}, {QStringLiteral("2 tbsp"), 29.57353},
        {QStringLiteral("1 tsp"), 4.92892},        {QStringLiteral("350 ml"), 350.0},
        {QStringLiteral("0.5"), 118.29412},        {QStringLiteral("0"), 0.0},
        {QStringLiteral("missed"), 0.0},           {QStringLiteral("Missed"), 0.0}};
    for (const auto& [amount, millilitres] : cases) {
        const auto report =
            read(header + QStringLiteral("2026-11-20,Bo,\"%1\",,,,,,,,\n").arg(amount));
        ASSERT_TRUE(report) << qPrintable(amount);
        ASSERT_EQ(report->additions.size(), 1) << qPrintable(amount);
        EXPECT_NEAR(report->additions[0].entry->drunk.toMillilitres(), millilitres, 5e-4);
    }
}

TEST_F(LogCsvTest, ReadsADrinkAndAReactionFromOneLine) {
    const auto report =
        read(header + QStringLiteral("2026-11-20,bo vale,1 cup,chicken LEGS,,Headache,"
                                     "4,,7:30,2 h,\"after lunch, loud\"\n"));
    ASSERT_TRUE(report);
    ASSERT_EQ(report->additions.size(), 1);
    const LogAddition& line = report->additions[0];
    EXPECT_EQ(line.line, 2);
    EXPECT_EQ(line.entry->member, MemberId{3});
    EXPECT_EQ(line.entry->pot, PotId{7});
    EXPECT_EQ(line.reaction->strength, 4);
    EXPECT_EQ(line.reaction->startMinute, 450);
    EXPECT_EQ(line.reaction->minutes, 120);
    EXPECT_EQ(line.reaction->note, QStringLiteral("after lunch, loud"));
    EXPECT_FALSE(line.reaction->redFlag);
}

TEST_F(LogCsvTest, AListedRedFlagIsOneEvenWhenNobodySaysSo) {
    const auto report = read(
        header + QStringLiteral("2026-11-20,Bo,,,,\"Fainting, collapse or going limp\",2,,,,\n"));
    ASSERT_TRUE(report);
    ASSERT_EQ(report->additions.size(), 1);
    EXPECT_TRUE(report->additions[0].reaction->redFlag);
}

TEST_F(LogCsvTest, TheListOfThePracticeSaysWhatIsARedFlagToo) {
    intake::Symptom own;
    own.name = QStringLiteral("Shaking spells");
    own.redFlag = true;
    records.symptoms = {own};
    const auto report = read(header + QStringLiteral("2026-11-20,Bo,,,,shaking SPELLS,1,,,,\n"));
    ASSERT_TRUE(report);
    ASSERT_EQ(report->additions.size(), 1);
    EXPECT_TRUE(report->additions[0].reaction->redFlag);
    EXPECT_EQ(report->additions[0].reaction->symptom, own.name);
}

TEST_F(LogCsvTest, EverydayWordsForAPublishedSignAreARedFlag) {
    const QList<std::pair<QString, bool>> cases{{QStringLiteral("wheezing"), true},
                                                {QStringLiteral("Swollen tongue"), true},
                                                {QStringLiteral("passed out"), true},
                                                {QStringLiteral("vomited"), false},
                                                {QStringLiteral("itchy arm"), false}};
    for (const auto& [felt, redFlag] : cases) {
        const auto report =
            read(header + QStringLiteral("2026-11-20,Bo,,,,%1,1,no,,,\n").arg(felt));
        ASSERT_TRUE(report) << qPrintable(felt);
        ASSERT_EQ(report->additions.size(), 1) << qPrintable(felt);
        EXPECT_EQ(report->additions[0].reaction->redFlag, redFlag) << qPrintable(felt);
        EXPECT_EQ(report->additions[0].reaction->symptom, felt);
    }
}

TEST_F(LogCsvTest, ReadsSeveralReactionsFromOneCell) {
    const auto report =
        read(header + QStringLiteral("2026-11-20,Bo,1 cup,,,hives 3; wheezing 2,,,,,\n"
                                     "2026-11-21,Bo,,,,\"hives 3, trouble breathing\",,,,,\n"
                                     "2026-11-22,Bo,,,,\"hives 3, itchy\",,,,,\n"));
    ASSERT_TRUE(report);
    ASSERT_EQ(report->additions.size(), 4);
    EXPECT_EQ(report->lineCount(), 2);
    EXPECT_EQ(report->entryCount(), 1) << "what was drunk goes in once";
    const QList<std::tuple<QString, int, bool>> felt{
        {QStringLiteral("hives"), 3, false},
        {QStringLiteral("wheezing"), 2, true},
        {QStringLiteral("hives"), 3, false},
        {QStringLiteral("trouble breathing"), 10, true}};
    for (qsizetype i = 0; i < felt.size(); ++i) {
        const intake::Reaction& reaction = *report->additions[i].reaction;
        EXPECT_EQ(std::tuple(reaction.symptom, reaction.strength, reaction.redFlag), felt[i]);
    }
    ASSERT_EQ(report->refused.size(), 1) << "no strength";
    EXPECT_EQ(report->refused[0].line, 4);
    EXPECT_EQ(report->refused[0].column, QStringLiteral("strength"));
}

TEST_F(LogCsvTest, FindsTheJarThatWasThereOnTheDay) {
    const auto report = read(header + QStringLiteral("2026-11-18,Bo,1 cup,,jar 1,,,,,,\n"
                                                     "2026-11-25,Bo,1 cup,,jar 1,,,,,,\n"
                                                     "2026-11-25,Bo,1 cup,,jar 1,,,,,,\n"));
    ASSERT_TRUE(report);
    ASSERT_EQ(report->additions.size(), 3);
    EXPECT_EQ(report->additions[0].entry->lot, LotId{1});
    EXPECT_EQ(report->additions[1].entry->lot, LotId{2});
    EXPECT_EQ(report->additions[1].entry->pot, PotId{7}) << "the jar tells the pot";
}

TEST_F(LogCsvTest, RefusesLineByLineWithColumn) {
    struct Case {
        const char* line;
        const char* column;
    };
    const QList<Case> cases{
        {"2026-11-26,Bo,1 cup,,,,,,,,", "day"},           // tomorrow
        {"26.11.2026,Bo,1 cup,,,,,,,,", "day"},           // not ISO
        {"2026-02-29,Bo,1 cup,,,,,,,,", "day"},           // no such day
        {"2026-11-20,Zoe,1 cup,,,,,,,,", "member"},       // not of the family
        {"2026-11-20,Ana,1 cup,,,,,,,,", "member"},       // two of them
        {"2026-11-20,Bo,-1 cup,,,,,,,,", "amount"},       // negative
        {"2026-11-20,Bo,a lot,,,,,,,,", "amount"},        // no amount
        {"2026-11-20,Bo,30 cups,,,,,,,,", "amount"},      // above 6 L a drink
        {"2026-11-20,Bo,,,,,,,,,", "amount"},             // nothing in it
        {"2026-11-20,Bo,1 cup,Oxtail,,,,,,,", "pot"},     // unknown pot
        {"2026-11-20,Bo,1 cup,,jar 9,,,,,,", "lot"},      // unknown jar
        {"2026-11-10,Bo,1 cup,,jar 1,,,,,,", "lot"},      // not cooked yet
        {"2026-11-20,Bo,1 cup,,box,,,,,,", "lot"},        // two of them kept that day
        {"2026-11-20,Bo,,,,Headache,,,,,", "strength"},   // missing
        {"2026-11-20,Bo,,,,Headache,11,,,,", "strength"}, // above 10
        {"2026-11-20,Bo,,,,Headache,3,maybe,,,", "red_flag"},
        {"2026-11-20,Bo,,,,Headache,3,,25:00,,", "start"},
        {"2026-11-20,Bo,,,,Headache,3,,,long,", "length"},
        {"2026-11-20,Bo,1 cup,,,,3,,,,", "reaction"}, // a strength of nothing
        {"2026-11-20,Bo,1 cup,,,,,,,,a,b", ""},       // too many cells
    };
    for (const Case& one : cases) {
        const auto report = read(header + QStringLiteral("2026-11-20,Bo,1 cup,,,,,,,,\n") +
                                 QString::fromLatin1(one.line) + QLatin1Char('\n'));
        ASSERT_TRUE(report) << one.line;
        EXPECT_EQ(report->additions.size(), 1) << one.line;
        ASSERT_EQ(report->refused.size(), 1) << one.line;
        EXPECT_EQ(report->refused[0].line, 3) << one.line;
        EXPECT_EQ(report->refused[0].column, QString::fromLatin1(one.column)) << one.line;
        EXPECT_FALSE(report->refused[0].sentence.isEmpty());
    }
}

TEST_F(LogCsvTest, RefusesAFileThatIsNoLog) {
    for (const char* text :
         {"", "day,amount\n2026-11-20,1 cup\n", "member,amount\nBo,1 cup\n",
          "day,member,mood\n2026-11-20,Bo,good\n", "day,member,note\n", "day,day,member,amount\n",
          "day,member,amount\n2026-11-20,Bo,\"1 cup\n"}) {
        const auto report = read(QString::fromLatin1(text));
        ASSERT_FALSE(report) << text;
        EXPECT_EQ(report.error().kind, Problem::Kind::BadInput);
    }
    EXPECT_FALSE(textOfLog(QByteArray("day,member\n2026-11-20,Zo\xeb\n")));
}

TEST_F(LogCsvTest, ReadsSemicolonsColumnsInAnyOrderAndAByteOrderMark) {
    const auto report =
        read(QChar(QChar::ByteOrderMark) + QStringLiteral("Amount;Member;Day\r\n"
                                                          "2 tbsp;Bo;2026-11-20\r\n"));
    ASSERT_TRUE(report) << qPrintable(toLine(report.error()));
    EXPECT_EQ(report->additions.size(), 1);
}

TEST_F(LogCsvTest, ImportsWholeOrNotAtAllAndOnlyOnce) {
    const auto workbook = createSamplePractice(path("w.ladlework"), catalogue, clock).value();
    const FamilyId family = [&] {
        for (const people::Family& one : workbook->families().families())
            if (one.name == QStringLiteral("Oakes"))
                return one.id;
        return FamilyId{};
    }();
    const auto before = workbook->records(family).value();
    const LogDays days{QDate(2026, 11, 25), 0, false};
    const QString good = header + QStringLiteral("2026-11-25,Maren,1 cup,,,,,,,,first\n"
                                                 "2026-11-25,Maren,1 cup,,,,,,,,\n"
                                                 "2026-11-25,Maren,1 cup,,,,,,,,\n");
    auto report = readLog(good, LogNames::of(before), before, days).value();
    ASSERT_EQ(report.entryCount(), 3);

    LogReport spoilt = report;
    spoilt.refused.append({9, QStringLiteral("amount"), QStringLiteral("No.")});
    EXPECT_FALSE(importLog(*workbook, before, spoilt));
    EXPECT_EQ(workbook->log().entries(family).size(), before.entries.size());

    ASSERT_TRUE(importLog(*workbook, before, report));
    const auto after = workbook->records(family).value();
    EXPECT_EQ(after.entries.size(), before.entries.size() + 3);
    report = readLog(good, LogNames::of(after), after, days).value();
    EXPECT_EQ(report.entryCount(), 0) << "the same file again brings nothing";
    EXPECT_EQ(report.alreadyThere, 3);

    ASSERT_TRUE(workbook->undo());
    EXPECT_EQ(workbook->log().entries(family).size(), before.entries.size());
}

} // namespace
} // namespace ladlework::exchange
