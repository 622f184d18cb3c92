#include "ui/log/day_cells.h"

#include <gtest/gtest.h>

namespace ladlework::ui {

using quantity::MeasureSystem;
using quantity::Volume;

namespace {

struct DrinkCase {
    const char* text;
    MeasureSystem measures;
    bool another;
    bool asAsked;
    double millilitres;
};

// NIST SP 811: a US cup is 236.588 mL, a tablespoon 14.787 mL.
const DrinkCase drinks[] = {
    {"3/4", MeasureSystem::UsCustomary, false, false, 177.441},
    {"1 1/2", MeasureSystem::UsCustomary, false, false, 354.882},
    {"250 ml", MeasureSystem::UsCustomary, false, false, 250},
    {"250", MeasureSystem::Metric, false, false, 250},
    {"2 tbsp", MeasureSystem::UsCustomary, false, false, 29.574},
    {"+ 1/2 cup", MeasureSystem::UsCustomary, true, false, 118.294},
    {"+1/2", MeasureSystem::UsCustomary, true, false, 118.294},
    {"same", MeasureSystem::UsCustomary, false, true, 0},
    {" Same ", MeasureSystem::UsCustomary, false, true, 0},
    {"=", MeasureSystem::UsCustomary, false, true, 0},
    {"missed", MeasureSystem::UsCustomary, false, false, 0},
    {"0", MeasureSystem::UsCustomary, false, false, 0},
};

const QList<SymptomWord> symptoms{{QStringLiteral("fainting"), true},
                                  {QStringLiteral("bloating"), false},
                                  {QStringLiteral("belly ache"), false},
                                  {QStringLiteral("headache"), false}};

struct ReactionCase {
    const char* text;
    bool another;
    bool none;
    const char* symptom;
    int strength;
    bool redFlag;
};

const ReactionCase reactions[] = {
    {"bloating 3", false, false, "bloating", 3, false},
    {"Bloating: 3", false, false, "bloating", 3, false},
    {"bloat 10", false, false, "bloating", 10, false},
    {"+ headache 2", true, false, "headache", 2, false},
    {"fainting", false, false, "fainting", 10, true},
    {"fainting 4", false, false, "fainting", 4, true},
    {"b 3", false, false, "b", 3, false}, // two begin so: kept as it was typed
    {"odd taste 0", false, false, "odd taste", 0, false},
    {"wheezing 2", false, false, "wheezing", 2, true}, // on no list here, published all the same
    {"passed out", false, false, "passed out", 10, true},
    {"hives 3", false, false, "hives", 3, false},
    {"vomited 2", false, false, "vomited", 2, false},
    {"fine", false, true, "", 0, false},
    {"none", false, true, "", 0, false},
    {"", false, true, "", 0, false},
};

} // namespace

TEST(DayCellsTest, DrinksAreRead) {
    for (const DrinkCase& expected : drinks) {
        SCOPED_TRACE(expected.text);
        const auto cell = readDrink(QString::fromUtf8(expected.text), expected.measures);
        ASSERT_TRUE(cell);
        EXPECT_EQ(cell->another, expected.another);
        EXPECT_EQ(cell->asAsked, expected.asAsked);
        EXPECT_NEAR(cell->volume.toMillilitres(), expected.millilitres, 0.001);
    }
}

TEST(DayCellsTest, DrinksThatCannotBeRead) {
    for (const char* text : {"a lot", "-1 cup", "+", "3/0", "1 cup and", "cup"}) {
        SCOPED_TRACE(text);
        const auto cell = readDrink(QString::fromUtf8(text), MeasureSystem::UsCustomary);
        ASSERT_FALSE(cell);
        EXPECT_EQ(cell.error().kind, Problem::Kind::BadInput);
        EXPECT_FALSE(cell.error().sentence.isEmpty());
    }
}

TEST(DayCellsTest, ReactionsAreRead) {
    for (const ReactionCase& expected : reactions) {
        SCOPED_TRACE(expected.text);
        const auto cell = readReaction(QString::fromUtf8(expected.text), symptoms);
        ASSERT_TRUE(cell);
        EXPECT_EQ(cell->another, expected.another);
        EXPECT_EQ(cell->none, expected.none);
        EXPECT_EQ(cell->symptom, QString::fromUtf8(expected.symptom));
        EXPECT_EQ(cell->strength, expected.strength);
        EXPECT_EQ(cell->redFlag, expected.redFlag);
    }
}

TEST(DayCellsTest, SourceIsTakenOffTheAmount) {
    const auto cell = readDrink(QStringLiteral("+ 250 ml from Jar 1 "), MeasureSystem::UsCustomary);
    ASSERT_TRUE(cell);
    EXPECT_TRUE(cell->another);
    EXPECT_EQ(cell->volume, Volume::fromMillilitres(250));
    EXPECT_EQ(cell->from, QStringLiteral("Jar 1"));
    const auto same = readDrink(QStringLiteral("same from jar"), MeasureSystem::Metric);
    ASSERT_TRUE(same);
    EXPECT_TRUE(same->asAsked);
    EXPECT_EQ(same->from, QStringLiteral("jar"));
    EXPECT_FALSE(readDrink(QStringLiteral("from jar 1"), MeasureSystem::Metric));
}

TEST(DayCellsTest, TimesAreTakenOffTheReaction) {
    struct TimesCase {
        const char* text;
        std::optional<int> startMinute;
        std::optional<int> minutes;
    };
    for (const TimesCase& expected :
         std::initializer_list<TimesCase>{{"bloating 3 at 14:30", 870, {}},
                                          {"bloating 3 for 2 h", {}, 120},
                                          {"bloating 3 at 7:05 for 40 min", 425, 40},
                                          {"bloating 3 for 40 min at 7:05", 425, 40},
                                          {"bloating 3", {}, {}}}) {
        SCOPED_TRACE(expected.text);
        const auto cell = readReaction(QString::fromUtf8(expected.text), symptoms);
        ASSERT_TRUE(cell);
        EXPECT_EQ(cell->symptom, QStringLiteral("bloating"));
        EXPECT_EQ(cell->strength, 3);
        EXPECT_EQ(cell->startMinute, expected.startMinute);
        EXPECT_EQ(cell->minutes, expected.minutes);
    }
    EXPECT_FALSE(readReaction(QStringLiteral("bloating 3 at 25:00"), symptoms));
    EXPECT_FALSE(readReaction(QStringLiteral("bloating 3 for 2 moons"), symptoms));
    // Words of the symptom itself are left alone.
    EXPECT_EQ(readReaction(QStringLiteral("sore at night 2"), symptoms)->symptom,
              QStringLiteral("sore at night"));
}

TEST(DayCellsTest, ReactionsThatCannotBeRead) {
    for (const char* text : {"bloating", "7", "bloating 11", "headache 99999999999"}) {
        SCOPED_TRACE(text);
        const auto cell = readReaction(QString::fromUtf8(text), symptoms);
        ASSERT_FALSE(cell);
        EXPECT_EQ(cell.error().kind, Problem::Kind::BadInput);
    }
}

TEST(DayCellsTest, SeveralReactionsAreReadOneByOne) {
    struct SeveralCase {
        const char* text;
        QList<ReactionCase> cells;
    };
    for (const SeveralCase& expected : std::initializer_list<SeveralCase>{
             {"hives 3, trouble breathing 6",
              {{"", false, false, "hives", 3, false},
               {"", true, false, "trouble breathing", 6, true}}},
             {"hives 3; wheezing 2",
              {{"", false, false, "hives", 3, false}, {"", true, false, "wheezing", 2, true}}},
             {"+ bloat 1 and fainting",
              {{"", true, false, "bloating", 1, false}, {"", true, false, "fainting", 10, true}}},
             {"bloating 3", {{"", false, false, "bloating", 3, false}}},
             {"fine", {{"", false, true, "", 0, false}}},
             {"", {{"", false, true, "", 0, false}}}}) {
        SCOPED_TRACE(expected.text);
        const auto cells = readReactions(QString::fromUtf8(expected.text), symptoms);
        ASSERT_TRUE(cells);
        ASSERT_EQ(cells->size(), expected.cells.size());
        for (qsizetype i = 0; i < cells->size(); ++i) {
            EXPECT_EQ(cells->at(i).another, expected.cells[i].another);
            EXPECT_EQ(cells->at(i).none, expected.cells[i].none);
            EXPECT_EQ(cells->at(i).symptom, QString::fromUtf8(expected.cells[i].symptom));
            EXPECT_EQ(cells->at(i).strength, expected.cells[i].strength);
            EXPECT_EQ(cells->at(i).redFlag, expected.cells[i].redFlag);
        }
    }
    for (const char* text : {"hives 3, bloating", "hives 3; bloating 11", "hives 3, fine"})
        EXPECT_FALSE(readReactions(QString::fromUtf8(text), symptoms)) << text;
}

} // namespace ladlework::ui
