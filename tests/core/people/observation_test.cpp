#include "people/observation.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::people {
namespace {

const QDate today(2024, 3, 1);

Observation weighed(QDate day, double kilograms) {
    Observation observation;
    observation.day = day;
    observation.kind = weightKind();
    observation.value = kilograms;
    observation.unit = QStringLiteral("kg");
    return observation;
}

struct ObservationCase {
    const char* name;
    std::function<void(Observation&)> change;
    const char* field;
};

class ObservationTest : public ::testing::TestWithParam<ObservationCase> {};

TEST_P(ObservationTest, namesTheFieldAtFault) {
    Observation observation = weighed(today, 70);
    GetParam().change(observation);
    const Outcome outcome = check(observation, today);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
    }
}

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

INSTANTIATE_TEST_SUITE_P(
    Fields, ObservationTest,
    ::testing::Values(
        ObservationCase{"weight", [](Observation&) {}, ""},
        ObservationCase{"noDay", [](Observation& o) { o.day = QDate(); }, "day"},
        ObservationCase{"tomorrow", [](Observation& o) { o.day = today.addDays(1); }, "day"},
        ObservationCase{"noKind", [](Observation& o) { o.kind = QStringLiteral(" "); }, "kind"},
        ObservationCase{"weightInPounds", [](Observation& o) { o.unit = QStringLiteral("lb"); },
                        "unit"},
        ObservationCase{"lightest", [](Observation& o) { o.value = 0.5; }, ""},
        ObservationCase{"tooLight", [](Observation& o) { o.value = 0.4; }, "value"},
        ObservationCase{"heaviest", [](Observation& o) { o.value = 400; }, ""},
        ObservationCase{"tooHeavy", [](Observation& o) { o.value = 401; }, "value"},
        ObservationCase{"weightOfNoNumber", [](Observation& o) { o.value = notANumber; }, "value"},
        ObservationCase{"ownWord",
                        [](Observation& o) {
                            o.kind = QStringLiteral("mood");
                            o.unit.clear();
                            o.value = -3;
                        },
                        ""},
        ObservationCase{"ownWordOfNoNumber",
                        [](Observation& o) {
                            o.kind = QStringLiteral("mood");
                            o.value = notANumber;
                        },
                        "value"},
        ObservationCase{"ownWordOverAMillion",
                        [](Observation& o) {
                            o.kind = QStringLiteral("steps a day");
                            o.value = 1'000'001;
                        },
                        "value"}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(ObservationTest, cautionsOnMoreThanFivePercentLost) {
    // American Family Physician 2014;89:718: more than 5 % in 6 to 12 months.
    const QDate before = today.addMonths(-8);
    EXPECT_TRUE(weightFindings({weighed(before, 80), weighed(today, 76)}, false, today).isEmpty())
        << "5 % exactly";
    const Findings findings =
        weightFindings({weighed(today, 75.9), weighed(before, 80)}, false, today);
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings[0].severity, Finding::Severity::Caution);
    EXPECT_EQ(findings[0].code.toStdString(), "weight-loss");
    EXPECT_NEAR(*findings[0].value, 5.125, 1e-9);
    EXPECT_EQ(*findings[0].limit, 5);
    EXPECT_TRUE(findings[0].text.contains(QStringLiteral("treating clinician")));
    EXPECT_TRUE(findings[0].source.contains(QStringLiteral("2014;89:718")));
    EXPECT_EQ(findings[0].why.toStdString(), "From 80.0 kg on 1 July 2023 to 75.9 kg on 1 March "
                                             "2024.");
}

TEST_F(ObservationTest, looksFromTheHighestOfTheYearToTheNewest) {
    const QList<Observation> recovered{weighed(today.addMonths(-9), 80),
                                       weighed(today.addMonths(-4), 74),
                                       weighed(today.addDays(-2), 79)};
    EXPECT_TRUE(weightFindings(recovered, false, today).isEmpty());
    EXPECT_EQ(weightFindings(recovered, false, today.addMonths(-3)).size(), 1)
        << "as it stood before";
    const QList<Observation> gained{weighed(today.addMonths(-9), 70),
                                    weighed(today.addMonths(-4), 80), weighed(today, 75)};
    EXPECT_EQ(weightFindings(gained, false, today).size(), 1);
}

TEST_F(ObservationTest, forgetsWhatIsOlderThanTheWindow) {
    const QDate yearAgo = today.addMonths(-12);
    EXPECT_EQ(weightFindings({weighed(yearAgo, 80), weighed(today, 70)}, false, today).size(), 1);
    EXPECT_TRUE(weightFindings({weighed(yearAgo.addDays(-1), 80), weighed(today, 70)}, false, today)
                    .isEmpty());
    // Nobody was weighed for over a year.
    EXPECT_TRUE(
        weightFindings({weighed(yearAgo.addDays(-30), 80), weighed(yearAgo.addDays(-1), 60)}, false,
                       today)
            .isEmpty());
}

TEST_F(ObservationTest, aChildsLossIsAlwaysPassedOn) {
    const QList<Observation> weights{weighed(today.addMonths(-2), 14.2), weighed(today, 14.0)};
    EXPECT_TRUE(weightFindings(weights, false, today).isEmpty());
    const Findings findings = weightFindings(weights, true, today);
    ASSERT_EQ(findings.size(), 1);
    EXPECT_EQ(findings[0].code.toStdString(), "weight-loss-child");
    EXPECT_TRUE(findings[0].source.contains(QStringLiteral("NG75")));
    EXPECT_TRUE(weightFindings({weighed(today.addMonths(-2), 14), weighed(today, 14)}, true, today)
                    .isEmpty());
}

TEST_F(ObservationTest, readsWeightsOnlyAndTheLastOfADay) {
    Observation mood = weighed(today.addMonths(-1), 500);
    mood.kind = QStringLiteral("mood");
    EXPECT_TRUE(weightFindings({mood, weighed(today, 70)}, true, today).isEmpty());
    EXPECT_TRUE(weightFindings({}, true, today).isEmpty());
    Observation slip = weighed(today, 7);
    slip.id.value = 1;
    Observation mended = weighed(today, 70);
    mended.id.value = 2;
    EXPECT_TRUE(
        weightFindings({weighed(today.addMonths(-1), 70), mended, slip}, false, today).isEmpty());
}

/// Weights before the day that weightsCountFrom() names change nothing, whatever today is.
TEST_F(ObservationTest, olderWeightsDoNotCount) {
    int said = 0;
    for (int later = 0; later < 800; ++later) {
        const QDate day = today.addDays(later);
        QList<Observation> all;
        for (int back = 0; back < 40; ++back)
            all.append(weighed(day.addMonths(-back).addDays(-later % 31), 60 + back % 14));
        QList<Observation> late = all;
        late.removeIf([day](const Observation& o) { return o.day < weightsCountFrom(day); });
        ASSERT_LT(late.size(), all.size());
        ASSERT_EQ(weightFindings(late, false, day), weightFindings(all, false, day)) << later;
        said += weightFindings(all, false, day).isEmpty() ? 0 : 1;
    }
    EXPECT_GT(said, 0);
}

} // namespace
} // namespace ladlework::people
