#include "kitchen_samples.h"

namespace ladlework::kitchen {

using samples::catalogue;
using samples::drinker;

namespace {
WhoMay judged(const Drinker& who, const BrewInput& input) {
    return whoMay(who, input.pot, catalogue());
}
} // namespace

TEST(WhoMayTest, NothingAgainstItMeansYes) {
    const WhoMay who =
        judged(drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000), samples::chickenPot());
    EXPECT_TRUE(who.may);
    EXPECT_TRUE(who.why.isEmpty());
    EXPECT_EQ(who.name, QStringLiteral("Ann"));
}

TEST(WhoMayTest, AnimalCutIngredientAndWiderWordsForbid) {
    for (const char* subject : {"chicken", "poultry", "chicken-back", "onion"}) {
        Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
        ann.mayNot = {QLatin1String(subject)};
        const WhoMay who = judged(ann, samples::chickenPot());
        EXPECT_FALSE(who.may) << subject;
        EXPECT_FALSE(who.why.isEmpty()) << subject;
    }
}

// The same plant in another form, and a fish that the fishmonger's wider word stands for.
TEST(WhoMayTest, ANameCoversItsOtherForms) {
    struct Row {
        const char* subject;
        const char* cut;
        const char* item;
    };
    for (const Row& row :
         {Row{"onion", "beef-shank", "sweet-onion"}, Row{"onion", "beef-shank", "shallot"},
          Row{"celery", "beef-shank", "celeriac"},
          Row{"peppercorns", "beef-shank", "ground-pepper"},
          Row{"parsley", "beef-shank", "parsley-dried"}, Row{"white-fish", "cod-whole", "carrot"},
          Row{"cod", "fish-head", "carrot"}}) {
        BrewInput input = samples::beefPot();
        input.pot.cuts = {samples::cut(QLatin1String(row.cut), 1000)};
        input.pot.extras = {samples::extra(QLatin1String(row.item), 100)};
        Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
        EXPECT_TRUE(judged(ann, input).may);
        ann.mayNot = {QLatin1String(row.subject)};
        EXPECT_FALSE(judged(ann, input).may) << row.subject;
    }
}

TEST(WhoMayTest, AnInfantIsAskedForAnUnsaltedPotWhateverTheSalt) {
    BrewInput input = samples::chickenPot();
    const Drinker bo = drinker(QStringLiteral("Bo"), AgeBand::InfantStartingSolids, 100);
    input.pot.salt = {};
    EXPECT_TRUE(judged(bo, input).why.isEmpty());
    input.pot.extras.append(samples::extra(QStringLiteral("sea-salt"), 5));
    EXPECT_FALSE(judged(bo, input).why.isEmpty());
}

TEST(WhoMayTest, OtherSubjectsDoNot) {
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
    ann.mayNot = {QStringLiteral("fish"), QStringLiteral("celery"), QStringLiteral("turkey")};
    EXPECT_TRUE(judged(ann, samples::chickenPot()).may);
}

TEST(WhoMayTest, NoInfantUnderSixMonths) {
    const WhoMay who = judged(drinker(QStringLiteral("Bo"), AgeBand::InfantUnderSixMonths, 5),
                              samples::chickenPot());
    EXPECT_FALSE(who.may);
    EXPECT_FALSE(who.why.isEmpty());
}

TEST(WhoMayTest, AnInfantMayFromAnUnsaltedPot) {
    BrewInput input = samples::chickenPot();
    const Drinker bo = drinker(QStringLiteral("Bo"), AgeBand::InfantStartingSolids, 60);
    EXPECT_TRUE(judged(bo, input).may);
    EXPECT_FALSE(judged(bo, input).why.isEmpty());
    input.pot.salt = quantity::Mass();
    EXPECT_TRUE(judged(bo, input).why.isEmpty());
}

TEST(WhoMayTest, BoneBrothWaitsForItsPhase) {
    BrewInput input = samples::chickenPot();
    input.pot.brew = Pot::Brew::BoneBroth;
    Drinker ann = drinker(QStringLiteral("Ann"), AgeBand::Adult, 1000);
    EXPECT_TRUE(judged(ann, input).may);
    ann.boneBroth = false;
    EXPECT_FALSE(judged(ann, input).may);
    EXPECT_TRUE(judged(ann, samples::chickenPot()).may);
    ann.phase = QStringLiteral("Opening");
    EXPECT_TRUE(judged(ann, input).why.contains(QStringLiteral("Opening")));
    // Who is refused does not use the pot up.
    input.drinkers = {ann, drinker(QStringLiteral("Ben"), AgeBand::Adult, 500)};
    const Brewed brewed = brew(input, catalogue());
    EXPECT_FALSE(brewed.who.first().may);
    ASSERT_TRUE(brewed.coverDays);
    EXPECT_NEAR(brewed.coverDays->best, brewed.stockMl.best / 500, 1e-9);
}

} // namespace ladlework::kitchen
