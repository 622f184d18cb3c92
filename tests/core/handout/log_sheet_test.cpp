#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"
#include "exchange/log_csv.h"
#include "handout/cards.h"

#include <gtest/gtest.h>

using namespace ladlework;
using namespace hand_made;
using namespace handout_reader;

namespace {
class LogSheetTest : public ::testing::Test {
protected:
    LogSheetTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {}

    [[nodiscard]] Card sheet(Names names = Names::First) const {
        HandoutOptions options;
        options.week = monday;
        options.names = names;
        const casebook::Casebook book(records, catalogue, today);
        return logSheetCard(PageContext(book, options));
    }
    /// The sheet typed in as a table: its header as it is printed, the days as the import asks for
    /// them, and in the empty columns what a family might have written.
    [[nodiscard]] static QString typed(const Table& table, int days) {
        QString csv = table.header.join(QLatin1Char(',')) + QLatin1Char('\n');
        const int members = table.rowsTogether;
        for (int row = 0; row < days * members; ++row) {
            QStringList cells{monday.addDays(row / members).toString(Qt::ISODate)};
            for (const Cell& cell : table.rows[row].mid(1))
                cells.append(cell.text);
            cells[3] = QStringLiteral("30 ml");
            if (row == 0) {
                cells[4] = QStringLiteral("headache");
                cells[5] = QStringLiteral("2");
                cells[6] = QStringLiteral("slept badly");
            }
            csv += cells.join(QLatin1Char(',')) + QLatin1Char('\n');
        }
        return csv;
    }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
};
} // namespace

TEST_F(LogSheetTest, hasARowForEachMemberAndDayWithTheAmountAsked) {
    const Table table = tableOf(sheet());
    const casebook::Casebook book(records, catalogue, today);
    // Ana, Ben and Mia; Leo is under six months.
    ASSERT_EQ(table.rows.size(), 21);
    EXPECT_EQ(table.rowsTogether, 3);
    for (int day = 0; day < 7; ++day)
        for (int member = 0; member < 3; ++member) {
            const QList<Cell>& row = table.rows[day * 3 + member];
            const MemberId id = book.standings()[static_cast<std::size_t>(member)].member.id;
            const quantity::Volume asked = book.plannedAmounts(id, monday, 7)[day];
            EXPECT_EQ(row[2].text, asked > quantity::Volume()
                                       ? quantity::printVolume(asked, records.family.measures)
                                       : QStringLiteral("-"));
            for (int column = 3; column < 7; ++column)
                EXPECT_TRUE(row[column].text.isEmpty()) << "room for a pen";
        }
}

TEST_F(LogSheetTest, itsHeaderTypedAsATableIsUnderstoodByTheImport) {
    const exchange::LogNames names = exchange::LogNames::of(records);
    // The log of the family is empty, so that nothing counts as known already.
    records.entries.clear();
    const Result<exchange::LogReport> report = exchange::readLog(
        typed(tableOf(sheet()), 3), names, records, exchange::LogDays{today, 0, false});
    ASSERT_TRUE(report) << qPrintable(report.error().sentence);
    EXPECT_TRUE(report->refused.isEmpty()) << qPrintable(report->refused.first().sentence);
    EXPECT_EQ(report->entryCount(), 9);
    ASSERT_EQ(report->reactionCount(), 1);
    const auto& reaction = *report->additions.first().reaction;
    EXPECT_EQ(reaction.strength, 2);
    EXPECT_EQ(reaction.note, QStringLiteral("slept badly"));
    EXPECT_EQ(report->additions.first().entry->drunk, ml(30));
}

TEST_F(LogSheetTest, theNamesOnItAreUnderstoodHoweverTheyWereChosen) {
    records.members[1].name = QStringLiteral("Ana Ross"); // beside Ana Hartley: "Ana H.", "Ana R."
    const exchange::LogNames names = exchange::LogNames::of(records);
    records.entries.clear();
    for (const Names how : {Names::Full, Names::First, Names::None}) {
        const Result<exchange::LogReport> report = exchange::readLog(
            typed(tableOf(sheet(how)), 1), names, records, exchange::LogDays{today, 0, false});
        ASSERT_TRUE(report) << qPrintable(report.error().sentence);
        EXPECT_TRUE(report->refused.isEmpty()) << qPrintable(report->refused.first().sentence);
        EXPECT_EQ(report->entryCount(), 3);
        EXPECT_EQ(report->additions[1].entry->member, ben);
    }
}

TEST_F(LogSheetTest, saysHowToTypeItInWithTheWordsOfTheImport) {
    const Card card = sheet();
    const QString text = textOf(card);
    EXPECT_TRUE(
        text.contains(QStringLiteral("\"day, member, asked, amount, reaction, strength, note\"")));
    EXPECT_TRUE(text.contains(QStringLiteral("2026-11-02")));
    EXPECT_EQ(tableOf(card).header.join(QStringLiteral(", ")).toLower(),
              QStringLiteral("day, member, asked, amount, reaction, strength, note"));
}

TEST_F(LogSheetTest, aFamilyWithoutAmountsGetsNoEmptyTable) {
    records.ladders.clear();
    EXPECT_TRUE(tableOf(sheet()).rows.isEmpty());
    EXPECT_TRUE(textOf(sheet()).contains(QStringLiteral("Nobody has an amount")));
}
