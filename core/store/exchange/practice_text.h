#pragma once

#include "casebook/family_records.h"
#include "foundation/clock.h"
#include "foundation/result.h"
#include "kitchen/catalogue.h"

#include <QList>
#include <QString>

namespace ladlework::exchange {

/// How the days in a practice text are taken.
enum class Dates {
    AsWritten,
    /// Moved by whole weeks, so that the week the text was written for ("written_for") is this
    /// week: Mondays stay Mondays. What would have happened today or later (log, batches, notes,
    /// decisions) is left out, so that the log ends yesterday and today is still to be entered.
    /// Birth dates move too: ages stay as they were written.
    MovedToThisWeek,
};

/// A practice as it was read from text files; nothing is stored yet. Ids are provisional: they
/// hold inside one family only, practice pots first.
struct PracticeText {
    people::Practice practice;
    QList<people::Phase> phases; ///< all phases: those given before, changed and added to
    intake::LadderRules houseRules;
    QList<intake::LadderTemplate> ladderTemplates;
    QList<intake::Symptom> symptoms; ///< those that are added to the list or changed in it, by name
    QHash<QString, double> prices;   ///< per kilogram
    QList<casebook::LabelStock> labelStocks; ///< added to the list or changed in it, by name
    QList<kitchen::Pot> pots;                ///< the practice's own
    QList<casebook::FamilyRecords> families;
};

/// Reads practice.json of a folder (or resource folder) and the files it names: for each word in
/// its list "families" the file <word>.json and, where there is one, the log <word>-log.csv.
/// `phases` are the phases of the workbook that members may stand in.
/// The first thing that is wrong is a Problem whose place is the file and the place in it:
/// "hollis.json: members[0].birth", "hollis-log.csv: line 12, amount".
Result<PracticeText> readPracticeText(const QString& folder, const QList<people::Phase>& phases,
                                      const kitchen::Catalogue& catalogue, const Clock& clock,
                                      Dates dates);

} // namespace ladlework::exchange
