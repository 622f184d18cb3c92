#pragma once

#include "foundation/id.h"
#include "foundation/result.h"
#include "quantity/measure.h"
#include "quantity/volume.h"

#include <QDate>
#include <QList>
#include <QString>

namespace ladlework::intake {

/// The practice's rules for the ladder machine; the defaults are common practice and editable.
/// Strengths are 0-10 and 0 <= mildTo <= moderateTo <= strongTo <= 10.
struct LadderRules {
    double goodShare = 0.9;
    int mildTo = 2;
    int moderateTo = 5;
    int strongTo = 8;
    int daysToAdvance = 3;
    int holdDays = 3;
    int moderateWindowDays = 3;
    int staleDays = 5;
    int rungsBack = 1;
    int holdTargetDays = 90;
    friend bool operator==(const LadderRules&, const LadderRules&) = default;
};

/// goodShare in (0, 1]; strengths ordered and in 0-10; daysToAdvance and staleDays 1 to 365;
/// holdDays 0 to 365 (0: no hold after a step back); moderateWindowDays 0 to 365 (the window ends
/// today, so 0 and 1 never find another day: two moderate days are then never counted together);
/// rungsBack 1 to 20; holdTargetDays 1 to 730. The place of the Problem is the field ("holdDays").
Outcome check(const LadderRules& rules);

/// The ordered amounts of a member from first sip to target; in force from a day on, until a later
/// ladder of the same member. The log before `from` does not move it.
struct Ladder {
    LadderId id;
    MemberId member;
    QDate from;
    QList<quantity::Volume> rungs; ///< at least one, each more than the one before
    LadderRules rules;
};

/// At least one rung, all positive and strictly increasing, none above 4 L; rules in range. The
/// place of the Problem is the field ("rungs[2]", "holdDays").
Outcome check(const Ladder& ladder);

/// A practitioner's recorded decision to go on after a stop. It takes effect on its day when the
/// ladder stands stopped that morning: on the day of the stop itself, and on any day that is not
/// stopped, it has no effect. A rung beyond the ladder is taken as its last one; of several
/// decisions of one day the one that resumes lowest holds.
struct Decision {
    DecisionId id;
    MemberId member;
    QDate day;
    int resumeAtRung = 0;
    QString reason;
};

/// True when a step asks more than rungs are designed with: from a teaspoon up (a smaller amount
/// counts as a teaspoon) more than 2.5 times the amount before it or more than a cup above it. The
/// figures are in resources/reference/ladder-figures.csv; the teaspoon is that of the system.
bool isLeap(quantity::Volume before, quantity::Volume next, quantity::MeasureSystem system);

/// Rungs from `start` to `targetLow`: the first is the start, the last the low end of the target,
/// each more than the one before and (from a teaspoon up) at most 2.5 times it and at most a cup
/// above it, each a measure that the kitchen has (resources/reference/rung-measures.csv). A start
/// at or above the target gives one rung, the target. Inner rungs are about double the one before
/// at the bottom and half a cup (metric: 100 mL) more at the top; one that lies less than a quarter
/// above the start or below the target is left out where the limits allow it. Start and target
/// stand as given. BadInput (place "start" or "target") when one is not positive or above 4 L.
Result<QList<quantity::Volume>> designRungs(quantity::Volume start, quantity::Volume targetLow,
                                            quantity::MeasureSystem system);

} // namespace ladlework::intake
