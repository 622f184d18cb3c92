#include "week/shopping.h"

#include "foundation/reference_table.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace ladlework;
using namespace ladlework::week;
using quantity::Mass;
using Section = ShoppingItem::Section;

namespace {
class ShoppingTest : public ::testing::Test {
protected:
    ShoppingTest() : catalogue(*kitchen::Catalogue::load()) {}

    static kitchen::Pot potOf(QList<kitchen::CutInPot> cuts, QList<kitchen::ExtraInPot> extras,
                              double saltG = 0) {
        kitchen::Pot pot;
        pot.cuts = std::move(cuts);
        pot.extras = std::move(extras);
        pot.salt = Mass::fromGrams(saltG);
        return pot;
    }

    static const ShoppingItem& item(const QList<ShoppingItem>& list, const QString& id) {
        const auto found = std::ranges::find(list, id, &ShoppingItem::id);
        if (found == list.end())
            throw std::runtime_error("not in the list: " + id.toStdString());
        return *found;
    }

    kitchen::Catalogue catalogue;
};

Mass grams(double value) {
    return Mass::fromGrams(value);
}
} // namespace

TEST_F(ShoppingTest, mergesWhatSeveralPotsNeed) {
    const kitchen::Pot legs = potOf({{QStringLiteral("chicken-leg"), grams(1000), true}},
                                    {{QStringLiteral("onion"), grams(220)}}, 6);
    const kitchen::Pot more = potOf({{QStringLiteral("chicken-leg"), grams(500), true},
                                     {QStringLiteral("beef-shank"), grams(800), true}},
                                    {{QStringLiteral("onion"), grams(110)}});
    const QList<ShoppingItem> list = shoppingList({legs, more, legs}, catalogue);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("chicken-leg")).mass.toGrams(), 2500);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("beef-shank")).mass.toGrams(), 800);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("salt")).mass.toGrams(), 12);
    // USDA SR28 11282: a medium onion is 110 g of edible part: 550 g are five.
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("onion")).pieces, 5);
}

TEST_F(ShoppingTest, buysVegetablesWithTheirWaste) {
    const QList<ShoppingItem> list = shoppingList(
        {potOf({}, {{QStringLiteral("onion"), grams(220)}, {QStringLiteral("leek"), grams(89)}})},
        catalogue);
    // USDA SR28: refuse of onions 10 %, of leeks 56 % of the mass as bought.
    EXPECT_NEAR(item(list, QStringLiteral("onion")).mass.toGrams(), 220 / 0.90, 1e-9);
    EXPECT_NEAR(item(list, QStringLiteral("leek")).mass.toGrams(), 89 / 0.44, 1e-9);
}

TEST_F(ShoppingTest, buysWholePiecesAndNoneMoreForRounding) {
    const QList<ShoppingItem> list =
        shoppingList({potOf({}, {{QStringLiteral("carrot"), grams(61.0 * 3)},
                                 {QStringLiteral("celery"), grams(41)}})},
                     catalogue);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("carrot")).pieces, 3);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("celery")).pieces, 2); // a stalk is 40 g
}

TEST_F(ShoppingTest, ordersBySectionAndName) {
    const QList<ShoppingItem> list =
        shoppingList({potOf({{QStringLiteral("fish-head"), grams(900), true},
                             {QStringLiteral("chicken-wing"), grams(900), true},
                             {QStringLiteral("beef-shank"), grams(900), true}},
                            {{QStringLiteral("peppercorns"), grams(3)},
                             {QStringLiteral("parsley"), grams(5)},
                             {QStringLiteral("onion"), grams(110)},
                             {QStringLiteral("carrot"), grams(61)}},
                            6)},
                     catalogue);
    QStringList ids;
    for (const ShoppingItem& bought : list)
        ids.append(bought.id);
    EXPECT_EQ(ids.join(QLatin1Char(' ')),
              QStringLiteral("beef-shank chicken-wing fish-head carrot onion parsley peppercorns "
                             "salt"));
    EXPECT_EQ(item(list, QStringLiteral("fish-head")).section, Section::Fish);
    EXPECT_EQ(item(list, QStringLiteral("parsley")).section, Section::Herbs);
    EXPECT_EQ(item(list, QStringLiteral("salt")).section, Section::Dry);
}

TEST_F(ShoppingTest, aWeekWithoutPotsNeedsNothing) {
    EXPECT_TRUE(shoppingList({}, catalogue).isEmpty());
}

TEST_F(ShoppingTest, aCutThatIsUnknownIsStillBought) {
    const QList<ShoppingItem> list =
        shoppingList({potOf({{QStringLiteral("unheard-of"), grams(100), true}}, {})}, catalogue);
    ASSERT_EQ(list.size(), 1);
    EXPECT_EQ(list.first().name, QStringLiteral("unheard-of"));
}

TEST_F(ShoppingTest, everyIngredientOfTheCatalogueHasARowOfBuying) {
    const Result<ReferenceTable> table = ReferenceTable::load(QStringLiteral("buying"));
    ASSERT_TRUE(table);
    QStringList items;
    for (qsizetype index = 0; index < table->size(); ++index)
        items.append(table->row(index).text(QStringLiteral("item")));
    for (const kitchen::Extra& extra : catalogue.extras())
        EXPECT_TRUE(items.contains(extra.id)) << qPrintable(extra.id);
    EXPECT_EQ(static_cast<std::size_t>(items.size()), catalogue.extras().size());
}
