#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/mass.h"
#include "week/free_hours.h"
#include "week/shop_section.h"

#include <QDate>
#include <QList>
#include <QString>
#include <QTime>

namespace ladlework::week {

inline constexpr int daysAWeek = 7;

/// A pot put on a day.
struct Placement {
    QDate day;
    PotId pot;
    QTime start; ///< when the cooking begins; invalid while not set
    friend bool operator==(const Placement&, const Placement&) = default;
};

/// A day of one week that is not as usual.
struct DayHours {
    QDate day;
    QList<FreeHours> hours; ///< in place of the usual ones; none: no cooking on this day
    friend bool operator==(const DayHours&, const DayHours&) = default;
};

/// Something to buy that no pot asks for.
struct HouseholdExtra {
    QString text; ///< "two bags of rice", as it is to be read in the shop
    ShopSection section = ShopSection::Household;
    friend bool operator==(const HouseholdExtra&, const HouseholdExtra&) = default;
};

/// What of an ingredient the family has at home already this week.
struct AtHome {
    QString item; ///< cut or extra id of the catalogue, or "salt"
    quantity::Mass mass;
    friend bool operator==(const AtHome&, const AtHome&) = default;
};

/// One family's week: seven days from `start`.
struct WeekPlan {
    WeekPlanId id;
    FamilyId family;
    QDate start;
    QList<Placement> placements;
    QList<QDate> lockedDays; ///< their cookings stay as they are when the rest is planned anew
    QList<DayHours> hours;   ///< days that differ from the usual free hours
    QList<HouseholdExtra> extras;
    QList<AtHome> atHome;
    QString note;
    friend bool operator==(const WeekPlan&, const WeekPlan&) = default;
};

/// A valid start; every placement, locked day and day of own hours inside the seven days, the last
/// two at most once a day; at most 6 cookings a day; free hours as check(FreeHours) asks; extras
/// with words; what is at home not negative and each item once.
Outcome check(const WeekPlan& plan);

/// Nothing placed, locked, to buy or at home, no hours of its own and no note: not worth keeping.
bool isEmpty(const WeekPlan& plan);

/// The free hours of a date: the plan's own when it has some, else the usual ones of that weekday.
QList<FreeHours> hoursOn(const WeekPlan& plan, const QList<UsualHours>& usual, QDate day);

/// The Monday on or before a day: weeks start on Monday.
QDate weekStart(QDate day);

} // namespace ladlework::week
