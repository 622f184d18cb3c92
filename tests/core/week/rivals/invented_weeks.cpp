#include "core/week/rivals/invented_weeks.h"

#include "core/week/rivals/every_plan.h"
#include "core/week/rivals/week_makers.h"

#include <algorithm>
#include <random>

namespace ladlework::week::samples {

using Place = kitchen::Lot::Place;

namespace {
const QStringList animals{QStringLiteral("chicken"), QStringLiteral("beef"), QStringLiteral("cod")};

/// Numbers that are the same with every standard library.
class Dice {
public:
    explicit Dice(unsigned seed) : m_engine(seed) {}

    int from(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<unsigned>(high - low + 1));
    }
    double steps(int low, int high, double step) { return from(low, high) * step; }
    bool oneIn(int count) { return from(1, count) == 1; }
    double oneOf(std::initializer_list<double> values) {
        return *(values.begin() + from(0, static_cast<int>(values.size()) - 1));
    }
    std::vector<bool> flags(std::size_t count, int percent) {
        std::vector<bool> flags(count);
        for (std::size_t index = 0; index < count; ++index)
            flags[index] = from(1, 100) <= percent;
        return flags;
    }

private:
    std::mt19937 m_engine;
};

void addSmallStock(WeekProblem& problem, Dice& dice) {
    const int percent = dice.oneIn(12) ? 0 : 75; // now and then nobody may drink
    for (int count = dice.from(1, 3); count > 0; --count) {
        PotChoice& pot = addPot(problem, dice.steps(4, 40, 100), dice.steps(0, 8, 100),
                                animals[dice.from(0, 2)]);
        pot.may = dice.flags(problem.drinkers.size(), percent);
        pot.handsOn = minutes(dice.steps(2, 8, 15));
        pot.total = minutes(dice.oneOf({180, 300, 420}));
        pot.cost = dice.steps(0, 30, 0.5);
    }
    for (int count = dice.from(0, 3); count > 0; --count) {
        const Place place = dice.oneIn(2) ? Place::Freezer : Place::Fridge;
        addLot(problem, dice.steps(0, 20, 100), place, dice.from(-1, problem.days)).may =
            dice.flags(problem.drinkers.size(), percent);
    }
    for (int count = dice.from(0, 2); count > 0; --count)
        problem.meat.push_back({grams(dice.steps(0, 6, 100)), dice.from(-1, problem.days)});
}

void addSmallSlots(WeekProblem& problem, Dice& dice, std::size_t mostChoices) {
    if (dice.oneIn(15))
        return;
    for (int count = dice.from(2, 6); count > 0; --count) {
        addSlot(problem, dice.from(0, problem.days - 1), dice.oneOf({180, 300, 420, 420}),
                dice.oneIn(3) ? 2 : 1);
        if (rivals::choicesOf(problem) > mostChoices)
            problem.freeTimes.pop_back();
    }
}
} // namespace

WeekProblem smallWeek(unsigned seed, std::size_t mostChoices) {
    Dice dice(seed);
    WeekProblem problem = emptyWeek(dice.from(2, 6));
    problem.fridgeDays = dice.oneIn(8) ? 0 : dice.from(1, 3);
    problem.fridgeRoom = ml(dice.oneIn(15) ? 0 : dice.oneOf({2500, 4000, 6000, 8000, 20000}));
    problem.freezerRoom = ml(dice.oneOf({0, 0, 1000, 3000, 20000}));
    problem.meatPerDay = grams(dice.oneOf({0, 150, 300, 600, 2000}));
    problem.spill = dice.oneOf({0, 0, 0.1, 0.25});
    for (int count = dice.from(1, 3); count > 0; --count) {
        addDrinker(problem, 0);
        for (quantity::Volume& wanted : problem.drinkers.back().perDay)
            wanted = ml(dice.oneIn(8) ? 0 : dice.steps(1, 12, 50));
    }
    addSmallStock(problem, dice);
    addSmallSlots(problem, dice, mostChoices);
    if (dice.oneIn(3)) {
        problem.settled.push_back({dice.from(0, problem.days - 1), 0});
        if (dice.oneIn(3))
            problem.settled.back().stock = ml(dice.steps(0, 30, 100));
    }
    problem.mostCookingsPerAnimal = dice.oneIn(3) ? dice.from(1, 2) : 0;
    problem.spreadAnimals = dice.oneIn(3);
    return problem;
}

namespace {
void addFamilyDrinkers(WeekProblem& problem, Dice& dice, const FamilySize& size) {
    for (int count = 0; count < size.drinkers; ++count) {
        // Most of a large family are children.
        const double amount = std::min(dice.steps(5, 30, 50), dice.steps(5, 30, 50));
        addDrinker(problem, amount);
        // One in three is still climbing: a rung more every third day.
        if (dice.oneIn(3)) {
            std::vector<quantity::Volume>& days = problem.drinkers.back().perDay;
            for (std::size_t day = 0; day < days.size(); ++day)
                days[day] = ml(amount / 2 + static_cast<double>(day / 3) * 30);
        }
    }
}

/// Who may have each of the animals.
std::vector<std::vector<bool>> mayHave(const WeekProblem& problem, Dice& dice) {
    // Each animal is forbidden to some, and everyone may have at least one.
    std::vector<std::vector<bool>> mayAnimal;
    for (qsizetype animal = 0; animal < animals.size(); ++animal)
        mayAnimal.push_back(dice.flags(problem.drinkers.size(), 80));
    for (std::size_t who = 0; who < problem.drinkers.size(); ++who)
        mayAnimal[static_cast<std::size_t>(dice.from(0, 2))][who] = true;
    return mayAnimal;
}

void addFamilyPots(WeekProblem& problem, Dice& dice, const FamilySize& size,
                   const std::vector<std::vector<bool>>& mayAnimal) {
    for (int index = 0; index < size.pots; ++index) {
        const auto animal = static_cast<std::size_t>(index % 3);
        PotChoice& pot = addPot(problem, dice.steps(20, 60, 100), dice.steps(5, 20, 100),
                                animals[static_cast<qsizetype>(animal)]);
        pot.may = mayAnimal[animal];
        pot.handsOn = minutes(dice.steps(4, 12, 5));
        pot.total = minutes(dice.oneOf({180, 240, 300, 480}));
        pot.cost = dice.steps(16, 60, 0.5);
    }
}

void addFamilySlots(WeekProblem& problem, Dice& dice, const FamilySize& size) {
    for (int first = 0; first < size.days; first += 7) {
        std::vector<int> days{0, 1, 2, 3, 4, 5, 6};
        for (int count = dice.from(2, 5); count > 0; --count) {
            const int place = dice.from(0, static_cast<int>(days.size()) - 1);
            const int day = first + days[static_cast<std::size_t>(place)];
            days.erase(days.begin() + place);
            if (day < size.days)
                addSlot(problem, day, dice.oneOf({240, 300, 480, 600}),
                        std::min(4, dice.from(1, 2) + size.drinkers / 4));
        }
    }
}

void addFamilyLots(WeekProblem& problem, Dice& dice,
                   const std::vector<std::vector<bool>>& mayAnimal) {
    for (int count = 0; count < 3; ++count) {
        const auto animal = static_cast<std::size_t>(dice.from(0, 2));
        const Place place = dice.oneIn(2) ? Place::Freezer : Place::Fridge;
        const double most = place == Place::Freezer ? problem.freezerRoom.toMillilitres()
                                                    : problem.fridgeRoom.toMillilitres();
        addLot(problem, std::min(dice.steps(5, 40, 100), most / 4), place, dice.from(0, 3)).may =
            mayAnimal[animal];
    }
}
} // namespace

WeekProblem familyWeek(unsigned seed, const FamilySize& size) {
    Dice dice(seed);
    WeekProblem problem = emptyWeek(size.days);
    problem.fridgeDays = 3;
    problem.fridgeRoom = ml(dice.steps(10, 24, 1000));
    problem.freezerRoom = ml(dice.steps(4, 20, 1000));
    problem.spill = 0.1;
    addFamilyDrinkers(problem, dice, size);
    problem.meatPerDay = grams(150.0 * size.drinkers);
    const std::vector<std::vector<bool>> mayAnimal = mayHave(problem, dice);
    addFamilyPots(problem, dice, size, mayAnimal);
    addFamilySlots(problem, dice, size);
    addFamilyLots(problem, dice, mayAnimal);
    problem.meat.push_back({grams(dice.steps(0, 8, 100)), dice.from(0, 2)});
    return problem;
}

} // namespace ladlework::week::samples
