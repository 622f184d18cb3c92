#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "quantity/mass.h"

#include <QList>
#include <QString>

namespace ladlework::week {

struct ShoppingItem {
    enum class Section { Meat, Fish, Vegetables, Herbs, Dry };
    Section section = Section::Meat;
    QString id;
    QString name;
    quantity::Mass mass; ///< to buy: waste of vegetables included
    double pieces = 0;   ///< whole pieces to buy; 0 when sold by weight
    QString pieceName;
};

/// What the pots of a week need, merged by item and ordered by section and name. A pot cooked
/// twice is in the list twice.
QList<ShoppingItem> shoppingList(const QList<kitchen::Pot>& pots,
                                 const kitchen::Catalogue& catalogue);

} // namespace ladlework::week
