#pragma once

#include "casebook/called_name.h"
#include "foundation/result.h"
#include "quantity/duration.h"
#include "quantity/volume.h"
#include "week/week_plan.h"

#include <QDate>
#include <QList>
#include <QString>
#include <QTime>

namespace ladlework::calendar {

/// Stock that is to go from the freezer into the refrigerator.
struct ThawMove {
    QDate day;
    QString what; ///< "Chicken legs, jar 2"
    quantity::Volume volume;
};

/// What goes into a calendar, and how.
struct CalendarOptions {
    QDate from;
    int days = week::daysAWeek; ///< 1 to mostCalendarDays
    casebook::Names names = casebook::Names::First;
    bool familyInTitles = false; ///< for a calendar of several families
    QList<ThawMove> thaws;
    /// How long before the start of a cooking its alarm rings.
    quantity::Duration aheadOfCooking = quantity::Duration::fromMinutes(15);
    /// How long before a time limit its entry begins and its alarm rings.
    quantity::Duration aheadOfLimit = quantity::Duration::fromMinutes(30);
    QTime morning = QTime(8, 0); ///< when the alarm of a whole day rings
};

inline constexpr int mostCalendarDays = 28;

/// A day to begin with, 1 to 28 days, alarms 0 to 24 hours ahead, a morning, thaw moves with a day,
/// words and an amount. The place names the field.
Outcome check(const CalendarOptions& options);

} // namespace ladlework::calendar
