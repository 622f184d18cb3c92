#pragma once

#include "foundation/finding.h"
#include "foundation/id.h"
#include "foundation/result.h"

#include <QDate>
#include <QList>
#include <QString>

namespace ladlework::people {

/// Something that the practitioner follows over time: the weight, or whatever she names.
struct Observation {
    ObservationId id;
    MemberId member;
    QDate day;
    QString kind; ///< "weight" for body weight in kilograms; else the practitioner's own word
    double value = 0;
    QString unit; ///< "kg" for weight; free words else, may be empty
    QString note;
};

/// The kind of a body weight.
QString weightKind();

/// Day valid and not after `today`; kind non-blank; a weight 0.5 to 400 kg; other values finite and
/// within a million. The place of the Problem is the field.
Outcome check(const Observation& observation, QDate today);

/// The first day whose weights weightFindings() may still look at on `today`.
QDate weightsCountFrom(QDate today);

/// The published caution on weight: more than 5 % lost within the window of
/// resources/reference/observation-figures.csv; worded to ask the treating clinician; for a child
/// any loss. `child`: the member is not an adult. Empty when there is nothing to say.
Findings weightFindings(const QList<Observation>& ofMember, bool child, QDate today);

} // namespace ladlework::people
