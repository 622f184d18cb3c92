#pragma once

#include "foundation/finding.h"
#include "foundation/id.h"
#include "kitchen/batch.h"
#include "quantity/measure.h"
#include "quantity/volume.h"

#include <QDate>
#include <QList>
#include <QString>

namespace ladlework::week {

/// What a member should drink on each day of the horizon, spill not included.
struct Demand {
    MemberId member;
    QString name;
    QList<quantity::Volume> perDay;
};

/// Stock that can be drunk: a lot on hand or a cooking of the plan.
struct Source {
    QString name; ///< "Chicken legs, Tuesday"
    LotId lot;    ///< set for a lot on hand
    PotId pot;    ///< set for a cooking of the plan
    quantity::Volume volume;
    kitchen::Lot::Place place = kitchen::Lot::Place::Fridge;
    int readyDay = 0;    ///< first day of the horizon it can be drunk
    int lastDay = 0;     ///< last day it is good; freezer lots: the last day
    QList<MemberId> may; ///< who may drink it
};

struct OutlookInput {
    QDate start;
    int days = 7;
    QList<Demand> demands;
    QList<Source> sources;
    double spill = 0.10;
    quantity::Volume fridgeRoom;
    quantity::Volume freezerRoom;
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary; ///< of the findings
};

struct Serving {
    int day = 0;
    MemberId member;
    qsizetype source = 0; ///< index into OutlookInput::sources
    quantity::Volume volume;
};

struct OutlookDay {
    QDate day;
    quantity::Volume wanted; ///< with spill
    quantity::Volume served;
    quantity::Volume shortBy;
    quantity::Volume spoilt;    ///< in the fridge, this was its last day and it was not drunk
    quantity::Volume inFridge;  ///< at the end of the day, with what thaws for the next day
    quantity::Volume inFreezer; ///< at the end of the day, without what thaws
};

/// How a week placed by hand goes: who drinks what of which, what is short, what spoils.
struct Outlook {
    QList<OutlookDay> days;
    QList<Serving> servings;
    Findings findings; ///< short days with names, spoilage, no room
};

/// Serves each day oldest stock first, members with the fewest choices first, and on each day as
/// much in all as can be (a maximum flow between sources and members). Pure and deterministic.
/// Amounts served hold the spill. A lot on hand stands in its place from the first day on, a
/// cooking from its readyDay. A member missing from a short `perDay` list wants nothing on the days
/// it does not reach. Findings: "week-short" (a day, with names), "nothing-to-drink" and
/// "may-not-drink-rest" (a member who is short while stock stands), "week-spoilt" (a source),
/// "fridge-full" and "freezer-full" (a day); values and limits in mL.
Outlook outlook(const OutlookInput& input);

} // namespace ladlework::week
