#include "exchange/log_table.h"

#include "core/exchange/exchange_ground.h"
#include "exchange/log_csv.h"
#include "exchange/sample_practice.h"
#include "foundation/csv.h"
#include "store/workbook.h"

namespace ladlework::exchange {
namespace {

using LogTableTest = ExchangeGround;

TEST_F(LogTableTest, IsReadBackAsWhatTheWorkbookHoldsAlready) {
    const auto workbook = createSamplePractice(path("w.ladlework"), catalogue, clock).value();
    int lines = 0;
    for (const people::Family& family : workbook->families().families()) {
        const auto records = workbook->records(family.id).value();
        const auto report = readLog(logTable(records), LogNames::of(records), records,
                                    LogDays{clock.today(family.zone), 0, false});
        ASSERT_TRUE(report) << qPrintable(toLine(report.error()));
        EXPECT_TRUE(report->refused.isEmpty())
            << qPrintable(family.name) << ": " << qPrintable(report->refused.value(0).sentence);
        EXPECT_TRUE(report->additions.isEmpty()) << qPrintable(family.name);
        EXPECT_EQ(report->alreadyThere, records.entries.size() + records.reactions.size());
        lines += report->alreadyThere;
    }
    EXPECT_GT(lines, 300);
}

TEST_F(LogTableTest, QuotesWordsAndGoesByDay) {
    casebook::FamilyRecords records;
    people::Member member;
    member.id = MemberId{1};
    member.name = QStringLiteral("Ana Lindqvist");
    records.members = {member};
    intake::IntakeEntry entry;
    entry.member = member.id;
    entry.day = QDate(2026, 11, 3);
    entry.drunk = quantity::Volume::fromCups(1);
    entry.note = QStringLiteral("slowly, \"with\nsalt\"");
    intake::IntakeEntry missed;
    missed.member = member.id;
    missed.day = QDate(2026, 11, 2);
    records.entries = {entry, missed};
    intake::Reaction reaction;
    reaction.member = member.id;
    reaction.day = entry.day;
    reaction.symptom = QStringLiteral("Headache");
    reaction.strength = 3;
    reaction.startMinute = 65;
    reaction.minutes = 90;
    records.reactions = {reaction};
    const auto table = readCsv(logTable(records));
    ASSERT_TRUE(table);
    ASSERT_EQ(table->size(), 4);
    EXPECT_EQ(table->at(1).fields.mid(0, 3),
              (QStringList{QStringLiteral("2026-11-02"), member.name, QStringLiteral("0")}));
    // 1 US cup is 236.588 mL (NIST Handbook 44, Appendix C).
    EXPECT_EQ(table->at(2).fields[2], QStringLiteral("236.59 ml"));
    EXPECT_EQ(table->at(2).fields.last(), entry.note);
    EXPECT_EQ(table->at(3).fields.mid(5, 5),
              (QStringList{QStringLiteral("Headache"), QStringLiteral("3"), QStringLiteral("no"),
                           QStringLiteral("01:05"), QStringLiteral("90 min")}));
}

} // namespace
} // namespace ladlework::exchange
