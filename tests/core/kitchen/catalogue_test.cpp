#include "kitchen/catalogue.h"

#include "kitchen/phase_rules.h"
#include "kitchen_samples.h"

#include <array>
#include <stdexcept>

namespace ladlework::kitchen {

using samples::catalogue;

TEST(CatalogueTest, HoldsEveryCutOfTheCommandLinesHelp) {
    for (const char* id :
         {"chicken-drumstick", "chicken-wing", "chicken-back",     "chicken-foot", "chicken-neck",
          "chicken-whole",     "turkey-neck",  "duck-whole",       "beef-shank",   "beef-oxtail",
          "beef-short-rib",    "beef-knuckle", "beef-marrow-bone", "bison-shank",  "veal-shank",
          "lamb-shank",        "lamb-neck",    "goat-shank",       "pork-foot",    "pork-hock",
          "pork-rib",          "pork-tail",    "venison-shank",    "fish-head",    "fish-frame",
          "cod-whole",         "salmon-head"})
        EXPECT_NE(catalogue().cut(QLatin1String(id)), nullptr) << id;
}

// What the trade cooks stock from beside the help's own examples (common practice, no source).
TEST(CatalogueTest, HoldsTheTradesCommonCuts) {
    for (const char* id : {"chicken-leg",    "chicken-quarter",   "chicken-thigh",  "chicken-head",
                           "turkey-wing",    "turkey-drumstick",  "turkey-back",    "duck-leg",
                           "duck-neck",      "duck-foot",         "goose-wing",     "goose-back",
                           "goose-neck",     "guinea-fowl-whole", "pheasant-whole", "quail-whole",
                           "squab-whole",    "beef-foot",         "beef-neck-bone", "beef-chuck",
                           "veal-knuckle",   "veal-breast",       "veal-foot",      "lamb-breast",
                           "lamb-foot",      "goat-rib",          "goat-neck",      "pork-ear",
                           "pork-neck-bone", "venison-neck",      "venison-rib",    "elk-neck",
                           "elk-rib",        "moose-shank",       "moose-rib",      "rabbit-whole",
                           "hare-whole",     "halibut-head",      "halibut-frame",  "snapper-head",
                           "snapper-whole",  "trout-head",        "trout-frame",    "sea-bass-head",
                           "sea-bass-frame", "whiting-frame",     "salmon-whole",   "salmon-frame"})
        EXPECT_NE(catalogue().cut(QLatin1String(id)), nullptr) << id;
}

TEST(CatalogueTest, EveryAnimalHasACutAndEveryExtraAPiece) {
    for (const Animal& animal : catalogue().animals())
        EXPECT_TRUE(std::ranges::any_of(catalogue().cuts(), [&animal](const Cut& cut) {
            return cut.animal == animal.id;
        })) << animal.id.toStdString();
    for (const Extra& extra : catalogue().extras()) {
        EXPECT_GT(extra.piece, quantity::Mass()) << extra.id.toStdString();
        EXPECT_FALSE(extra.pieceName.isEmpty()) << extra.id.toStdString();
    }
}

TEST(CatalogueTest, UnknownIdsAreNull) {
    EXPECT_EQ(catalogue().cut(QStringLiteral("dragon-tail")), nullptr);
    EXPECT_EQ(catalogue().animal(QStringLiteral("dragon")), nullptr);
    EXPECT_EQ(catalogue().extra(QString()), nullptr);
}

TEST(CatalogueTest, AnUnknownFigureIsABrokenInvariant) {
    EXPECT_THROW((void)catalogue().figure(QStringLiteral("no-such-figure")), std::logic_error);
}

// Common practice, no source: 1.5-3 h poultry, 4-6 h other land animals, 1-1.5 h fish.
TEST(CatalogueTest, WindowsAreThoseOfTheTrade) {
    EXPECT_EQ(catalogue().window(CookClass::Poultry).least.toHours(), 1.5);
    EXPECT_EQ(catalogue().window(CookClass::Poultry).most.toHours(), 3);
    EXPECT_EQ(catalogue().window(CookClass::LandAnimal).least.toHours(), 4);
    EXPECT_EQ(catalogue().window(CookClass::LandAnimal).most.toHours(), 6);
    EXPECT_EQ(catalogue().window(CookClass::Fish).least.toHours(), 1);
    EXPECT_EQ(catalogue().window(CookClass::Fish).most.toHours(), 1.5);
    EXPECT_EQ(
        catalogue().window(*catalogue().cut(QStringLiteral("beef-bare-bone"))).least.toHours(), 12);
}

// Common practice, no source: a US quart to the pound at most, a US cup at least.
TEST(CatalogueTest, WaterBandIsThatOfTheTrade) {
    EXPECT_NEAR(catalogue().figure(QStringLiteral("water-most")).value,
                quantity::Volume::fromQuarts(1).toMillilitres() /
                    quantity::Mass::fromPounds(1).toKilograms(),
                0.005);
    EXPECT_NEAR(catalogue().figure(QStringLiteral("water-least")).value,
                quantity::Volume::fromCups(1).toMillilitres() /
                    quantity::Mass::fromPounds(1).toKilograms(),
                0.005);
}

struct Cover {
    const char* subject;
    const char* id;
    bool covers;
};

TEST(CatalogueTest, SubjectsCoverWhatTheySay) {
    const std::vector<Cover> rows{
        Cover{"chicken", "chicken-foot", true},    Cover{"poultry", "turkey-neck", true},
        Cover{"fish", "salmon-head", true},        Cover{"fish", "fish-frame", true},
        Cover{"beef-shank", "beef-shank", true},   Cover{"celery", "celery", true},
        Cover{"beef", "veal-shank", true},         Cover{"cod", "fish-head", true},
        Cover{"chicken", "turkey-neck", false},    Cover{"poultry", "beef-shank", false},
        Cover{"beef-shank", "beef-oxtail", false}, Cover{"veal", "beef-shank", false},
        Cover{"salmon", "fish-head", false},       Cover{"land-animal", "beef-shank", false},
        Cover{"Chicken", "chicken-foot", false},   Cover{"celery", "celeriac", true},
        Cover{"chicken", "dragon-tail", false},    Cover{"", "onion", false}};
    for (const Cover& row : rows)
        EXPECT_EQ(catalogue().covers(QLatin1String(row.subject), QLatin1String(row.id)), row.covers)
            << row.subject << " " << row.id;
}

TEST(CatalogueTest, KnowsTheSubjectsItCanCover) {
    for (const char* id : {"chicken", "poultry", "fish", "beef-shank", "onion"})
        EXPECT_TRUE(catalogue().knowsSubject(QLatin1String(id))) << id;
    for (const char* id : {"dragon", "land-animal", ""})
        EXPECT_FALSE(catalogue().knowsSubject(QLatin1String(id))) << id;
}

TEST(CatalogueTest, WordsOfTheTablesReadBack) {
    for (const Extra& extra : catalogue().extras())
        EXPECT_EQ(extraKindFromId(extraKindId(extra.kind)), extra.kind);
    EXPECT_FALSE(extraKindFromId(u"gravel"));
    EXPECT_EQ(cookClassId(CookClass::LandAnimal), QStringLiteral("land-animal"));
    EXPECT_EQ(cited({QStringLiteral("a table"), QStringLiteral("published")}),
              QStringLiteral("a table (published)"));
}

TEST(CatalogueTest, PhasesShipInOrder) {
    const auto phases = shippedPhases();
    ASSERT_TRUE(phases);
    ASSERT_EQ(phases->size(), 3U);
    EXPECT_EQ(phases->at(0).id, QStringLiteral("opening"));
    EXPECT_EQ(phases->at(1).id, QStringLiteral("widening"));
    EXPECT_EQ(phases->at(2).id, QStringLiteral("settled"));
    EXPECT_TRUE(phases->at(0).rules.strainPeppercorns);
    EXPECT_FALSE(phases->at(0).rules.groundPepper);
    EXPECT_FALSE(phases->at(0).rules.boneBroth);
    EXPECT_TRUE(phases->at(2).rules.boneBroth);
}

} // namespace ladlework::kitchen
