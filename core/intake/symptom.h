#pragma once

#include "foundation/id.h"
#include "foundation/result.h"

#include <QList>
#include <QString>

namespace ladlework::intake {

/// A line of the practice's own list of reactions. A new workbook starts with the ordinary ones of
/// resources/reference/symptoms.csv; the published red flags are always there beside them.
struct Symptom {
    SymptomId id;
    QString name;
    int position = 0;
    bool redFlag = false; ///< the practice wants this to stop the ladder whatever its strength
};

/// Name non-blank; position 0 or more.
Outcome check(const Symptom& symptom);

/// The ordinary reactions that a new workbook starts with, in order.
QList<Symptom> shippedSymptoms();

} // namespace ladlework::intake
