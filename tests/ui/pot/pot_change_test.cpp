#include "ui/pot/pot_change.h"

#include "ui/shared/family_workbook.h"

#include <gtest/gtest.h>

#include <functional>

namespace ladlework::ui {

using kitchen::Pot;
using quantity::Mass;

namespace {

struct ChangeCase {
    const char* sentence;
    std::function<void(Pot&)> change;
};

const ChangeCase cases[] = {
    {"Renamed the pot Chicken legs to Sunday pot",
     [](Pot& pot) {
         pot.name = QStringLiteral("Sunday pot");
     }},
    {"Set the water of Chicken legs to 2 quarts",
     [](Pot& pot) {
         pot.water = quantity::Volume::fromQuarts(2);
     }},
    {"Set the simmer of Chicken legs to 3 h",
     [](Pot& pot) {
         pot.simmer = quantity::Duration::fromHours(3);
     }},
    {"Changed the salt of Chicken legs",
     [](Pot& pot) {
         pot.salt = {};
     }},
    {"Made Chicken legs a bone broth",
     [](Pot& pot) {
         pot.brew = Pot::Brew::BoneBroth;
     }},
    {"Chose another vessel for Chicken legs",
     [](Pot& pot) {
         pot.vessel = VesselId{7};
     }},
    {"Chose what Chicken legs cools in",
     [](Pot& pot) {
         pot.coolIn = ContainerId{3};
     }},
    {"Chose to cool Chicken legs on the counter, then refrigerator",
     [](Pot& pot) {
         pot.coolingWay = kitchen::CoolingWay::Counter;
     }},
    {"Added chicken feet to Chicken legs",
     [](Pot& pot) {
         pot.cuts.append({QStringLiteral("chicken-foot"), Mass::fromPounds(1), true});
     }},
    {"Took onion out of Chicken legs",
     [](Pot& pot) {
         pot.extras.clear();
     }},
    {"Changed onion in Chicken legs",
     [](Pot& pot) {
         pot.extras[0].mass = Mass::fromGrams(1);
     }},
    {"Changed the note on Chicken legs",
     [](Pot& pot) {
         pot.note = QStringLiteral("slowly");
     }},
    {"Changed the pot Chicken legs",
     [](Pot&) {
     }},
};

} // namespace

TEST(PotChangeTest, SaysWhatWasDone) {
    const FamilyWorkbook family;
    const Pot before = *family.casebook()->pot(family.chicken);
    for (const ChangeCase& expected : cases) {
        Pot after = before;
        expected.change(after);
        EXPECT_EQ(potChange(before, after, family.context().catalogue,
                            quantity::MeasureSystem::UsCustomary),
                  QString::fromUtf8(expected.sentence));
    }
}

} // namespace ladlework::ui
