#include "kitchen/additions.h"

#include "kitchen_samples.h"

namespace ladlework::kitchen {

using samples::catalogue;

namespace {
const Addition* additionOf(const Timeline& timeline, const QString& id) {
    const auto place = std::ranges::find(timeline.additions, id, &Addition::id);
    return place == timeline.additions.end() ? nullptr : &*place;
}

double minuteOf(const Timeline& timeline, const QString& id) {
    const Addition* addition = additionOf(timeline, id);
    return addition == nullptr ? -1 : addition->at.toMinutes();
}
} // namespace

TEST(AdditionsTest, ThreeClassesEndTogetherInsideTheirWindows) {
    BrewInput input = samples::beefPot();
    input.pot.cuts.append(samples::cut(QStringLiteral("chicken-wing"), 500));
    input.pot.cuts.append(samples::cut(QStringLiteral("fish-head"), 300));
    for (double hours : {4.0, 4.75, 5.0, 6.0}) {
        input.pot.simmer = quantity::Duration::fromHours(hours);
        const Timeline timeline = timelineOf(input, catalogue());
        ASSERT_EQ(timeline.cuts.size(), 4U);
        for (qsizetype index = 0; index < input.pot.cuts.size(); ++index) {
            const Cut& cut = *catalogue().cut(input.pot.cuts.at(index).cut);
            const double minute = minuteOf(timeline, cut.id);
            const double inPot = hours * 60 - minute;
            EXPECT_GE(inPot, catalogue().window(cut).least.toMinutes()) << cut.id.toStdString();
            EXPECT_LE(inPot, catalogue().window(cut).most.toMinutes()) << cut.id.toStdString();
            EXPECT_NEAR(timeline.cuts[static_cast<size_t>(index)].inPot.toMinutes(), inPot, 1e-9);
        }
        EXPECT_EQ(minuteOf(timeline, QStringLiteral("beef-shank")), 0);
    }
}

TEST(AdditionsTest, SomethingIsInThePotFromTheStartEvenWhenTheSimmerIsTooLong) {
    BrewInput input = samples::chickenPot();
    input.pot.simmer = quantity::Duration::fromHours(8);
    EXPECT_EQ(minuteOf(timelineOf(input, catalogue()), QStringLiteral("chicken-leg")), 0);
}

TEST(AdditionsTest, ComeInOrderOfTimeWithGarlicLastAndTheHeatOff) {
    BrewInput input = samples::chickenPot();
    input.pot.extras = {samples::extra(QStringLiteral("garlic"), 9),
                        samples::extra(QStringLiteral("carrot"), 120),
                        samples::extra(QStringLiteral("parsley"), 10),
                        samples::extra(QStringLiteral("peppercorns"), 3)};
    const Timeline timeline = timelineOf(input, catalogue());
    EXPECT_TRUE(std::ranges::is_sorted(timeline.additions, {}, &Addition::at));
    const Addition& last = timeline.additions.last();
    EXPECT_EQ(last.id, QStringLiteral("garlic"));
    EXPECT_TRUE(last.heatOff);
    EXPECT_FALSE(last.strained);
    EXPECT_EQ(last.at, input.pot.simmer);
    EXPECT_EQ(minuteOf(timeline, QStringLiteral("carrot")), 60);
    EXPECT_FALSE(additionOf(timeline, QStringLiteral("carrot"))->heatOff);
}

TEST(AdditionsTest, AShortSimmerTakesVegetablesFromTheStart) {
    BrewInput input = samples::fishPot();
    EXPECT_EQ(minuteOf(timelineOf(input, catalogue()), QStringLiteral("onion")), 0);
}

TEST(AdditionsTest, WaterAndSaltGoInAtTheStartAndNoSaltIsNoAddition) {
    BrewInput input = samples::chickenPot();
    const auto count = [&](Addition::What what) {
        return std::ranges::count(timelineOf(input, catalogue()).additions, what, &Addition::what);
    };
    EXPECT_EQ(count(Addition::What::Water), 1);
    EXPECT_EQ(count(Addition::What::Salt), 1);
    input.pot.salt = quantity::Mass();
    EXPECT_EQ(count(Addition::What::Salt), 0);
}

TEST(AdditionsTest, StrainsAsThePhaseAsks) {
    BrewInput input = samples::chickenPot();
    input.pot.extras = {samples::extra(QStringLiteral("carrot"), 120),
                        samples::extra(QStringLiteral("parsley"), 10),
                        samples::extra(QStringLiteral("peppercorns"), 3)};
    const auto strained = [&](const char* id) {
        return additionOf(timelineOf(input, catalogue()), QLatin1String(id))->strained;
    };
    EXPECT_TRUE(strained("carrot"));
    EXPECT_TRUE(strained("parsley"));
    EXPECT_TRUE(strained("peppercorns"));
    input.phase.strainVegetables = false;
    EXPECT_FALSE(strained("carrot"));
    EXPECT_TRUE(strained("parsley"));
    input.phase.strainHerbs = false;
    EXPECT_FALSE(strained("parsley"));
    input.phase.strainPeppercorns = false;
    EXPECT_FALSE(strained("peppercorns"));
}

TEST(AdditionsTest, BareBonesTakeTheLongWindowOnlyInABoneBroth) {
    BrewInput input = samples::chickenPot();
    input.pot.cuts.append(samples::cut(QStringLiteral("chicken-carcass"), 500));
    EXPECT_EQ(commonWindow(input.pot, catalogue()).most.toHours(), 3);
    input.pot.brew = Pot::Brew::BoneBroth;
    EXPECT_EQ(commonWindow(input.pot, catalogue()).least.toHours(), 12);
    input.pot.simmer = quantity::Duration::fromHours(14);
    const Timeline timeline = timelineOf(input, catalogue());
    EXPECT_EQ(minuteOf(timeline, QStringLiteral("chicken-carcass")), 0);
    EXPECT_EQ(minuteOf(timeline, QStringLiteral("chicken-leg")), 11 * 60);
}

TEST(AdditionsTest, TheCommonWindowIsThatOfTheSlowestCut) {
    BrewInput input = samples::chickenPot();
    EXPECT_FALSE(commonWindow(input.pot, catalogue()).several);
    input.pot.cuts.append(samples::cut(QStringLiteral("beef-shank"), 500));
    const CommonWindow common = commonWindow(input.pot, catalogue());
    EXPECT_TRUE(common.several);
    EXPECT_EQ(common.least.toHours(), 4);
    EXPECT_EQ(common.most.toHours(), 6);
}

} // namespace ladlework::kitchen
