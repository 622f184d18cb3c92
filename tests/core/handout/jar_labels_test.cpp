#include "core/casebook/hand_made_family.h"
#include "core/handout/handout_reader.h"
#include "handout/cards.h"
#include "kitchen/brew.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace ladlework;
using namespace hand_made;
using namespace handout_reader;

namespace {
class JarLabelsTest : public ::testing::Test {
protected:
    JarLabelsTest() : catalogue(*kitchen::Catalogue::load()), records(hand_made::records()) {
        options.week = monday;
    }

    [[nodiscard]] LabelSheet sheet() const {
        const casebook::Casebook book(records, catalogue, today);
        return std::get<LabelSheet>(jarLabelsCard(PageContext(book, options)).blocks.first());
    }
    [[nodiscard]] static QString textOfLabel(const JarLabel& label) {
        QStringList lines{label.title};
        for (const Cell& cell : label.lines)
            lines.append(cell.text);
        return lines.join(QLatin1Char('\n'));
    }
    [[nodiscard]] double stockMl(PotId pot) const {
        const casebook::Casebook book(records, catalogue, today);
        return kitchen::brew(book.brewInput(*book.pot(pot)), catalogue).stockMl.best;
    }
    /// A pint of the legs in the refrigerator and a quart in the freezer, cooked on Sunday.
    void keepTwoLots() {
        kitchen::Batch batch;
        batch.id = BatchId{1};
        batch.family = records.family.id;
        batch.pot = legs;
        batch.day = monday.addDays(-1);
        records.batches = {batch};
        kitchen::Lot lot;
        lot.id = LotId{1};
        lot.batch = batch.id;
        lot.container = QStringLiteral("jar 1");
        lot.volume = quantity::Volume::fromPints(1);
        lot.stored = batch.day;
        lot.useBy = today;
        kitchen::Lot frozen = lot;
        frozen.id = LotId{2};
        frozen.container = QStringLiteral("box 2");
        frozen.place = kitchen::Lot::Place::Freezer;
        frozen.useBy = QDate(2027, 1, 1);
        kitchen::Lot stale = lot;
        stale.id = LotId{3};
        stale.container = QStringLiteral("jar 3");
        stale.useBy = today.addDays(-1);
        records.lots = {lot, frozen, stale};
    }

    kitchen::Catalogue catalogue;
    casebook::FamilyRecords records;
    HandoutOptions options;
};
} // namespace

TEST_F(JarLabelsTest, thereIsOneForEachJarThatThePotsAreExpectedToFill) {
    options.labels.jar = ml(500);
    // Less than a tenth of a jar over fills no further jar.
    const auto jars = [&](PotId pot) {
        return static_cast<qsizetype>(std::ceil(stockMl(pot) / 500 - 0.1));
    };
    const LabelSheet made = sheet();
    EXPECT_EQ(made.labels.size(), jars(legs) + jars(shank));
    EXPECT_EQ(std::ranges::count(made.labels, QStringLiteral("Chicken legs"), &JarLabel::title),
              jars(legs));
    options.labels.jar = {};
    const auto quarts = static_cast<qsizetype>(std::ceil(stockMl(legs) / 946.353 - 0.1));
    EXPECT_EQ(std::ranges::count(sheet().labels, QStringLiteral("Chicken legs"), &JarLabel::title),
              quarts)
        << "a quart unless another jar is named";
    options.labels.jar = ml(100000);
    EXPECT_EQ(sheet().labels.size(), 2) << "at least one for each cooking";
}

TEST_F(JarLabelsTest, aLabelSaysWhatItIsAndUntilWhenWithBoxesForThePlace) {
    const QString text = textOfLabel(sheet().labels.first());
    // Cooked on Monday 2 November: 3 days in the refrigerator; the shorter end of 2 to 3 months
    // in the freezer (FoodSafety.gov cold storage chart).
    EXPECT_EQ(text, QStringLiteral("Chicken legs\nCooked on Mon 2 Nov 2026\n"
                                   "Fridge: use by Thu 5 Nov 2026\n"
                                   "Freezer: use by Sat 2 Jan 2027\nHeat until it boils.\n"
                                   "Ana, Ben, Mia, Leo"));
    const JarLabel label = sheet().labels.first();
    EXPECT_TRUE(label.lines[1].tickBox && label.lines[2].tickBox) << "where it went, with a pen";
    records.practice.fridgeDays = 2;
    EXPECT_TRUE(textOfLabel(sheet().labels.first())
                    .contains(QStringLiteral("Fridge: use by Wed 4 Nov 2026")));
}

TEST_F(JarLabelsTest, theFamilyIsNamedAsChosen) {
    options.names = Names::None;
    const QString nameless = textOfLabel(sheet().labels.first());
    EXPECT_TRUE(nameless.endsWith(QStringLiteral("Heat until it boils.")));
    options.names = Names::Full;
    EXPECT_TRUE(textOfLabel(sheet().labels.first()).endsWith(QStringLiteral("Hartley")));
}

TEST_F(JarLabelsTest, whatIsKeptNowHasItsPlaceAndItsOwnDays) {
    keepTwoLots();
    options.labels.planned = false;
    EXPECT_TRUE(sheet().labels.isEmpty());
    options.labels.onHand = true;
    const LabelSheet made = sheet();
    ASSERT_EQ(made.labels.size(), 2) << "none for what is past its use";
    EXPECT_TRUE(textOfLabel(made.labels[0])
                    .startsWith(QStringLiteral("Chicken legs\nCooked on Sun 1 Nov 2026\n"
                                               "Fridge: use by Wed 4 Nov 2026\njar 1, 2 cups")))
        << qPrintable(textOfLabel(made.labels[0]));
    EXPECT_TRUE(textOfLabel(made.labels[1])
                    .contains(QStringLiteral("Freezer: use by Fri 1 Jan 2027\nbox 2")));
}

TEST_F(JarLabelsTest, theStockIsTheChosenOneElseThePracticesElseTheUsual) {
    EXPECT_EQ(sheet().stock, usualLabelStock(people::Paper::Letter));
    casebook::LabelStock own;
    own.name = QStringLiteral("round ones");
    own.columns = 3;
    records.labelStocks = {own};
    EXPECT_EQ(sheet().stock, own);
    casebook::LabelStock chosen = own;
    chosen.rows = 7;
    options.labels.stock = chosen;
    EXPECT_EQ(sheet().stock, chosen);
    for (const people::Paper paper : {people::Paper::Letter, people::Paper::A4})
        EXPECT_TRUE(casebook::check(usualLabelStock(paper)));
}
