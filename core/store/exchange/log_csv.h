#pragma once

#include "casebook/family_records.h"
#include "foundation/result.h"
#include "store/action.h"

#include <QMultiHash>
#include <optional>

namespace ladlework::store {
class Workbook;
}

namespace ladlework::exchange {

// A log as a table: one line for each drink or reaction, or both. Columns by name, in any order;
// `day` and `member` must be there, and `amount` or `reaction`:
//   day        YYYY-MM-DD
//   member     the whole name, or the first name when only one in the family has it, or as the
//              printed sheet calls a member ("Ana L.", "Member 1")
//   asked      what was to be drunk, as the printed sheet has it; read past
//   amount     "1 1/2 cups", "350 ml", "2 tbsp"; "0" or "missed": nothing was drunk that day;
//              blank: the line is about a reaction only
//   pot        the name of the pot it came from, may be blank
//   lot        the container it came from ("jar 1"), kept on that day; may be blank; with the day
//              it was stored where several have the name ("jar 1 of 2026-11-03")
//   reaction   a symptom in words, may be blank; or several with their strengths in this cell:
//              "hives 3; wheezing 2" (a red flag without one counts as 10)
//   strength   0 to 10, with a reaction that does not say it itself
//   red_flag   yes or no, with a reaction; the practice's list of red flags counts as yes, and so
//              do the published ones in everyday words
//   start      HH:MM when the reaction began, may be blank
//   length     how long it lasted ("40 min", "2 h"), may be blank
//   note       free words
// Separated by commas, or by semicolons when the header line has no comma.

/// The names that a log may use, in folded case. A name that stands for several is refused.
struct LogNames {
    QMultiHash<QString, MemberId> members;
    QMultiHash<QString, PotId> pots;
    QMultiHash<QString, LotId> lots;

    /// Whole and first names of members, names of pots, containers of lots; members also as the
    /// printed sheet calls them.
    static LogNames of(const casebook::FamilyRecords& records);
};

/// "jar 1 of 2026-11-03": a container by the day it was stored.
QString datedName(const kitchen::Lot& lot);

/// Which days a log may speak of.
struct LogDays {
    QDate today;
    int shiftDays = 0;           ///< added to every day that is read
    bool untilYesterday = false; ///< leave out lines of `today` and later
};

/// A line that can be taken.
struct LogAddition {
    int line = 0; ///< of the file, from 1
    std::optional<intake::IntakeEntry> entry;
    std::optional<intake::Reaction> reaction;
};

/// A line that cannot, and why.
struct LogRefusal {
    int line = 0;
    QString column; ///< the column at fault
    QString sentence;
};

/// "line 12, amount" as the place, and the sentence.
Problem toProblem(const LogRefusal& refusal);

/// What an import would do, line by line. Nothing is stored yet.
struct LogReport {
    QList<LogAddition> additions;
    QList<LogRefusal> refused;
    int alreadyThere = 0; ///< lines that are in the workbook as they stand
    int leftOut = 0;      ///< lines of today and later that were not asked for

    [[nodiscard]] int lineCount() const; ///< lines that bring something
    [[nodiscard]] int entryCount() const;
    [[nodiscard]] int reactionCount() const;
};

/// The text of a log file. BadInput when it is no UTF-8 (a spreadsheet can save it as such).
Result<QString> textOfLog(const QByteArray& bytes);

/// Reads a log for the family of `records` (its measures say what a bare number means). Lines that
/// the records hold already, as often as they hold them, count as `alreadyThere`, so that the same
/// file can be read twice. A Problem is for the file as a whole: no header, an unknown column,
/// broken quotes.
Result<LogReport> readLog(const QString& csv, const LogNames& names,
                          const casebook::FamilyRecords& records, const LogDays& days);

/// Stores all additions as one user action with one history entry. Refused, with the first refused
/// line as its place, when the report holds one: a log goes in whole or not at all.
Outcome importLog(store::Workbook& workbook, const casebook::FamilyRecords& records,
                  const LogReport& report);

} // namespace ladlework::exchange
