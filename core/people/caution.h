#pragma once

#include "foundation/finding.h"
#include "foundation/id.h"
#include "foundation/result.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace ladlework::people {

/// A condition of a member that changes findings and prints on the handout.
struct Caution {
    CautionId id;
    MemberId member;
    QString kind;                        ///< an id of cautionKinds(): "kidney", "pregnant"
    QString detail;                      ///< the practitioner's words, may be empty
    std::optional<double> sodiumLimitMg; ///< a day; for "sodium-restricted"
};

/// A row of resources/reference/cautions.csv.
struct CautionKind {
    QString id;
    QString name;         ///< "Kidney disease"
    QString advice;       ///< "Ask the treating clinician before ..."
    QString source;       ///< with its basis
    QStringList keepsOut; ///< catalogue ids that may not enter this member's pots
};

/// All kinds, in the order of the file. Broken resources are a broken invariant (throws).
const std::vector<CautionKind>& cautionKinds();

/// The catalogue ids that a caution keeps out of the member's pots; empty for a kind that this
/// version does not know.
QStringList keptOut(const Caution& caution);

/// An allergy for which the list above is empty (no kind of food is known to it): nothing is kept
/// out until a tolerance note says what it is.
bool isUnnamedAllergy(const Caution& caution);

/// The kind exists; a sodium limit is 1 to 10,000 mg and only with "sodium-restricted".
Outcome check(const Caution& caution);

/// The caution as a finding that defers to the treating clinician: severity Caution, code
/// "caution-<kind>", the practitioner's words as the reason. A kind that this version does not know
/// still gives a finding.
Finding findingFor(const Caution& caution, const QString& memberName);

} // namespace ladlework::people
