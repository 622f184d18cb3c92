#pragma once

#include "quantity/volume.h"

#include <QHash>
#include <QLatin1StringView>
#include <QList>

namespace ladlework::store {

class Database;
class Statement;

/// The table of the ordered volumes of a record: the rungs of a ladder, the steps of a retry. It
/// has the columns `owner`, position and volume_ml.
struct StepsTable {
    QLatin1StringView table;
    QLatin1StringView owner;
};

/// Replaces the volumes of one record. Positions that are given again unchanged leave no change
/// behind.
void setSteps(Database& database, StepsTable steps, qint64 owner,
              const QList<quantity::Volume>& volumes);
/// The volumes by their record, from rows in order of position.
QHash<qint64, QList<quantity::Volume>> readSteps(Statement& rows, StepsTable steps);
/// Gives each record its volumes, from rows in order of position.
template <class Record>
void giveSteps(QList<Record>& records, QList<quantity::Volume> Record::*volumes, Statement& rows,
               StepsTable steps) {
    const auto byRecord = readSteps(rows, steps);
    for (Record& record : records)
        record.*volumes = byRecord.value(record.id.value);
}

} // namespace ladlework::store
