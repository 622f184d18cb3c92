#include "casebook/casebook.h"

#include "casebook/learnt_vessels.h"
#include "casebook/standing_maker.h"
#include "casebook/usual_vessel.h"

#include <algorithm>
#include <mutex>

namespace ladlework::casebook {

namespace {
std::optional<double> sodiumLimitOf(const Standing& standing) {
    std::optional<double> limit;
    for (const people::Caution& caution : standing.cautions) {
        if (caution.sodiumLimitMg)
            limit = std::min(limit.value_or(*caution.sodiumLimitMg), *caution.sodiumLimitMg);
    }
    return limit;
}

kitchen::Drinker drinkerOf(const Standing& standing) {
    kitchen::Drinker drinker;
    drinker.name = standing.member.name;
    for (const people::ToleranceNote& note : standing.tolerances) {
        if (people::forbids(note))
            drinker.mayNot.append(note.subject.id);
        if (note.allergy)
            drinker.allergicTo.append(note.subject.id);
    }
    for (const people::Caution& caution : standing.cautions) {
        for (const QString& allergen : people::keptOut(caution)) {
            if (!drinker.mayNot.contains(allergen))
                drinker.mayNot.append(allergen);
            drinker.allergicTo.append(allergen);
        }
    }
    drinker.sodiumLimitMg = sodiumLimitOf(standing);
    drinker.band = standing.band;
    drinker.perDay = standing.askedToday;
    drinker.boneBroth = standing.phase && standing.phase->rules.boneBroth;
    if (standing.phase)
        drinker.phase = standing.phase->name;
    return drinker;
}

/// What both allow: everything is strained that either strains, nothing is let in that either keeps
/// out.
kitchen::PhaseRules moreCareful(const kitchen::PhaseRules& a, const kitchen::PhaseRules& b) {
    kitchen::PhaseRules rules;
    rules.strainHerbs = a.strainHerbs || b.strainHerbs;
    rules.strainVegetables = a.strainVegetables || b.strainVegetables;
    rules.strainPeppercorns = a.strainPeppercorns || b.strainPeppercorns;
    rules.groundPepper = a.groundPepper && b.groundPepper;
    rules.boneBroth = a.boneBroth && b.boneBroth;
    return rules;
}

template <class Record, class Identifier>
const Record* byId(const QList<Record>& records, Identifier id) {
    const auto found = std::ranges::find(records, id, &Record::id);
    return found == records.end() ? nullptr : &*found;
}

const kitchen::Vessel* largestVessel(const FamilyRecords& records) {
    const kitchen::Vessel* largest = nullptr;
    for (const kitchen::Vessel& vessel : records.vessels) {
        if (largest == nullptr || vessel.capacity() > largest->capacity())
            largest = &vessel;
    }
    return largest;
}
} // namespace

struct Casebook::Learnt {
    std::once_flag once;
    QHash<VesselId, kitchen::Calibration> vessels;
};

Casebook::Casebook(FamilyRecords records, const kitchen::Catalogue& catalogue, QDate today)
    : Casebook(std::move(records), {}, catalogue, today) {
    for (const people::Member& member : std::as_const(m_records.members))
        m_standings.push_back(
            makeStanding(m_records, member, memberLog(m_records, member, today), today));
}

Casebook::Casebook(FamilyRecords records, std::vector<Standing> standings,
                   const kitchen::Catalogue& catalogue, QDate today)
    : m_records(std::move(records)), m_catalogue(&catalogue), m_today(today),
      m_standings(std::move(standings)), m_learnt(std::make_shared<Learnt>()) {}

const Standing* Casebook::standing(MemberId member) const {
    const auto found = std::ranges::find_if(
        m_standings, [member](const Standing& standing) { return standing.member.id == member; });
    return found == m_standings.end() ? nullptr : &*found;
}

const kitchen::Pot* Casebook::pot(PotId pot) const {
    return byId(m_records.pots, pot);
}

const kitchen::Vessel* Casebook::vessel(VesselId vessel) const {
    return byId(m_records.vessels, vessel);
}

const kitchen::Calibration* Casebook::calibration(VesselId vessel) const {
    std::call_once(m_learnt->once,
                   [this] { m_learnt->vessels = learnVessels(m_records, *m_catalogue); });
    const auto found = std::as_const(m_learnt->vessels).find(vessel);
    return found == m_learnt->vessels.cend() ? nullptr : &*found;
}

kitchen::Container Casebook::containerFor(const kitchen::Pot& pot) const {
    if (const kitchen::Container* own = byId(m_records.containers, pot.coolIn))
        return *own;
    return m_records.containers.isEmpty() ? kitchen::usualContainers().front()
                                          : m_records.containers.first();
}

std::vector<kitchen::Drinker> Casebook::drinkers() const {
    std::vector<kitchen::Drinker> drinkers;
    drinkers.reserve(m_standings.size());
    for (const Standing& standing : m_standings)
        drinkers.push_back(drinkerOf(standing));
    return drinkers;
}

kitchen::WhoMay Casebook::whoMay(const Standing& standing, const kitchen::Pot& pot) const {
    return kitchen::whoMay(drinkerOf(standing), pot, *m_catalogue);
}

kitchen::PhaseRules Casebook::rulesFor(const kitchen::Pot& pot) const {
    std::optional<kitchen::PhaseRules> rules;
    for (const Standing& standing : m_standings) {
        const kitchen::Drinker drinker = drinkerOf(standing);
        if (drinker.perDay <= quantity::Volume() ||
            !kitchen::whoMay(drinker, pot, *m_catalogue).may)
            continue;
        // Without a phase the most careful rules hold, which are the defaults.
        const kitchen::PhaseRules own =
            standing.phase ? standing.phase->rules : kitchen::PhaseRules();
        rules = rules ? moreCareful(*rules, own) : own;
    }
    return rules.value_or(kitchen::PhaseRules());
}

kitchen::BrewInput Casebook::brewInput(const kitchen::Pot& pot) const {
    kitchen::BrewInput input;
    input.pot = pot;
    const kitchen::Vessel* chosen = vessel(pot.vessel);
    if (chosen == nullptr)
        chosen = largestVessel(m_records);
    input.vessel = chosen != nullptr ? *chosen : usualVessel();
    if (const kitchen::Calibration* learnt = calibration(input.vessel.id))
        input.learntEvaporation = learnt->posterior;
    input.prices = m_records.prices;
    input.phase = rulesFor(pot);
    input.altitude = m_records.family.altitude;
    input.drinkers = drinkers();
    if (m_records.family.meatPerDay > quantity::Mass())
        input.meatPerDay = m_records.family.meatPerDay;
    return input;
}

week::WeekPlan Casebook::plan(QDate weekStart) const {
    const auto found = std::ranges::find(m_records.weeks, weekStart, &week::WeekPlan::start);
    if (found != m_records.weeks.end())
        return *found;
    week::WeekPlan empty;
    empty.family = m_records.family.id;
    empty.start = weekStart;
    return empty;
}

} // namespace ladlework::casebook
