#pragma once

#include "foundation/age_band.h"
#include "foundation/finding.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace ladlework::intake {

/// A row of resources/reference/symptoms.csv: the list a practice starts with.
struct SymptomKind {
    QString id;
    QString name;
    bool redFlag = false; ///< stops the ladder whatever its strength
    QString advice;       ///< for red flags: what to do; the emergency number comes first
    QString source;
    QStringList also; ///< everyday words for the same sign, lower case
};

/// All rows in the order of the file, red flags first. Broken resources are a broken invariant
/// (throws).
const std::vector<SymptomKind>& symptomKinds();

/// The published red flag that these words speak of: by its id or name, or because its name or one
/// of its everyday forms stands in them as whole words, in any case ("Wheezing since noon",
/// "swelling of the tongue"). The first of the list when there are several; null when there is
/// none. The one place where words are taken for a red flag.
const SymptomKind* redFlagIn(const QString& typed);

/// What to show at once when a red flag is entered, all of severity Stop: the number to call
/// ("red-flag-call"), what to do for this symptom when redFlagIn() knows it
/// ("red-flag-do"), then the published signs of anaphylaxis ("red-flag-anaphylaxis") and, for
/// infants and children, of dehydration ("red-flag-dehydration"). A blank number is worded as the
/// local emergency number.
Findings redFlagFindings(const QString& symptom, AgeBand band, const QString& emergencyNumber);

} // namespace ladlework::intake
