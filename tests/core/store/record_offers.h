#pragma once

#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

namespace ladlework::store {

/// What stands in the workbook when a bad record is offered.
struct Stored {
    PhaseId phase;
    FamilyId family;
    MemberId member;
    VesselId vessel;
    ContainerId container;
    PotId pot;
    BatchId batch;
    LotId lot;
    FamilyId otherFamily;
    MemberId otherMember;
    VesselId otherVessel;
    ContainerId otherContainer;
    PotId otherPot;
    LotId otherLot;
};

/// Adds a sample record with one thing wrong.
using Offer = std::function<Outcome(Action&, Workbook&, const Stored&)>;

struct BadRecord {
    const char* name;
    Problem::Kind kind;
    const char* place;  ///< the field that the problem names
    const char* phrase; ///< words of the sentence
    Offer offer;
};

inline std::ostream& operator<<(std::ostream& out, const BadRecord& bad) {
    return out << bad.name;
}

template <class Spoil>
Offer family(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        people::Family record = sampleFamily();
        spoil(record);
        return outcome(workbook.families().addFamily(action, record));
    };
}

template <class Spoil>
Offer member(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        people::Member record = sampleMember(stored.family, stored.phase);
        spoil(record);
        return outcome(workbook.families().addMember(action, record));
    };
}

template <class Spoil>
Offer tolerance(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        people::ToleranceNote record = sampleTolerance(stored.member);
        spoil(record);
        return outcome(workbook.families().addTolerance(action, record));
    };
}

template <class Spoil>
Offer caution(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        people::Caution record = sampleCaution(stored.member);
        spoil(record);
        return outcome(workbook.families().addCaution(action, record));
    };
}

template <class Spoil>
Offer retry(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        people::RetryPlan record = sampleRetry(stored.member);
        spoil(record);
        return outcome(workbook.families().addRetryPlan(action, record));
    };
}

/// A retry that is still open, after the member's notes and cautions were spoilt.
template <class Spoil>
Offer openRetry(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        spoil(action, workbook, stored);
        people::RetryPlan record = sampleRetry(stored.member);
        record.outcome = people::RetryPlan::Ending::Open;
        record.closed = QDate();
        return outcome(workbook.families().addRetryPlan(action, record));
    };
}

template <class Spoil>
Offer observation(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        people::Observation record = sampleObservation(stored.member);
        spoil(record);
        return outcome(workbook.families().addObservation(action, record));
    };
}

template <class Spoil>
Offer container(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        kitchen::Container record = sampleContainer(stored.family);
        spoil(record);
        return outcome(workbook.families().addContainer(action, record));
    };
}

inline Offer price(const char* item, double perKilogram) {
    return [item, perKilogram](Action& action, Workbook& workbook, const Stored&) {
        return workbook.practice().setPrice(action, QLatin1String(item), perKilogram);
    };
}

template <class Spoil>
Offer symptom(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        intake::Symptom record = sampleSymptom();
        spoil(record);
        return outcome(workbook.practice().addSymptom(action, record));
    };
}

template <class Spoil>
Offer ladderTemplate(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        EXPECT_TRUE(workbook.practice().addLadderTemplate(action, sampleTemplate()));
        intake::LadderTemplate record = sampleTemplate();
        record.name = QStringLiteral("Another");
        spoil(record);
        return outcome(workbook.practice().addLadderTemplate(action, record));
    };
}

template <class Spoil>
Offer houseRules(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        intake::LadderRules rules = sampleRules();
        spoil(rules);
        return workbook.practice().setHouseRules(action, rules);
    };
}

template <class Spoil>
Offer vessel(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        kitchen::Vessel record = sampleVessel(stored.family);
        spoil(record);
        return outcome(workbook.families().addVessel(action, record));
    };
}

template <class Spoil>
Offer pot(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        kitchen::Pot record = samplePot(stored.family, stored.vessel);
        spoil(record, stored);
        return outcome(workbook.pots().addPot(action, record));
    };
}

template <class Spoil>
Offer batch(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        kitchen::Batch record = sampleBatch(stored.family, stored.pot);
        spoil(record, stored);
        return outcome(workbook.pots().addBatch(action, record));
    };
}

template <class Spoil>
Offer lot(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        kitchen::Lot record = sampleLot(stored.batch);
        spoil(record);
        return outcome(workbook.pots().addLot(action, record));
    };
}

template <class Spoil>
Offer target(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        intake::Target record = sampleTarget(stored.member);
        spoil(record);
        return outcome(workbook.climbs().addTarget(action, record));
    };
}

template <class Spoil>
Offer ladder(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        intake::Ladder record = sampleLadder(stored.member);
        spoil(record);
        return outcome(workbook.climbs().addLadder(action, record));
    };
}

template <class Spoil>
Offer decision(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        intake::Decision record = sampleDecision(stored.member);
        record.day = QDate(2024, 2, 3);
        spoil(record);
        return outcome(workbook.climbs().addDecision(action, record));
    };
}

template <class Spoil>
Offer entry(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        intake::IntakeEntry record = sampleEntry(stored.member, stored.pot, stored.lot);
        spoil(record, stored);
        return outcome(workbook.log().addEntry(action, record));
    };
}

template <class Spoil>
Offer reaction(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        intake::Reaction record = sampleReaction(stored.member);
        spoil(record);
        return outcome(workbook.log().addReaction(action, record));
    };
}

template <class Spoil>
Offer plan(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        week::WeekPlan record = samplePlan(stored.family, stored.pot);
        spoil(record, stored);
        return outcome(workbook.weeks().setPlan(action, record));
    };
}

template <class Spoil>
Offer usualHours(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        QList<week::UsualHours> hours = sampleHours();
        FamilyId family = stored.family;
        spoil(hours, family);
        return workbook.families().setUsualHours(action, family, hours);
    };
}

template <class Spoil>
Offer weekTemplate(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        week::WeekTemplate record = sampleWeekTemplate(stored.family, stored.pot);
        spoil(record, stored);
        return outcome(workbook.weeks().addTemplate(action, record));
    };
}

template <class Spoil>
Offer pages(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        casebook::HandoutTemplate record = sampleHandoutTemplate();
        spoil(record);
        return outcome(workbook.practice().addHandoutTemplate(action, record));
    };
}

template <class Spoil>
Offer labels(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored&) {
        casebook::LabelStock record = sampleLabelStock();
        spoil(record);
        return outcome(workbook.practice().addLabelStock(action, record));
    };
}

template <class Spoil>
Offer note(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        casebook::VisitNote record = sampleNote(stored.family);
        spoil(record);
        return outcome(workbook.notes().addNote(action, record));
    };
}

} // namespace ladlework::store
