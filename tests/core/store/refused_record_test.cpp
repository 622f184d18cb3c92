#include "core/store/sample_records.h"
#include "core/store/store_fixture.h"

#include <limits>

namespace ladlework::store {
namespace {

using quantity::Duration;
using quantity::Length;
using quantity::Mass;
using quantity::Volume;

/// What stands in the workbook when a bad record is offered.
struct Stored {
    PhaseId phase;
    FamilyId family;
    MemberId member;
    VesselId vessel;
    PotId pot;
    BatchId batch;
    LotId lot;
    FamilyId otherFamily;
    MemberId otherMember;
    VesselId otherVessel;
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

std::ostream& operator<<(std::ostream& out, const BadRecord& bad) {
    return out << bad.name;
}

const QDate tomorrow = testToday.addDays(1);
constexpr auto badInput = Problem::Kind::BadInput;

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
Offer note(Spoil spoil) {
    return [spoil](Action& action, Workbook& workbook, const Stored& stored) {
        casebook::VisitNote record = sampleNote(stored.family);
        spoil(record);
        return outcome(workbook.notes().addNote(action, record));
    };
}

const double notANumber = std::numeric_limits<double>::quiet_NaN();
const double endless = std::numeric_limits<double>::infinity();

const std::vector<BadRecord> badPeople{
    {"FamilyWithoutName", badInput, "name", "name",
     family([](auto& record) { record.name = QStringLiteral(" \n "); })},
    {"FamilyFromTomorrow", badInput, "since", "future",
     family([](auto& record) { record.since = tomorrow; })},
    {"FamilyWithoutDay", badInput, "since", "day",
     family([](auto& record) { record.since = QDate(); })},
    {"FamilyInNoZone", badInput, "zone", "time zone",
     family([](auto& record) { record.zone = QTimeZone("Nowhere/Land"); })},
    {"FamilyInTheStratosphere", badInput, "altitude", "altitude",
     family([](auto& record) { record.altitude = Length::fromMetres(6001); })},
    {"FamilyWithNegativeFridge", badInput, "fridgeRoom", "refrigerator",
     family([](auto& record) { record.fridgeRoom = Volume::fromMillilitres(-1); })},
    {"FamilyWithEndlessFreezer", badInput, "freezerRoom", "freezer",
     family([](auto& record) { record.freezerRoom = Volume::fromMillilitres(endless); })},
    {"FamilyEatingNotANumber", badInput, "meatPerDay", "meat",
     family([](auto& record) { record.meatPerDay = Mass::fromGrams(notANumber); })},
    {"MemberWithoutName", badInput, "name", "name",
     member([](auto& record) { record.name.clear(); })},
    {"MemberBornTomorrow", badInput, "birth", "future",
     member([](auto& record) { record.birth = tomorrow; })},
    {"MemberNeverBorn", badInput, "birth", "birth",
     member([](auto& record) { record.birth = QDate(); })},
    {"MemberOlderThanAnyone", badInput, "birth", "120 years",
     member([](auto& record) { record.birth = QDate(1904, 3, 14); })},
    {"MemberWithBandButNoReason", badInput, "bandOverride", "reason",
     member([](auto& record) { record.bandOverride->reason = QStringLiteral(" "); })},
    {"MemberOfNoFamily", Problem::Kind::NotFound, "family", "family",
     member([](auto& record) { record.family = FamilyId{999}; })},
    {"MemberInNoPhase", Problem::Kind::NotFound, "phase", "phase",
     member([](auto& record) { record.phase = PhaseId{999}; })},
    {"NoteAboutNothing", badInput, "subject", "ingredient",
     tolerance([](auto& record) { record.subject.id = QStringLiteral(" "); })},
    {"NoteFromTomorrow", badInput, "noted", "day",
     tolerance([](auto& record) { record.noted = tomorrow; })},
    {"NoteWithoutReason", badInput, "reason", "reason",
     tolerance([](auto& record) { record.reason.clear(); })},
    {"RetryOfAnAllergy", badInput, "verdict", "allergy",
     tolerance([](auto& record) { record.allergy = true; })},
    {"RetryWithoutDay", badInput, "tryAgainOn", "day",
     tolerance([](auto& record) { record.tryAgainOn.reset(); })},
    {"RetryBeforeTheNote", badInput, "tryAgainOn", "after",
     tolerance([](auto& record) { record.tryAgainOn = record.noted; })},
    {"NoteOfNobody", Problem::Kind::NotFound, "member", "member",
     tolerance([](auto& record) { record.member = {}; })},
    {"UnknownCaution", badInput, "kind", "caution",
     caution([](auto& record) { record.kind = QStringLiteral("bad-temper"); })},
    {"NegativeSodiumLimit", badInput, "sodiumLimitMg", "sodium",
     caution([](auto& record) { record.sodiumLimitMg = -1; })},
    {"SodiumLimitElsewhere", badInput, "sodiumLimitMg", "sodium",
     caution([](auto& record) { record.kind = QStringLiteral("kidney"); })},
};

const std::vector<BadRecord> badKitchens{
    {"VesselWithoutName", badInput, "name", "name",
     vessel([](auto& record) { record.name.clear(); })},
    {"NarrowVessel", badInput, "diameter", "width",
     vessel([](auto& record) { record.diameter = Length::fromCentimetres(-20); })},
    {"VesselOfNoHeight", badInput, "height", "height",
     vessel([](auto& record) { record.height = Length(); })},
    {"VesselThatDriesOut", badInput, "evaporationFactor", "evaporation",
     vessel([](auto& record) { record.evaporationFactor = 5.1; })},
    {"VesselOfNoFamily", Problem::Kind::NotFound, "family", "family",
     vessel([](auto& record) { record.family = {}; })},
    {"PotWithoutBones", badInput, "cuts", "no bones",
     pot([](auto& record, auto&) { record.cuts.clear(); })},
    {"PotOfUnknownCut", badInput, "cuts[1].cut", "griffin-wing",
     pot([](auto& record, auto&) { record.cuts[1].cut = QStringLiteral("griffin-wing"); })},
    {"PotOfUnknownExtra", badInput, "extras[0].item", "moonbeam",
     pot([](auto& record, auto&) { record.extras[0].item = QStringLiteral("moonbeam"); })},
    {"PotOfNegativeMeat", badInput, "cuts[0].mass", "mass",
     pot([](auto& record, auto&) { record.cuts[0].mass = Mass::fromGrams(-1); })},
    {"PotOfWeightlessOnion", badInput, "extras[0].mass", "mass",
     pot([](auto& record, auto&) { record.extras[0].mass = Mass(); })},
    {"DryPot", badInput, "water", "water",
     pot([](auto& record, auto&) { record.water = Volume(); })},
    {"PotOfNegativeSalt", badInput, "salt", "salt",
     pot([](auto& record, auto&) { record.salt = Mass::fromGrams(-0.1); })},
    {"PotForAFortnight", badInput, "simmer", "days",
     pot([](auto& record, auto&) { record.simmer = Duration::fromHours(24 * 14); })},
    {"PotWithoutName", badInput, "name", "name",
     pot([](auto& record, auto&) { record.name.clear(); })},
    {"PotInAnotherKitchen", Problem::Kind::Refused, "vessel", "another kitchen",
     pot([](auto& record, const Stored& stored) { record.vessel = stored.otherVessel; })},
    {"PotInNoVessel", Problem::Kind::NotFound, "vessel", "vessel",
     pot([](auto& record, auto&) { record.vessel = VesselId{999}; })},
    {"BatchFromTomorrow", badInput, "day", "future",
     batch([](auto& record, auto&) { record.day = tomorrow; })},
    {"BatchOfNoDay", badInput, "day", "day",
     batch([](auto& record, auto&) { record.day = QDate(); })},
    {"BatchOfNegativeYield", badInput, "yield", "yield",
     batch([](auto& record, auto&) { record.yield = Volume::fromMillilitres(-5); })},
    {"BatchOfNoPot", Problem::Kind::NotFound, "pot", "pot",
     batch([](auto& record, auto&) { record.pot = {}; })},
    {"BatchOfAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     batch([](auto& record, const Stored& stored) { record.pot = stored.otherPot; })},
    {"LotOfNothing", badInput, "volume", "amount",
     lot([](auto& record) { record.volume = Volume(); })},
    {"LotSpoiltBeforeStored", badInput, "useBy", "use-by",
     lot([](auto& record) { record.useBy = record.stored.addDays(-1); })},
    {"LotOfNoBatch", Problem::Kind::NotFound, "batch", "batch",
     lot([](auto& record) { record.batch = BatchId{999}; })},
    {"PlanOfNoWeek", badInput, "start", "week",
     plan([](auto& record, auto&) { record.start = QDate(); })},
    {"CookingOutsideTheWeek", badInput, "placements[0].day", "outside this week",
     plan([](auto& record, auto&) { record.placements[0].day = QDate(2024, 3, 25); })},
    {"CookingOfAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     plan([](auto& record, const Stored& stored) { record.placements[0].pot = stored.otherPot; })},
    {"PlanOfNoFamily", Problem::Kind::NotFound, "family", "family",
     plan([](auto& record, auto&) { record.family = FamilyId{999}; })},
};

const std::vector<BadRecord> badClimbs{
    {"TargetOfNothing", badInput, "low", "target",
     target([](auto& record) { record.low = Volume(); })},
    {"TargetUpsideDown", badInput, "high", "high",
     target([](auto& record) { record.high = Volume::fromCups(1); })},
    {"TargetHeldForNoDay", badInput, "holdDays", "days",
     target([](auto& record) { record.holdDays = 0; })},
    {"TargetFromNoDay", badInput, "from", "day",
     target([](auto& record) { record.from = QDate(); })},
    {"LadderWithoutRungs", badInput, "rungs", "rung",
     ladder([](auto& record) { record.rungs.clear(); })},
    {"LadderGoingDown", badInput, "rungs[1]", "more than",
     ladder([](auto& record) { record.rungs[1] = Volume::fromDrops(1); })},
    {"LadderFromNoDay", badInput, "from", "day",
     ladder([](auto& record) { record.from = QDate(); })},
    {"LadderOfMixedStrengths", badInput, "moderateTo", "strengths",
     ladder([](auto& record) { record.rules.mildTo = 9; })},
    {"DecisionWithoutReason", badInput, "reason", "reason",
     decision([](auto& record) { record.reason = QStringLiteral("  "); })},
    {"DecisionAfterTomorrow", badInput, "day", "too far ahead",
     decision([](auto& record) { record.day = tomorrow.addDays(1); })},
    {"DecisionOfNoDay", badInput, "day", "day",
     decision([](auto& record) { record.day = QDate(); })},
    {"DecisionBelowTheLadder", badInput, "resumeAtRung", "rung",
     decision([](auto& record) { record.resumeAtRung = -1; })},
    {"SecondDecisionOfTheDay", Problem::Kind::Refused, "day", "already",
     decision([](auto& record) { record.day = QDate(2024, 2, 2); })},
    {"DrunkLessThanNothing", badInput, "drunk", "amount",
     entry([](auto& record, auto&) { record.drunk = Volume::fromMillilitres(-1); })},
    {"DrunkLikeAWhale", badInput, "drunk", "6 litres",
     entry([](auto& record, auto&) { record.drunk = Volume::fromLitres(6.1); })},
    {"DrunkNotANumber", badInput, "drunk", "amount",
     entry([](auto& record, auto&) { record.drunk = Volume::fromMillilitres(notANumber); })},
    {"DrunkTomorrow", badInput, "day", "future",
     entry([](auto& record, auto&) { record.day = tomorrow; })},
    {"DrunkFromAnotherFamilysPot", Problem::Kind::Refused, "pot", "another family",
     entry([](auto& record, const Stored& stored) { record.pot = stored.otherPot; })},
    {"DrunkFromAnotherFamilysJar", Problem::Kind::NotFound, "lot", "container",
     entry([](auto& record, const Stored& stored) { record.lot = stored.otherLot; })},
    {"DrunkByNobody", Problem::Kind::NotFound, "member", "member",
     entry([](auto& record, auto&) { record.member = MemberId{999}; })},
    {"ReactionWithoutSymptom", badInput, "symptom", "felt",
     reaction([](auto& record) { record.symptom = QStringLiteral(" "); })},
    {"ReactionOfEleven", badInput, "strength", "0 to 10",
     reaction([](auto& record) { record.strength = 11; })},
    {"ReactionBelowZero", badInput, "strength", "0 to 10",
     reaction([](auto& record) { record.strength = -1; })},
    {"ReactionOfTomorrow", badInput, "day", "future",
     reaction([](auto& record) { record.day = tomorrow; })},
    {"EmptyVisitNote", badInput, "text", "empty",
     note([](auto& record) { record.text = QStringLiteral("\n"); })},
    {"VisitTomorrow", badInput, "day", "future", note([](auto& record) { record.day = tomorrow; })},
    {"VisitOfNoFamily", Problem::Kind::NotFound, "family", "family",
     note([](auto& record) { record.family = {}; })},
};

class RefusedRecordTest : public StoreFixture, public ::testing::WithParamInterface<BadRecord> {
protected:
    void SetUp() override {
        StoreFixture::SetUp();
        const auto fill = [this](Action& action, Workbook& workbook) -> Outcome {
            m_stored.phase = workbook.practice().phases().first().id;
            m_stored.family = workbook.families().addFamily(action, sampleFamily()).value();
            fillFamily(action, workbook, m_stored.family, m_stored.member, m_stored.vessel,
                       m_stored.pot, m_stored.lot);
            m_stored.batch = workbook.pots().batches(m_stored.family).first().id;
            m_stored.otherFamily = workbook.families().addFamily(action, sampleFamily()).value();
            fillFamily(action, workbook, m_stored.otherFamily, m_stored.otherMember,
                       m_stored.otherVessel, m_stored.otherPot, m_stored.otherLot);
            return {};
        };
        m_workbook = Workbook::create(workbookPath(), m_clock, fill).value();
    }

    static void fillFamily(Action& action, Workbook& workbook, FamilyId family, MemberId& member,
                           VesselId& vessel, PotId& pot, LotId& lot) {
        member = workbook.families().addMember(action, sampleMember(family, {})).value();
        vessel = workbook.families().addVessel(action, sampleVessel(family)).value();
        pot = workbook.pots().addPot(action, samplePot(family, vessel)).value();
        const BatchId batch = workbook.pots().addBatch(action, sampleBatch(family, pot)).value();
        lot = workbook.pots().addLot(action, sampleLot(batch)).value();
        EXPECT_TRUE(workbook.climbs().addDecision(action, sampleDecision(member)));
    }

    Stored m_stored;
    std::unique_ptr<Workbook> m_workbook;
};

TEST_P(RefusedRecordTest, IsRefusedWithASentenceAndNothingIsWritten) {
    const BadRecord& bad = GetParam();
    const QByteArray before = bytesOf(workbookPath());
    // The good record before the bad one must go, too.
    const Outcome tried = m_workbook->act(QStringLiteral("Tried"), [&](Action& action) -> Outcome {
        EXPECT_TRUE(m_workbook->notes().addNote(action, sampleNote(m_stored.family)));
        return bad.offer(action, *m_workbook, m_stored);
    });
    ASSERT_FALSE(tried);
    EXPECT_EQ(tried.error().kind, bad.kind);
    EXPECT_EQ(tried.error().place.toStdString(), bad.place);
    EXPECT_TRUE(tried.error().sentence.contains(QLatin1String(bad.phrase), Qt::CaseInsensitive))
        << tried.error().sentence.toStdString();
    EXPECT_TRUE(tried.error().sentence.endsWith(u'.'));
    EXPECT_EQ(bytesOf(workbookPath()), before);
    EXPECT_TRUE(m_workbook->history().latest(1).isEmpty());
}

const auto nameOfCase = [](const auto& info) {
    return std::string(info.param.name);
};
INSTANTIATE_TEST_SUITE_P(People, RefusedRecordTest, ::testing::ValuesIn(badPeople), nameOfCase);
INSTANTIATE_TEST_SUITE_P(Kitchen, RefusedRecordTest, ::testing::ValuesIn(badKitchens), nameOfCase);
INSTANTIATE_TEST_SUITE_P(Climb, RefusedRecordTest, ::testing::ValuesIn(badClimbs), nameOfCase);

} // namespace
} // namespace ladlework::store
