#pragma once

#include "foundation/age_band.h"
#include "intake/ladder.h"
#include "intake/log.h"
#include "intake/target.h"

#include <QJsonObject>

namespace ladlework::intake {

/// What `reckon ladder` reads.
struct LadderInput {
    AgeBand band = AgeBand::Adult;
    quantity::Volume start;
    Target target;
    Ladder ladder; ///< rungs only when the input gives them
    QList<LogDay> log;
    QList<Decision> decisions;
    QDate today;
};

/// Reads the JSON strictly: BadInput with the JSON path as its place ("log[3].drunk_ml"). All keys
/// but `rungs_ml`, `rules` and the keys of `rules` must be there; a `worst_reaction` of null means
/// that none was entered. The start is at least one drop. Days after `today` or over 50 years
/// before it are refused.
Result<LadderInput> readLadderInput(const QJsonObject& object);

} // namespace ladlework::intake
