#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "kitchen/pot.h"
#include "quantity/volume.h"

#include <QDate>
#include <QString>
#include <optional>

namespace ladlework::kitchen {

/// How a batch was cooked: what the pot asked for at the time, or what was done instead.
struct AsCooked {
    VesselId vessel; ///< 0: not known
    Vessel::Lid lid = Vessel::Lid::Ajar;
    quantity::Volume water;
    quantity::Duration simmer;
    friend bool operator==(const AsCooked&, const AsCooked&) = default;
};

/// What a pot asks for, in the vessel that it is cooked in (null: not known).
AsCooked asPlanned(const Pot& pot, const Vessel* vessel);

/// One real cooking of a pot.
struct Batch {
    BatchId id;
    FamilyId family;
    PotId pot;
    QDate day;
    AsCooked cooked;
    std::optional<quantity::Volume> yield; ///< measured stock that came out
    QString note;
};

/// A stored container of a batch.
struct Lot {
    enum class Place { Fridge, Freezer };

    LotId id;
    BatchId batch;
    QString container; ///< "jar 1", "1 L box"
    quantity::Volume volume;
    Place place = Place::Fridge;
    QDate stored;
    QDate useBy;
    QDate goneOn; ///< thrown away or given away on this day; null while kept
};

/// Water and yield positive and at most 100 L, simmer up to 7 days, day not after `today`.
Outcome check(const Batch& batch, QDate today);
/// Volume positive and at most 100 L, use-by not before the day it was stored; in the refrigerator
/// not later than the published most allows (resources/reference/keeping.csv, soup-fridge-most).
Outcome check(const Lot& lot);

QString lotPlaceId(Lot::Place place); ///< "fridge", "freezer"
std::optional<Lot::Place> lotPlaceFromId(QStringView id);

} // namespace ladlework::kitchen
