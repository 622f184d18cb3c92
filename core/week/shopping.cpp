#include "week/shopping.h"

#include <QCoreApplication>
#include <algorithm>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shopping)
};
using Kind = kitchen::Extra::Kind;
using quantity::Mass;

ShopSection sectionOf(Kind kind) {
    switch (kind) {
    case Kind::Vegetable:
    case Kind::Garlic:
        return ShopSection::Vegetables;
    case Kind::FreshHerb:
        return ShopSection::Herbs;
    case Kind::DryHerb:
    case Kind::Peppercorns:
    case Kind::GroundPepper:
    case Kind::Salt:
    case Kind::Other:
        return ShopSection::Dry;
    }
    return ShopSection::Dry;
}

/// The list while it is being filled: items by id, so that a merge is one look-up. `needed` holds
/// the mass as it goes into the pot until finish() makes it what is bought.
class Basket {
public:
    Basket(const ShoppingInput& input, const kitchen::Catalogue& catalogue)
        : m_input(input), m_catalogue(catalogue) {}

    void add(const kitchen::Pot& pot) {
        for (const kitchen::CutInPot& cut : pot.cuts)
            addCut(cut);
        for (const kitchen::ExtraInPot& extra : pot.extras)
            addExtra(extra);
        if (pot.salt > Mass())
            merge(QStringLiteral("salt"), pot.salt, Words::tr("salt, table or mineral"),
                  ShopSection::Dry);
    }

    [[nodiscard]] QList<ShoppingItem> finished() {
        QList<ShoppingItem> items = m_items.values();
        for (ShoppingItem& item : items)
            finish(item);
        for (const HouseholdExtra& extra : m_input.extras)
            items.append(householdItem(extra));
        std::ranges::stable_sort(items, [](const ShoppingItem& a, const ShoppingItem& b) {
            if (a.section != b.section)
                return a.section < b.section;
            if (a.isHousehold() || b.isHousehold())
                return b.isHousehold() && !a.isHousehold();
            const int byName = QString::localeAwareCompare(a.name, b.name);
            return byName != 0 ? byName < 0 : a.id < b.id;
        });
        return items;
    }

private:
    void addCut(const kitchen::CutInPot& cut) {
        const kitchen::Cut* known = m_catalogue.cut(cut.cut);
        const bool fish = known != nullptr && known->cookClass == kitchen::CookClass::Fish;
        merge(cut.cut, cut.mass, known != nullptr ? known->name : cut.cut,
              fish ? ShopSection::Fish : ShopSection::Meat);
    }

    void addExtra(const kitchen::ExtraInPot& extra) {
        const kitchen::Extra* known = m_catalogue.extra(extra.item);
        merge(extra.item, extra.mass, known != nullptr ? known->name : extra.item,
              known != nullptr ? sectionOf(known->kind) : ShopSection::Dry);
    }

    void merge(const QString& id, Mass mass, const QString& name, ShopSection section) {
        ShoppingItem& item = m_items[id];
        item.id = id;
        item.name = name;
        item.section = section;
        item.needed += mass;
    }

    static ShoppingItem householdItem(const HouseholdExtra& extra) {
        ShoppingItem item;
        item.section = extra.section;
        item.name = extra.text;
        return item;
    }

    void finish(ShoppingItem& item) const {
        const Buying& buying = buyingOf(item.id);
        const double kept = 1.0 - buying.waste;
        const kitchen::Extra* extra = m_catalogue.extra(item.id);
        if (extra != nullptr && extra->piece > Mass()) {
            item.neededPieces = item.needed / extra->piece;
            item.pieceName = extra->pieceName;
        }
        item.needed = item.needed / kept;
        for (const AtHome& atHome : m_input.atHome)
            if (atHome.item == item.id)
                item.atHome += atHome.mass;
        roundUp(item, buying, extra != nullptr ? extra->piece / kept : Mass());
        const auto price = m_input.prices.constFind(item.id);
        if (price != m_input.prices.cend())
            item.cost = item.toBuy.toKilograms() * *price;
    }

    /// `piece` as it is bought, or nothing.
    void roundUp(ShoppingItem& item, const Buying& buying, Mass piece) const {
        const Mass missing = item.needed - item.atHome;
        if (buying.sold == Buying::Sold::ByWeight ||
            (buying.sold == Buying::Sold::Pieces && !(piece > Mass()))) {
            const Mass step = weightStep(m_input.measures);
            item.toBuy = step * wholeUnits(missing, step);
            return;
        }
        const bool packs = buying.sold == Buying::Sold::Packs;
        const Mass unit = packs ? buying.pack : piece;
        item.count = wholeUnits(missing, unit);
        item.countName =
            packs ? QCoreApplication::translate("Buying", buying.packName.toUtf8().constData())
                  : item.pieceName;
        item.toBuy = unit * item.count;
    }

    const ShoppingInput& m_input;
    const kitchen::Catalogue& m_catalogue;
    QHash<QString, ShoppingItem> m_items;
};
} // namespace

ShoppingList shoppingList(const ShoppingInput& input, const kitchen::Catalogue& catalogue) {
    Basket basket(input, catalogue);
    for (const kitchen::Pot& pot : input.pots)
        basket.add(pot);
    ShoppingList list;
    list.items = basket.finished();
    for (const ShoppingItem& item : std::as_const(list.items)) {
        if (item.cost)
            list.total += *item.cost;
        else if (!item.isAtHome())
            ++list.withoutPrice;
    }
    return list;
}

} // namespace ladlework::week
