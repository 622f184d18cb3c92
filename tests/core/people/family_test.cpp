#include "people/family.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::people {
namespace {

using quantity::Length;
using quantity::Mass;
using quantity::Volume;

const QDate today(2024, 3, 1);

Family fine() {
    Family family;
    family.name = QStringLiteral("The Ambers");
    family.since = today;
    return family;
}

struct FamilyCase {
    const char* name;
    std::function<void(Family&)> change;
    const char* field;
};

class FamilyTest : public ::testing::TestWithParam<FamilyCase> {};

TEST_P(FamilyTest, namesTheFieldAtFault) {
    Family family = fine();
    GetParam().change(family);
    const Outcome outcome = check(family, today);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
        EXPECT_EQ(outcome.error().kind, Problem::Kind::BadInput);
        EXPECT_TRUE(outcome.error().sentence.endsWith(QLatin1Char('.')));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, FamilyTest,
    ::testing::Values(
        FamilyCase{"fine", [](Family&) {}, ""},
        FamilyCase{"blankName", [](Family& f) { f.name = QStringLiteral(" \n"); }, "name"},
        FamilyCase{"longName", [](Family& f) { f.name = QString(201, QLatin1Char('a')); }, "name"},
        FamilyCase{"unknownZone",
                   [](Family& f) { f.zone = QTimeZone(QByteArrayLiteral("Moon/Base")); }, "zone"},
        FamilyCase{"noDay", [](Family& f) { f.since = QDate(); }, "since"},
        FamilyCase{"tomorrow", [](Family& f) { f.since = today.addDays(1); }, "since"},
        FamilyCase{"lowest", [](Family& f) { f.altitude = Length::fromMetres(-500); }, ""},
        FamilyCase{"tooLow", [](Family& f) { f.altitude = Length::fromMetres(-501); }, "altitude"},
        FamilyCase{"highest", [](Family& f) { f.altitude = Length::fromMetres(6000); }, ""},
        FamilyCase{"tooHigh", [](Family& f) { f.altitude = Length::fromMetres(6001); }, "altitude"},
        FamilyCase{"altitudeNotANumber",
                   [](Family& f) {
                       f.altitude = Length::fromMetres(std::numeric_limits<double>::quiet_NaN());
                   },
                   "altitude"},
        FamilyCase{"noRoom", [](Family& f) { f.fridgeRoom = f.freezerRoom = Volume(); }, ""},
        FamilyCase{"negativeFridge", [](Family& f) { f.fridgeRoom = Volume::fromLitres(-1); },
                   "fridgeRoom"},
        FamilyCase{"absurdFridge", [](Family& f) { f.fridgeRoom = Volume::fromLitres(201); },
                   "fridgeRoom"},
        FamilyCase{"absurdFreezer", [](Family& f) { f.freezerRoom = Volume::fromLitres(201); },
                   "freezerRoom"},
        FamilyCase{"noMeat", [](Family& f) { f.meatPerDay = Mass(); }, ""},
        FamilyCase{"negativeMeat", [](Family& f) { f.meatPerDay = Mass::fromGrams(-1); },
                   "meatPerDay"},
        FamilyCase{"absurdMeat", [](Family& f) { f.meatPerDay = Mass::fromKilograms(21); },
                   "meatPerDay"},
        FamilyCase{"anyNumberOfOneAnimal", [](Family& f) { f.mostOfOneAnimal = 0; }, ""},
        FamilyCase{"sixADay", [](Family& f) { f.mostOfOneAnimal = 42; }, ""},
        FamilyCase{"moreThanSixADay", [](Family& f) { f.mostOfOneAnimal = 43; }, "mostOfOneAnimal"},
        FamilyCase{"lessThanNone", [](Family& f) { f.mostOfOneAnimal = -1; }, "mostOfOneAnimal"},
        FamilyCase{"spanish", [](Family& f) { f.handoutLanguage = QStringLiteral("es"); }, ""},
        FamilyCase{"unknownLanguage", [](Family& f) { f.handoutLanguage = QStringLiteral("tlh"); },
                   "handoutLanguage"},
        FamilyCase{"noLanguage", [](Family& f) { f.handoutLanguage.clear(); }, "handoutLanguage"}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(FamilyTest, readsItsStatusBack) {
    for (Family::Status status :
         {Family::Status::Active, Family::Status::Resting, Family::Status::Finished})
        EXPECT_EQ(statusFromId(statusId(status)), status);
    EXPECT_EQ(statusId(Family::Status::Resting).toStdString(), "resting");
    EXPECT_FALSE(statusFromId(u"asleep").has_value());
}

} // namespace
} // namespace ladlework::people
