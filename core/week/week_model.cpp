#include "week/week_model.h"

#include "week/cooking_time.h"
#include "week/free_hours.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace ladlework::week {

namespace {

constexpr int none = -1;
constexpr int totalsFirst = 0; ///< ranks of whole columns
constexpr int daysAfter = 1;
constexpr double noVolume = 1e-9; ///< litres: less is nothing

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

bool anyone(const std::vector<bool>& may) {
    return std::ranges::find(may, true) != may.end();
}

/// The greatest value that all numbers are whole multiples of, to a hundredth; 0 when there is
/// none.
double grainOf(const std::vector<double>& numbers) {
    constexpr double hundredths = 100;
    constexpr double exact = 1e-9;
    long long grain = 0;
    for (const double number : numbers) {
        const double scaled = number * hundredths;
        if (std::abs(scaled - std::round(scaled)) > exact * std::max(1.0, std::abs(scaled)))
            return 0;
        grain = std::gcd(grain, std::llround(scaled));
    }
    return static_cast<double>(grain) / hundredths;
}

/// Fills a WeekModel part by part.
class ModelMaker {
public:
    ModelMaker(const WeekProblem& problem, const Elastic& elastic)
        : m_problem(problem), m_elastic(elastic), m_days(problem.days) {}
    WeekModel make();

private:
    void findKinds();
    std::size_t kindOf(const std::vector<bool>& may);
    void findTables();
    void addCookings();
    void addSlotRows();
    void addAnimalRows();
    void addSources();
    void addCookingSource(std::size_t kind, int day);
    void addLotSources(std::size_t kind);
    void addThawSources(std::size_t kind);
    /// The columns of what stands and is served, and the rows that hold them together. `supply` is
    /// what fills the source: its terms and a constant.
    void follow(WeekModel::Source& source, const LinearTerms& supply, double constant);
    void addFreezer(std::size_t kind);
    void addServing();
    void addRooms();
    void addMeat();
    void followMeat(WeekModel::MeatSource& source, const LinearTerms& supply, double constant);
    void addLevels();
    void addLevel(WeekModel::Level name, LinearTerms terms, double grain = 0);
    [[nodiscard]] bool canBeOver() const;
    [[nodiscard]] double settledOn(int day, std::size_t pot) const;
    /// Without room in the freezer stock can still pass through it within a day, which gives it the
    /// days of thawed stock; that is of use only where fresh stock keeps shorter.
    [[nodiscard]] bool mayFreeze() const {
        return m_elastic.freezer || m_problem.freezerRoom > quantity::Volume() ||
               m_problem.fridgeDays < thawKeepsDays();
    }
    [[nodiscard]] bool freezes(std::size_t kind) const;
    int column(double upper = LinearProgram::unbounded) {
        return m_model.program.addColumn({0, upper, false, 0});
    }
    void row(LinearTerms terms, double lower, double upper) {
        m_model.program.rows.push_back({std::move(terms), lower, upper});
    }

    const WeekProblem& m_problem;
    const Elastic& m_elastic;
    int m_days;
    WeekModel m_model;
    std::vector<std::size_t> m_kindOfPot;
};

std::size_t ModelMaker::kindOf(const std::vector<bool>& may) {
    const auto found = std::ranges::find(m_model.kinds, may, &WeekModel::Kind::may);
    if (found != m_model.kinds.end())
        return static_cast<std::size_t>(found - m_model.kinds.begin());
    m_model.kinds.push_back({may, {}, {}});
    return m_model.kinds.size() - 1;
}

void ModelMaker::findKinds() {
    for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
        m_kindOfPot.push_back(kindOf(m_problem.pots[pot].may));
        m_model.kinds[m_kindOfPot.back()].pots.push_back(pot);
    }
    for (std::size_t lot = 0; lot < m_problem.lots.size(); ++lot) {
        const std::size_t kind = kindOf(m_problem.lots[lot].may);
        if (m_problem.lots[lot].place == kitchen::Lot::Place::Freezer)
            m_model.kinds[kind].frozenLots.push_back(lot);
    }
}

void ModelMaker::findTables() {
    for (std::size_t drinker = 0; drinker < m_problem.drinkers.size(); ++drinker) {
        std::vector<bool> may;
        for (const WeekModel::Kind& kind : m_model.kinds)
            may.push_back(kind.may[drinker]);
        auto table = std::ranges::find(m_model.tables, may, &WeekModel::Table::may);
        if (table == m_model.tables.end()) {
            WeekModel::Table fresh;
            fresh.may = may;
            fresh.wanted.assign(at(m_days), 0.0);
            m_model.tables.push_back(std::move(fresh));
            table = std::prev(m_model.tables.end());
        }
        table->drinkers.push_back(drinker);
        for (int day = 0; day < m_days; ++day)
            table->wanted[at(day)] +=
                m_problem.drinkers[drinker].perDay[at(day)].toLitres() * (1.0 + m_problem.spill);
    }
}

double ModelMaker::settledOn(int day, std::size_t pot) const {
    return static_cast<double>(
        std::ranges::count_if(m_problem.settled, [&](const SettledCooking& cooking) {
            return cooking.day == day && cooking.pot == pot;
        }));
}

void ModelMaker::addCookings() {
    m_model.cook.assign(at(m_days), std::vector<int>(m_problem.pots.size(), none));
    for (int day = 0; day < m_days; ++day) {
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
            // What nobody may drink is of no use.
            if (!anyone(m_problem.pots[pot].may))
                continue;
            int most = m_elastic.cookings ? mostPotsAtOnce : 0;
            for (const CookingSlot& slot : m_problem.freeTimes)
                if (slot.day == day && slot.length >= m_problem.pots[pot].total)
                    most += slot.pots;
            if (most > 0)
                m_model.cook[at(day)][pot] =
                    m_model.program.addColumn({0, static_cast<double>(most), true, daysAfter});
        }
    }
}

/// Slots are nested: what fits a shorter one fits a longer one. So all pots of a day fit when, for
/// each length, those that need at least as long are no more than the places that long (Hall).
void ModelMaker::addSlotRows() {
    for (int day = 0; day < m_days; ++day) {
        std::map<double, LinearTerms> byLength; // pots that need exactly so long, in minutes
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot)
            if (const int cooked = m_model.cook[at(day)][pot]; cooked != none)
                byLength[m_problem.pots[pot].total.toMinutes()].emplace_back(cooked, 1.0);
        LinearTerms longer;
        if (m_elastic.cookings) {
            m_model.moreCookings.push_back(
                m_model.program.addColumn({0, mostPotsAtOnce, true, totalsFirst}));
            longer.emplace_back(m_model.moreCookings.back(), -1.0);
        }
        double placesBefore = -1;
        for (auto length = byLength.rbegin(); length != byLength.rend(); ++length) {
            longer.insert(longer.end(), length->second.begin(), length->second.end());
            double places = 0;
            for (const CookingSlot& slot : m_problem.freeTimes)
                if (slot.day == day && slot.length.toMinutes() >= length->first)
                    places += slot.pots;
            // As many places as for the longer ones alone: this row holds that one.
            if (places == placesBefore)
                m_model.program.rows.pop_back();
            row(longer, -LinearProgram::unbounded, places);
            placesBefore = places;
        }
    }
}

void ModelMaker::addAnimalRows() {
    if (m_problem.mostCookingsPerAnimal <= 0)
        return;
    std::map<QString, LinearTerms> byAnimal;
    std::map<QString, double> settled;
    for (int day = 0; day < m_days; ++day) {
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
            const QString& animal = m_problem.pots[pot].animal;
            settled[animal] += settledOn(day, pot);
            if (m_model.cook[at(day)][pot] != none)
                byAnimal[animal].emplace_back(m_model.cook[at(day)][pot], 1.0);
        }
    }
    for (auto& [animal, terms] : byAnimal) {
        if (m_elastic.animals) {
            m_model.moreOfAnimal.push_back(column());
            terms.emplace_back(m_model.moreOfAnimal.back(), -1.0);
        }
        row(std::move(terms), -LinearProgram::unbounded,
            std::max(0.0, m_problem.mostCookingsPerAnimal - settled[animal]));
    }
}

bool ModelMaker::canBeOver() const {
    if (!m_problem.settled.empty())
        return true;
    double fridge = 0;
    double freezer = 0;
    for (const LotOnHand& lot : m_problem.lots) {
        if (lot.place == kitchen::Lot::Place::Freezer)
            freezer += lot.volume.toLitres();
        else if (lot.useByDay >= 0)
            fridge += lot.volume.toLitres();
    }
    return fridge > m_problem.fridgeRoom.toLitres() || freezer > m_problem.freezerRoom.toLitres();
}

bool ModelMaker::freezes(std::size_t kind) const {
    return mayFreeze() || !m_model.kinds[kind].frozenLots.empty();
}

void ModelMaker::follow(WeekModel::Source& source, const LinearTerms& supply, double constant) {
    for (int day = source.start; day <= std::min(source.last, m_days - 1); ++day) {
        const bool moved = source.from == WeekModel::Source::From::Thaw && day == source.start;
        const int served = moved ? none : column();
        const int left = column();
        LinearTerms balance;
        if (served != none)
            balance.emplace_back(served, 1.0);
        balance.emplace_back(left, 1.0);
        double filled = 0;
        if (day == source.start) {
            for (const auto& [from, factor] : supply)
                balance.emplace_back(from, -factor);
            filled = constant;
        } else {
            balance.emplace_back(source.left.back(), -1.0);
        }
        row(std::move(balance), filled, filled);
        source.served.push_back(served);
        source.left.push_back(left);
    }
}

void ModelMaker::addCookingSource(std::size_t kind, int day) {
    LinearTerms supply;
    double settled = 0;
    for (const std::size_t pot : m_model.kinds[kind].pots) {
        const double litres = m_problem.pots[pot].stock.toLitres();
        if (m_model.cook[at(day)][pot] != none && litres > noVolume)
            supply.emplace_back(m_model.cook[at(day)][pot], litres);
    }
    for (const SettledCooking& cooking : m_problem.settled)
        if (cooking.day == day && m_kindOfPot[cooking.pot] == kind)
            settled += cooking.stock.value_or(m_problem.pots[cooking.pot].stock).toLitres();
    if (supply.empty() && settled <= noVolume)
        return;
    WeekModel::Source source;
    source.from = WeekModel::Source::From::Cooking;
    source.kind = kind;
    source.start = day;
    source.last = day + m_problem.fridgeDays;
    if (mayFreeze()) {
        source.frozen = column();
        supply.emplace_back(source.frozen, -1.0);
    }
    follow(source, supply, settled);
    m_model.sources.push_back(std::move(source));
}

void ModelMaker::addLotSources(std::size_t kind) {
    std::map<int, WeekModel::Source> byLastDay;
    for (std::size_t index = 0; index < m_problem.lots.size(); ++index) {
        const LotOnHand& lot = m_problem.lots[index];
        if (lot.place != kitchen::Lot::Place::Fridge || lot.useByDay < 0 ||
            lot.may != m_model.kinds[kind].may)
            continue;
        WeekModel::Source& source = byLastDay[lot.useByDay];
        source.from = WeekModel::Source::From::Lot;
        source.kind = kind;
        source.last = lot.useByDay;
        source.lots.push_back(index);
    }
    for (auto& [last, source] : byLastDay) {
        double litres = 0;
        for (const std::size_t lot : source.lots)
            litres += m_problem.lots[lot].volume.toLitres();
        follow(source, {}, litres);
        m_model.sources.push_back(std::move(source));
    }
}

void ModelMaker::addThawSources(std::size_t kind) {
    // What nobody drinks, or is moved on the last day, is moved only to make room in the freezer or
    // to keep longer than fresh.
    const bool always = canBeOver() || m_problem.fridgeDays < thawKeepsDays();
    if (!freezes(kind) || !(always || anyone(m_model.kinds[kind].may)))
        return;
    const int end = always ? m_days : m_days - 1;
    for (int day = 0; day < end; ++day) {
        WeekModel::Source source;
        source.from = WeekModel::Source::From::Thaw;
        source.kind = kind;
        source.start = day;
        source.last = day + thawKeepsDays();
        source.thawed = column();
        follow(source, {{source.thawed, 1.0}}, 0);
        m_model.sources.push_back(std::move(source));
    }
}

void ModelMaker::addFreezer(std::size_t kind) {
    std::vector<int>& stands = m_model.freezer.emplace_back(at(m_days), none);
    if (!freezes(kind))
        return;
    double litres = 0;
    for (const std::size_t lot : m_model.kinds[kind].frozenLots)
        litres += m_problem.lots[lot].volume.toLitres();
    for (int day = 0; day < m_days; ++day) {
        stands[at(day)] = column();
        LinearTerms balance{{stands[at(day)], 1.0}};
        if (day > 0)
            balance.emplace_back(stands[at(day - 1)], -1.0);
        for (const WeekModel::Source& source : m_model.sources) {
            if (source.kind != kind || source.start != day)
                continue;
            if (source.frozen != none)
                balance.emplace_back(source.frozen, -1.0);
            if (source.thawed != none)
                balance.emplace_back(source.thawed, 1.0);
        }
        row(std::move(balance), day == 0 ? litres : 0, day == 0 ? litres : 0);
    }
}

void ModelMaker::addSources() {
    for (std::size_t kind = 0; kind < m_model.kinds.size(); ++kind) {
        for (int day = 0; day < m_days; ++day)
            addCookingSource(kind, day);
        addLotSources(kind);
        addThawSources(kind);
    }
    for (std::size_t kind = 0; kind < m_model.kinds.size(); ++kind)
        addFreezer(kind);
}

void ModelMaker::addServing() {
    const auto hasSource = [this](std::size_t kind, int day) {
        return std::ranges::any_of(m_model.sources, [&](const WeekModel::Source& source) {
            return source.kind == kind && day >= source.start && day <= source.last &&
                   source.served[at(day - source.start)] != none;
        });
    };
    for (WeekModel::Table& table : m_model.tables) {
        table.shortBy.assign(at(m_days), none);
        table.given.assign(m_model.kinds.size(), std::vector<int>(at(m_days), none));
        for (int day = 0; day < m_days; ++day) {
            const double wanted = table.wanted[at(day)];
            if (wanted <= noVolume)
                continue;
            table.shortBy[at(day)] = column(wanted);
            LinearTerms all{{table.shortBy[at(day)], 1.0}};
            for (std::size_t kind = 0; kind < m_model.kinds.size(); ++kind) {
                if (!table.may[kind] || !hasSource(kind, day))
                    continue;
                table.given[kind][at(day)] = column();
                all.emplace_back(table.given[kind][at(day)], 1.0);
            }
            row(std::move(all), wanted, wanted);
        }
    }
    for (std::size_t kind = 0; kind < m_model.kinds.size(); ++kind) {
        for (int day = 0; day < m_days; ++day) {
            LinearTerms balance;
            for (const WeekModel::Source& source : m_model.sources)
                if (source.kind == kind && day >= source.start && day <= source.last &&
                    source.served[at(day - source.start)] != none)
                    balance.emplace_back(source.served[at(day - source.start)], 1.0);
            for (const WeekModel::Table& table : m_model.tables)
                if (table.given[kind][at(day)] != none)
                    balance.emplace_back(table.given[kind][at(day)], -1.0);
            if (!balance.empty())
                row(std::move(balance), 0, 0);
        }
    }
}

void ModelMaker::addRooms() {
    const bool over = canBeOver();
    m_model.moreFridge = m_elastic.fridge ? column() : none;
    m_model.moreFreezer = m_elastic.freezer ? column() : none;
    for (int day = 0; day < m_days; ++day) {
        LinearTerms fridge;
        for (const WeekModel::Source& source : m_model.sources)
            if (day >= source.start && day <= source.last)
                fridge.emplace_back(source.left[at(day - source.start)], 1.0);
        LinearTerms freezer;
        for (const std::vector<int>& stands : m_model.freezer)
            if (stands[at(day)] != none)
                freezer.emplace_back(stands[at(day)], 1.0);
        if (over) {
            m_model.overFridge.push_back(column());
            m_model.overFreezer.push_back(column());
            fridge.emplace_back(m_model.overFridge.back(), -1.0);
            freezer.emplace_back(m_model.overFreezer.back(), -1.0);
        }
        if (m_model.moreFridge != none)
            fridge.emplace_back(m_model.moreFridge, -1.0);
        if (m_model.moreFreezer != none)
            freezer.emplace_back(m_model.moreFreezer, -1.0);
        row(std::move(fridge), -LinearProgram::unbounded, m_problem.fridgeRoom.toLitres());
        row(std::move(freezer), -LinearProgram::unbounded, m_problem.freezerRoom.toLitres());
    }
}

void ModelMaker::followMeat(WeekModel::MeatSource& source, const LinearTerms& supply,
                            double constant) {
    for (int day = source.start; day <= std::min(source.last, m_days - 1); ++day) {
        source.eaten.push_back(column());
        source.left.push_back(column());
        LinearTerms balance{{source.eaten.back(), 1.0}, {source.left.back(), 1.0}};
        if (day == source.start) {
            for (const auto& [from, factor] : supply)
                balance.emplace_back(from, -factor);
        } else {
            balance.emplace_back(source.left[source.left.size() - 2], -1.0);
        }
        const double filled = day == source.start ? constant : 0;
        row(std::move(balance), filled, filled);
    }
}

void ModelMaker::addMeat() {
    std::map<int, WeekModel::MeatSource> onHand;
    for (std::size_t index = 0; index < m_problem.meat.size(); ++index) {
        if (m_problem.meat[index].useByDay < 0)
            continue;
        WeekModel::MeatSource& source = onHand[m_problem.meat[index].useByDay];
        source.last = m_problem.meat[index].useByDay;
        source.onHand.push_back(index);
    }
    for (auto& [last, source] : onHand) {
        double kilograms = 0;
        for (const std::size_t index : source.onHand)
            kilograms += m_problem.meat[index].mass.toKilograms();
        followMeat(source, {}, kilograms);
        m_model.meat.push_back(std::move(source));
    }
    for (int day = 0; day < m_days; ++day) {
        LinearTerms supply;
        double settled = 0;
        for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
            const double kilograms = m_problem.pots[pot].meat.toKilograms();
            if (m_model.cook[at(day)][pot] != none && kilograms > noVolume)
                supply.emplace_back(m_model.cook[at(day)][pot], kilograms);
            settled += settledOn(day, pot) * kilograms;
        }
        if (supply.empty() && settled <= noVolume)
            continue;
        WeekModel::MeatSource source;
        source.start = day;
        source.last = day + m_problem.fridgeDays;
        followMeat(source, supply, settled);
        m_model.meat.push_back(std::move(source));
    }
    for (int day = 0; day < m_days; ++day) {
        LinearTerms eaten;
        for (const WeekModel::MeatSource& source : m_model.meat)
            if (day >= source.start && day <= source.last)
                eaten.emplace_back(source.eaten[at(day - source.start)], 1.0);
        if (!eaten.empty())
            row(std::move(eaten), -LinearProgram::unbounded, m_problem.meatPerDay.toKilograms());
    }
}

void ModelMaker::addLevel(WeekModel::Level name, LinearTerms terms, double grain) {
    LinearLevel level;
    level.terms = std::move(terms);
    level.grain = grain;
    m_model.levelNames.push_back(name);
    m_model.levels.push_back(std::move(level));
}

void ModelMaker::addLevels() {
    if (!m_model.overFridge.empty()) {
        LinearTerms over;
        for (const int day : m_model.overFridge)
            over.emplace_back(day, 1.0);
        for (const int day : m_model.overFreezer)
            over.emplace_back(day, 1.0);
        addLevel(WeekModel::Level::OverRoom, std::move(over));
        m_model.levels.back().exact = true;
    }
    LinearTerms missing;
    for (const WeekModel::Table& table : m_model.tables) {
        for (int day = 0; day < m_days; ++day) {
            if (table.shortBy[at(day)] == none)
                continue;
            missing.emplace_back(table.shortBy[at(day)], 1.0);
            constexpr double earlyCounts = 10;
            m_model.tidy.terms.emplace_back(table.shortBy[at(day)], earlyCounts * (m_days - day));
        }
    }
    addLevel(WeekModel::Level::Short, std::move(missing));
    LinearTerms spoilt;
    for (const WeekModel::Source& source : m_model.sources) {
        if (source.last < m_days)
            spoilt.emplace_back(source.left.back(), 1.0);
        // What has the fewest days to go is to be drunk first.
        constexpr double orderCounts = 0.01;
        for (std::size_t day = 0; day < source.left.size(); ++day)
            m_model.tidy.terms.emplace_back(
                source.left[day],
                orderCounts / (source.last - source.start - static_cast<int>(day) + 1));
        if (source.frozen != none)
            m_model.tidy.terms.emplace_back(source.frozen, 1.0);
        if (source.thawed != none)
            m_model.tidy.terms.emplace_back(source.thawed, 1.0);
    }
    addLevel(WeekModel::Level::Spoilt, std::move(spoilt));
    LinearTerms spoiltMeat;
    for (const WeekModel::MeatSource& source : m_model.meat)
        if (source.last < m_days)
            spoiltMeat.emplace_back(source.left.back(), 1.0);
    addLevel(WeekModel::Level::SpoiltMeat, std::move(spoiltMeat));

    LinearTerms cookings;
    LinearTerms handsOn;
    LinearTerms cost;
    std::vector<double> minutes;
    std::vector<double> costs;
    std::map<QString, LinearTerms> byAnimal;
    for (std::size_t pot = 0; pot < m_problem.pots.size(); ++pot) {
        minutes.push_back(m_problem.pots[pot].handsOn.toMinutes());
        costs.push_back(m_problem.pots[pot].cost);
        LinearTerms onDays;
        double most = 0;
        for (const std::vector<int>& day : m_model.cook) {
            if (day[pot] == none)
                continue;
            onDays.emplace_back(day[pot], 1.0);
            most += m_model.program.columns[at(day[pot])].upper;
        }
        if (onDays.empty())
            continue;
        const int total = m_model.program.addColumn({0, most, true, totalsFirst});
        onDays.emplace_back(total, -1.0);
        row(std::move(onDays), 0, 0);
        cookings.emplace_back(total, 1.0);
        handsOn.emplace_back(total, minutes.back());
        cost.emplace_back(total, costs.back());
        byAnimal[m_problem.pots[pot].animal].emplace_back(total, 1.0);
    }
    addLevel(WeekModel::Level::Cookings, std::move(cookings), 1.0);
    addLevel(WeekModel::Level::HandsOn, std::move(handsOn), grainOf(minutes));
    addLevel(WeekModel::Level::Cost, std::move(cost), grainOf(costs));
    if (m_problem.spreadAnimals) {
        const int most = column();
        for (auto& [animal, terms] : byAnimal) {
            terms.emplace_back(most, -1.0);
            row(std::move(terms), -LinearProgram::unbounded, 0);
        }
        addLevel(WeekModel::Level::Spread, {{most, 1.0}}, 1.0);
    }
}

WeekModel ModelMaker::make() {
    findKinds();
    findTables();
    addCookings();
    addSlotRows();
    addAnimalRows();
    addSources();
    addServing();
    addRooms();
    addMeat();
    addLevels();
    return std::move(m_model);
}

} // namespace

WeekModel makeWeekModel(const WeekProblem& problem, const Elastic& elastic) {
    return ModelMaker(problem, elastic).make();
}

} // namespace ladlework::week
