#pragma once

#include "casebook/casebook.h"
#include "week/free_hours.h"
#include "week/week_plan.h"

#include <QDate>
#include <QList>

namespace ladlework::ui {

/// What the line of a day shows.
struct DayHoursShown {
    QDate day;
    QList<week::FreeHours> hours; ///< in force on the day
    bool own = false;             ///< they are the day's own, not the usual ones
    bool toldAtAll = true;        ///< false: the family has no usual hours yet
    bool past = false;
    quantity::Duration longest; ///< what the longest pot needs: the length of new hours
};

DayHoursShown hoursOfDay(const casebook::Casebook& casebook, const week::WeekPlan& plan, QDate day);

} // namespace ladlework::ui
