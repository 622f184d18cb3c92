#include "week/reckon_week.h"

#include "foundation/finding_json.h"
#include "foundation/json_reader.h"
#include "week/in_the_way.h"
#include "week/week_findings.h"

#include <QCoreApplication>
#include <QDate>
#include <cmath>

namespace ladlework::week {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ReckonWeek)
};
using namespace Qt::Literals::StringLiterals;
using quantity::Duration;
using quantity::Mass;
using quantity::Volume;

// Far above any kitchen: larger is a slip of the pen.
constexpr double mostMl = 1e6;
constexpr double mostGrams = 1e6;
constexpr double mostMinutes = 7.0 * 24 * 60;
constexpr double mostCost = 1e6;
constexpr int mostPots = 20;
constexpr int mostDaysKept = 365;
constexpr int mostCookings = 1000;

struct WeekInput {
    QDate start;
    WeekProblem problem;
    QStringList potIds;
    QList<QStringList> mayDrink; ///< animals by member
    QStringList lotAnimals;
};

void readMember(JsonReader& reader, WeekInput& input) {
    Drinking drinker;
    drinker.name = reader.text(u"name"_s);
    const QString perDay = u"ml_per_day"_s;
    const QJsonArray amounts = reader.array(perDay);
    for (qsizetype day = 0; day < amounts.size(); ++day) {
        const double ml = amounts[day].toDouble(-1);
        if (!(ml >= 0 && ml <= mostMl))
            reader.fail(Problem{Problem::Kind::BadInput,
                                Words::tr("This must be a number from 0 to %1.").arg(mostMl),
                                {},
                                reader.pathOf(perDay, day)});
        drinker.perDay.push_back(Volume::fromMillilitres(ml));
    }
    if (amounts.size() != input.problem.days)
        reader.fail(perDay, Words::tr("Give one amount for each of the %1 days; there are %2.")
                                .arg(input.problem.days)
                                .arg(amounts.size()));
    QStringList animals;
    const QString may = u"may_drink"_s;
    const QJsonArray names = reader.array(may);
    for (qsizetype index = 0; index < names.size(); ++index) {
        if (!names[index].isString())
            reader.fail(Problem{Problem::Kind::BadInput,
                                Words::tr("This must be the name of an animal."),
                                {},
                                reader.pathOf(may, index)});
        animals.append(names[index].toString());
    }
    input.problem.drinkers.push_back(std::move(drinker));
    input.mayDrink.append(animals);
}

void readPot(JsonReader& reader, WeekInput& input) {
    PotChoice pot;
    pot.name = reader.text(u"id"_s);
    pot.animal = reader.text(u"animal"_s);
    pot.stock = Volume::fromMillilitres(reader.number(u"stock_ml"_s, 0, mostMl));
    pot.meat = Mass::fromGrams(reader.number(u"meat_g"_s, 0, mostGrams));
    pot.handsOn = Duration::fromMinutes(reader.number(u"hands_on_min"_s, 0, mostMinutes));
    pot.total = Duration::fromMinutes(reader.number(u"total_min"_s, 0, mostMinutes));
    pot.cost = reader.number(u"cost"_s, 0, mostCost);
    if (input.potIds.contains(pot.name))
        reader.fail(u"id"_s, Words::tr("There is a pot \"%1\" already.").arg(pot.name));
    input.potIds.append(pot.name);
    input.problem.pots.push_back(std::move(pot));
}

void readSlot(JsonReader& reader, WeekInput& input) {
    CookingSlot slot;
    slot.day = reader.integer(u"day"_s, 0, input.problem.days - 1);
    slot.length = Duration::fromMinutes(reader.number(u"minutes"_s, 0, mostMinutes));
    slot.pots = reader.integer(u"pots"_s, 0, mostPots);
    input.problem.freeTimes.push_back(slot);
}

void readLot(JsonReader& reader, WeekInput& input) {
    LotOnHand lot;
    lot.name = QStringLiteral("lot:%1").arg(input.problem.lots.size());
    input.lotAnimals.append(reader.text(u"animal"_s));
    lot.volume = Volume::fromMillilitres(reader.number(u"ml"_s, 0, mostMl));
    const std::optional<kitchen::Lot::Place> place =
        kitchen::lotPlaceFromId(reader.text(u"place"_s));
    if (!place)
        reader.fail(u"place"_s, Words::tr("A lot is in the \"fridge\" or the \"freezer\"."));
    lot.place = place.value_or(kitchen::Lot::Place::Fridge);
    const bool frozen = lot.place == kitchen::Lot::Place::Freezer;
    if (!(frozen && reader.isNull(u"use_by_day"_s)))
        lot.useByDay = reader.integer(u"use_by_day"_s, -mostDaysKept, mostDaysKept);
    input.problem.lots.push_back(std::move(lot));
}

/// Animals by name become who may drink what.
void resolveAnimals(WeekInput& input) {
    const auto mayOf = [&input](const QString& animal) {
        std::vector<bool> may;
        for (const QStringList& animals : std::as_const(input.mayDrink))
            may.push_back(animals.contains(animal));
        return may;
    };
    for (PotChoice& pot : input.problem.pots)
        pot.may = mayOf(pot.animal);
    for (qsizetype lot = 0; lot < input.lotAnimals.size(); ++lot)
        input.problem.lots[static_cast<std::size_t>(lot)].may = mayOf(input.lotAnimals[lot]);
}

Result<WeekInput> readInput(const QJsonObject& object) {
    JsonReader reader(object, QString());
    WeekInput input;
    WeekProblem& problem = input.problem;
    input.start = reader.day(u"start"_s);
    problem.days = reader.integer(u"days"_s, 1, mostDaysPlanned);
    reader.readEach(u"members"_s, [&input](JsonReader& inner) { readMember(inner, input); });
    reader.readEach(u"pots"_s, [&input](JsonReader& inner) { readPot(inner, input); });
    reader.readEach(u"slots"_s, [&input](JsonReader& inner) { readSlot(inner, input); });
    problem.fridgeDays = reader.integer(u"fridge_days"_s, 0, mostDaysKept);
    problem.fridgeRoom = Volume::fromMillilitres(reader.number(u"fridge_ml"_s, 0, mostMl));
    problem.freezerRoom = Volume::fromMillilitres(reader.number(u"freezer_ml"_s, 0, mostMl));
    problem.meatPerDay = Mass::fromGrams(reader.number(u"meat_g_per_day"_s, 0, mostGrams));
    reader.readEach(u"lots"_s, [&input](JsonReader& inner) { readLot(inner, input); });
    problem.spill = reader.number(u"spill"_s, 0, 1);
    if (const std::optional<int> most =
            reader.optionalInteger(u"most_cookings_per_animal"_s, 0, mostCookings))
        problem.mostCookingsPerAnimal = *most;
    if (const Outcome done = reader.finish(); !done)
        return passOn(done);
    resolveAnimals(input);
    if (const Outcome checked = check(problem); !checked)
        return passOn(checked);
    return input;
}

/// A millionth is far below what a scale or a jug can tell; printing more shows only rounding.
double printed(double value) {
    constexpr double millionths = 1e6;
    return std::round(value * millionths) / millionths;
}

QString sourceId(const StockSource& source) {
    return (source.kind == StockSource::Kind::Lot ? QStringLiteral("lot:%1")
                                                  : QStringLiteral("cook:%1"))
        .arg(source.index);
}

QJsonArray movesJson(const std::vector<StockMove>& moves) {
    QJsonArray array;
    for (const StockMove& move : moves)
        array.append(QJsonObject{{u"day"_s, move.day},
                                 {u"from"_s, sourceId(move.from)},
                                 {u"ml"_s, printed(move.volume.toMillilitres())}});
    return array;
}

void addPlan(QJsonObject& output, const WeekInput& input, const WeekSolution& solution) {
    QJsonArray cook;
    for (const PlannedCooking& cooking : solution.cookings)
        cook.append(
            QJsonObject{{u"day"_s, cooking.day}, {u"pot"_s, input.problem.pots[cooking.pot].name}});
    QJsonArray serve;
    for (const PlannedServing& serving : solution.servings)
        serve.append(QJsonObject{{u"day"_s, serving.day},
                                 {u"member"_s, input.problem.drinkers[serving.drinker].name},
                                 {u"from"_s, sourceId(serving.from)},
                                 {u"ml"_s, printed(serving.volume.toMillilitres())}});
    QJsonArray meat;
    for (const PlannedMeat& eaten : solution.meat)
        meat.append(QJsonObject{{u"day"_s, eaten.day},
                                {u"from"_s, sourceId(eaten.from)},
                                {u"g"_s, printed(eaten.mass.toGrams())}});
    QJsonArray store;
    for (std::size_t day = 0; day < solution.stores.size(); ++day)
        store.append(
            QJsonObject{{u"day"_s, static_cast<int>(day)},
                        {u"fridge_ml"_s, printed(solution.stores[day].fridge.toMillilitres())},
                        {u"freezer_ml"_s, printed(solution.stores[day].freezer.toMillilitres())}});
    output.insert(u"cook"_s, cook);
    output.insert(u"serve"_s, serve);
    output.insert(u"freeze"_s, movesJson(solution.freezing));
    output.insert(u"thaw"_s, movesJson(solution.thawing));
    output.insert(u"eat_meat"_s, meat);
    output.insert(u"store"_s, store);
}

QJsonObject objectiveJson(const WeekObjective& objective) {
    return {{u"short_ml"_s, printed(objective.shortBy.toMillilitres())},
            {u"spoilt_ml"_s, printed(objective.spoilt.toMillilitres())},
            {u"spoilt_meat_g"_s, printed(objective.spoiltMeat.toGrams())},
            {u"cookings"_s, objective.cookings},
            {u"hands_on_min"_s, printed(objective.handsOn.toMinutes())},
            {u"cost"_s, printed(objective.cost)}};
}

QString statusId(WeekSolution::Status status) {
    switch (status) {
    case WeekSolution::Status::Optimal:
        return u"optimal"_s;
    case WeekSolution::Status::Feasible:
        return u"feasible"_s;
    case WeekSolution::Status::Infeasible:
        return u"infeasible"_s;
    }
    return {};
}

QJsonArray inTheWayJson(const WeekInput& input, const WeekSolution& solution) {
    QJsonArray array;
    if (solution.status == WeekSolution::Status::Infeasible)
        array.append(QJsonObject{
            {u"what"_s, Words::tr("The stock on hand is more than refrigerator or freezer hold.")},
            {u"would_help"_s, Words::tr("Use or give away some of it, or make more room.")}});
    const auto dayName = [](int day) {
        return Words::tr("day %1").arg(day);
    };
    for (const WayOut& way : waysOut(input.problem, solution)) {
        const InTheWay words =
            inWords(input.problem, way, quantity::MeasureSystem::Metric, dayName);
        array.append(QJsonObject{{u"what"_s, words.what}, {u"would_help"_s, words.wouldHelp}});
    }
    return array;
}
} // namespace

Result<QJsonObject> reckonWeek(const QJsonObject& json) {
    const Result<WeekInput> input = readInput(json);
    if (!input)
        return passOn(input);
    const WeekSolution solution = solveWeek(input->problem);
    const bool holds = solution.status != WeekSolution::Status::Infeasible;
    QJsonObject output;
    output.insert(u"status"_s, statusId(solution.status));
    output.insert(u"gap"_s, holds ? QJsonValue(printed(solution.gap)) : QJsonValue());
    output.insert(u"objective"_s,
                  holds ? QJsonValue(objectiveJson(solution.objective)) : QJsonValue());
    addPlan(output, *input, holds ? solution : WeekSolution());
    output.insert(u"in_the_way"_s, inTheWayJson(*input, solution));
    output.insert(u"findings"_s, findingsJson(weekFindings(input->problem, solution, input->start,
                                                           quantity::MeasureSystem::Metric)));
    return output;
}

} // namespace ladlework::week
