#pragma once

#include "foundation/id.h"
#include "foundation/result.h"

#include <QDate>
#include <QList>
#include <QString>
#include <QTime>

namespace ladlework::week {

inline constexpr int daysAWeek = 7;

/// A pot put on a day by hand.
struct Placement {
    QDate day;
    PotId pot;
    QTime start; ///< when the cooking begins; invalid while not set
    friend bool operator==(const Placement&, const Placement&) = default;
};

/// One family's week: seven days from `start`.
struct WeekPlan {
    WeekPlanId id;
    FamilyId family;
    QDate start;
    QList<Placement> placements;
    QString note;
};

/// A valid start; every placement inside the seven days; at most 6 cookings a day.
Outcome check(const WeekPlan& plan);

/// The Monday on or before a day: weeks start on Monday.
QDate weekStart(QDate day);

} // namespace ladlework::week
