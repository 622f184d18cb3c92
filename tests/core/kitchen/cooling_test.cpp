#include "kitchen/cooling.h"

#include "cooling_samples.h"

namespace ladlework::kitchen {

using namespace samples;

namespace {
constexpr auto severityOf = [](const Cooling& cooling, QStringView code) {
    const Finding* finding = findingOf(cooling, code);
    return finding == nullptr ? std::optional<Finding::Severity>() : finding->severity;
};

CoolingStage iceBath(double minutes, bool isStirred = true) {
    return {CoolingStage::Place::IceBath, celsius(1), quantity::Duration::fromMinutes(minutes),
            isStirred};
}

CoolingStage counter(double hours, double ambientC = 21) {
    return {CoolingStage::Place::Counter, celsius(ambientC), quantity::Duration::fromHours(hours),
            false};
}

CoolingInput with(CoolingInput input, std::vector<CoolingStage> stages) {
    input.stages = std::move(stages);
    return input;
}

double hoursToEnd(const CoolingInput& input) {
    const Cooling cooling = cool(input);
    EXPECT_TRUE(cooling.toEnd);
    return cooling.toEnd ? cooling.toEnd->toHours() : 1e9;
}
} // namespace

// USDA FSIS as told by extension services: an 8-inch stock pot of hot soup takes about a day in a
// home refrigerator. A coefficient of 5 to 10 W/(m2 K) from all sides but the floor gives 15 to 30
// hours from 140 to 41 °F by lumped cooling; whether the pot had a lid is not told.
TEST(CoolingTest, DeepPotTakesAboutADay) {
    for (const bool covered : {false, true}) {
        const Cooling cooling = cool(full(potOf(20.32, 20.32, covered)));
        ASSERT_TRUE(cooling.toEnd);
        EXPECT_GT(cooling.toEnd->toHours(), 15) << covered;
        EXPECT_LT(cooling.toEnd->toHours(), 30) << covered;
        EXPECT_FALSE(cooling.passes);
        EXPECT_TRUE(hasCode(cooling.findings, u"cooling-first-stage-late"));
        EXPECT_TRUE(hasCode(cooling.findings, u"cooling-second-stage-late"));
        EXPECT_TRUE(hasCode(cooling.findings, u"deep-in-refrigerator"));
    }
}

// A home soup in a magazine's test: 212 to 40 °F in 4 h 15 min straight into the refrigerator, as
// quoted on a wiki; how much soup is not told. It lies between a shallow pan and a deep pot.
TEST(CoolingTest, HomeSoupLiesBetweenShallowAndDeep) {
    EXPECT_LT(hoursToEnd(full(pan(2))), 4.25);
    EXPECT_GT(hoursToEnd(full(potOf(20.32, 20.32))), 4.25);
}

// J. Food Prot. 44:513, 1981: leftovers in a home refrigerator take 13 to more than 22 hours from
// 140 to 45 °F handled as was recommended, about half of that with a fan on them. Thin stock, 3 to
// 4 inches deep, is in that region or faster.
TEST(CoolingTest, HomeRefrigeratorIsSlow) {
    EXPECT_GT(hoursToEnd(full(potOf(24, 9))), 13.0 / 2);
    EXPECT_LT(hoursToEnd(full(potOf(24, 9))), 22.0);
}

// Extension services: shallow is up to 2 inches; CDC: more than 3 inches cools too slowly. An inch
// passes by itself, two inches after an ice bath.
TEST(CoolingTest, ShallowPansPassWhereDeepOnesFail) {
    EXPECT_TRUE(cool(full(pan(2.54))).passes);
    const Cooling deep = cool(full(pan(8.0)));
    EXPECT_FALSE(deep.passes);
    EXPECT_LT(hoursToEnd(full(pan(5.08))), 0.75 * deep.toEnd->toHours());
    const Cooling iced = cool(with(full(pan(5.08)), {iceBath(45), refrigerator()}));
    EXPECT_TRUE(iced.passes);
    EXPECT_FALSE(hasCode(iced.findings, u"deep-in-refrigerator"));
}

TEST(CoolingTest, DeeperIsSlower) {
    double before = 0;
    for (const double depth : {1.0, 2.0, 4.0, 6.0, 10.0, 15.0, 20.0}) {
        const double hours = hoursToEnd(full(potOf(26, depth)));
        EXPECT_GT(hours, before) << depth;
        before = hours;
    }
}

TEST(CoolingTest, ColderAirStirringAndNoLidAreFaster) {
    const CoolingInput pot = full(potOf(26, 12));
    EXPECT_LT(hoursToEnd(with(pot, {refrigerator(1)})), hoursToEnd(with(pot, {refrigerator(3)})));
    EXPECT_LT(hoursToEnd(with(pot, {refrigerator(3)})), hoursToEnd(with(pot, {refrigerator(4.4)})));
    EXPECT_LT(hoursToEnd(pot), hoursToEnd(full(potOf(26, 12, true))));
    const double iced = hoursToEnd(with(pot, {iceBath(20, false), refrigerator()}));
    EXPECT_LT(iced, hoursToEnd(pot));
    EXPECT_LT(hoursToEnd(with(pot, {iceBath(20), refrigerator()})), iced);
    CoolingInput plastic = pot;
    plastic.container.material = Container::Material::Plastic;
    plastic.stages = {iceBath(20), refrigerator()};
    EXPECT_LT(iced * 0.5, hoursToEnd(plastic));
}

// Core and surface part once the stock gels; before, the stock mixes itself and they are a few
// kelvin apart at most, as the steam carries off 2 to 3 kW/m2 in the beginning.
TEST(CoolingTest, CurveStartsHotFallsAndPartsWhenItGels) {
    const Cooling cooling = cool(full(potOf(26, 12)));
    ASSERT_GT(cooling.curve.size(), 20U);
    EXPECT_LE(cooling.curve.size(), 300U);
    EXPECT_DOUBLE_EQ(cooling.curve.front().at.toMinutes(), 0);
    EXPECT_DOUBLE_EQ(cooling.curve.front().core.toCelsius(), 95);
    EXPECT_LE(cooling.curve.back().core.toCelsius(), 5);
    for (std::size_t index = 1; index < cooling.curve.size(); ++index) {
        EXPECT_GT(cooling.curve[index].at, cooling.curve[index - 1].at);
        EXPECT_LE(cooling.curve[index].core, cooling.curve[index - 1].core);
        EXPECT_LE(cooling.curve[index].surface, cooling.curve[index].core);
    }
    const auto apartAt = [&cooling](double coreC) {
        const auto point = std::ranges::find_if(
            cooling.curve, [coreC](const CoolingPoint& one) { return one.core <= celsius(coreC); });
        return point->core.toCelsius() - point->surface.toCelsius();
    };
    EXPECT_LT(apartAt(85), 9);
    EXPECT_LT(apartAt(50), 3);
    EXPECT_LT(apartAt(30), 3);
    EXPECT_GT(apartAt(12), 3);
}

// The clock of the rule starts at 135 °F (FDA Food Code 2022, 3-501.14), or at once below it.
TEST(CoolingTest, ClockStartsAt57Degrees) {
    CoolingInput hot = full(pan(4));
    CoolingInput lukewarm = hot;
    lukewarm.start = quantity::Temperature::fromFahrenheit(135);
    const Cooling fromHot = cool(hot);
    const Cooling fromLimit = cool(lukewarm);
    EXPECT_NEAR(fromHot.toEnd->toMinutes(), fromLimit.toEnd->toMinutes(),
                0.02 * fromLimit.toEnd->toMinutes());
    CoolingInput cold = hot;
    cold.start = celsius(15);
    const Cooling already = cool(cold);
    EXPECT_DOUBLE_EQ(already.toMiddle->toMinutes(), 0);
    EXPECT_GT(already.toEnd->toMinutes(), 0);
    cold.start = celsius(4);
    EXPECT_DOUBLE_EQ(cool(cold).toEnd->toMinutes(), 0);
    EXPECT_TRUE(cool(cold).passes);
}

TEST(CoolingTest, TellsWhatNeverGetsCold) {
    const Cooling warm = cool(with(full(pan(4)), {refrigerator(8)}));
    EXPECT_FALSE(warm.toEnd);
    EXPECT_FALSE(warm.passes);
    EXPECT_EQ(severityOf(warm, u"cooling-never-cold"), Finding::Severity::Stop);
    EXPECT_EQ(severityOf(warm, u"refrigerator-warm"), Finding::Severity::Caution);
    EXPECT_NEAR(*findingOf(warm, u"refrigerator-warm")->limit, 4.44, 0.01); // 40 °F
    EXPECT_NEAR(warm.curve.back().at.toHours(), 72, 1e-6);
    EXPECT_LE(warm.curve.size(), 300U);
    EXPECT_FALSE(hasCode(cool(full(pan(4))).findings, u"refrigerator-warm"));
}

// USDA FSIS home rule: into the refrigerator within 2 hours, 1 hour above 90 °F.
TEST(CoolingTest, TellsWhatStandsOutTooLong) {
    const CoolingInput pot = full(pan(4));
    const auto code = u"counter-too-long";
    EXPECT_FALSE(hasCode(cool(with(pot, {counter(2), refrigerator()})).findings, code));
    const Cooling longer = cool(with(pot, {counter(2.5), refrigerator()}));
    ASSERT_TRUE(hasCode(longer.findings, code));
    EXPECT_DOUBLE_EQ(*findingOf(longer, code)->limit, 2);
    EXPECT_NEAR(*findingOf(longer, code)->value, 2.5, 1e-6);
    EXPECT_EQ(findingOf(longer, code)->unit, QStringLiteral("h"));
    EXPECT_FALSE(hasCode(cool(with(pot, {counter(2, 32), refrigerator()})).findings, code));
    const Cooling hot = cool(with(pot, {counter(2, 33), refrigerator()}));
    ASSERT_TRUE(hasCode(hot.findings, code));
    EXPECT_DOUBLE_EQ(*findingOf(hot, code)->limit, 1);
    EXPECT_TRUE(hasCode(cool(with(pot, {counter(0)})).findings, code)) << "runs on for ever";
}

TEST(CoolingTest, TellsOfLidGlassAndSize) {
    CoolingInput jar = with(full(potOf(8.7, 16, true)), {iceBath(30), refrigerator()});
    jar.container.material = Container::Material::Glass;
    const Cooling cooling = cool(jar);
    EXPECT_EQ(severityOf(cooling, u"covered-while-hot"), Finding::Severity::Note);
    EXPECT_EQ(severityOf(cooling, u"glass-in-ice"), Finding::Severity::Caution);
    jar.start = celsius(40);
    EXPECT_FALSE(hasCode(cool(jar).findings, u"glass-in-ice"));
    EXPECT_FALSE(hasCode(cool(jar).findings, u"covered-while-hot"));
    CoolingInput over = full(pan(4));
    over.volume = over.volume * 1.2;
    EXPECT_EQ(severityOf(cool(over), u"container-too-small"), Finding::Severity::Stop);
    EXPECT_FALSE(hasCode(cool(full(pan(4))).findings, u"container-too-small"));
}

// Melting a kilogram of ice takes 333 kJ (Boston University physics notes), cooling a litre of
// water by a kelvin 4.18 kJ: 4 L from 95 to under 5 °C melt about 4.6 kg. To the tenth that is
// printed, the end being between 1 and 5 °C.
TEST(CoolingTest, TellsHowMuchIceTheBathMelts) {
    CoolingInput bowl = full(potOf(26, 10));
    bowl.volume = quantity::Volume::fromLitres(4);
    const Cooling iced = cool(with(bowl, {iceBath(240), refrigerator()}));
    const Finding* found = findingOf(iced, u"ice-needed");
    ASSERT_NE(found, nullptr);
    bool said = false;
    for (const double endC : {1.0, 2.0, 3.0, 4.0, 5.0})
        said = said || found->text.contains(
                           QStringLiteral(" %1 kg").arg(4 * 4.18 * (95 - endC) / 333, 0, 'f', 1));
    EXPECT_TRUE(said) << found->text.toStdString();
    EXPECT_FALSE(hasCode(cool(bowl).findings, u"ice-needed"));
}

TEST(CoolingTest, TellsThatFreezingIsNotReckoned) {
    EXPECT_TRUE(hasCode(cool(with(full(pan(3)), {refrigerator(-18)})).findings, u"below-freezing"));
    EXPECT_FALSE(hasCode(cool(with(full(pan(3)), {refrigerator(1)})).findings, u"below-freezing"));
}

TEST(CoolingTest, WhatStartsBelowTheRuleIsToldFromItsOwnStart) {
    CoolingInput cooler = full(pan(6));
    cooler.start = celsius(30);
    const Cooling cooling = cool(cooler);
    const Finding* late = findingOf(cooling, u"cooling-second-stage-late");
    ASSERT_NE(late, nullptr);
    EXPECT_TRUE(late->text.startsWith(QStringLiteral("From 30"))) << late->text.toStdString();
}

TEST(CoolingTest, EveryFindingCarriesItsWords) {
    for (const CoolingInput& input :
         {full(potOf(20.32, 20.32, true)), with(full(pan(4)), {refrigerator(8)}),
          with(full(pan(9)), {counter(3), refrigerator(5)})}) {
        const Cooling cooling = cool(input);
        EXPECT_TRUE(hasCode(cooling.findings, u"cooling-estimate"));
        for (const Finding& finding : cooling.findings) {
            EXPECT_TRUE(finding.text.endsWith(QLatin1Char('.'))) << finding.text.toStdString();
            EXPECT_EQ(finding.value.has_value(), !finding.unit.isEmpty());
            EXPECT_TRUE(!finding.limit || !finding.source.isEmpty() ||
                        finding.code == QStringLiteral("container-too-small"))
                << finding.code.toStdString();
        }
    }
}

TEST(CoolingTest, FewestContainersIsTheFirstCountThatPasses) {
    const auto total = quantity::Volume::fromLitres(9);
    const CoolingInput one = full(pan(6.5));
    const auto fewest = fewestContainers(total, one);
    ASSERT_TRUE(fewest);
    bool passedBefore = false;
    for (int count = 2; count <= 8; ++count) { // 1 does not hold it
        CoolingInput shared = one;
        shared.volume = total / count;
        const bool passes = cool(shared).passes;
        EXPECT_EQ(passes, count >= fewest->count) << count;
        EXPECT_TRUE(passes || !passedBefore) << "more containers never cool slower";
        passedBefore = passes;
    }
    EXPECT_NEAR(fewest->depth.toCentimetres(),
                9000.0 / fewest->count / (one.container.floorSquareMetres() * 1e4), 1e-9);
    EXPECT_LE(fewest->depth, one.container.height);
}

TEST(CoolingTest, FewestContainersHoldsToCapacityAndToWhatCanBe) {
    // Stirred in ice, a bowl passes however full: capacity alone decides.
    const CoolingInput bowl = with(full(potOf(26, 10)), {iceBath(120), refrigerator()});
    const double holds = bowl.container.capacity().toLitres();
    const auto exactly = fewestContainers(quantity::Volume::fromLitres(2 * holds), bowl);
    ASSERT_TRUE(exactly);
    EXPECT_EQ(exactly->count, 2);
    EXPECT_EQ(fewestContainers(quantity::Volume::fromLitres(2 * holds + 0.1), bowl)->count, 3);
    EXPECT_FALSE(fewestContainers(quantity::Volume::fromLitres(100 * holds), bowl));
    EXPECT_FALSE(
        fewestContainers(quantity::Volume::fromLitres(5), with(full(pan(6.5)), {refrigerator(6)})));
    EXPECT_FALSE(fewestContainers({}, bowl));
}

TEST(CoolingTest, WaysHaveTheStagesOfTheirNames) {
    using Place = CoolingStage::Place;
    const auto places = [](CoolingWay way, double roomC) {
        std::vector<Place> all;
        for (const CoolingStage& stage : stagesOf(way, celsius(roomC)))
            all.push_back(stage.place);
        return all;
    };
    EXPECT_EQ(places(CoolingWay::Refrigerator, 21), std::vector{Place::Refrigerator});
    EXPECT_EQ(places(CoolingWay::IceBath, 21), (std::vector{Place::IceBath, Place::Refrigerator}));
    EXPECT_EQ(places(CoolingWay::Counter, 21), (std::vector{Place::Counter, Place::Refrigerator}));
    EXPECT_TRUE(stagesOf(CoolingWay::IceBath, celsius(21)).front().stirred);
    const auto out = [](double roomC) {
        return stagesOf(CoolingWay::Counter, celsius(roomC)).front().time.toHours();
    };
    EXPECT_DOUBLE_EQ(out(21), 2); // USDA FSIS
    EXPECT_DOUBLE_EQ(out(33), 1); // above 90 °F
    for (const CoolingWay way :
         {CoolingWay::Refrigerator, CoolingWay::IceBath, CoolingWay::Counter})
        EXPECT_LE(stagesOf(way, celsius(21)).back().ambient.toFahrenheit(), 40); // USDA FSIS
}

TEST(CoolingTest, PlacesHaveWords) {
    using Place = CoolingStage::Place;
    for (const auto& [place, word] :
         {std::pair{Place::Counter, "counter"}, std::pair{Place::Refrigerator, "refrigerator"},
          std::pair{Place::IceBath, "ice-bath"}}) {
        EXPECT_EQ(coolingPlaceId(place).toStdString(), word);
        EXPECT_EQ(coolingPlaceFromId(QLatin1String(word).toString()), place);
    }
    EXPECT_FALSE(coolingPlaceFromId(u"cellar"));
}

} // namespace ladlework::kitchen
