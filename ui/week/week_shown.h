#pragma once

#include "casebook/casebook.h"
#include "week/week_solver.h"

#include <QDate>
#include <QList>
#include <QStringList>

namespace ladlework::ui {

/// A day of a week as the screen shows it. Amounts hold the spill.
struct ShownDay {
    QDate day;
    bool past = false; ///< over before the plan that is shown begins
    quantity::Volume wanted;
    quantity::Volume served;
    quantity::Volume shortBy;
    quantity::Volume spoilt;
    quantity::Volume inFridge; ///< at the end of the day, without what spoils then
    quantity::Volume inFreezer;
    QStringList moves;      ///< "move 2 cups of Chicken legs from the freezer to the refrigerator"
    QStringList shortMoves; ///< "thaw 2 cups"
    quantity::Mass meat;    ///< cooked meat that there is for the table
};

/// What one member gets on one day.
struct ShownAmounts {
    quantity::Volume wanted;
    quantity::Volume served;
    QStringList from; ///< "1/2 cup of Chicken legs, Tuesday"
};

/// Seven days of a plan and how they go, in the form that picture and table show.
struct WeekShown {
    QList<ShownDay> days;
    QStringList names;                  ///< of the members
    QList<QList<ShownAmounts>> members; ///< by member and day
    double spill = 0;
    quantity::Mass meatPerDay; ///< what the table eats
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
};

/// `monday` is the first of the seven days; those before the first of `ahead` are past.
WeekShown shownWeek(QDate monday, const casebook::WeekAhead& ahead,
                    const week::WeekSolution& solution, quantity::MeasureSystem measures);

} // namespace ladlework::ui
