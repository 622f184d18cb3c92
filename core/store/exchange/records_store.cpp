#include "exchange/records_store.h"

#include "store/workbook.h"

#include <QHash>
#include <algorithm>

namespace ladlework::exchange {

namespace {

/// Stores the records of one family, step by step, until one is refused.
class FamilyWriter {
public:
    FamilyWriter(store::Action& action, store::Workbook& workbook, const StoredIds& known)
        : m_action(action), m_workbook(workbook), m_known(known), m_pots(known.pots) {}

    Result<FamilyId> write(const casebook::FamilyRecords& records) {
        const auto family = m_workbook.families().addFamily(m_action, records.family);
        if (!family)
            return passOn(family);
        m_family = *family;
        writeMembers(records);
        writeClimbs(records);
        writeKitchen(records);
        writeLog(records);
        writeWeeksAndNotes(records);
        if (m_problem)
            return tl::unexpected<Problem>(*m_problem);
        return m_family;
    }

private:
    /// Keeps the first problem; gives a value that is not used once there is one.
    template <class Value>
    Value keep(const Result<Value>& stored) {
        if (stored)
            return *stored;
        if (!m_problem)
            m_problem = stored.error();
        return Value{};
    }
    void keep(const Outcome& stored) {
        if (!stored && !m_problem)
            m_problem = stored.error();
    }

    /// Calls `store` with each record until there is a problem.
    template <class Record, class Store>
    void each(const QList<Record>& records, Store store) {
        for (const Record& record : records) {
            if (m_problem)
                return;
            Record copy = record;
            store(copy);
        }
    }

    void writeMembers(const casebook::FamilyRecords& records) {
        store::FamilyRepository& families = m_workbook.families();
        each(records.members, [&](people::Member& member) {
            const MemberId provisional = member.id;
            member.family = m_family;
            member.phase = m_known.phases.value(member.phase);
            m_members.insert(provisional, keep(families.addMember(m_action, member)));
        });
        each(records.tolerances, [&](people::ToleranceNote& note) {
            note.member = m_members.value(note.member);
            keep(families.addTolerance(m_action, note));
        });
        each(records.cautions, [&](people::Caution& caution) {
            caution.member = m_members.value(caution.member);
            keep(families.addCaution(m_action, caution));
        });
        each(records.retryPlans, [&](people::RetryPlan& plan) {
            plan.member = m_members.value(plan.member);
            keep(families.addRetryPlan(m_action, plan));
        });
        each(records.observations, [&](people::Observation& observation) {
            observation.member = m_members.value(observation.member);
            keep(families.addObservation(m_action, observation));
        });
    }

    void writeClimbs(const casebook::FamilyRecords& records) {
        store::ClimbRepository& climbs = m_workbook.climbs();
        each(records.targets, [&](intake::Target& target) {
            target.member = m_members.value(target.member);
            keep(climbs.addTarget(m_action, target));
        });
        each(records.ladders, [&](intake::Ladder& ladder) {
            ladder.member = m_members.value(ladder.member);
            keep(climbs.addLadder(m_action, ladder));
        });
        each(records.decisions, [&](intake::Decision& decision) {
            decision.member = m_members.value(decision.member);
            keep(climbs.addDecision(m_action, decision));
        });
    }

    void writeKitchen(const casebook::FamilyRecords& records) {
        store::PotRepository& pots = m_workbook.pots();
        if (!m_problem)
            keep(m_workbook.families().setUsualHours(m_action, m_family, records.usualHours));
        each(records.vessels, [&](kitchen::Vessel& vessel) {
            const VesselId provisional = vessel.id;
            vessel.family = m_family;
            m_vessels.insert(provisional, keep(m_workbook.families().addVessel(m_action, vessel)));
        });
        each(records.containers, [&](kitchen::Container& container) {
            const ContainerId provisional = container.id;
            container.family = m_family;
            m_containers.insert(provisional,
                                keep(m_workbook.families().addContainer(m_action, container)));
        });
        each(records.pots, [&](kitchen::Pot& pot) {
            if (!pot.family.isStored())
                return; // the practice's, stored already
            const PotId provisional = pot.id;
            pot.family = m_family;
            pot.vessel = m_vessels.value(pot.vessel);
            pot.coolIn = m_containers.value(pot.coolIn);
            m_pots.insert(provisional, keep(pots.addPot(m_action, pot)));
        });
        each(records.batches, [&](kitchen::Batch& batch) {
            const BatchId provisional = batch.id;
            batch.family = m_family;
            batch.pot = m_pots.value(batch.pot);
            batch.cooked.vessel = m_vessels.value(batch.cooked.vessel);
            m_batches.insert(provisional, keep(pots.addBatch(m_action, batch)));
        });
        each(records.lots, [&](kitchen::Lot& lot) {
            const LotId provisional = lot.id;
            lot.batch = m_batches.value(lot.batch);
            m_lots.insert(provisional, keep(pots.addLot(m_action, lot)));
        });
    }

    void writeLog(const casebook::FamilyRecords& records) {
        store::LogRepository& log = m_workbook.log();
        each(records.entries, [&](intake::IntakeEntry& entry) {
            entry.member = m_members.value(entry.member);
            entry.pot = m_pots.value(entry.pot);
            entry.lot = m_lots.value(entry.lot);
            keep(log.addEntry(m_action, entry));
        });
        each(records.reactions, [&](intake::Reaction& reaction) {
            reaction.member = m_members.value(reaction.member);
            keep(log.addReaction(m_action, reaction));
        });
    }

    void writeWeeksAndNotes(const casebook::FamilyRecords& records) {
        each(records.weeks, [&](week::WeekPlan& plan) {
            plan.family = m_family;
            for (week::Placement& placement : plan.placements)
                placement.pot = m_pots.value(placement.pot);
            keep(m_workbook.weeks().setPlan(m_action, plan));
        });
        each(records.weekTemplates, [&](week::WeekTemplate& kept) {
            kept.family = m_family;
            for (week::TemplatePlacement& placement : kept.placements)
                placement.pot = m_pots.value(placement.pot);
            keep(m_workbook.weeks().addTemplate(m_action, kept));
        });
        each(records.notes, [&](casebook::VisitNote& note) {
            note.family = m_family;
            keep(m_workbook.notes().addNote(m_action, note));
        });
    }

    store::Action& m_action;
    store::Workbook& m_workbook;
    const StoredIds& m_known;
    FamilyId m_family;
    QHash<MemberId, MemberId> m_members;
    QHash<VesselId, VesselId> m_vessels;
    QHash<ContainerId, ContainerId> m_containers;
    QHash<PotId, PotId> m_pots;
    QHash<BatchId, BatchId> m_batches;
    QHash<LotId, LotId> m_lots;
    std::optional<Problem> m_problem;
};

Outcome storePhases(store::Action& action, store::Workbook& workbook,
                    const QList<people::Phase>& phases, StoredIds& ids) {
    const QList<people::Phase> before = workbook.practice().phases();
    for (const people::Phase& phase : phases) {
        const auto same = [&phase](const people::Phase& other) {
            return other.id == phase.id;
        };
        if (std::any_of(before.begin(), before.end(), same)) {
            if (const Outcome changed = workbook.practice().changePhase(action, phase); !changed)
                return changed;
            ids.phases.insert(phase.id, phase.id);
            continue;
        }
        const auto added = workbook.practice().addPhase(action, phase);
        if (!added)
            return passOn(added);
        ids.phases.insert(phase.id, *added);
    }
    return {};
}

/// The one of the list that goes by the same name; nullptr when there is none.
template <class Record>
const Record* sameName(const QList<Record>& records, const QString& name) {
    const auto found = std::ranges::find_if(records, [&name](const Record& record) {
        return record.name.compare(name.simplified(), Qt::CaseInsensitive) == 0;
    });
    return found == records.end() ? nullptr : &*found;
}

Outcome storeSymptoms(store::Action& action, store::PracticeRepository& practice,
                      const QList<intake::Symptom>& symptoms) {
    for (intake::Symptom symptom : symptoms) {
        const QList<intake::Symptom> before = practice.symptoms();
        if (const intake::Symptom* known = sameName(before, symptom.name)) {
            symptom.id = known->id;
            symptom.position = known->position;
            if (const Outcome changed = practice.changeSymptom(action, symptom); !changed)
                return changed;
            continue;
        }
        symptom.position = before.isEmpty() ? 0 : before.last().position + 1;
        if (const auto added = practice.addSymptom(action, symptom); !added)
            return passOn(added);
    }
    return {};
}

Outcome storeTemplates(store::Action& action, store::PracticeRepository& practice,
                       const QList<intake::LadderTemplate>& templates) {
    const QList<intake::LadderTemplate> before = practice.ladderTemplates();
    for (intake::LadderTemplate ladderTemplate : templates) {
        if (const intake::LadderTemplate* known = sameName(before, ladderTemplate.name)) {
            ladderTemplate.id = known->id;
            if (const Outcome changed = practice.changeLadderTemplate(action, ladderTemplate);
                !changed)
                return changed;
        } else if (const auto added = practice.addLadderTemplate(action, ladderTemplate); !added) {
            return passOn(added);
        }
    }
    return {};
}

Outcome storeLabelStocks(store::Action& action, store::PracticeRepository& practice,
                         const QList<casebook::LabelStock>& stocks) {
    const QList<casebook::LabelStock> before = practice.labelStocks();
    for (casebook::LabelStock stock : stocks) {
        if (const casebook::LabelStock* known = sameName(before, stock.name)) {
            stock.id = known->id;
            if (const Outcome changed = practice.changeLabelStock(action, stock); !changed)
                return changed;
        } else if (const auto added = practice.addLabelStock(action, stock); !added) {
            return passOn(added);
        }
    }
    return {};
}

/// What the practice sets for all families, but for the phases.
Outcome storeSettings(store::Action& action, store::PracticeRepository& practice,
                      const PracticeText& text) {
    if (const Outcome set = practice.setPractice(action, text.practice); !set)
        return set;
    if (const Outcome set = practice.setHouseRules(action, text.houseRules); !set)
        return set;
    if (const Outcome stored = storeTemplates(action, practice, text.ladderTemplates); !stored)
        return stored;
    if (const Outcome stored = storeSymptoms(action, practice, text.symptoms); !stored)
        return stored;
    for (const auto& [item, perKilogram] : text.prices.asKeyValueRange())
        if (const Outcome set = practice.setPrice(action, item, perKilogram); !set)
            return set;
    return storeLabelStocks(action, practice, text.labelStocks);
}

} // namespace

Result<FamilyId> storeFamily(store::Action& action, store::Workbook& workbook,
                             const casebook::FamilyRecords& records, const StoredIds& known) {
    return FamilyWriter(action, workbook, known).write(records);
}

Result<StoredIds> storeHouse(store::Action& action, store::Workbook& workbook,
                             const PracticeText& text) {
    if (const Outcome set = storeSettings(action, workbook.practice(), text); !set)
        return passOn(set);
    StoredIds ids;
    if (const Outcome stored = storePhases(action, workbook, text.phases, ids); !stored)
        return passOn(stored);
    for (const kitchen::Pot& pot : text.pots) {
        const auto added = workbook.pots().addPot(action, pot);
        if (!added)
            return passOn(added);
        ids.pots.insert(pot.id, *added);
    }
    return ids;
}

Outcome storePractice(store::Action& action, store::Workbook& workbook, const PracticeText& text) {
    const Result<StoredIds> ids = storeHouse(action, workbook, text);
    if (!ids)
        return passOn(ids);
    for (const casebook::FamilyRecords& family : text.families)
        if (const auto stored = storeFamily(action, workbook, family, *ids); !stored)
            return passOn(stored);
    return {};
}

} // namespace ladlework::exchange
