#include "people/retry_plan.h"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace ladlework::people {
namespace {

using Ending = RetryPlan::Ending;
using quantity::Volume;

const QDate today(2024, 3, 1);
const Subject beef{Subject::Kind::Animal, QStringLiteral("beef")};

RetryPlan usual() {
    return usualRetry(MemberId{4}, beef, QDate(2024, 2, 26));
}

struct PlanCase {
    const char* name;
    std::function<void(RetryPlan&)> change;
    const char* field;
};

class RetryPlanTest : public ::testing::TestWithParam<PlanCase> {};

TEST_P(RetryPlanTest, namesTheFieldAtFault) {
    RetryPlan plan = usual();
    GetParam().change(plan);
    const Outcome outcome = check(plan, today);
    const std::string field = GetParam().field;
    ASSERT_EQ(outcome.has_value(), field.empty());
    if (!outcome) {
        EXPECT_EQ(outcome.error().place.toStdString(), field);
    }
}

void close(RetryPlan& plan, Ending ending, QDate day) {
    plan.outcome = ending;
    plan.closed = day;
}

INSTANTIATE_TEST_SUITE_P(
    Fields, RetryPlanTest,
    ::testing::Values(
        PlanCase{"usual", [](RetryPlan&) {}, ""},
        PlanCase{"startsLater", [](RetryPlan& p) { p.start = today.addDays(40); }, ""},
        PlanCase{"noSubject", [](RetryPlan& p) { p.subject.id = QStringLiteral(" "); }, "subject"},
        PlanCase{"noStart", [](RetryPlan& p) { p.start = QDate(); }, "start"},
        PlanCase{"watchNoDays", [](RetryPlan& p) { p.watchDays = 0; }, ""},
        PlanCase{"watchThirtyDays", [](RetryPlan& p) { p.watchDays = 30; }, ""},
        PlanCase{"watchTooLong", [](RetryPlan& p) { p.watchDays = 31; }, "watchDays"},
        PlanCase{"watchNegative", [](RetryPlan& p) { p.watchDays = -1; }, "watchDays"},
        PlanCase{"noSteps", [](RetryPlan& p) { p.steps.clear(); }, "steps"},
        PlanCase{"tooManySteps",
                 [](RetryPlan& p) { p.steps = QList<Volume>(13, Volume::fromMillilitres(5)); },
                 "steps"},
        PlanCase{"sameTwice",
                 [](RetryPlan& p) { p.steps = QList<Volume>(12, Volume::fromMillilitres(5)); }, ""},
        PlanCase{"emptyStep", [](RetryPlan& p) { p.steps[0] = Volume(); }, "steps[0]"},
        PlanCase{"stepOfNoNumber",
                 [](RetryPlan& p) {
                     p.steps[1] = Volume::fromMillilitres(std::numeric_limits<double>::quiet_NaN());
                 },
                 "steps[1]"},
        PlanCase{"stepTooBig", [](RetryPlan& p) { p.steps.last() = Volume::fromLitres(1.01); },
                 "steps[3]"},
        PlanCase{"stepsGoDown", [](RetryPlan& p) { p.steps[2] = p.steps[0]; }, "steps[2]"},
        PlanCase{"borne", [](RetryPlan& p) { close(p, Ending::Borne, today); }, ""},
        PlanCase{"borneOnTheFirstDay", [](RetryPlan& p) { close(p, Ending::Borne, p.start); }, ""},
        PlanCase{"borneWithoutDay", [](RetryPlan& p) { p.outcome = Ending::Borne; }, "closed"},
        PlanCase{"openWithDay", [](RetryPlan& p) { p.closed = today; }, "closed"},
        PlanCase{"closedBeforeItBegan",
                 [](RetryPlan& p) { close(p, Ending::GivenUp, p.start.addDays(-1)); }, "closed"},
        PlanCase{"closedTomorrow",
                 [](RetryPlan& p) { close(p, Ending::NotBorne, today.addDays(1)); }, "closed"}),
    [](const auto& named) { return std::string(named.param.name); });

TEST_F(RetryPlanTest, hasAStepOnItsDayAndWatchesBetween) {
    RetryPlan plan = usual();
    ASSERT_EQ(plan.steps.size(), 4);
    ASSERT_EQ(plan.watchDays, 2);
    // Every third day, over the leap day.
    EXPECT_EQ(plan.dayOfStep(0), QDate(2024, 2, 26));
    EXPECT_EQ(plan.dayOfStep(1), QDate(2024, 2, 29));
    EXPECT_EQ(plan.dayOfStep(3), QDate(2024, 3, 6));
    EXPECT_EQ(plan.lastDay(), QDate(2024, 3, 8));
    EXPECT_FALSE(plan.dayOfStep(4).isValid());
    EXPECT_FALSE(plan.dayOfStep(-1).isValid());
    EXPECT_EQ(retryAmount(plan, QDate(2024, 2, 26)), Volume::fromTeaspoons(1));
    EXPECT_EQ(retryAmount(plan, QDate(2024, 2, 29)), Volume::fromTablespoons(1));
    EXPECT_FALSE(retryAmount(plan, QDate(2024, 2, 27)).has_value());
    EXPECT_FALSE(retryAmount(plan, QDate(2024, 2, 25)).has_value());
    EXPECT_FALSE(retryAmount(plan, QDate(2024, 3, 9)).has_value());
    EXPECT_FALSE(retryAmount(plan, QDate()).has_value());
    close(plan, Ending::GivenUp, QDate(2024, 2, 27));
    EXPECT_FALSE(retryAmount(plan, QDate(2024, 2, 29)).has_value());
    plan.steps.clear();
    EXPECT_FALSE(plan.lastDay().isValid());
}

TEST_F(RetryPlanTest, theUsualPlanPassesItsOwnCheck) {
    const RetryPlan plan = usual();
    EXPECT_EQ(plan.member, MemberId{4});
    EXPECT_EQ(plan.subject, beef);
    EXPECT_EQ(plan.outcome, Ending::Open);
    EXPECT_TRUE(check(plan, today).has_value());
}

TEST_F(RetryPlanTest, anOutcomeLeadsToANote) {
    RetryPlan plan = usual();
    EXPECT_FALSE(noteOf(plan).has_value());
    close(plan, Ending::GivenUp, today);
    EXPECT_FALSE(noteOf(plan).has_value());
    close(plan, Ending::Borne, today);
    plan.note = QStringLiteral("fine up to the last step");
    const std::optional<ToleranceNote> borne = noteOf(plan);
    ASSERT_TRUE(borne.has_value());
    EXPECT_EQ(borne->verdict, ToleranceNote::Verdict::SmallAmounts);
    EXPECT_EQ(borne->member, MemberId{4});
    EXPECT_EQ(borne->subject, beef);
    EXPECT_EQ(borne->noted, today);
    EXPECT_EQ(borne->reason.toStdString(), "borne in the retry: fine up to the last step");
    EXPECT_TRUE(check(*borne, today).has_value());
    close(plan, Ending::NotBorne, today);
    plan.note.clear();
    const std::optional<ToleranceNote> notBorne = noteOf(plan);
    ASSERT_TRUE(notBorne.has_value());
    EXPECT_EQ(notBorne->verdict, ToleranceNote::Verdict::Avoid);
    EXPECT_FALSE(notBorne->allergy);
    EXPECT_TRUE(check(*notBorne, today).has_value());
}

TEST_F(RetryPlanTest, readsItsWordsBack) {
    for (Ending ending : {Ending::Open, Ending::Borne, Ending::NotBorne, Ending::GivenUp}) {
        EXPECT_EQ(retryOutcomeFromId(retryOutcomeId(ending)), ending);
        EXPECT_FALSE(retryOutcomeName(ending).isEmpty());
    }
    EXPECT_EQ(retryOutcomeId(Ending::NotBorne).toStdString(), "not-borne");
    EXPECT_EQ(retryOutcomeId(Ending::GivenUp).toStdString(), "given-up");
    EXPECT_FALSE(retryOutcomeFromId(u"maybe").has_value());
}

} // namespace
} // namespace ladlework::people
