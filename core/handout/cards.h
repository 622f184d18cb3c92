#pragma once

#include "handout/page_context.h"

#include <optional>

namespace ladlework::handout {

/// Letterhead, the week, who drinks what in a line each, whom to call.
Card coverCard(const PageContext& context);

/// Seven days: the pots on the stove and each member's amount, then what is short or left over.
Card weekCard(const PageContext& context);

/// One card: what to buy into the pot, the steps with the clock times of each planned cooking, what
/// to strain and leave, the stock to expect, who may not.
Card potCard(const PageContext& context, const kitchen::Pot& pot);

/// One member's week to fill in with a pen, the steps, and when to go up, stay, go back or stop.
Card ladderCard(const PageContext& context, const casebook::Standing& standing);

/// The new tries of the week, a line each; of one member alone when one is given.
QStringList retryLines(const PageContext& context, std::optional<MemberId> only = {});

/// What the pots of the week need, by section, with boxes to tick.
Card shoppingCard(const PageContext& context);

/// How to cool, keep, freeze and reheat, and what is not covered.
Card keepingCard(const PageContext& context);

/// What to ask the treating clinician, what each does not have, the stop signs, whom to call.
Card cautionsCard(const PageContext& context);

} // namespace ladlework::handout
