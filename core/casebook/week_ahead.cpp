#include "casebook/week_ahead.h"

#include "casebook/week_ahead_maker.h"
#include "foundation/language_scope.h"
#include "kitchen/brew.h"
#include "week/cooking_time.h"
#include "week/stock_left.h"
#include "week/week_solver.h"

#include <QCoreApplication>
#include <QSet>
#include <algorithm>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(WeekAhead)
};
using quantity::Mass;
using quantity::Volume;
using Place = kitchen::Lot::Place;

/// How many weeks ahead leftovers are followed: further out the amounts are too unsure to matter.
constexpr int weeksFollowed = 4;

int dayIndex(QDate start, QDate day) {
    return static_cast<int>(start.daysTo(day));
}

QString nameOf(const StockItem& item) {
    return item.lot.container.isEmpty() ? item.potName
                                        : Words::tr("%1, %2").arg(item.potName, item.lot.container);
}

QString nameOf(const kitchen::Pot& pot, QDate day) {
    return Words::tr("%1, %2").arg(pot.name, wordsLocale().dayName(day.dayOfWeek()));
}

Volume drunkOn(const FamilyRecords& records, MemberId member, QDate day) {
    Volume drunk;
    for (const intake::IntakeEntry& entry : records.entries) {
        if (entry.member == member && entry.day == day)
            drunk += entry.drunk;
    }
    return drunk;
}

QSet<QString> animalsOf(const kitchen::Pot& pot, const kitchen::Catalogue& catalogue) {
    QSet<QString> animals;
    for (const kitchen::CutInPot& inPot : pot.cuts)
        if (const kitchen::Cut* cut = catalogue.cut(inPot.cut))
            animals.insert(cut->animal);
    return animals;
}

/// The animals that a member has had stock of, or whose note says that they bear them. Nothing when
/// no stock is known yet: a beginning is anyone's own.
std::optional<QSet<QString>> triedBy(const Casebook& casebook, const Standing& standing) {
    std::optional<QSet<QString>> tried;
    for (const intake::IntakeEntry& entry : casebook.records().entries) {
        const kitchen::Pot* pot = casebook.pot(entry.pot);
        if (entry.member != standing.member.id || pot == nullptr || entry.drunk <= Volume())
            continue;
        if (!tried)
            tried.emplace();
        tried->unite(animalsOf(*pot, casebook.catalogue()));
    }
    if (tried)
        for (const people::ToleranceNote& note : standing.tolerances)
            if (!people::forbids(note))
                tried->insert(note.subject.id);
    return tried;
}

/// May a pot be named as a way out for someone who may not have it now? Never what they are
/// allergic to, nor anything for a child too young for stock.
bool couldTry(const Standing& standing, const kitchen::WhoMay& who) {
    return standing.band != AgeBand::InfantUnderSixMonths && !who.allergy;
}
} // namespace

std::vector<bool> WeekAheadMaker::whoMay(const kitchen::Pot& pot) const {
    std::vector<bool> may;
    for (const Standing& standing : m_casebook.standings())
        may.push_back(m_casebook.whoMay(standing, pot).may);
    return may;
}

const WeekAheadMaker::PotFacts& WeekAheadMaker::facts(const kitchen::Pot& pot) {
    if (const auto known = m_facts.constFind(pot.id); known != m_facts.constEnd())
        return *known;
    PotFacts facts;
    facts.choice.name = pot.name;
    facts.choice.may = whoMay(pot);
    for (const Standing& standing : m_casebook.standings())
        facts.couldTry.push_back(couldTry(standing, m_casebook.whoMay(standing, pot)));
    const kitchen::Catalogue& catalogue = m_casebook.catalogue();
    QStringList animals;
    for (const kitchen::CutInPot& inPot : pot.cuts) {
        const kitchen::Cut* cut = catalogue.cut(inPot.cut);
        const kitchen::Animal* animal = cut != nullptr ? catalogue.animal(cut->animal) : nullptr;
        if (animal != nullptr && !animals.contains(animal->name))
            animals.append(animal->name);
    }
    facts.choice.animal = animals.join(Words::tr(" and "));
    const week::CookingTime time = week::cookingTime(pot);
    facts.choice.handsOn = time.handsOn;
    facts.choice.total = time.total;
    // A pot with cuts that this catalogue does not know cannot be reckoned: it promises nothing.
    if (const Outcome sound = kitchen::check(pot, catalogue); !sound) {
        facts.unfit = sound.error().sentence;
    } else {
        // Without drinkers every Stop is about the pot itself; who may drink it is asked apart.
        kitchen::BrewInput input = m_casebook.brewInput(pot);
        input.drinkers.clear();
        const kitchen::Brewed brewed = kitchen::brew(input, catalogue);
        facts.choice.stock = Volume::fromMillilitres(std::max(0.0, brewed.stockMl.best));
        facts.choice.meat = Mass::fromGrams(std::max(0.0, brewed.meatLeftG.best));
        facts.choice.cost = brewed.cost.value_or(0);
        for (const Finding& finding : brewed.findings)
            if (finding.severity == Finding::Severity::Stop)
                facts.unfit = finding.text;
    }
    return *m_facts.insert(pot.id, facts);
}

std::size_t WeekAheadMaker::placeOf(WeekAhead& week, const kitchen::Pot& pot) {
    const auto known = std::ranges::find(week.pots, pot.id);
    if (known != week.pots.end())
        return static_cast<std::size_t>(known - week.pots.begin());
    const PotFacts& known_facts = facts(pot);
    week.pots.push_back(pot.id);
    week.problem.pots.push_back(known_facts.choice);
    for (std::size_t drinker = 0; drinker < week.problem.couldTry.size(); ++drinker)
        week.problem.couldTry[drinker].push_back(known_facts.couldTry[drinker]);
    return week.pots.size() - 1;
}

/// What is still to be drunk, from the first day on: today what the log has not yet got.
void WeekAheadMaker::addDrinkers(WeekAhead& week) const {
    const FamilyRecords& records = m_casebook.records();
    for (const people::Member& member : records.members) {
        week::Drinking drinker;
        drinker.name = member.name;
        QList<Volume> amounts = m_casebook.plannedAmounts(member.id, week.start, week.problem.days);
        if (week.start == m_casebook.today() && !amounts.isEmpty())
            amounts[0] = std::max(amounts[0] - drunkOn(records, member.id, week.start), Volume());
        drinker.perDay.assign(amounts.begin(), amounts.end());
        week.problem.drinkers.push_back(std::move(drinker));
        week.members.push_back(member.id);
        week.problem.couldTry.emplace_back();
    }
}

void WeekAheadMaker::addLot(WeekAhead& week, const kitchen::Pot* pot, week::LotOnHand lot,
                            LotId id) const {
    // Nobody is served from a jar whose pot is unknown: what is in it cannot be checked.
    lot.may =
        pot != nullptr ? whoMay(*pot) : std::vector<bool>(week.problem.drinkers.size(), false);
    week.problem.lots.push_back(std::move(lot));
    week.lots.push_back(id);
}

void WeekAheadMaker::addLotsOnHand(WeekAhead& week) {
    for (const StockItem& item : m_casebook.stockOnHand()) {
        const QDate useBy = item.lot.useBy.isValid()
                                ? item.lot.useBy
                                : item.lot.stored.addDays(m_casebook.records().practice.fridgeDays);
        // Refrigerator lots past their use-by are no stock; in the freezer it is a matter of taste.
        if (item.lot.place == Place::Fridge && useBy < m_casebook.today())
            continue;
        week::LotOnHand lot;
        lot.name = nameOf(item);
        lot.volume = item.left;
        lot.place = item.lot.place;
        lot.useByDay = dayIndex(week.start, useBy);
        addLot(week, m_casebook.pot(item.pot), std::move(lot), item.lot.id);
    }
}

bool WeekAheadMaker::lotsStoredOf(const kitchen::Batch& batch) const {
    return std::ranges::any_of(m_casebook.records().lots,
                               [&batch](const kitchen::Lot& lot) { return lot.batch == batch.id; });
}

Volume WeekAheadMaker::drunkFrom(const week::Placement& placement) const {
    const FamilyRecords& records = m_casebook.records();
    // Until the same pot is cooked again, what is drunk of it comes from this cooking.
    QDate end = m_casebook.today();
    for (const week::WeekPlan& plan : records.weeks) {
        for (const week::Placement& other : plan.placements) {
            if (other.pot == placement.pot && other.day > placement.day)
                end = std::min(end, other.day.addDays(-1));
        }
    }
    Volume drunk;
    for (const intake::IntakeEntry& entry : records.entries) {
        if (entry.pot == placement.pot && !entry.lot.isStored() && entry.day >= placement.day &&
            entry.day <= end)
            drunk += entry.drunk;
    }
    return drunk;
}

/// The cookings of all plans that may still stand in the refrigerator on a day, its own excepted.
QList<week::Placement> WeekAheadMaker::cookedBefore(QDate start) const {
    const FamilyRecords& records = m_casebook.records();
    QList<week::Placement> placements;
    for (const week::WeekPlan& plan : records.weeks) {
        for (const week::Placement& placement : plan.placements) {
            if (placement.day >= start.addDays(-records.practice.fridgeDays) &&
                placement.day < start)
                placements.append(placement);
        }
    }
    return placements;
}

/// What is left of the meat of an earlier cooking when the table ate its day's share since.
void WeekAheadMaker::addMeat(WeekAhead& week, const kitchen::Pot& pot, QDate cooked) {
    const int days = dayIndex(cooked, week.start);
    const Mass left = facts(pot).choice.meat - m_casebook.records().family.meatPerDay * days;
    if (left > Mass())
        week.problem.meat.push_back(
            {left, dayIndex(week.start, cooked) + m_casebook.records().practice.fridgeDays});
}

void WeekAheadMaker::addCooked(WeekAhead& week, const QList<week::Placement>& placements) {
    const FamilyRecords& records = m_casebook.records();
    QHash<std::pair<PotId, QDate>, Volume> drunk; // not yet taken from a cooking
    for (const Cooking& cooking : matchBatches(placements, records.batches)) {
        const week::Placement& placement = cooking.placement;
        const kitchen::Pot* pot = m_casebook.pot(placement.pot);
        if (pot == nullptr)
            continue;
        addMeat(week, *pot, placement.day);
        if (cooking.batch != nullptr && lotsStoredOf(*cooking.batch))
            continue;
        week::LotOnHand lot;
        lot.name = nameOf(*pot, placement.day);
        lot.volume = cooking.batch != nullptr && cooking.batch->yield ? *cooking.batch->yield
                                                                      : facts(*pot).choice.stock;
        lot.useByDay = dayIndex(week.start, placement.day) + records.practice.fridgeDays;
        const std::pair key(placement.pot, placement.day);
        if (!drunk.contains(key))
            drunk.insert(key, drunkFrom(placement));
        const Volume taken = std::min(drunk[key], lot.volume);
        drunk[key] -= taken;
        lot.volume -= taken;
        addLot(week, pot, std::move(lot), {});
    }
}

/// What the week before leaves over, as lots of the week that follows it.
void WeekAheadMaker::addLeftOver(WeekAhead& week, const WeekAhead& before) const {
    const week::WeekSolution gone = week::serveSettled(before.problem);
    const int days = before.problem.days;
    const auto sourceOf = [&](const week::StockSource& from) {
        const bool lot = from.kind == week::StockSource::Kind::Lot;
        return lot ? before.problem.lots[from.index].name
                   : nameOf(*m_casebook.pot(before.pots[gone.cookings[from.index].pot]),
                            before.start.addDays(gone.cookings[from.index].day));
    };
    for (const week::StockLeft& standing : week::stockLeft(before.problem, gone)) {
        week::LotOnHand lot;
        lot.name = sourceOf(standing.from);
        lot.volume = standing.volume;
        lot.place = standing.place;
        lot.useByDay = standing.lastDay - days;
        const bool own = standing.from.kind == week::StockSource::Kind::Lot;
        lot.may = own ? before.problem.lots[standing.from.index].may
                      : before.problem.pots[gone.cookings[standing.from.index].pot].may;
        week.problem.lots.push_back(std::move(lot));
        week.lots.push_back(own ? before.lots[standing.from.index] : LotId{});
    }
}

void WeekAheadMaker::addSettled(WeekAhead& week, const week::WeekPlan& plan, Settled settled,
                                bool isOver) {
    QList<week::Placement> inside;
    QList<qsizetype> places;
    for (qsizetype index = 0; index < plan.placements.size(); ++index) {
        const week::Placement& placement = plan.placements[index];
        const bool wanted = settled == Settled::All || plan.lockedDays.contains(placement.day);
        if (placement.day < week.start || m_casebook.pot(placement.pot) == nullptr)
            continue;
        const bool cooked = std::ranges::any_of(
            m_casebook.records().batches, [&placement](const kitchen::Batch& batch) {
                return batch.pot == placement.pot && batch.day == placement.day;
            });
        if (wanted || cooked) {
            inside.append(placement);
            places.append(index);
        }
    }
    const std::vector<Cooking> cookings = matchBatches(inside, m_casebook.records().batches);
    for (std::size_t index = 0; index < cookings.size(); ++index) {
        const Cooking& cooking = cookings[index];
        // Its jars are on hand already.
        if (!isOver && cooking.batch != nullptr && lotsStoredOf(*cooking.batch))
            continue;
        week::SettledCooking entry;
        entry.day = dayIndex(week.start, cooking.placement.day);
        entry.pot = placeOf(week, *m_casebook.pot(cooking.placement.pot));
        if (cooking.batch != nullptr && cooking.batch->yield)
            entry.stock = *cooking.batch->yield;
        if (!isOver && cooking.placement.day <= m_casebook.today()) {
            const Volume stock = entry.stock.value_or(week.problem.pots[entry.pot].stock);
            entry.stock = std::max(stock - drunkFrom(cooking.placement), Volume());
        }
        week.problem.settled.push_back(entry);
        week.placements.push_back(places[static_cast<qsizetype>(index)]);
    }
}

void WeekAheadMaker::addSlots(WeekAhead& week, const week::WeekPlan& plan) const {
    for (int day = 0; day < week.problem.days; ++day) {
        const QDate date = week.start.addDays(day);
        if (plan.lockedDays.contains(date))
            continue;
        for (const week::FreeHours& hours :
             week::hoursOn(plan, m_casebook.records().usualHours, date))
            week.problem.freeTimes.push_back({day, hours.length, hours.pots});
    }
}

/// The planner offers nobody an animal that is new to them: that is a retry, and hers to plan. A
/// pot that she settled herself is drunk by all who may.
void WeekAheadMaker::keepToTheTried(WeekAhead& week) const {
    for (std::size_t drinker = 0; drinker < week.members.size(); ++drinker) {
        const Standing* standing = m_casebook.standing(week.members[drinker]);
        const std::optional<QSet<QString>> tried =
            standing != nullptr ? triedBy(m_casebook, *standing) : std::nullopt;
        if (!tried)
            continue;
        for (std::size_t index = 0; index < week.pots.size(); ++index) {
            const kitchen::Pot* pot = m_casebook.pot(week.pots[index]);
            const bool hers = std::ranges::any_of(
                week.problem.settled,
                [index](const week::SettledCooking& cooking) { return cooking.pot == index; });
            if (pot != nullptr && !hers &&
                !tried->contains(animalsOf(*pot, m_casebook.catalogue())))
                week.problem.pots[index].may[drinker] = false;
        }
    }
}

void WeekAheadMaker::addPots(WeekAhead& week) {
    for (const kitchen::Pot& pot : m_casebook.records().pots) {
        const PotFacts& known = facts(pot);
        if (!known.unfit.isEmpty())
            week.unfit.append({pot.id, known.unfit});
        else
            placeOf(week, pot);
    }
}

WeekAhead WeekAheadMaker::make(const week::WeekPlan& plan, Settled settled, int weeksBack) {
    const FamilyRecords& records = m_casebook.records();
    const QDate today = m_casebook.today();
    const QDate last = plan.start.addDays(week::daysAWeek - 1);
    const bool isOver = last < today;
    const bool holdsToday = plan.start <= today && !isOver;
    WeekAhead week;
    week.start = holdsToday ? today : plan.start;
    week::WeekProblem& problem = week.problem;
    problem.days = dayIndex(week.start, last) + 1;
    problem.fridgeDays = records.practice.fridgeDays;
    problem.spill = records.practice.spill;
    problem.fridgeRoom = records.family.fridgeRoom;
    problem.freezerRoom = records.family.freezerRoom;
    problem.meatPerDay = records.family.meatPerDay;
    problem.mostCookingsPerAnimal = records.family.mostOfOneAnimal;
    problem.spreadAnimals = true;
    addDrinkers(week);
    if (holdsToday) {
        addLotsOnHand(week);
        addCooked(week, cookedBefore(week.start));
    } else if (!isOver && weeksBack > 0) {
        const week::WeekPlan before = m_casebook.plan(plan.start.addDays(-week::daysAWeek));
        addLeftOver(week, make(before, Settled::All, weeksBack - 1));
    }
    addSettled(week, plan, settled, isOver);
    if (settled == Settled::Locked) {
        addPots(week);
        keepToTheTried(week);
        addSlots(week, plan);
    }
    return week;
}

WeekAhead Casebook::weekAhead(const week::WeekPlan& plan, Settled settled) const {
    if (!plan.start.isValid())
        return {};
    return WeekAheadMaker(*this).make(plan, settled, weeksFollowed);
}

} // namespace ladlework::casebook
