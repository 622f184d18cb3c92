#pragma once

#include "kitchen/catalogue.h"
#include "kitchen/pot.h"
#include "quantity/mass.h"
#include "quantity/measure.h"
#include "week/buying.h"
#include "week/week_plan.h"

#include <QHash>
#include <QList>
#include <QString>
#include <optional>

namespace ladlework::week {

/// What a shopping list is made from.
struct ShoppingInput {
    QList<kitchen::Pot> pots; ///< a pot cooked twice is in the list twice
    QList<HouseholdExtra> extras;
    QList<AtHome> atHome;
    QHash<QString, double> prices; ///< per kilogram as it is bought, by cut or extra id, or "salt"
    quantity::MeasureSystem measures = quantity::MeasureSystem::UsCustomary;
};

/// One line of the list. All masses are as bought: what is thrown away in preparing included.
struct ShoppingItem {
    ShopSection section = ShopSection::Meat;
    QString id;   ///< cut or extra of the catalogue, or "salt"; empty for a household extra
    QString name; ///< for people; the words of a household extra
    quantity::Mass needed;
    quantity::Mass atHome;
    quantity::Mass toBuy;       ///< what is sold and not less than needed and not at home
    double neededPieces = 0;    ///< as a cook counts them; 0 for what is only weighed
    QString pieceName;          ///< of neededPieces: "medium onion", "clove", "tsp"
    double count = 0;           ///< whole pieces or packs to buy; 0 for what is sold by weight
    QString countName;          ///< of count: "medium onion", "head", "jar"
    std::optional<double> cost; ///< of what is bought; nothing without a price

    [[nodiscard]] bool isHousehold() const { return id.isEmpty(); }
    /// There is enough at home: the line stays in the list, so that it can be looked for.
    [[nodiscard]] bool isAtHome() const { return !isHousehold() && !(toBuy > quantity::Mass()); }
    friend bool operator==(const ShoppingItem&, const ShoppingItem&) = default;
};

struct ShoppingList {
    QList<ShoppingItem> items; ///< by section, and there by name; household extras as they stand
    double total = 0;          ///< of all that has a price
    int withoutPrice = 0;      ///< things to buy that the total does not hold
    friend bool operator==(const ShoppingList&, const ShoppingList&) = default;
};

/// What a week needs: its pots merged by item, and household extras beside them; what is at home
/// taken off, and the rest rounded up, once, to what a shop sells. What is at home of an item that
/// no pot needs is left out.
ShoppingList shoppingList(const ShoppingInput& input, const kitchen::Catalogue& catalogue);

} // namespace ladlework::week
