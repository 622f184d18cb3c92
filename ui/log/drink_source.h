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
};

/// Containers with something left, oldest first, then the family's pots. The first is "not said".
QList<DrinkSource> drinkSources(const casebook::Casebook& book);

/// The words for the source of one entry; empty when it was not said.
QString sourceWords(const casebook::Casebook& book, const intake::IntakeEntry& entry);

} // namespace ladlework::ui
