#include "week/shopping.h"

#include "foundation/reference_table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <stdexcept>

using namespace ladlework;
using namespace ladlework::week;
using quantity::Mass;

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

    [[nodiscard]] QList<ShoppingItem> itemsOf(const ShoppingInput& input) const {
        return shoppingList(input, catalogue).items;
    }
    [[nodiscard]] QList<ShoppingItem> itemsOf(QList<kitchen::Pot> pots) const {
        ShoppingInput input;
        input.pots = std::move(pots);
        return itemsOf(input);
    }

    static ShoppingItem item(const QList<ShoppingItem>& list, const QString& id) {
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
    const QList<ShoppingItem> list = itemsOf({legs, more, legs});
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("chicken-leg")).needed.toGrams(), 2500);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("beef-shank")).needed.toGrams(), 800);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("salt")).needed.toGrams(), 12);
    // USDA SR28 11282: a medium onion is 110 g of edible part: 550 g are five.
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("onion")).count, 5);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("onion")).neededPieces, 5);
}

TEST_F(ShoppingTest, meatIsBoughtByQuarterPoundsOrByHundredGrams) {
    ShoppingInput input;
    // 3 lb 1 oz and 2.5 lb: the first needs another quarter pound, the second none.
    input.pots = {potOf({{QStringLiteral("chicken-leg"), Mass::fromOunces(49), true},
                         {QStringLiteral("beef-shank"), Mass::fromPounds(2.5), true}},
                        {})};
    QList<ShoppingItem> list = itemsOf(input);
    // NIST Handbook 44: a pound is 453.59237 g, so a quarter is 113.3981 g.
    EXPECT_NEAR(item(list, QStringLiteral("chicken-leg")).toBuy.toPounds(), 3.25, 1e-5);
    EXPECT_NEAR(item(list, QStringLiteral("beef-shank")).toBuy.toPounds(), 2.5, 1e-5);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("beef-shank")).count, 0);
    input.measures = quantity::MeasureSystem::Metric;
    list = itemsOf(input);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("chicken-leg")).toBuy.toGrams(), 1400); // 1389 g
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("beef-shank")).toBuy.toGrams(), 1200);  // 1134 g
}

TEST_F(ShoppingTest, buysVegetablesWithTheirWaste) {
    const QList<ShoppingItem> list = itemsOf(
        {potOf({}, {{QStringLiteral("onion"), grams(220)}, {QStringLiteral("leek"), grams(89)}})});
    // USDA SR28: refuse of onions 10 %, of leeks 56 % of the mass as bought.
    EXPECT_NEAR(item(list, QStringLiteral("onion")).toBuy.toGrams(), 220 / 0.90, 1e-9);
    EXPECT_NEAR(item(list, QStringLiteral("leek")).toBuy.toGrams(), 89 / 0.44, 1e-9);
}

TEST_F(ShoppingTest, buysWholePiecesAndNoneMoreForRounding) {
    const QList<ShoppingItem> list =
        itemsOf({potOf({}, {{QStringLiteral("carrot"), grams(61.0 * 3)},
                            {QStringLiteral("turnip"), grams(123)}})});
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("carrot")).count, 3);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("turnip")).count, 2); // a turnip is 122 g
}

TEST_F(ShoppingTest, buysHerbsByTheBunchGarlicByTheHeadAndSpicesByTheJar) {
    const QList<ShoppingItem> list = itemsOf({potOf({},
                                                    {{QStringLiteral("parsley"), grams(6)},
                                                     {QStringLiteral("garlic"), grams(9)},
                                                     {QStringLiteral("celery"), grams(80)},
                                                     {QStringLiteral("peppercorns"), grams(2.9)}},
                                                    9)});
    const ShoppingItem parsley = item(list, QStringLiteral("parsley"));
    EXPECT_DOUBLE_EQ(parsley.count, 1);
    EXPECT_EQ(parsley.countName, QStringLiteral("bunch"));
    EXPECT_DOUBLE_EQ(parsley.neededPieces, 6); // sprigs of 1 g
    const ShoppingItem garlic = item(list, QStringLiteral("garlic"));
    EXPECT_EQ(garlic.countName, QStringLiteral("head"));
    EXPECT_DOUBLE_EQ(garlic.count, 1);
    EXPECT_DOUBLE_EQ(garlic.neededPieces, 3); // USDA SR28 11215: a clove is 3 g
    EXPECT_EQ(item(list, QStringLiteral("celery")).countName, QStringLiteral("bunch"));
    EXPECT_EQ(item(list, QStringLiteral("peppercorns")).countName, QStringLiteral("jar"));
    EXPECT_EQ(item(list, QStringLiteral("salt")).countName, QStringLiteral("packet"));
}

TEST_F(ShoppingTest, takesOffWhatIsAtHomeBeforeItRoundsUp) {
    ShoppingInput input;
    input.pots = {potOf({{QStringLiteral("chicken-leg"), Mass::fromPounds(3), true},
                         {QStringLiteral("beef-shank"), Mass::fromPounds(2), true}},
                        {{QStringLiteral("onion"), grams(330)}}, 9)};
    // As it lies in the kitchen: an onion of 110 g edible part weighs 122.2 g.
    input.atHome = {{QStringLiteral("chicken-leg"), Mass::fromOunces(20)},
                    {QStringLiteral("beef-shank"), Mass::fromPounds(5)},
                    {QStringLiteral("onion"), grams(123)},
                    {QStringLiteral("salt"), grams(9)},
                    {QStringLiteral("leek"), grams(200)}}; // no pot asks for it
    const QList<ShoppingItem> list = itemsOf(input);
    EXPECT_EQ(list.size(), 4);
    // 48 - 20 = 28 oz: seven quarter pounds.
    EXPECT_NEAR(item(list, QStringLiteral("chicken-leg")).toBuy.toPounds(), 1.75, 1e-5);
    EXPECT_DOUBLE_EQ(item(list, QStringLiteral("onion")).count, 2);
    for (const QString& id : {QStringLiteral("beef-shank"), QStringLiteral("salt")}) {
        const ShoppingItem enough = item(list, id);
        EXPECT_TRUE(enough.isAtHome()) << qPrintable(id);
        EXPECT_EQ(enough.toBuy, Mass());
        EXPECT_DOUBLE_EQ(enough.count, 0);
    }
    EXPECT_FALSE(item(list, QStringLiteral("onion")).isAtHome());
}

TEST_F(ShoppingTest, addsUpWhatHasAPriceAndCountsWhatHasNone) {
    ShoppingInput input;
    input.measures = quantity::MeasureSystem::Metric;
    input.pots = {
        potOf({{QStringLiteral("chicken-leg"), grams(1450), true},
               {QStringLiteral("beef-shank"), grams(500), true}},
              {{QStringLiteral("onion"), grams(110)}, {QStringLiteral("leek"), grams(89)}})};
    input.extras = {{QStringLiteral("rice"), ShopSection::Dry}};
    input.atHome = {{QStringLiteral("leek"), grams(5000)}};
    input.prices = {{QStringLiteral("chicken-leg"), 4.0}, {QStringLiteral("onion"), 1.8}};
    const ShoppingList list = shoppingList(input, catalogue);
    // 1.5 kg of legs at 4.00 and an onion of 122.2 g at 1.80 a kilogram.
    EXPECT_NEAR(list.total, 6.0 + 0.22, 1e-9);
    EXPECT_EQ(list.withoutPrice, 2); // shank and rice; the leeks are at home
    EXPECT_NEAR(item(list.items, QStringLiteral("chicken-leg")).cost.value_or(0), 6.0, 1e-9);
    EXPECT_FALSE(item(list.items, QStringLiteral("beef-shank")).cost);
}

TEST_F(ShoppingTest, ordersBySectionAndNameAndPutsHouseholdExtrasLastInTheirs) {
    ShoppingInput input;
    input.pots = {potOf({{QStringLiteral("fish-head"), grams(900), true},
                         {QStringLiteral("chicken-wing"), grams(900), true},
                         {QStringLiteral("beef-shank"), grams(900), true}},
                        {{QStringLiteral("peppercorns"), grams(3)},
                         {QStringLiteral("parsley"), grams(5)},
                         {QStringLiteral("onion"), grams(110)},
                         {QStringLiteral("carrot"), grams(61)}},
                        6)};
    input.extras = {{QStringLiteral("washing powder"), ShopSection::Household},
                    {QStringLiteral("a trout"), ShopSection::Fish},
                    {QStringLiteral("batteries"), ShopSection::Household}};
    const QList<ShoppingItem> list = itemsOf(input);
    QStringList names;
    for (const ShoppingItem& bought : list)
        names.append(bought.isHousehold() ? bought.name : bought.id);
    EXPECT_EQ(names.join(QLatin1Char('|')),
              QStringLiteral("beef-shank|chicken-wing|fish-head|a trout|carrot|onion|parsley|"
                             "peppercorns|salt|washing powder|batteries"));
    EXPECT_EQ(item(list, QStringLiteral("fish-head")).section, ShopSection::Fish);
    EXPECT_EQ(item(list, QStringLiteral("parsley")).section, ShopSection::Herbs);
    EXPECT_EQ(item(list, QStringLiteral("salt")).section, ShopSection::Dry);
}

TEST_F(ShoppingTest, aWeekWithoutPotsNeedsNothing) {
    const ShoppingList list = shoppingList({}, catalogue);
    EXPECT_EQ(list, ShoppingList());
}

TEST_F(ShoppingTest, aCutThatIsUnknownIsStillBought) {
    const QList<ShoppingItem> list =
        itemsOf({potOf({{QStringLiteral("unheard-of"), grams(100), true}}, {})});
    ASSERT_EQ(list.size(), 1);
    EXPECT_EQ(list.first().name, QStringLiteral("unheard-of"));
    EXPECT_GE(list.first().toBuy, grams(100));
}

TEST_F(ShoppingTest, everyIngredientOfTheCatalogueHasARowOfBuying) {
    const Result<ReferenceTable> table = ReferenceTable::load(QStringLiteral("buying"));
    ASSERT_TRUE(table);
    QStringList items;
    for (qsizetype index = 0; index < table->size(); ++index) {
        const ReferenceTable::Row row = table->row(index);
        items.append(row.text(QStringLiteral("item")));
        // A size that is set down says where it comes from.
        EXPECT_EQ(row.text(QStringLiteral("pack_g")).isEmpty(),
                  row.text(QStringLiteral("pack_basis")).isEmpty());
    }
    for (const kitchen::Extra& extra : catalogue.extras())
        EXPECT_TRUE(items.contains(extra.id)) << qPrintable(extra.id);
    // And the salt of a pot, every cut, and the two steps of weight.
    EXPECT_EQ(static_cast<std::size_t>(items.size()), catalogue.extras().size() + 4);
}

// Random weeks: the list needs what the pots need together, never buys less than is missing, and
// buys no whole unit more than it takes; bought again, what was bought is bought as it is.
TEST_F(ShoppingTest, randomWeeksAreMergedAndRoundedUpOnce) {
    std::mt19937 random(5);
    const auto upTo = [&random](std::size_t bound) {
        return std::uniform_int_distribution<std::size_t>(0, bound - 1)(random);
    };
    const auto someMass = [&] {
        return grams(0.5 + static_cast<double>(upTo(40000)) / 13.0);
    };
    for (int round = 0; round < 300; ++round) {
        ShoppingInput input;
        input.measures =
            round % 2 == 0 ? quantity::MeasureSystem::Metric : quantity::MeasureSystem::UsCustomary;
        QHash<QString, double> inPots; // g, as they go in
        for (std::size_t pot = upTo(6); pot > 0; --pot) {
            kitchen::Pot made;
            for (std::size_t cut = upTo(4); cut > 0; --cut) {
                made.cuts.append(
                    {catalogue.cuts()[upTo(catalogue.cuts().size())].id, someMass(), true});
                inPots[made.cuts.last().cut] += made.cuts.last().mass.toGrams();
            }
            for (std::size_t extra = upTo(5); extra > 0; --extra) {
                made.extras.append(
                    {catalogue.extras()[upTo(catalogue.extras().size())].id, someMass()});
                inPots[made.extras.last().item] += made.extras.last().mass.toGrams();
            }
            input.pots.append(made);
        }
        for (const QString& id : inPots.keys())
            if (upTo(3) == 0)
                input.atHome.append({id, someMass()});
        const QList<ShoppingItem> list = itemsOf(input);
        ASSERT_EQ(list.size(), inPots.size());
        for (const ShoppingItem& line : list) {
            const Buying& buying = buyingOf(line.id);
            ASSERT_NEAR(line.needed.toGrams() * (1 - buying.waste), inPots.value(line.id), 1e-6);
            const double missing = std::max(0.0, line.needed.toGrams() - line.atHome.toGrams());
            const double unit = line.count > 0 ? line.toBuy.toGrams() / line.count
                                               : weightStep(input.measures).toGrams();
            ASSERT_GE(line.toBuy.toGrams(), missing - 1e-5 * unit) << qPrintable(line.id);
            ASSERT_LT(line.toBuy.toGrams(), missing + unit) << qPrintable(line.id);
            const Mass unitMass = grams(unit);
            ASSERT_DOUBLE_EQ(wholeUnits(unitMass * wholeUnits(line.toBuy, unitMass), unitMass),
                             wholeUnits(line.toBuy, unitMass));
        }
    }
}
