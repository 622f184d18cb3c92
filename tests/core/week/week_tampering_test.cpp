#include "core/week/household_week.h"
#include "core/week/week_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <ostream>

namespace ladlework::week::rules {
namespace {
using namespace samples;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

struct Tampering {
    const char* name;
    std::function<void(WeekProblem&, WeekSolution&)> change;
    const char* words; ///< that a breach must hold
};
std::ostream& operator<<(std::ostream& out, const Tampering& tampering) {
    return out << tampering.name;
}

const Tampering tamperings[] = {
    {"CookingWithoutASlot",
     [](WeekProblem& problem, WeekSolution&) {
         problem.freeTimes.erase(problem.freeTimes.begin());
     },
     "day 0 has 1 cookings and room for 0"},
    {"CookingLongerThanTheSlot",
     [](WeekProblem& problem, WeekSolution&) { problem.freeTimes[1].length = minutes(399); },
     "day 2 has a cooking of 400 min"},
    {"TwoLongCookingsAndOneLongPlace",
     [](WeekProblem& problem, WeekSolution& plan) {
         problem.freeTimes[1].pots = 1;
         addSlot(problem, 2, 360);
         plan.cookings.push_back({2, 1, false, ml(1000)});
     },
     "day 2 has a cooking of 400 min"},
    {"CookingOutsideTheHorizon",
     [](WeekProblem&, WeekSolution& plan) {
         plan.cookings.push_back({5, 0, false, ml(2000)});
     },
     "a cooking of pot 0 on day 5"},
    {"CookingOfNoPot",
     [](WeekProblem&, WeekSolution& plan) {
         plan.cookings.push_back({2, 2, false, ml(2000)});
     },
     "a cooking of pot 2"},
    {"SettledCookingLeftOut",
     [](WeekProblem& problem, WeekSolution&) {
         problem.settled = {{3, 0}};
     },
     "pot 0 settled on day 3"},
    {"CookingSaidToBeSettledThatIsNot",
     [](WeekProblem&, WeekSolution& plan) { plan.cookings[0].settled = true; },
     "pot 0 settled on day 0"},
    {"AnimalTooOften",
     [](WeekProblem& problem, WeekSolution&) {
         problem.mostCookingsPerAnimal = 1;
         problem.pots[1].animal = QStringLiteral("chicken");
     },
     "chicken is cooked 2 times"},
    {"CookingsNotByDay",
     [](WeekProblem&, WeekSolution& plan) { std::swap(plan.cookings[0], plan.cookings[1]); },
     "not by day"},
    {"DrunkByOneWhoMayNot",
     [](WeekProblem& problem, WeekSolution&) { problem.lots[1].may[ben] = false; },
     "drinker 1 may not drink of lot 1"},
    {"PotDrunkByOneWhoMayNot",
     [](WeekProblem&, WeekSolution& plan) { plan.servings[8].drinker = ben; },
     "drinker 1 may not drink of cooking 1"},
    {"MoreServedThanThereIs",
     [](WeekProblem& problem, WeekSolution&) { problem.pots[0].stock = ml(1999); },
     "cooking 0 is said to give 2000 mL and gives 1999"},
    {"MoreServedThanWasMeasured",
     [](WeekProblem& problem, WeekSolution& plan) {
         problem.settled = {{0, 0, ml(1999)}};
         plan.cookings[0].settled = true;
         plan.cookings[0].stock = ml(1999);
     },
     "mL more of cooking 0 are served on day 1"},
    {"MeasuredStockNotTaken",
     [](WeekProblem& problem, WeekSolution& plan) {
         problem.settled = {{0, 0, ml(1999)}};
         plan.cookings[0].settled = true;
     },
     "pot 0 settled on day 0"},
    {"MoreServedThanWanted",
     [](WeekProblem& problem, WeekSolution&) { problem.drinkers[ana].perDay[1] = ml(400); },
     "drinker 0 is served 500 mL on day 1 and wants 400"},
    {"ServedBeforeItIsCooked", [](WeekProblem&, WeekSolution& plan) { plan.servings[8].day = 1; },
     "mL more of cooking 1 are served on day 1"},
    {"ServedAfterItsLastDay", [](WeekProblem& problem, WeekSolution&) { problem.fridgeDays = 0; },
     "mL more of cooking 0 are served on day 1"},
    {"LotServedAfterItsLastDay",
     [](WeekProblem&, WeekSolution& plan) {
         plan.servings[0].day = 1;
         plan.servings[4].volume = ml(300);
     },
     "200 mL more of lot 0 are served on day 1"},
    {"LotThatIsGoneAlready",
     [](WeekProblem& problem, WeekSolution&) { problem.lots[0].useByDay = -1; },
     "mL more of lot 0 are served on day 0"},
    {"DrunkOnTheDayOfThawing", [](WeekProblem&, WeekSolution& plan) { plan.thawing[0].day = 2; },
     "mL more of cooking 0 are served on day 2"},
    {"DrunkThreeDaysAfterThawing",
     [](WeekProblem&, WeekSolution& plan) { plan.thawing[1].day = 1; },
     "mL more of lot 1 are served on day 4"},
    {"ServedFromNothing", [](WeekProblem&, WeekSolution& plan) { plan.servings[0].from.index = 7; },
     "from lot 7, which is not there"},
    {"NobodyServed", [](WeekProblem&, WeekSolution& plan) { plan.servings[0].drinker = 2; },
     "drinker 2 is served: there is none"},
    {"ServedOutsideTheHorizon",
     [](WeekProblem&, WeekSolution& plan) { plan.servings.back().day = 5; }, "serving on day 5"},
    {"LessThanNothingServed",
     [](WeekProblem&, WeekSolution& plan) { plan.servings[0].volume = ml(-200); },
     "serving of -200"},
    {"NotANumberServed",
     [](WeekProblem&, WeekSolution& plan) {
         plan.servings[0].volume = ml(std::numeric_limits<double>::quiet_NaN());
     },
     "serving of nan"},
    {"FrozenADayLate", [](WeekProblem&, WeekSolution& plan) { plan.freezing[0].day = 1; },
     "cooking 0 is frozen on day 1"},
    {"LotFrozen",
     [](WeekProblem&, WeekSolution& plan) {
         plan.freezing.push_back({0, fridgeLot, ml(1)});
     },
     "lot 0 is frozen on day 0"},
    {"MoreFrozenThanThereIs",
     [](WeekProblem&, WeekSolution& plan) { plan.freezing[0].volume = ml(2001); },
     "1 mL more of cooking 0 are frozen"},
    {"MoreThawedThanFrozen",
     [](WeekProblem&, WeekSolution& plan) { plan.thawing[0].volume = ml(801); },
     "1 mL more of cooking 0 are thawed"},
    {"ThawedBeforeItIsFrozen", [](WeekProblem&, WeekSolution& plan) { plan.thawing[2].day = 1; },
     "500 mL more of cooking 1 are thawed on day 1"},
    {"RefrigeratorTooSmall",
     [](WeekProblem& problem, WeekSolution&) { problem.fridgeRoom = ml(1099); },
     "the refrigerator holds 1 mL too much at the end of day 2"},
    {"FreezerTooSmall", [](WeekProblem& problem, WeekSolution&) { problem.freezerRoom = ml(1399); },
     "the freezer holds 1 mL too much at the end of day 0"},
    {"TooMuchMeatOnADay",
     [](WeekProblem& problem, WeekSolution&) { problem.meatPerDay = grams(399); },
     "400 g of meat are eaten on day 0"},
    {"MoreMeatThanThereIs",
     [](WeekProblem& problem, WeekSolution&) { problem.pots[0].meat = grams(599); },
     "more meat of cooking 0 is eaten on day 1"},
    {"MeatAfterItsLastDay", [](WeekProblem&, WeekSolution& plan) { plan.meat[2].day = 2; },
     "more meat of cooking 0 is eaten on day 2"},
    {"MeatBeforeItIsCooked", [](WeekProblem&, WeekSolution& plan) { plan.meat[3].day = 1; },
     "more meat of cooking 1 is eaten on day 1"},
    {"StockThatSpoilsIsNotTold", [](WeekProblem&, WeekSolution& plan) { plan.servings.pop_back(); },
     "stock of lot 1 spoilt on day 4: said 0, seen 300"},
    {"MeatThatSpoilsIsNotTold", [](WeekProblem&, WeekSolution& plan) { plan.meat.pop_back(); },
     "meat of cooking 1 spoilt on day 3: said 0, seen 200"},
    {"WrongDayOfSpoiling",
     [](WeekProblem&, WeekSolution& plan) {
         plan.spoiling = {{1, chicken, ml(1), {}}};
     },
     "stock of cooking 0 spoilt on day 1: said 1, seen 0"},
    {"SomeoneShortIsNotTold", [](WeekProblem&, WeekSolution& plan) { plan.servings.pop_back(); },
     "what is short of day 4: said 0 mL, seen 300"},
    {"ShortToldForTooFew", [](WeekProblem&, WeekSolution& plan) { plan.shortBy[3].pop_back(); },
     "who is short on day 3 is not told for every drinker"},
    {"WrongRefrigerator", [](WeekProblem&, WeekSolution& plan) { plan.stores[1].fridge = ml(801); },
     "refrigerator of day 1: said 801 mL, seen 800"},
    {"WrongFreezer", [](WeekProblem&, WeekSolution& plan) { plan.stores[2].freezer = ml(499); },
     "freezer of day 2: said 499 mL, seen 500"},
    {"WrongWanted", [](WeekProblem& problem, WeekSolution&) { problem.spill = 0.1; },
     "wanted of day 0: said 800 mL, seen 880"},
    {"WrongServed", [](WeekProblem&, WeekSolution& plan) { plan.stores[0].served = ml(700); },
     "served of day 0: said 700 mL, seen 800"},
    {"StoresOfTooFewDays", [](WeekProblem&, WeekSolution& plan) { plan.stores.pop_back(); },
     "stores are told for 4 days"},
    {"WrongCount", [](WeekProblem&, WeekSolution& plan) { plan.objective.cookings = 1; },
     "level 4 of the objective: said 1, seen 2"},
    {"WrongWork", [](WeekProblem&, WeekSolution& plan) { plan.objective.handsOn = minutes(200); },
     "level 5 of the objective: said 200, seen 240"},
    {"WrongCost", [](WeekProblem&, WeekSolution& plan) { plan.objective.cost = 29; },
     "level 6 of the objective: said 29, seen 30"},
    {"SaidNotToFitWhenItDoes",
     [](WeekProblem&, WeekSolution& plan) { plan.status = WeekSolution::Status::Infeasible; },
     "said that the rooms are too small"},
    {"ProvenWithAGap", [](WeekProblem&, WeekSolution& plan) { plan.gap = 0.1; },
     "said to be the best with a gap of 0.1"},
};

class WeekTamperingTest : public ::testing::TestWithParam<Tampering> {};
} // namespace

TEST_P(WeekTamperingTest, isCaught) {
    WeekProblem problem = household();
    WeekSolution plan = goodPlan();
    ASSERT_THAT(breaches(problem, plan), IsEmpty());
    GetParam().change(problem, plan);
    EXPECT_THAT(breaches(problem, plan), Contains(HasSubstr(GetParam().words)));
}

INSTANTIATE_TEST_SUITE_P(Every, WeekTamperingTest, ::testing::ValuesIn(tamperings),
                         [](const auto& one) { return std::string(one.param.name); });

} // namespace ladlework::week::rules
