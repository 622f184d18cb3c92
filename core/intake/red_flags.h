#pragma once

#include "foundation/age_band.h"
#include "foundation/finding.h"

#include <QString>
#include <vector>

namespace ladlework::intake {

/// A row of resources/reference/symptoms.csv: the list a practice starts with.
struct SymptomKind {
    QString id;
    QString name;
    bool redFlag = false; ///< stops the ladder whatever its strength
    QString advice;       ///< for red flags: what to do; the emergency number comes first
    QString source;
};

/// All rows in the order of the file, red flags first. Broken resources are a broken invariant
/// (throws).
const std::vector<SymptomKind>& symptomKinds();

/// What to show at once when a red flag is entered, all of severity Stop: the number to call
/// ("red-flag-call"), what to do for this symptom when the list knows it by id or name
/// ("red-flag-do"), then the published signs of anaphylaxis ("red-flag-anaphylaxis") and, for
/// infants and children, of dehydration ("red-flag-dehydration"). A blank number is worded as the
/// local emergency number.
Findings redFlagFindings(const QString& symptom, AgeBand band, const QString& emergencyNumber);

} // namespace ladlework::intake
