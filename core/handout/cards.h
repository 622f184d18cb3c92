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

/// A blank log of the week to fill in with a pen, a row for each member and day. The words over its
/// columns are those that the import of the log understands.
Card logSheetCard(const PageContext& context);

/// Labels for the jars of the week and for those kept now; no labels in it when there are none.
Card jarLabelsCard(const PageContext& context);

/// A page of the practitioner's own words.
Card ownWordsCard(const casebook::HandoutSection& section);

/// Own words as blocks: a paragraph a line, lines that begin with "- " or "* " as dots.
QList<Block> ownWordsBlocks(const QString& words);

/// Who hands the pages out; without any text when the practice is nameless.
Letterhead letterheadOf(const PageContext& context);

} // namespace ladlework::handout
