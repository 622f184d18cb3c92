#pragma once

#include "kitchen/brew.h"
#include "quantity/measure.h"
#include "week/week_plan.h"

#include <QDateTime>
#include <QStringList>
#include <QTimeZone>

namespace ladlework::casebook {

/// Something to be done at the pot. What the printed pages and the calendar say of it comes from
/// here, so that they cannot disagree.
struct CookingStep {
    enum class Kind { PutIn, Add, HeatOff };
    Kind kind = Kind::PutIn;
    quantity::Duration at; ///< from the start of the cooking
    QString what;          ///< "onion and garlic": what goes in, water left out; may be empty
    QString text;          ///< "Add onion and garlic."
    friend bool operator==(const CookingStep&, const CookingStep&) = default;
};

/// The steps of a pot in order of time; the last is always HeatOff, at the end of the simmer.
QList<CookingStep> cookingSteps(const kitchen::Pot& pot, const kitchen::Brewed& brewed,
                                quantity::MeasureSystem measures);

/// When a step of a planned cooking is due, in UTC, to the whole minute: so much time after the
/// clocks of the zone showed its start. Invalid while the start is not set.
QDateTime momentOfStep(const week::Placement& cooking, quantity::Duration at,
                       const QTimeZone& zone);

/// The names of what is strained out and of what is left in, meat and bones first.
QStringList strainedNames(const kitchen::Brewed& brewed, bool strained);

} // namespace ladlework::casebook
