#pragma once

#include "foundation/result.h"
#include "quantity/duration.h"

#include <QList>
#include <QTime>

namespace ladlework::week {

/// Time that a family has for cooking on one day: whatever is cooked in it starts and ends in it.
struct FreeHours {
    QTime from; ///< when it begins; invalid while not told
    quantity::Duration length;
    int pots = 1; ///< how many pots can be on at once
    friend bool operator==(const FreeHours&, const FreeHours&) = default;
};

/// The usual free hours of a family, by day of the week.
struct UsualHours {
    int weekday = 1; ///< 1 is Monday, 7 Sunday, as QDate::dayOfWeek()
    FreeHours hours;
    friend bool operator==(const UsualHours&, const UsualHours&) = default;
};

inline constexpr int mostPotsAtOnce = 6;

/// Length over 0 and up to 24 hours, 1 to 6 pots; the sentence and the place name the field.
Outcome check(const FreeHours& hours);
/// The same, and a day of the week from 1 to 7.
Outcome check(const UsualHours& usual);

} // namespace ladlework::week
