#include "store/volume_steps.h"

#include "store/records.h"
#include "store/rows.h"

namespace ladlework::store {

using namespace Qt::Literals::StringLiterals;

void setSteps(Database& database, StepsTable steps, qint64 owner,
              const QList<quantity::Volume>& volumes) {
    run(database, QStringLiteral("DELETE FROM %1 WHERE %2 = ?").arg(steps.table, steps.owner),
        owner);
    for (qint64 position = 0; position < volumes.size(); ++position)
        insertRow(database, steps.table,
                  {{steps.owner, owner},
                   {"position"_L1, position},
                   {"volume_ml"_L1, volumes.at(position).toMillilitres()}});
}

QHash<qint64, QList<quantity::Volume>> readSteps(Statement& rows, StepsTable steps) {
    QHash<qint64, QList<quantity::Volume>> volumes;
    while (rows.next())
        volumes[rows.whole(steps.owner)].append(
            quantity::Volume::fromMillilitres(rows.real("volume_ml"_L1)));
    return volumes;
}

} // namespace ladlework::store
