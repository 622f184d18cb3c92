#pragma once

#include "intake/log.h"
#include "intake/patterns.h"
#include "kitchen/catalogue.h"
#include "kitchen/pot.h"

#include <QHash>

namespace ladlework::intake {

/// Where drinks come from: the pot of each stored container.
using PotOfLot = QHash<LotId, PotId>;

/// The pot behind an entry: its own, else that of its container; not stored (0) when neither is
/// known.
PotId potOf(const IntakeEntry& entry, const PotOfLot& potOfLot);

/// What someone takes with a pot: its animals with those that they count as (veal as beef), its
/// cuts and its extras, by catalogue id and each once. Water and salt are no subjects.
QStringList subjectsOf(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue);

/// The days of one member for patterns(), in order of day: every day with an entry or a reaction,
/// with the subjects of all that was drunk on it and its worst reaction. A day on which something
/// was drunk of a pot that nobody knows (none recorded, or `subjects` has nothing for it) is left
/// out, since nobody can say what it exposed to; a day of nothing drunk is a day without exposures.
/// A red flag counts as a reaction of the greatest strength.
QList<PatternDay> exposureDays(const QList<IntakeEntry>& entries, const QList<Reaction>& reactions,
                               const QHash<PotId, QStringList>& subjects, const PotOfLot& potOfLot);

} // namespace ladlework::intake
