#pragma once

#include "casebook/casebook.h"

#include <QList>
#include <QString>

namespace ladlework::ui {

/// What a drink can have come from: a stored container, or just a pot.
struct DrinkSource {
    QString name; ///< "jar 1 of Chicken legs, 3 cups left"
    PotId pot;
    LotId lot;
    bool pastUse = false;
};

/// Containers with something left, oldest first, then the family's pots. The first is "not said".
QList<DrinkSource> drinkSources(const casebook::Casebook& book);

/// The words for the source of one entry; empty when it was not said.
QString sourceWords(const casebook::Casebook& book, const intake::IntakeEntry& entry);

/// The source that `typed` means: the oldest container with it in its name (one past its use-by day
/// last), else the pot of that name or the only one with it in its name. BadInput when nothing is
/// called so, or several pots are.
Result<DrinkSource> findSource(const casebook::Casebook& book, const QString& typed);

} // namespace ladlework::ui
