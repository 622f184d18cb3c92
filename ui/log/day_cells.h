#pragma once

#include "foundation/result.h"
#include "quantity/measure.h"

#include <QString>
#include <QStringList>
#include <optional>

namespace ladlework::ui {

/// What was typed into the cell of what was drunk.
struct DrinkCell {
    bool another = false;    ///< "+ 1/2 cup": one more drink of the day
    bool asAsked = false;    ///< "same", "=": the amount that was asked
    quantity::Volume volume; ///< 0 for "missed"; not set with asAsked
    QString from;            ///< "jar 1" of "3/4 from jar 1"; empty when it was not said
};

/// Reads "3/4", "250 ml", "2 tbsp", "+ 1/2 cup", "same", "=", "missed", "0", each also with what it
/// came out of: "3/4 from jar 1". BadInput with a sentence for anything else.
Result<DrinkCell> readDrink(const QString& text, quantity::MeasureSystem measures);

/// What was typed into the cell of how it was borne.
struct ReactionCell {
    bool another = false; ///< "+ headache 2": one more reaction of the day
    bool none = false;    ///< "fine", "none", blank: nothing was felt
    QString symptom;      ///< the full name from the list when a part of it was typed
    int strength = 0;     ///< 0-10
    bool redFlag = false;
    std::optional<int> startMinute; ///< "at 14:30"; minutes after midnight
    std::optional<int> minutes;     ///< "for 2 h"
};

/// A symptom of the list, as the cell needs it.
struct SymptomWord {
    QString name;
    bool redFlag = false;
};

/// Reads one reaction: "bloating 3", "+ headache 2 at 14:30 for 2 h", "fainting", "fine". The
/// strength, 0-10, may be left out only for a red flag, which counts as 10. A published red flag is
/// one in everyday words too (intake::redFlagIn); it keeps the words that were typed. The time it
/// began and how long it lasted come last and may be left out. BadInput with a sentence for
/// anything else.
Result<ReactionCell> readReaction(const QString& text, const QList<SymptomWord>& symptoms);

/// Reads all that was felt: "hives 3, trouble breathing 6" is two reactions (intake::feltItems).
/// Those after the first are always further ones. At least one cell; the problem of the first that
/// cannot be read.
Result<QList<ReactionCell>> readReactions(const QString& text, const QList<SymptomWord>& symptoms);

} // namespace ladlework::ui
