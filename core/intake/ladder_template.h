#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/measure.h"
#include "quantity/volume.h"

#include <QList>
#include <QString>

namespace ladlework::intake {

/// Rungs that the practice keeps under a name, to give to members.
struct LadderTemplate {
    LadderTemplateId id;
    QString name;
    QList<quantity::Volume> rungs;
};

/// Name non-blank; rungs as of a ladder.
Outcome check(const LadderTemplate& ladderTemplate);

/// The rungs of a template for a member whose target begins at `targetLow`: those below it, then
/// the target itself. Where the step to the target would be a leap (isLeap()), designed rungs fill
/// the gap; the steps within the template stay as the practice keeps them.
QList<quantity::Volume> rungsUpTo(const LadderTemplate& ladderTemplate, quantity::Volume targetLow,
                                  quantity::MeasureSystem system);

} // namespace ladlework::intake
