#include "week/shopping.h"

#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <QHash>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shopping)
};
using Section = ShoppingItem::Section;
using Kind = kitchen::Extra::Kind;

/// How an ingredient is bought: a row of resources/reference/buying.csv.
struct Buying {
    double waste = 0;   ///< share of the mass bought
    bool whole = false; ///< sold by the piece
};

QHash<QString, Buying> loadBuying() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("buying")));
    QHash<QString, Buying> rows;
    for (qsizetype index = 0; index < table.size(); ++index) {
        const ReferenceTable::Row row = table.row(index);
        const double waste = row.number(QStringLiteral("waste"));
        if (waste < 0 || waste >= 1)
            throw std::runtime_error("buying.csv: a waste share is outside 0 to 1");
        rows.insert(row.text(QStringLiteral("item")), {waste, row.flag(QStringLiteral("whole"))});
    }
    return rows;
}

const QHash<QString, Buying>& buying() {
    static const QHash<QString, Buying> rows = loadBuying();
    return rows;
}

Section sectionOf(Kind kind) {
    switch (kind) {
    case Kind::Vegetable:
    case Kind::Garlic:
        return Section::Vegetables;
    case Kind::FreshHerb:
        return Section::Herbs;
    case Kind::DryHerb:
    case Kind::Peppercorns:
    case Kind::GroundPepper:
    case Kind::Salt:
    case Kind::Other:
        return Section::Dry;
    }
    return Section::Dry;
}

/// The list while it is being filled: items by id, so that a merge is one look-up.
class Basket {
public:
    explicit Basket(const kitchen::Catalogue& catalogue) : m_catalogue(catalogue) {}

    void addCut(const kitchen::CutInPot& cut) {
        ShoppingItem item;
        item.id = cut.cut;
        item.name = cut.cut;
        if (const kitchen::Cut* known = m_catalogue.cut(cut.cut)) {
            item.name = known->name;
            const kitchen::Animal* animal = m_catalogue.animal(known->animal);
            if (animal != nullptr && animal->cookClass == kitchen::CookClass::Fish)
                item.section = Section::Fish;
        }
        add(item, cut.mass);
    }

    void addExtra(const kitchen::ExtraInPot& extra) {
        ShoppingItem item;
        item.id = extra.item;
        item.name = extra.item;
        item.section = Section::Dry;
        if (const kitchen::Extra* known = m_catalogue.extra(extra.item)) {
            item.name = known->name;
            item.section = sectionOf(known->kind);
        }
        add(item, extra.mass);
    }

    void addSalt(quantity::Mass mass) {
        if (mass <= quantity::Mass())
            return;
        ShoppingItem item;
        item.id = QStringLiteral("salt");
        item.name = Words::tr("salt, table or mineral");
        item.section = Section::Dry;
        add(item, mass);
    }

    [[nodiscard]] QList<ShoppingItem> sorted() {
        QList<ShoppingItem> items = m_items.values();
        for (ShoppingItem& item : items)
            toBuy(item);
        std::ranges::sort(items, [](const ShoppingItem& a, const ShoppingItem& b) {
            if (a.section != b.section)
                return a.section < b.section;
            const int byName = QString::localeAwareCompare(a.name, b.name);
            return byName != 0 ? byName < 0 : a.id < b.id;
        });
        return items;
    }

private:
    void add(ShoppingItem item, quantity::Mass mass) {
        const auto found = m_items.find(item.id);
        if (found != m_items.end()) {
            found->mass += mass;
            return;
        }
        item.mass = mass;
        m_items.insert(item.id, item);
    }

    /// From the prepared mass to what is bought: whole pieces where a shop sells pieces, and the
    /// waste of preparing on top of the mass.
    void toBuy(ShoppingItem& item) const {
        const kitchen::Extra* extra = m_catalogue.extra(item.id);
        if (extra == nullptr)
            return;
        const Buying how = buying().value(item.id);
        if (how.whole && extra->piece > quantity::Mass()) {
            // A hair over a whole piece is rounding, not one piece more.
            item.pieces = std::ceil(item.mass / extra->piece - 1e-6);
            item.pieceName = extra->pieceName;
            item.mass = extra->piece * item.pieces;
        }
        item.mass = item.mass / (1.0 - how.waste);
    }

    const kitchen::Catalogue& m_catalogue;
    QHash<QString, ShoppingItem> m_items;
};
} // namespace

QList<ShoppingItem> shoppingList(const QList<kitchen::Pot>& pots,
                                 const kitchen::Catalogue& catalogue) {
    Basket basket(catalogue);
    for (const kitchen::Pot& pot : pots) {
        for (const kitchen::CutInPot& cut : pot.cuts)
            basket.addCut(cut);
        for (const kitchen::ExtraInPot& extra : pot.extras)
            basket.addExtra(extra);
        basket.addSalt(pot.salt);
    }
    return basket.sorted();
}

} // namespace ladlework::week
